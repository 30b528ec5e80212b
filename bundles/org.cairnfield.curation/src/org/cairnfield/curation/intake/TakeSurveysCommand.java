package org.cairnfield.curation.intake;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.Count;
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
		devices.forEach(device -> insert(archive.getDevices(), device, Comparator.comparing(Device::getId)));
		accessPoints.forEach(accessPoint -> insert(archive.getAccessPoints(), accessPoint,
				Comparator.comparing(AccessPoint::getId)));
		sites.forEach(site -> insert(archive.getSites(), site, Comparator.comparing(Site::getId)));
		floors.forEach((floor, site) -> insert(site.getFloors(), floor, Comparator.comparingInt(Floor::getLevel)));
		surveys.forEach((survey, site) -> insert(site.getSurveys(), survey, Comparator.comparing(Survey::getId)));
	}

	/** Where it will be once the archive was saved and read again, since rules and splits see things in that order. */
	private static <T> void insert(List<T> list, T item, Comparator<T> order) {
		int at = list.size();
		while (at > 0 && order.compare(list.get(at - 1), item) > 0) {
			at--;
		}
		list.add(at, item);
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
		return Words.bind(Messages.TakeSurveysCommand_takeIn, Count.of(surveys.size(), "survey"),
				Count.of(samples, "sample"));
	}
}
