package org.cairnfield.curation.internal.rules.evidence;

import static org.cairnfield.curation.rules.Reason.judged;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.cairnfield.core.distance.Components;
import org.cairnfield.core.distance.DistanceKernel;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.stats.Median;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.rules.Threshold;

/**
 * For every sample the spots nearest in signal space (city-block distance of positive values), each at another place
 * than the sample's own and than one another's. Only spots within earshot count. Independent of the order of samples.
 */
public final class SignalNeighbours {

	/** How many are kept of each sample. */
	public static final int KEPT = 24;

	private static final Threshold SAME_PLACE_METRES = new Threshold(Messages.SignalNeighbours_takenForTheSamePlace,
			2.5,
			"m",
			judged(Messages.SignalNeighbours_aboutTheDistanceBetweenPlaces));
	private static final Threshold FEWEST_PLACES = new Threshold(Messages.SignalNeighbours_placesFromWhichDevicesAre,
			10,
			judged(Messages.SignalNeighbours_aMiddleOfFewerMoves));

	/** The numbers that it goes by. */
	public static final List<Threshold> THRESHOLDS = Threshold.all(List.of(SAME_PLACE_METRES, FEWEST_PLACES),
			DeviceDifferences.THRESHOLDS);

	private final int[] spot;
	private final float[] distance;

	private SignalNeighbours(SurveyedMap map, Spots spots, double[] offsetsDb, Workers workers) {
		IntToDoubleFunction ofDevice = d -> d == RadioMap.NO_DEVICE ? 0 : offsetsDb[d];
		Signals signals = Signals.of(levelled(spots.map(), spot -> ofDevice.applyAsDouble(spots.deviceOf(spot))));
		SignalRows queries = signals.align(levelled(map.map(), sample -> {
			int device = map.map().device(sample);
			return map.offsetDb(device) + ofDevice.applyAsDouble(device);
		}));
		spot = new int[map.size() * KEPT];
		distance = new float[map.size() * KEPT];
		Arrays.fill(spot, -1);
		Components components = signals.components();
		workers.forRanges(map.size(), () -> {
			DistanceKernel kernel = signals.kernel();
			double[] row = new double[components.largest()];
			return (from, to) -> {
				for (int s = from; s < to; s++) {
					int own = spots.spotOf(s);
					int component = components.componentOf(own);
					int n = kernel.row(queries, s, component, row);
					keep(s, spots, components, component, row, n);
				}
			};
		});
	}

	/** What devices read more than the one with most samples, known offsets aside, as far as shared places tell. */
	private static double[] offsets(RuleInput input) {
		double[] offsetsDb = new double[input.map().map().devices().size()];
		DeviceDifferences devices = new DeviceDifferences(input, SAME_PLACE_METRES.value());
		for (int d = 0; d < offsetsDb.length; d++) {
			if (d != devices.reference() && devices.samples(d) > 0) {
				double[] differences = devices.of(d);
				offsetsDb[d] = differences.length < FEWEST_PLACES.count() ? 0 : Median.of(differences);
			}
		}
		return offsetsDb;
	}

	/** Samples at their places with so many dB less, without devices. */
	private static RadioMap levelled(RadioMap all, IntToDoubleFunction offsetDb) {
		if (IntStream.range(0, all.size()).allMatch(s -> offsetDb.applyAsDouble(s) == 0)) {
			return all;
		}
		RadioMapBuilder builder = new RadioMapBuilder();
		all.accessPoints().forEach(builder::accessPoint);
		for (int s = 0; s < all.size(); s++) {
			builder.sample(all.sites().get(all.site(s)), all.floor(s), all.x(s), all.y(s));
			double offset = offsetDb.applyAsDouble(s);
			for (int k = all.firstReading(s); k < all.endReading(s); k++) {
				builder.reading(all.accessPoint(k), (int) Math.max(RadioMap.LOWEST_RSSI_DBM,
						Math.min(RadioMap.HIGHEST_RSSI_DBM, Math.round(all.rssiDbm(k) - offset))));
			}
		}
		return builder.build();
	}

	private void keep(int sample, Spots spots, Components components, int component, double[] row, int n) {
		int base = sample * KEPT;
		int ownPlace = spots.placeOf(spots.spotOf(sample));
		int count = 0;
		float reach = Float.POSITIVE_INFINITY;
		for (int member = 0; member < n; member++) {
			float d = (float) row[member];
			if (d > reach) {
				continue;
			}
			int other = components.member(component, member);
			int place = spots.placeOf(other);
			if (place == ownPlace) {
				continue;
			}
			int at = 0;
			while (at < count && spots.placeOf(spot[base + at]) != place) {
				at++;
			}
			if (at < count) {
				if (!before(d, other, base + at)) {
					continue;
				}
			} else if (count < KEPT) {
				at = count++;
			} else if (before(d, other, base + KEPT - 1)) {
				at = KEPT - 1;
			} else {
				continue;
			}
			while (at > 0 && before(d, other, base + at - 1)) {
				spot[base + at] = spot[base + at - 1];
				distance[base + at] = distance[base + at - 1];
				at--;
			}
			spot[base + at] = other;
			distance[base + at] = d;
			reach = count < KEPT ? Float.POSITIVE_INFINITY : distance[base + KEPT - 1];
		}
	}

	/** Of equally near spots the one with the smaller number, which goes by place. */
	private boolean before(float d, int other, int slot) {
		return d < distance[slot] || d == distance[slot] && other < spot[slot];
	}

	/** Made once a unit; the workers are used by whoever asks first. */
	public static SignalNeighbours of(RuleInput input, Workers workers) {
		Spots spots = Spots.of(input);
		return input.shared(SignalNeighbours.class,
				() -> new SignalNeighbours(input.map(), spots, offsets(input), workers));
	}

	/** The i-th nearest spot of a sample, or −1 where there are not so many. */
	public int spot(int sample, int i) {
		return spot[sample * KEPT + i];
	}

	/** Its distance: dB summed over access points. */
	public double distance(int sample, int i) {
		return distance[sample * KEPT + i];
	}
}
