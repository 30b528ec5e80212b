package org.cairnfield.curation.internal.selftest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.internal.rules.evidence.Epochs;

/** Plants changes between the last campaign at a site and those before it: access points moved, gone, and new. */
final class AccessPointPlants {

	/** Of the access points heard well in both campaigns, for each kind. */
	private static final double RATE = 0.05;
	private static final int FEWEST = 2;
	/** So loud somewhere in both campaigns that nobody would miss it, in dBm. */
	private static final int WELL_DBM = -70;
	private static final int OFTEN = 3;

	private AccessPointPlants() {
	}

	/** Of a site surveyed at two dates at least; otherwise nothing is planted. */
	static Planted in(RuleInput site, long seed) {
		Planted.Truth truth = new Planted.Truth();
		Epochs epochs = Epochs.of(site);
		int last = epochs.all().size() - 1;
		RadioMap map = site.map().map();
		if (last < 1) {
			return truth.in(site.map());
		}
		int[] epoch = IntStream.range(0, map.size()).map(s -> epochs.ofSurvey(site.map().survey(s))).toArray();
		List<Integer> known = known(map, epoch, last);
		shuffle(known, new SplittableRandom(seed));
		int each = (int) Math.max(FEWEST, Math.round(RATE * known.size()));
		Map<Integer, Integer> exchanged = new HashMap<>();
		boolean[] gone = new boolean[map.accessPointCount()];
		boolean[] fresh = new boolean[map.accessPointCount()];
		int at = 0;
		for (int i = 0; i < each && at + 3 < known.size(); i++) {
			exchanged.put(known.get(at), known.get(at + 1)); // two that change places are both moved
			exchanged.put(known.get(at + 1), known.get(at));
			gone[known.get(at + 2)] = true;
			fresh[known.get(at + 3)] = true;
			truth.add(TrialFault.MOVED, map.accessPoints().get(known.get(at)));
			truth.add(TrialFault.MOVED, map.accessPoints().get(known.get(at + 1)));
			truth.add(TrialFault.VANISHED, map.accessPoints().get(known.get(at + 2)));
			truth.add(TrialFault.APPEARED, map.accessPoints().get(known.get(at + 3)));
			at += 4;
		}
		RadioMapBuilder builder = new RadioMapBuilder();
		map.accessPoints().forEach(builder::accessPoint);
		for (int s = 0; s < map.size(); s++) {
			Copies.place(map, s, builder);
			boolean now = epoch[s] == last;
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				int a = map.accessPoint(k);
				if (now ? !gone[a] : !fresh[a]) {
					builder.reading(now ? exchanged.getOrDefault(a, a) : a, map.rssiDbm(k));
				}
			}
		}
		return truth.in(site.map().with(builder.build()));
	}

	private static List<Integer> known(RadioMap map, int[] epoch, int last) {
		int[][] well = new int[2][map.accessPointCount()];
		for (int s = 0; s < epoch.length; s++) {
			for (int k = map.firstReading(s); epoch[s] >= last - 1 && k < map.endReading(s); k++) {
				well[epoch[s] - last + 1][map.accessPoint(k)] += map.rssiDbm(k) >= WELL_DBM ? 1 : 0;
			}
		}
		List<Integer> known = new ArrayList<>();
		for (int a = 0; a < map.accessPointCount(); a++) {
			int access = a;
			if (Arrays.stream(well).allMatch(counts -> counts[access] >= OFTEN)) {
				known.add(a);
			}
		}
		return known;
	}

	private static void shuffle(List<Integer> list, SplittableRandom random) {
		for (int i = list.size() - 1; i > 0; i--) {
			int j = random.nextInt(i + 1);
			list.set(i, list.set(j, list.get(i)));
		}
	}
}
