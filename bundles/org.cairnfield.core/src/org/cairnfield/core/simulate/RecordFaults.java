package org.cairnfield.core.simulate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;

import org.cairnfield.core.map.RadioMap;

/** Faults of a survey as a record: rows too many, rows mixed up, levels that cannot be. Rows of truth go to one list. */
final class RecordFaults {

	private static final int EACH = 4;
	private static final int LIMIT_DBM = -55;
	private static final double FAR_METRES = 15;
	private static final int JUMP_DB = 35;

	private final long key;
	private final List<PlantedFault> truth;

	RecordFaults(long key, List<PlantedFault> truth) {
		this.key = key;
		this.truth = truth;
	}

	/** The survey with some of each kind; new rows come last. */
	SimulatedSurvey plant(SimulatedSurvey survey) {
		SplittableRandom random = Streams.random(Streams.key(Streams.key(key, "records"), survey.name()));
		RadioMap map = survey.map();
		List<String> names = new ArrayList<>(map.accessPoints());
		List<DraftSample> drafts = DraftSample.of(map);
		List<String> ids = new ArrayList<>(survey.sampleIds());
		int n = map.size();
		List<Integer> rich = new ArrayList<>();
		for (int s = 0; s < n; s++) {
			if (map.heard(s) >= 8) {
				rich.add(s);
			}
		}
		if (rich.size() < 12 * EACH) {
			return survey;
		}
		saturate(survey, drafts);
		for (int i = 0; i < EACH; i++) {
			int s = take(rich, random);
			drafts.get(s).readings.replace(drafts.get(s).readings.firstKey(), -3 - random.nextInt(10));
			tell(FaultKind.IMPLAUSIBLE_LEVEL, survey, ids.get(s), names.get(drafts.get(s).readings.firstKey()), "");
			s = take(rich, random);
			int far = farFrom(map, s, rich, random);
			if (far >= 0) {
				drafts.get(s).readings.clear();
				drafts.get(s).readings.putAll(drafts.get(far).readings);
				tell(FaultKind.SCAN_ELSEWHERE, survey, ids.get(s), "", "readings of " + ids.get(far));
			}
			int passing = names.size();
			names.add(String.format(Locale.ROOT, "06:00:5E:00:54:%02X",
					Math.floorMod(survey.name().hashCode() + i, 256)));
			drafts.get(take(rich, random)).readings.put(passing, -84);
			truth.add(new PlantedFault(FaultKind.PASSING_SENDER, survey.name(), "", names.get(passing), "heard once"));
		}
		int group = names.size();
		names.add("01:00:5E:90:10:00");
		for (int i = 0; i < EACH; i++) {
			drafts.get(take(rich, random)).readings.put(group, -70);
		}
		truth.add(new PlantedFault(FaultKind.GROUP_ADDRESS, survey.name(), "", names.get(group), "I/G bit set"));
		for (int i = 0; i < EACH; i++) {
			DraftSample original = drafts.get(take(rich, random));
			append(survey, original, FaultKind.COPIED_ROW, 0, "", drafts, ids);
			original = drafts.get(take(rich, random));
			int far = farFrom(map, drafts.indexOf(original), rich, random);
			if (far >= 0) {
				DraftSample foreign = append(survey, original, FaultKind.FOREIGN_SCAN, 0,
						", readings of " + ids.get(far), drafts, ids);
				foreign.readings.clear();
				foreign.readings.putAll(drafts.get(far).readings);
			}
			original = drafts.get(take(rich, random));
			DraftSample again = append(survey, original, FaultKind.LEVEL_JUMP, 4000, "", drafts, ids);
			Map.Entry<Integer, Integer> loudest = original.readings.entrySet().stream()
					.max(Map.Entry.comparingByValue()).orElseThrow();
			original.readings.put(loudest.getKey(), Math.max(-60, loudest.getValue()));
			again.readings.putAll(original.readings);
			again.readings.put(loudest.getKey(), original.readings.get(loudest.getKey()) - JUMP_DB);
		}
		return new SimulatedSurvey(survey.name(), survey.role(), survey.site(), survey.device(), survey.surveyor(),
				survey.date(), DraftSample.build(drafts, names), ids);
	}

	private void saturate(SimulatedSurvey survey, List<DraftSample> drafts) {
		for (DraftSample draft : drafts) {
			draft.readings.replaceAll((a, level) -> Math.min(level, LIMIT_DBM));
		}
		truth.add(new PlantedFault(FaultKind.SATURATED, survey.name(), "", "", "cut off at " + LIMIT_DBM + " dBm"));
	}

	private void tell(FaultKind kind, SimulatedSurvey survey, String sample, String accessPoint, String detail) {
		truth.add(new PlantedFault(kind, survey.name(), sample, accessPoint, detail));
	}

	private DraftSample append(SimulatedSurvey survey, DraftSample original, FaultKind kind, long laterMillis,
			String more, List<DraftSample> drafts, List<String> ids) {
		DraftSample copy = new DraftSample();
		copy.site = original.site;
		copy.floor = original.floor;
		copy.x = original.x;
		copy.y = original.y;
		copy.device = original.device;
		copy.timeMillis = original.timeMillis + laterMillis;
		copy.readings.putAll(original.readings);
		String id = ids.get(drafts.indexOf(original)) + "-" + kind.code();
		tell(kind, survey, id, "", "beside " + ids.get(drafts.indexOf(original)) + more);
		drafts.add(copy);
		ids.add(id);
		return copy;
	}

	private static int take(List<Integer> from, SplittableRandom random) {
		return from.remove(random.nextInt(from.size()));
	}

	private static int farFrom(RadioMap map, int sample, List<Integer> among, SplittableRandom random) {
		for (int tries = 0; tries < 200; tries++) {
			int other = among.get(random.nextInt(among.size()));
			if (map.metresApart(sample, other) > FAR_METRES) {
				return other;
			}
		}
		return -1;
	}
}
