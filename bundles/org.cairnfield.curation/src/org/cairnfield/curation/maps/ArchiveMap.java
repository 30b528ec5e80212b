package org.cairnfield.curation.maps;

import java.time.LocalDate;
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
import org.cairnfield.curation.rules.LevelLine;
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

	/** @param kind training surveys make the map, those of the days that its site has set; test surveys measure it */
	public static ArchiveMap of(Archive archive, Scope scope, SurveyKind kind) {
		return of(archive, scope,
				survey -> survey.getKind() == kind && (kind != SurveyKind.TRAINING || isOfTheMap(survey)));
	}

	/** Some surveys, whatever days the map is of. */
	public static ArchiveMap of(Archive archive, Scope scope, Predicate<Survey> wanted) {
		return of(new Collector(archive, true), archive, scope, wanted);
	}

	/** Likewise with all readings as they were recorded, those of access points that are set aside among them. */
	public static ArchiveMap recorded(Archive archive, Scope scope, Predicate<Survey> wanted) {
		return of(new Collector(archive, false), archive, scope, wanted);
	}

	private static ArchiveMap of(Collector collector, Archive archive, Scope scope, Predicate<Survey> wanted) {
		for (Site site : archive.getSites()) {
			for (Survey survey : site.getSurveys()) {
				if ((scope.site() == null || scope.site().equals(site.getId())) && wanted.test(survey)) {
					collector.add(site, survey, level -> scope.level() == null || scope.level() == level);
				}
			}
		}
		return collector.done();
	}

	/** Whether a survey's samples that are kept make the map: it trains, and is of the days that its site has set. */
	public static boolean isOfTheMap(Survey survey) {
		LocalDate date = survey.getDate();
		Site site = survey.getSite();
		return survey.getKind() == SurveyKind.TRAINING && (date == null || site == null
				|| (site.getMapFrom() == null || !date.isBefore(site.getMapFrom()))
						&& (site.getMapUntil() == null || !date.isAfter(site.getMapUntil())));
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
		private final boolean curated;
		private final RadioMapBuilder builder = new RadioMapBuilder();
		private final Map<String, Integer> accessPoints = new HashMap<>();
		private final List<String> names = new ArrayList<>();
		private final List<SampleRef> refs = new ArrayList<>();
		private final List<Integer> surveyOf = new ArrayList<>();
		private final List<org.cairnfield.curation.rules.Survey> surveys = new ArrayList<>();

		/** @param curated whether what was decided on access points and devices counts */
		Collector(Archive archive, boolean curated) {
			this.archive = archive;
			this.curated = curated;
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
			if (curated) {
				curate(surveyed);
			}
			return new ArchiveMap(surveyed.build(), refs);
		}

		private void curate(SurveyedMapBuilder surveyed) {
			CountedAs successors = new CountedAs(archive);
			for (AccessPoint accessPoint : archive.getAccessPoints()) {
				if (!accessPoint.isKept()) {
					surveyed.setAside(ModelText.address(accessPoint));
				}
				String other = successors.address(accessPoint);
				if (!other.equals(ModelText.address(accessPoint))) {
					surveyed.countsAs(ModelText.address(accessPoint), other);
				}
			}
			for (Device device : archive.getDevices()) {
				surveyed.device(ModelText.name(device), device.getId());
				if (device.getMapSlope() != null && device.getMapShiftDb() != null) { // then it reads like the reference
					surveyed.correction(ModelText.name(device),
							new LevelLine(device.getMapSlope(), device.getMapShiftDb()));
				} else if (device.isCalibrated()) {
					surveyed.offset(ModelText.name(device), device.getOffsetDb());
				}
			}
		}

		private static Optional<Polygon> outline(Floor floor) {
			return Optional.ofNullable(floor.getOutline()).filter(outline -> outline.size() >= 3).map(Outline::polygon);
		}
	}
}
