package org.cairnfield.curation.internal.selftest;

import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.simulate.FaultKind;
import org.cairnfield.core.simulate.Planting;
import org.cairnfield.curation.rules.SurveyedMap;

/** Plants samples at wrong places: single ones far off, single ones and stretches on another floor, stretches with axes exchanged. */
final class PlacePlants {

	/** Of the samples, for each kind of single fault: few enough that the map stays the map that it is. */
	private static final double RATE = 0.01;
	/** In small surveys more, for a precision from two or three faults says nothing. */
	private static final int FEWEST = 6;
	private static final double MOST = 0.03;
	/** Samples that a surveyor notes on the wrong floor before he sees it. */
	private static final int RUN = 8;
	/** A corridor's length of samples. */
	private static final int STRETCH = 20;
	/** Exchanging the axes moves a place by √2 times this, in metres; less is within the noise of places. */
	private static final double APART_METRES = 6;
	private static final int TRIES = 200;

	private final SurveyedMap clean;
	private final SplittableRandom random;
	private final Planted.Truth truth = new Planted.Truth();
	private final boolean[] taken;
	private final double[] x;
	private final double[] y;
	private final int[] floor;

	private PlacePlants(SurveyedMap clean, long seed, boolean stretches) {
		this.clean = clean;
		random = new SplittableRandom(seed);
		int n = clean.size();
		double rate = Math.min(MOST, Math.max(RATE, (double) FEWEST / n));
		Planting.Planted single = new Planting(rate, rate / 2, 0, 0, 0, 0).plant(clean.map(), seed);
		RadioMap planted = single.map();
		taken = single.isBad();
		x = IntStream.range(0, n).mapToDouble(planted::x).toArray();
		y = IntStream.range(0, n).mapToDouble(planted::y).toArray();
		floor = IntStream.range(0, n).map(planted::floor).toArray();
		for (int s = 0; s < n; s++) {
			if (taken[s]) {
				truth.add(single.kinds()[s] == FaultKind.WRONG_FLOOR ? TrialFault.WRONG_FLOOR : TrialFault.WRONG_PLACE,
						clean.sampleId(s));
			}
		}
		if (stretches) {
			stretches(RUN, rate / 2, this::mislabel);
			stretches(STRETCH, rate, this::exchange);
		}
	}

	/** Single samples and stretches, for rules that ask neighbours in signal space. */
	static Planted in(SurveyedMap clean, long seed) {
		return in(clean, new PlacePlants(clean, seed, true));
	}

	/** Single samples alone, for rules that follow the surveyor's way: two stretches in one survey would look like one way there and back. */
	static Planted singlesIn(SurveyedMap clean, long seed) {
		return in(clean, new PlacePlants(clean, seed, false));
	}

	private static Planted in(SurveyedMap clean, PlacePlants plants) {
		return plants.truth.in(clean.with(plants.build()));
	}

	private interface Spoil {
		/** Whether the stretch could be spoilt. */
		boolean at(int from, int to);
	}

	/** At least one stretch where one is found. */
	private void stretches(int length, double share, Spoil spoil) {
		long wanted = Math.max(1, Math.round(share * clean.size() / length));
		for (int tries = 0; tries < TRIES * wanted && wanted > 0 && clean.size() > length; tries++) {
			int from = random.nextInt(clean.size() - length);
			if (isStretch(from, from + length) && spoil.at(from, from + length)) {
				for (int s = from; s < from + length; s++) {
					taken[s] = true;
				}
				wanted--;
			}
		}
	}

	/** Sound so far, of one survey and device, on one floor. */
	private boolean isStretch(int from, int to) {
		return IntStream.range(from, to).allMatch(s -> !taken[s] && clean.survey(s) == clean.survey(from)
				&& clean.map().device(s) == clean.map().device(from) && floor[s] == floor[from]
				&& clean.map().site(s) == clean.map().site(from));
	}

	private boolean mislabel(int from, int to) {
		TreeSet<Integer> others = new TreeSet<>();
		for (int s = 0; s < floor.length; s++) {
			if (clean.map().site(s) == clean.map().site(from)) {
				others.add(clean.map().floor(s));
			}
		}
		others.remove(floor[from]);
		if (others.isEmpty()) {
			return false;
		}
		int noted = others.stream().skip(random.nextInt(others.size())).findFirst().orElseThrow();
		for (int s = from; s < to; s++) {
			floor[s] = noted;
			truth.add(TrialFault.WRONG_FLOOR, clean.sampleId(s));
		}
		return true;
	}

	private boolean exchange(int from, int to) {
		if (IntStream.range(from, to).filter(s -> Math.abs(x[s] - y[s]) >= APART_METRES).count() < (to - from) / 2) {
			return false;
		}
		for (int s = from; s < to; s++) {
			double noted = x[s];
			x[s] = y[s];
			y[s] = noted;
			truth.add(TrialFault.SWAPPED_AXES, clean.sampleId(s));
		}
		return true;
	}

	private RadioMap build() {
		RadioMap map = clean.map();
		RadioMapBuilder builder = new RadioMapBuilder();
		map.accessPoints().forEach(builder::accessPoint);
		for (int s = 0; s < map.size(); s++) {
			Copies.place(map, s, floor[s], x[s], y[s], builder);
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				builder.reading(map.accessPoint(k), map.rssiDbm(k));
			}
		}
		return builder.build();
	}
}
