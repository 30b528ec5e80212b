package org.cairnfield.core.health;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Nearest;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.stats.Median;

/** Judges one sample after the other; one probe a thread. */
final class SampleProbe {

	private final RadioMap map;
	private final Neighbours.Search search;
	private final PlaceIndex places;
	private final DeviceOffsets offsets;
	private final HealthColumns columns;
	private final int[] around = new int[SampleHealth.PLACE_NEIGHBOURS];
	private final double[] errors = new double[SampleHealth.SIGNAL_NEIGHBOURS];
	private final double[] overlaps = new double[SampleHealth.PLACE_NEIGHBOURS];
	private final double[] scatters = new double[SampleHealth.PLACE_NEIGHBOURS];
	private final double[] deficits = new double[SampleHealth.PLACE_NEIGHBOURS];

	SampleProbe(Neighbours neighbours, PlaceIndex places, DeviceOffsets offsets, HealthColumns columns) {
		this.map = neighbours.signals().map();
		this.search = neighbours.search();
		this.places = places;
		this.offsets = offsets;
		this.columns = columns;
	}

	void judge(int sample) {
		judgePlace(sample);
		judgeReadings(sample);
	}

	private void judgePlace(int sample) {
		Nearest nearest = search.ofSample(sample, SampleHealth.SIGNAL_NEIGHBOURS);
		int count = nearest.size();
		int otherFloor = 0;
		int otherSite = 0;
		for (int i = 0; i < count; i++) {
			int other = nearest.sample(i);
			boolean sameSite = map.site(other) == map.site(sample);
			errors[i] = sameSite ? Math.hypot(map.x(other) - map.x(sample), map.y(other) - map.y(sample))
					: Double.POSITIVE_INFINITY;
			otherSite += sameSite ? 0 : 1;
			otherFloor += sameSite && map.floor(other) == map.floor(sample) ? 0 : 1;
		}
		columns.nearestDistance[sample] = count == 0 ? Double.NaN : nearest.distance(0);
		columns.nearestErrorMetres[sample] = count == 0 ? Double.NaN : errors[0];
		columns.medianErrorMetres[sample] = Median.ofFirst(errors, count);
		columns.floorDisagreement[sample] = count == 0 ? Double.NaN : (double) otherFloor / count;
		columns.siteDisagreement[sample] = count == 0 ? Double.NaN : (double) otherSite / count;
	}

	private void judgeReadings(int sample) {
		int count = places.nearest(sample, around);
		int compared = 0;
		int scattered = 0;
		double offsetDb = offsets.offsetDb(map.device(sample));
		for (int i = 0; i < count; i++) {
			SharedReadings both = SharedReadings.of(map, around[i], sample);
			overlaps[i] = both.overlap();
			if (both.shared() > 0) {
				deficits[compared++] = both.meanDifferenceDb() + offsetDb - offsets.offsetDb(map.device(around[i]));
			}
			if (!Double.isNaN(both.scatterDb())) {
				scatters[scattered++] = both.scatterDb();
			}
		}
		columns.overlap[sample] = Median.ofFirst(overlaps, count);
		columns.levelDeficitDb[sample] = Median.ofFirst(deficits, compared);
		columns.levelScatterDb[sample] = Median.ofFirst(scatters, scattered);
		columns.aroundWithinMetres[sample] = count == 0 ? Double.NaN : map.metresApart(sample, around[count - 1]);
	}
}
