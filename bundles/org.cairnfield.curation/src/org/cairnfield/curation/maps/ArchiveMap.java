package org.cairnfield.curation.maps;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.cairnfield.core.geometry.Polygon;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.curation.rules.FloorPlan;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.rules.SurveyedMapBuilder;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.Outline;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.Scope;

/**
 * The samples of an archive that are in the map, as the core and the rules see them: those kept, of surveys of
 * one kind within a scope. Samples are named {@code survey/sample}; access points by address, sites and devices
 * by name.
 */
public final class ArchiveMap {

	private final SurveyedMap surveyed;
	private final List<SampleRef> refs;

	private ArchiveMap(SurveyedMap surveyed, List<SampleRef> refs) {
		this.surveyed = surveyed;
		this.refs = refs;
	}

	/** The training surveys of the whole archive. */
	public static ArchiveMap of(Archive archive) {
		return of(archive, Scope.ARCHIVE, SurveyKind.TRAINING);
	}

	/** @param kind training surveys make the map, test surveys measure it */
	public static ArchiveMap of(Archive archive, Scope scope, SurveyKind kind) {
		Collector collector = new Collector(archive);
		for (Site site : archive.getSites()) {
			for (Survey survey : site.getSurveys()) {
				if (survey.getKind() == kind && (scope.site() == null || scope.site().equals(site.getId()))) {
					collector.add(site, survey, level -> scope.level() == null || scope.level() == level);
				}
			}
		}
		return collector.done();
	}

	/** What maps, findings and exports call a site, see {@link ModelText}. */
	public static String nameOf(Site site) {
		return ModelText.name(site);
	}

	/** What rules judge. */
	public SurveyedMap surveyed() {
		return surveyed;
	}

	/** What is split and matched: readings of access points that are kept. */
	public RadioMap map() {
		return surveyed.map();
	}

	/** Where a sample of the map is in the archive. */
	public SampleRef ref(int sample) {
		return refs.get(sample);
	}

	/** What names a sample across saves. */
	public SampleKey key(int sample) {
		return refs.get(sample).key();
	}

	private static final class Collector {
		private final Archive archive;
		private final RadioMapBuilder builder = new RadioMapBuilder();
		private final Map<String, Integer> accessPoints = new HashMap<>();
		private final List<String> names = new ArrayList<>();
		private final List<SampleRef> refs = new ArrayList<>();
		private final List<Integer> surveyOf = new ArrayList<>();
		private final List<org.cairnfield.curation.rules.Survey> surveys = new ArrayList<>();

		Collector(Archive archive) {
			this.archive = archive;
			for (AccessPoint accessPoint : archive.getAccessPoints()) {
				accessPoints.put(accessPoint.getId(), builder.accessPoint(ModelText.address(accessPoint)));
			}
		}

		void add(Site site, Survey survey, Predicate<Integer> wantedLevel) {
			SampleTable table = survey.table();
			String siteName = ModelText.name(site);
			String device = survey.getDevice() == null ? null : ModelText.name(survey.getDevice());
			int[] column = table.accessPoints().stream()
					.mapToInt(id -> accessPoints.computeIfAbsent(id, builder::accessPoint)).toArray();
			for (int row = 0; row < table.size(); row++) {
				if (table.isKept(row) && wantedLevel.test(table.floorLevel(row))) {
					addSample(siteName, survey, device, row, column);
				}
			}
			surveys.add(new org.cairnfield.curation.rules.Survey(survey.getId(), siteName,
					Optional.ofNullable(survey.getDate()), Optional.ofNullable(survey.getSurveyor()).orElse(""),
					Optional.ofNullable(survey.getSourceDigest())));
		}

		private void addSample(String siteName, Survey survey, String device, int row, int[] column) {
			SampleTable table = survey.table();
			builder.sample(siteName, table.floorLevel(row), table.xMetres(row), table.yMetres(row));
			if (device != null) {
				builder.device(device);
			}
			if (table.timeMillis(row) != SampleTable.NO_TIME) {
				builder.time(table.timeMillis(row));
			}
			for (int k = 0; k < table.heard(row); k++) {
				int level = table.rssiDbm(row, k);
				if (level >= RadioMap.LOWEST_RSSI_DBM && level <= RadioMap.HIGHEST_RSSI_DBM) { // others are no levels
					builder.reading(column[table.accessPoint(row, k)], level);
				}
			}
			refs.add(new SampleRef(survey, row));
			names.add(SampleKey.text(survey.getId(), table.id(row)));
			surveyOf.add(surveys.size());
		}

		ArchiveMap done() {
			SurveyedMapBuilder surveyed = new SurveyedMapBuilder(builder.build(), names,
					surveyOf.stream().mapToInt(Integer::intValue).toArray(), surveys);
			for (Site site : archive.getSites()) {
				surveyed.site(ModelText.name(site), site.getId());
				for (Floor floor : site.getFloors()) {
					surveyed.floor(new FloorPlan(ModelText.name(site), floor.getLevel(), outline(floor),
							Optional.ofNullable(floor.getHeightMetres())));
				}
			}
			for (AccessPoint accessPoint : archive.getAccessPoints()) {
				if (!accessPoint.isKept()) {
					surveyed.setAside(ModelText.address(accessPoint));
				}
			}
			for (Device device : archive.getDevices()) {
				surveyed.device(ModelText.name(device), device.getId());
				if (device.isCalibrated()) {
					surveyed.offset(ModelText.name(device), device.getOffsetDb());
				}
			}
			return new ArchiveMap(surveyed.build(), refs);
		}

		private static Optional<Polygon> outline(Floor floor) {
			return Optional.ofNullable(floor.getOutline()).filter(outline -> outline.size() >= 3).map(Outline::polygon);
		}
	}
}
