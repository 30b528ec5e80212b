package org.cairnfield.core.distance;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cairnfield.core.map.RadioMap;

/**
 * A radio map made ready for distances: its samples as sparse rows in one representation, and for each
 * access point the list of samples that heard it. The distances of one sample to all others are then one
 * pass over the lists of what it heard.
 *
 * <p>Samples that share no access point, not even through others, are in different <em>components</em>
 * (buildings out of earshot of each other). Distances across components follow from the magnitudes alone,
 * so the work grows with the largest component, not with the map.
 *
 * <p>Memory: 10 bytes a reading, about 30 a sample.
 */
public final class Signals {

	private final RadioMap map;
	private final Representation representation;
	private final Distance distance;
	private final int lowestRssiDbm;
	private final double[] values;
	final SignalRows rows;
	/** Per access point: first posting. */
	final int[] postingStart;
	/** Place within its component of the sample that heard it. */
	final int[] postingMember;
	final byte[] postingStep;
	/** overlap[a][b] of two steps. */
	final double[][] overlap;
	final Components components;
	/** Magnitudes of the samples in the order of the components' members. */
	final double[] memberMagnitude;
	private final int[] componentOfColumn;
	/** Made when it is first asked for; empty where there can be none. */
	private volatile Optional<SignalIndex> index;

	private Signals(RadioMap map, Representation representation, Distance distance, int lowestRssiDbm) {
		this.map = map;
		this.representation = representation;
		this.distance = distance;
		this.lowestRssiDbm = lowestRssiDbm;
		values = representation.values(lowestRssiDbm);
		overlap = overlaps(values, distance);
		rows = rowsOf(map, null);
		components = Components.of(rows, map.accessPointCount());
		memberMagnitude = new double[rows.size()];
		int columns = map.accessPointCount();
		componentOfColumn = new int[columns];
		Arrays.fill(componentOfColumn, -1);
		postingStart = new int[columns + 1];
		for (int column : rows.column) {
			postingStart[column + 1]++;
		}
		for (int c = 0; c < columns; c++) {
			postingStart[c + 1] += postingStart[c];
		}
		int[] next = Arrays.copyOf(postingStart, columns);
		postingMember = new int[rows.column.length];
		postingStep = new byte[rows.column.length];
		for (int s = 0; s < rows.size(); s++) {
			int member = components.placeOf(s);
			int component = components.componentOf(s);
			memberMagnitude[components.firstMember(component) + member] = rows.magnitude[s];
			for (int k = rows.start[s]; k < rows.start[s + 1]; k++) {
				int at = next[rows.column[k]]++;
				postingMember[at] = member;
				componentOfColumn[rows.column[k]] = component;
				postingStep[at] = rows.step[k];
			}
		}
	}

	/** Every sample of {@code map}; min is the lowest level heard in it. */
	public static Signals of(RadioMap map, Representation representation, Distance distance) {
		return new Signals(map, representation, distance, map.lowestRssiDbm());
	}

	/**
	 * Part of a larger map, with the values and distances that its samples have in the whole.
	 *
	 * @param lowestRssiDbm the lowest level heard in the whole map
	 * @throws IllegalArgumentException where the part has a lower one
	 */
	public static Signals ofPart(RadioMap part, Representation representation, Distance distance, int lowestRssiDbm) {
		if (part.readingCount() > 0 && part.lowestRssiDbm() < lowestRssiDbm) {
			throw new IllegalArgumentException("a level of " + part.lowestRssiDbm()
					+ " dBm is below the lowest of the whole map, " + lowestRssiDbm);
		}
		return new Signals(part, representation, distance, lowestRssiDbm);
	}

	/** In the representation and distance that Cairnfield uses unless told otherwise. */
	public static Signals of(RadioMap map) {
		return of(map, Representation.positive(), Distance.CITY_BLOCK);
	}

	public RadioMap map() {
		return map;
	}

	public int size() {
		return rows.size();
	}

	public Representation representation() {
		return representation;
	}

	public Distance distance() {
		return distance;
	}

	/** min of the representation, in dBm. */
	public int lowestRssiDbm() {
		return lowestRssiDbm;
	}

	/** The samples of the map as rows. */
	public SignalRows rows() {
		return rows;
	}

	/** Which samples are within earshot of each other. */
	public Components components() {
		return components;
	}

	/** The distance of two samples of different components. */
	public double apart(int a, int b) {
		return distance.apart(rows.magnitude[a], rows.magnitude[b]);
	}

	/** The magnitude of the sample at a place of a component. */
	public double magnitudeAt(int component, int place) {
		return memberMagnitude[components.firstMember(component) + place];
	}

	/** Lists the samples that heard each access point by the step at which they did. */
	public StepLists stepLists() {
		return StepLists.of(this);
	}

	/** The component that hears an access point, or −1 where no sample does. */
	public int componentOfColumn(int column) {
		return componentOfColumn[column];
	}

	/** The value of a step; step 0 is "not heard". */
	public double value(int step) {
		return values[step];
	}

	/** Overlap of a step with each step, by step; all 0 for "not heard". Not to be written to. */
	public double[] overlaps(int step) {
		return overlap[step];
	}

	/** Steps are 0 … steps() − 1. */
	public int steps() {
		return values.length;
	}

	/**
	 * Samples of another map in this one's frame, matched by access point name. What this map never heard
	 * is left out, and so is a level below its lowest.
	 */
	public SignalRows align(RadioMap others) {
		List<String> names = others.accessPoints();
		if (names.equals(map.accessPoints())) {
			return rowsOf(others, null);
		}
		Map<String, Integer> index = new HashMap<>();
		for (String name : map.accessPoints()) {
			index.put(name, index.size());
		}
		int[] column = new int[names.size()];
		for (int c = 0; c < column.length; c++) {
			column[c] = index.getOrDefault(names.get(c), -1);
		}
		return rowsOf(others, column);
	}

	/** For finding what is near, or empty where distance or representation do not allow it; made once. */
	public Optional<SignalIndex> index() {
		if (index == null) {
			synchronized (this) {
				if (index == null) {
					index = Optional.ofNullable(SignalIndex.of(this));
				}
			}
		}
		return index;
	}

	/** Makes the thing that computes distances of a few samples at a time; one per thread, of the lists of this map. */
	public DistanceRows distanceRows(StepLists lists) {
		return WholeDistanceRows.fits(this) ? new WholeDistanceRows(this, lists) : new PlainDistanceRows(this, lists);
	}

	/** Makes the thing that computes distances; one per thread. */
	public DistanceKernel kernel() {
		return new DistanceKernel(this);
	}

	private SignalRows rowsOf(RadioMap source, int[] columnOf) {
		int n = source.size();
		int[] start = new int[n + 1];
		int capacity = Math.toIntExact(source.readingCount());
		int[] column = new int[capacity];
		byte[] step = new byte[capacity];
		double[] magnitude = new double[n];
		int entry = 0;
		for (int s = 0; s < n; s++) {
			for (int k = source.firstReading(s), end = source.endReading(s); k < end; k++) {
				int c = source.accessPoint(k);
				int p = source.rssiDbm(k) - (lowestRssiDbm - 1);
				if (columnOf != null) {
					c = columnOf[c];
				}
				if (c >= 0 && p > 0) {
					insert(column, step, start[s], entry++, c, (byte) p);
				}
			}
			start[s + 1] = entry;
			for (int k = start[s]; k < entry; k++) {
				magnitude[s] += distance.magnitude(values[step[k]]);
			}
		}
		return new SignalRows(start, Arrays.copyOf(column, entry), Arrays.copyOf(step, entry), magnitude);
	}

	/** Keeps a row ascending by column, so that equal fingerprints make equal rows, and equal sums. */
	private static void insert(int[] column, byte[] step, int from, int end, int c, byte p) {
		int at = end;
		while (at > from && column[at - 1] > c) {
			column[at] = column[at - 1];
			step[at] = step[at - 1];
			at--;
		}
		column[at] = c;
		step[at] = p;
	}

	private static double[][] overlaps(double[] values, Distance distance) {
		double[][] overlap = new double[values.length][values.length];
		for (int a = 0; a < values.length; a++) {
			for (int b = 0; b < values.length; b++) {
				overlap[a][b] = distance.overlap(values[a], values[b]);
			}
		}
		return overlap;
	}
}
