package org.cairnfield.curation.intake;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.eclipse.emf.common.command.AbstractCommand;

/** Adds surveys to an archive, and the sites, floors, devices and access points that they need. */
public final class TakeSurveysCommand extends AbstractCommand {

	private final Archive archive;
	private final List<Site> sites = new ArrayList<>();
	private final List<Device> devices = new ArrayList<>();
	private final List<AccessPoint> accessPoints = new ArrayList<>();
	private final Map<Floor, Site> floors = new LinkedHashMap<>();
	private final Map<Survey, Site> surveys = new LinkedHashMap<>();

	TakeSurveysCommand(Archive archive) {
		this.archive = archive;
	}

	void addSite(Site site) {
		sites.add(site);
	}

	void addDevice(Device device) {
		devices.add(device);
	}

	void addAccessPoint(AccessPoint accessPoint) {
		accessPoints.add(accessPoint);
	}

	void addFloor(Site site, Floor floor) {
		floors.put(floor, site);
	}

	void addSurvey(Site site, Survey survey) {
		surveys.put(survey, site);
	}

	@Override
	protected boolean prepare() {
		return !surveys.isEmpty();
	}

	@Override
	public void execute() {
		redo();
	}

	@Override
	public void redo() {
		archive.getDevices().addAll(devices);
		archive.getAccessPoints().addAll(accessPoints);
		archive.getSites().addAll(sites);
		floors.forEach((floor, site) -> site.getFloors().add(floor));
		surveys.forEach((survey, site) -> site.getSurveys().add(survey));
	}

	@Override
	public void undo() {
		surveys.forEach((survey, site) -> site.getSurveys().remove(survey));
		floors.forEach((floor, site) -> site.getFloors().remove(floor));
		archive.getSites().removeAll(sites);
		archive.getAccessPoints().removeAll(accessPoints);
		archive.getDevices().removeAll(devices);
	}

	@Override
	public Collection<?> getAffectedObjects() {
		return surveys.keySet();
	}

	@Override
	public String getLabel() {
		int samples = surveys.keySet().stream().mapToInt(survey -> survey.table().size()).sum();
		return "Take in " + surveys.size() + (surveys.size() == 1 ? " survey" : " surveys") + ", " + samples + " samples";
	}
}
