package org.cairnfield.core.simulate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.radio.MacAddress;

/** Faults of many samples or of access points, planted in a survey of any site. Rows of truth go to one list. */
final class SurveyFaults {

	private static final int MISLABELLED_LEAST = 6;
	private static final int MISLABELLED_MOST = 14;
	private static final int NOT_HEARD_DBM = -110;
	private static final double LOCAL_NOISE_SD_DB = 1;
	private static final long LOCAL_BIT = 0x0200_0000_0000L;

	private final long key;
	private final List<PlantedFault> truth;

	SurveyFaults(long key, List<PlantedFault> truth) {
		this.key = key;
		this.truth = truth;
	}

	private SplittableRandom chance(String purpose, SimulatedSurvey survey) {
		return Streams.random(Streams.key(Streams.key(key, purpose), survey.name()));
	}

	private static SimulatedSurvey rebuilt(SimulatedSurvey survey, List<DraftSample> drafts,
			List<String> accessPoints) {
		return MarrowQuay.with(survey, DraftSample.build(drafts, accessPoints));
	}

	private void plant(FaultKind kind, SimulatedSurvey survey, int sample, String accessPoint, String detail) {
		truth.add(new PlantedFault(kind, survey.name(), survey.sampleIds().get(sample), accessPoint, detail));
	}

	/** A third of the lowest floor's width by half its depth; the same in every survey of the site. */
	SimulatedSurvey leaveOutPart(SimulatedSurvey survey, Site site, boolean tell) {
		SplittableRandom random = Streams.random(Streams.key(Streams.key(key, "gap"), site.name()));
		Floor floor = site.floors().get(random.nextInt(site.floors().size()));
		Wing wing = floor.outline().wings().get(0);
		double width = (wing.x1() - wing.x0()) / 3;
		double depth = (wing.y1() - wing.y0()) * 0.6;
		double x0 = wing.x0() + random.nextDouble(2 * width);
		double y0 = wing.y0();
		if (tell) {
			truth.add(new PlantedFault(FaultKind.COVERAGE_GAP, survey.name(), "", "", String.format(Locale.ROOT,
					"%s floor %d, x %.1f to %.1f m, y %.1f to %.1f m", site.name(), floor.level(), x0, x0 + width, y0,
					y0 + depth)));
		}
		RadioMap map = survey.map();
		int[] kept = IntStream.range(0, map.size()).filter(s -> map.floor(s) != floor.level() || map.x(s) < x0
				|| map.x(s) > x0 + width || map.y(s) < y0 || map.y(s) > y0 + depth).toArray();
		List<String> ids = IntStream.of(kept).mapToObj(survey.sampleIds()::get).toList();
		return new SimulatedSurvey(survey.name(), survey.role(), survey.site(), survey.device(), survey.surveyor(),
				survey.date(), map.view(kept), ids);
	}

	SimulatedSurvey single(SimulatedSurvey survey, Planting planting) {
		Planting.Planted planted = planting.plant(survey.map(), Streams.key(Streams.key(key, "single"), survey.name()));
		truth.addAll(planted.truth(survey.name(), survey.sampleIds()));
		return MarrowQuay.with(survey, planted.map());
	}

	/** The device hands out its last scan again; not where something else is planted already. */
	SimulatedSurvey cachedScans(SimulatedSurvey survey, double share) {
		SplittableRandom random = chance("cached", survey);
		List<DraftSample> drafts = DraftSample.of(survey.map());
		Set<String> spoilt = new HashSet<>();
		for (PlantedFault fault : truth) {
			if (fault.kind() != FaultKind.HOTSPOT) {
				spoilt.add(fault.sample());
				spoilt.addAll(List.of(fault.detail().split("[, ]+")));
			}
		}
		for (int s = 1; s < drafts.size(); s++) {
			boolean next = drafts.get(s).timeMillis - drafts.get(s - 1).timeMillis < 60_000
					&& drafts.get(s).timeMillis > drafts.get(s - 1).timeMillis;
			if (random.nextDouble() < share && next && drafts.get(s - 1).readings.size() > 4
					&& !spoilt.contains(survey.sampleIds().get(s)) && !spoilt.contains(survey.sampleIds().get(s - 1))) {
				drafts.get(s).readings.clear();
				drafts.get(s).readings.putAll(drafts.get(s - 1).readings);
				plant(FaultKind.CACHED_SCAN, survey, s, "", "readings of " + survey.sampleIds().get(s - 1));
			}
		}
		return rebuilt(survey, drafts, survey.map().accessPoints());
	}

	/** The same radio under an address with the local bit set. */
	SimulatedSurvey secondAddresses(SimulatedSurvey survey, List<AccessPoint> radios, boolean tell) {
		List<String> names = new ArrayList<>(survey.map().accessPoints());
		List<DraftSample> drafts = DraftSample.of(survey.map());
		for (AccessPoint radio : radios) {
			int first = names.indexOf(radio.address().toString());
			if (first < 0) {
				continue;
			}
			String second = new MacAddress(radio.address().value() | LOCAL_BIT).toString();
			int index = names.size();
			names.add(second);
			SplittableRandom random = chance("second address " + second, survey);
			for (DraftSample draft : drafts) {
				Integer level = draft.readings.get(first);
				if (level != null && random.nextDouble() < 0.97) {
					long own = Math.round(level + LOCAL_NOISE_SD_DB * Streams.gaussian(random.nextLong()));
					draft.readings.put(index, (int) Math.max(SurveyDevice.LOWEST_DBM,
							Math.min(SurveyDevice.HIGHEST_DBM, own)));
				}
			}
			if (tell && truth.stream().noneMatch(f -> f.accessPoint().equals(second))) {
				truth.add(
						new PlantedFault(FaultKind.SECOND_ADDRESS, "", "", second, "same radio as " + radio.address()));
			}
		}
		return rebuilt(survey, drafts, names);
	}

	SimulatedSurvey swapCorridor(SimulatedSurvey survey, Site site) {
		Floor floor = site.floors().get(chance("swap", survey).nextInt(site.floors().size()));
		Corridor corridor = floor.corridors().get(0);
		List<DraftSample> drafts = DraftSample.of(survey.map());
		for (int s = 0; s < drafts.size(); s++) {
			DraftSample draft = drafts.get(s);
			if (draft.floor == floor.level() && corridor.contains(draft.x, draft.y)) {
				plant(FaultKind.SWAPPED_AXES, survey, s, "",
						String.format(Locale.ROOT, "true place x %.2f m, y %.2f m", draft.x, draft.y));
				double x = draft.x;
				draft.x = draft.y;
				draft.y = x;
			}
		}
		return rebuilt(survey, drafts, survey.map().accessPoints());
	}

	SimulatedSurvey mislabelRun(SimulatedSurvey survey) {
		SplittableRandom random = chance("mislabel", survey);
		List<DraftSample> drafts = DraftSample.of(survey.map());
		List<Integer> floors = new ArrayList<>(new TreeSet<>(drafts.stream().map(d -> d.floor).toList()));
		if (floors.size() < 2) {
			return survey;
		}
		int count = random.nextInt(MISLABELLED_LEAST, MISLABELLED_MOST + 1);
		int first;
		do {
			first = random.nextInt(drafts.size() - count);
		} while (drafts.get(first).floor != drafts.get(first + count - 1).floor);
		int truly = drafts.get(first).floor;
		floors.remove((Integer) truly);
		int noted = floors.get(random.nextInt(floors.size()));
		for (int s = first; s < first + count; s++) {
			if (drafts.get(s).floor == truly) {
				drafts.get(s).floor = noted;
				plant(FaultKind.WRONG_FLOOR, survey, s, "", "true floor " + truly);
			}
		}
		return rebuilt(survey, drafts, survey.map().accessPoints());
	}

	/** The access point heard most often reads the same everywhere. */
	SimulatedSurvey stuckLevel(SimulatedSurvey survey) {
		int accessPoint = mostHeard(survey.map());
		List<DraftSample> drafts = DraftSample.of(survey.map());
		drafts.forEach(d -> d.readings.computeIfPresent(accessPoint, (a, level) -> -71));
		truth.add(new PlantedFault(FaultKind.STUCK_LEVEL, survey.name(), "",
				survey.map().accessPoints().get(accessPoint), "always -71 dBm"));
		return rebuilt(survey, drafts, survey.map().accessPoints());
	}

	private static int mostHeard(RadioMap map) {
		int[] heard = new int[map.accessPointCount()];
		for (int s = 0; s < map.size(); s++) {
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				heard[map.accessPoint(k)]++;
			}
		}
		return IntStream.range(0, heard.length).reduce((a, b) -> heard[b] > heard[a] ? b : a).orElseThrow();
	}

	/** One sample in ten holds a code for most of what it did not hear. */
	SimulatedSurvey notHeardCode(SimulatedSurvey survey) {
		SplittableRandom random = chance("code", survey);
		List<DraftSample> drafts = DraftSample.of(survey.map());
		int accessPoints = survey.map().accessPointCount();
		for (int s = 0; s < drafts.size(); s++) {
			if (random.nextInt(10) == 0 && drafts.get(s).readings.size() > 4) {
				for (int a = 0; a < accessPoints; a++) {
					drafts.get(s).readings.putIfAbsent(a, NOT_HEARD_DBM);
				}
				plant(FaultKind.NOT_HEARD_CODE, survey, s, "", NOT_HEARD_DBM + " dBm for what it did not hear");
			}
		}
		return rebuilt(survey, drafts, survey.map().accessPoints());
	}

	/** The same samples backwards, under other ids. */
	SimulatedSurvey importAgain(SimulatedSurvey survey) {
		String name = survey.name() + "-again";
		int n = survey.map().size();
		List<String> ids = MarrowQuay.ids(name, n);
		IntFunction<String> first = i -> survey.sampleIds().get(n - 1 - i);
		for (int s = 0; s < n; s++) {
			truth.add(new PlantedFault(FaultKind.DUPLICATE_IMPORT, name, ids.get(s), "", "same as " + first.apply(s)));
		}
		List<DraftSample> drafts = DraftSample.of(survey.map());
		Collections.reverse(drafts);
		return new SimulatedSurvey(name, survey.role(), survey.site(), survey.device(), survey.surveyor(),
				survey.date(),
				DraftSample.build(drafts, survey.map().accessPoints()), ids);
	}
}
