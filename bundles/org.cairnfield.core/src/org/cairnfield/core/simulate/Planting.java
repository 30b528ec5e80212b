package org.cairnfield.core.simulate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeSet;

import org.cairnfield.core.map.RadioMap;

/**
 * Plants faults in single samples of any map, simulated or real, to score what finds them. Shares are of all
 * samples, 0 … 1, together at most 1; no sample gets two faults.
 */
public record Planting(double wrongPositions, double wrongFloors, double faultyDevice, double permuted,
		double sparse, double empty) {

	private static final double FARTHER_THAN_METRES = 10;
	private static final int TRIES = 50;

	public Planting {
		double[] shares = { wrongPositions, wrongFloors, faultyDevice, permuted, sparse, empty };
		double sum = 0;
		for (double share : shares) {
			if (!(share >= 0)) {
				throw new IllegalArgumentException("not a share: " + share);
			}
			sum += share;
		}
		if (sum > 1) {
			throw new IllegalArgumentException("shares add up to " + sum);
		}
	}

	/** 2 % wrong positions, 2 % of a faulty device, 0.5 % wrong floors. */
	public static Planting usual() {
		return new Planting(0.02, 0.005, 0.02, 0, 0, 0);
	}

	/**
	 * A map with faults.
	 *
	 * @param map    as it is after planting; samples and access points keep their indexes
	 * @param kinds  the fault of every sample, null where it has none
	 * @param detail what is true instead, null where it has none
	 */
	public record Planted(RadioMap map, FaultKind[] kinds, String[] detail) {

		/** Which samples have a fault of the kinds listed, or of any where none is listed. */
		public boolean[] isBad(FaultKind... wanted) {
			List<FaultKind> list = List.of(wanted);
			boolean[] bad = new boolean[kinds.length];
			for (int s = 0; s < bad.length; s++) {
				bad[s] = kinds[s] != null && (list.isEmpty() || list.contains(kinds[s]));
			}
			return bad;
		}

		/** The faults as rows of the ground truth. */
		public List<PlantedFault> truth(String survey, List<String> sampleIds) {
			List<PlantedFault> rows = new ArrayList<>();
			for (int s = 0; s < kinds.length; s++) {
				if (kinds[s] != null) {
					rows.add(new PlantedFault(kinds[s], survey, sampleIds.get(s), "", detail[s]));
				}
			}
			return rows;
		}
	}

	/**
	 * The map with faults planted. A fault that a sample cannot have (another floor where the site has but one)
	 * is left out.
	 */
	public Planted plant(RadioMap clean, long seed) {
		long key = Streams.key(seed, "planting");
		int n = clean.size();
		List<DraftSample> drafts = DraftSample.of(clean);
		FaultKind[] kinds = new FaultKind[n];
		String[] detail = new String[n];
		int[] order = shuffled(n, Streams.random(Streams.key(key, "choice")));
		FaultKind[] each = { FaultKind.WRONG_POSITION, FaultKind.WRONG_FLOOR, FaultKind.FAULTY_DEVICE,
				FaultKind.PERMUTED_READINGS, FaultKind.SPARSE, FaultKind.EMPTY };
		double[] shares = { wrongPositions, wrongFloors, faultyDevice, permuted, sparse, empty };
		Map<Integer, TreeSet<Integer>> floors = new HashMap<>();
		for (int s = 0; s < n; s++) {
			floors.computeIfAbsent(clean.site(s), site -> new TreeSet<>()).add(clean.floor(s));
		}
		int next = 0;
		for (int k = 0; k < each.length; k++) {
			long count = Math.round(shares[k] * n);
			for (long i = 0; i < count && next < n; i++) {
				int s = order[next++];
				SplittableRandom random = Streams.random(Streams.key(Streams.key(key, each[k].code()), s));
				detail[s] = spoil(drafts.get(s), each[k], clean, s, floors.get(clean.site(s)), random);
				kinds[s] = detail[s] == null ? null : each[k];
			}
		}
		return new Planted(DraftSample.build(drafts, clean.accessPoints()), kinds, detail);
	}

	private static String spoil(DraftSample draft, FaultKind kind, RadioMap clean, int sample,
			TreeSet<Integer> floors, SplittableRandom random) {
		return switch (kind) {
		case WRONG_POSITION -> misplace(draft, clean, sample, random);
		case WRONG_FLOOR -> mislabel(draft, floors, random);
		case FAULTY_DEVICE -> weaken(draft, random);
		case PERMUTED_READINGS -> permute(draft, random);
		case SPARSE -> thin(draft, 1 + random.nextInt(2), random);
		case EMPTY -> thin(draft, 0, random);
		default -> throw new IllegalArgumentException("not for single samples: " + kind);
		};
	}

	/** To the place of another sample of the floor at least 10 m off, or the farthest met. */
	private static String misplace(DraftSample draft, RadioMap clean, int sample, SplittableRandom random) {
		int farthest = -1;
		double most = 0;
		int met = 0;
		for (int t = 0; t < 200 * TRIES && met < TRIES && most < FARTHER_THAN_METRES; t++) {
			int other = random.nextInt(clean.size());
			double apart = clean.metresApart(sample, other);
			if (Double.isFinite(apart)) {
				met++;
				if (apart > most) {
					most = apart;
					farthest = other;
				}
			}
		}
		if (farthest < 0) {
			return null;
		}
		String truth = String.format(Locale.ROOT, "true place x %.2f m, y %.2f m, %.1f m away", draft.x, draft.y, most);
		draft.x = clean.x(farthest);
		draft.y = clean.y(farthest);
		return truth;
	}

	private static String mislabel(DraftSample draft, TreeSet<Integer> floors, SplittableRandom random) {
		List<Integer> others = new ArrayList<>(floors);
		others.remove((Integer) draft.floor);
		if (others.isEmpty()) {
			return null;
		}
		String truth = "true floor " + draft.floor;
		draft.floor = others.get(random.nextInt(others.size()));
		return truth;
	}

	/** 8 to 14 dB too low, what falls below the range lost, and of the rest one in three. */
	private static String weaken(DraftSample draft, SplittableRandom random) {
		int deficitDb = random.nextInt(8, 15);
		int before = draft.readings.size();
		for (Map.Entry<Integer, Integer> reading : new ArrayList<>(draft.readings.entrySet())) {
			int level = reading.getValue() - deficitDb;
			if (level < SurveyDevice.LOWEST_DBM || random.nextInt(3) == 0) {
				draft.readings.remove(reading.getKey());
			} else {
				draft.readings.put(reading.getKey(), level);
			}
		}
		return "levels " + deficitDb + " dB too low, " + (before - draft.readings.size()) + " of " + before
				+ " access points missing";
	}

	private static String permute(DraftSample draft, SplittableRandom random) {
		List<Integer> levels = new ArrayList<>(draft.readings.values());
		if (levels.size() < 2) {
			return null;
		}
		int[] order = shuffled(levels.size(), random);
		int at = 0;
		for (Map.Entry<Integer, Integer> reading : draft.readings.entrySet()) {
			reading.setValue(levels.get(order[at++]));
		}
		return "levels of " + levels.size() + " access points permuted";
	}

	private static String thin(DraftSample draft, int left, SplittableRandom random) {
		int before = draft.readings.size();
		List<Integer> heard = new ArrayList<>(draft.readings.keySet());
		while (draft.readings.size() > left) {
			draft.readings.remove(heard.remove(random.nextInt(heard.size())));
		}
		return before - draft.readings.size() + " of " + before + " access points lost";
	}

	private static int[] shuffled(int n, SplittableRandom random) {
		int[] order = new int[n];
		for (int i = 0; i < n; i++) {
			int j = random.nextInt(i + 1);
			order[i] = order[j];
			order[j] = i;
		}
		return order;
	}
}
