package org.cairnfield.core.map;

import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * A radio map: fingerprints at known places, immutable, held in columns. A sample has a site, a floor, a
 * position in metres in the floor's frame, and its readings, sorted by access point. A view on part of a
 * map shares the readings of the whole.
 *
 * <p>About 37 bytes a sample and 5 bytes a reading; nothing is an object of its own.
 */
public final class RadioMap implements Serializable {

	/** The smallest level taken for a reading, in dBm. */
	public static final int LOWEST_RSSI_DBM = -120;
	/** The largest level taken for a reading, in dBm. */
	public static final int HIGHEST_RSSI_DBM = 0;
	/** What {@link #timeMillis} answers where no time was recorded. */
	public static final long NO_TIME = Long.MIN_VALUE;
	/** What {@link #device} answers where no device was recorded. */
	public static final int NO_DEVICE = -1;

	private static final long serialVersionUID = 1;

	private final Columns columns;
	/** Rows of the columns in view, ascending or in the order asked for; null where all are in view. */
	private final int[] rows;

	RadioMap(Columns columns, int[] rows) {
		this.columns = columns;
		this.rows = rows;
	}

	/** The number of samples in view. */
	public int size() {
		return rows == null ? columns.size : rows.length;
	}

	/** The number of access points of the whole map, whether or not a sample in view heard them. */
	public int accessPointCount() {
		return columns.accessPoints.size();
	}

	/** Names (addresses) of the access points, by index. */
	public List<String> accessPoints() {
		return columns.accessPoints;
	}

	/** Names of the sites, by index. */
	public List<String> sites() {
		return columns.sites;
	}

	/** Names of the devices, by index. */
	public List<String> devices() {
		return columns.devices;
	}

	/** The row that sample {@code sample} of this view has in the whole map. */
	public int row(int sample) {
		return rows == null ? sample : rows[sample];
	}

	/** Metres, floor frame. */
	public double x(int sample) {
		return columns.x[row(sample)];
	}

	/** Metres, floor frame. */
	public double y(int sample) {
		return columns.y[row(sample)];
	}

	/** The level; 0 is the ground floor by custom, not by rule. */
	public int floor(int sample) {
		return columns.floor[row(sample)];
	}

	/** Index into {@link #sites}. */
	public int site(int sample) {
		return columns.site[row(sample)];
	}

	/** Index into {@link #devices}, or {@link #NO_DEVICE}. */
	public int device(int sample) {
		return columns.device == null ? NO_DEVICE : columns.device[row(sample)];
	}

	/** Milliseconds since 1970-01-01T00:00Z, or {@link #NO_TIME}. */
	public long timeMillis(int sample) {
		return columns.timeMillis == null ? NO_TIME : columns.timeMillis[row(sample)];
	}

	/** How many access points the sample heard. */
	public int heard(int sample) {
		int row = row(sample);
		return columns.start[row + 1] - columns.start[row];
	}

	/** The sample's first reading; its readings are {@code firstReading(s) … endReading(s) - 1}. */
	public int firstReading(int sample) {
		return columns.start[row(sample)];
	}

	/** One past the sample's last reading. */
	public int endReading(int sample) {
		return columns.start[row(sample) + 1];
	}

	/** Index of the access point of a reading; ascending within a sample. */
	public int accessPoint(int reading) {
		return columns.accessPoint[reading];
	}

	/** Level of a reading, in dBm. */
	public int rssiDbm(int reading) {
		return columns.rssi[reading];
	}

	/** The level at which a sample heard an access point, in dBm, or {@code otherwise} where it did not. */
	public int rssiDbm(int sample, int accessPoint, int otherwise) {
		int at = Arrays.binarySearch(columns.accessPoint, firstReading(sample), endReading(sample), accessPoint);
		return at < 0 ? otherwise : columns.rssi[at];
	}

	/** Readings of all samples in view. */
	public long readingCount() {
		if (rows == null) {
			return columns.start[columns.size];
		}
		long sum = 0;
		for (int s = 0; s < rows.length; s++) {
			sum += heard(s);
		}
		return sum;
	}

	/** The lowest level heard by a sample in view, in dBm, or {@link #LOWEST_RSSI_DBM} where none was. */
	public int lowestRssiDbm() {
		int lowest = Integer.MAX_VALUE;
		for (int s = 0, n = size(); s < n; s++) {
			for (int k = firstReading(s), end = endReading(s); k < end; k++) {
				lowest = Math.min(lowest, columns.rssi[k]);
			}
		}
		return lowest == Integer.MAX_VALUE ? LOWEST_RSSI_DBM : lowest;
	}

	/**
	 * The samples listed, in the order listed, without copying readings.
	 *
	 * @throws IndexOutOfBoundsException for a sample that is not in view
	 */
	public RadioMap view(int[] samples) {
		int[] chosen = new int[samples.length];
		int n = size();
		for (int i = 0; i < samples.length; i++) {
			if (samples[i] < 0 || samples[i] >= n) {
				throw new IndexOutOfBoundsException("sample " + samples[i] + " of " + n);
			}
			chosen[i] = row(samples[i]);
		}
		return new RadioMap(columns, chosen);
	}

	/** The samples for which {@code wanted} holds, in order, without copying readings. */
	public RadioMap where(IntPredicate wanted) {
		int[] chosen = new int[size()];
		int count = 0;
		for (int s = 0; s < chosen.length; s++) {
			if (wanted.test(s)) {
				chosen[count++] = row(s);
			}
		}
		return new RadioMap(columns, Arrays.copyOf(chosen, count));
	}

	/** The samples of one site. */
	public RadioMap atSite(int site) {
		return where(s -> site(s) == site);
	}

	/** The samples of one floor of one site. */
	public RadioMap onFloor(int site, int floor) {
		return where(s -> site(s) == site && floor(s) == floor);
	}

	/**
	 * The same samples with the readings of some access points only. Numbers and names of all access points stay as they are.
	 *
	 * @param wanted for the index of an access point
	 */
	public RadioMap hearing(IntPredicate wanted) {
		Columns some = columns.withoutReadings();
		int readings = 0;
		for (int row = 0; row < columns.size; row++) {
			for (int k = columns.start[row]; k < columns.start[row + 1]; k++) {
				if (wanted.test(columns.accessPoint[k])) {
					some.accessPoint[readings] = columns.accessPoint[k];
					some.rssi[readings++] = columns.rssi[k];
				}
			}
			some.start[row + 1] = readings;
		}
		some.accessPoint = Arrays.copyOf(some.accessPoint, readings);
		some.rssi = Arrays.copyOf(some.rssi, readings);
		return new RadioMap(some, rows);
	}

	/**
	 * The plane distance of two samples in metres, or positive infinity where they are on different floors
	 * or sites.
	 */
	public double metresApart(int a, int b) {
		if (site(a) != site(b) || floor(a) != floor(b)) {
			return Double.POSITIVE_INFINITY;
		}
		return Math.hypot(x(a) - x(b), y(a) - y(b));
	}

	/** What all views of one map share. */
	static final class Columns implements Serializable {
		private static final long serialVersionUID = 1;
		int size;
		int[] start;
		int[] accessPoint;
		byte[] rssi;
		double[] x;
		double[] y;
		short[] floor;
		short[] site;
		short[] device;
		long[] timeMillis;
		List<String> accessPoints;
		List<String> sites;
		List<String> devices;

		/** Shares all but the readings, for which there is as much room. */
		Columns withoutReadings() {
			Columns other = new Columns();
			other.size = size;
			other.start = new int[start.length];
			other.accessPoint = new int[accessPoint.length];
			other.rssi = new byte[rssi.length];
			other.x = x;
			other.y = y;
			other.floor = floor;
			other.site = site;
			other.device = device;
			other.timeMillis = timeMillis;
			other.accessPoints = accessPoints;
			other.sites = sites;
			other.devices = devices;
			return other;
		}
	}
}
