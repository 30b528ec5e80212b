package org.cairnfield.core.simulate;

import java.util.Arrays;
import java.util.List;

/** Where and when the samples of a walk are recorded, in columns. */
final class Stops {

	private int size;
	private int[] site = new int[256];
	private int[] floorIndex = new int[256];
	private double[] x = new double[256];
	private double[] y = new double[256];
	private long[] timeMillis = new long[256];
	/** Time since the start of the walk; runs on from site to site. */
	private double seconds;

	/** Adds the stops of one site. */
	void walk(Site where, int siteIndex, SurveyPlan plan, long seed) {
		long key = Streams.key(Streams.key(Streams.key(seed, "walk"), plan.name()), siteIndex);
		for (int f = 0; f < where.floors().size(); f++) {
			List<Place> places = plan.walk().places(where.floors().get(f),
					Streams.random(Streams.key(key, f)));
			Place before = null;
			for (Place place : places) {
				if (before != null) {
					seconds += before.metresTo(place) / plan.metresPerSecond();
				}
				before = place;
				for (int r = 0; r < plan.repeats(); r++) {
					add(siteIndex, f, place, plan.start().toEpochMilli() + Math.round(seconds * 1000));
					seconds += plan.secondsPerSample();
				}
			}
			seconds += 120;
		}
	}

	private void add(int siteIndex, int floor, Place place, long millis) {
		if (size == x.length) {
			int grown = size * 2;
			site = Arrays.copyOf(site, grown);
			floorIndex = Arrays.copyOf(floorIndex, grown);
			x = Arrays.copyOf(x, grown);
			y = Arrays.copyOf(y, grown);
			timeMillis = Arrays.copyOf(timeMillis, grown);
		}
		site[size] = siteIndex;
		floorIndex[size] = floor;
		// Surveyors note centimetres.
		x[size] = Math.round(place.x() * 100) / 100.0;
		y[size] = Math.round(place.y() * 100) / 100.0;
		timeMillis[size] = millis;
		size++;
	}

	int size() {
		return size;
	}

	int site(int stop) {
		return site[stop];
	}

	int floorIndex(int stop) {
		return floorIndex[stop];
	}

	double x(int stop) {
		return x[stop];
	}

	double y(int stop) {
		return y[stop];
	}

	long timeMillis(int stop) {
		return timeMillis[stop];
	}
}
