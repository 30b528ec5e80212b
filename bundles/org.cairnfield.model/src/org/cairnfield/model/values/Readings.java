package org.cairnfield.model.values;

import java.util.Arrays;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * The readings of one sample: ids of access points, ascending, each with a level in dBm. Immutable. Held as two arrays;
 * a reading is not an object.
 *
 * <p>Text form: {@code ap:rssi ap:rssi …}, for instance {@code 00005e005301:-61 00005e005302:-74}.
 *
 * <p>Levels from −128 to 127 dBm can be held: also a code for "not heard" that a device wrote as a level. Which levels are
 * plausible is for the cleaning rules to say.
 */
public final class Readings {

	/** The smallest level that can be held, in dBm. */
	public static final int LOWEST_RSSI_DBM = Byte.MIN_VALUE;
	/** The largest level that can be held, in dBm. */
	public static final int HIGHEST_RSSI_DBM = Byte.MAX_VALUE;
	/** Nothing heard. */
	public static final Readings NONE = new Readings(new String[0], new byte[0]);

	private final String[] accessPoints;
	private final byte[] rssiDbm;

	/** Takes the arrays as its own. */
	Readings(String[] accessPoints, byte[] rssiDbm) {
		this.accessPoints = accessPoints;
		this.rssiDbm = rssiDbm;
	}

	/**
	 * @param rssiDbm levels by id of the access point
	 * @throws IllegalArgumentException for an id that is none, or a level outside −128 … 127 dBm
	 */
	public static Readings of(Map<String, Integer> rssiDbm) {
		SortedMap<String, Integer> sorted = new TreeMap<>(rssiDbm);
		String[] accessPoints = new String[sorted.size()];
		byte[] levels = new byte[sorted.size()];
		int k = 0;
		for (Map.Entry<String, Integer> reading : sorted.entrySet()) {
			accessPoints[k] = SampleChecks.accessPoint(reading.getKey());
			levels[k++] = SampleChecks.rssiDbm(reading.getValue());
		}
		return new Readings(accessPoints, levels);
	}

	/**
	 * From the text form; the readings may be in any order.
	 *
	 * @throws IllegalArgumentException telling the reading that is not one, or the access point that comes twice
	 */
	public static Readings parse(String text) {
		SortedMap<String, Integer> levels = new TreeMap<>();
		for (String reading : text.isBlank() ? new String[0] : text.strip().split(" +")) {
			int colon = reading.lastIndexOf(':');
			int level;
			try {
				level = Integer.parseInt(reading.substring(colon + 1));
			} catch (NumberFormatException e) {
				throw new IllegalArgumentException("a reading is access point:level in whole dBm: '" + reading + "'",
						e);
			}
			if (colon < 1) {
				throw new IllegalArgumentException("a reading is access point:level in whole dBm: '" + reading + "'");
			}
			if (levels.put(reading.substring(0, colon), level) != null) {
				throw new IllegalArgumentException("two readings of one access point: '" + reading + "'");
			}
		}
		return of(levels);
	}

	/** How many access points were heard. */
	public int size() {
		return accessPoints.length;
	}

	/** Id of the access point of reading {@code k}, ascending in k. */
	public String accessPoint(int k) {
		return accessPoints[k];
	}

	/** Level of reading {@code k}, in dBm. */
	public int rssiDbm(int k) {
		return rssiDbm[k];
	}

	/** The level of an access point in dBm, or {@code otherwise} where it was not heard. */
	public int rssiDbm(String accessPoint, int otherwise) {
		int k = Arrays.binarySearch(accessPoints, accessPoint);
		return k < 0 ? otherwise : rssiDbm[k];
	}

	/** These without the access points for which {@code dropped} holds. */
	public Readings without(Predicate<String> dropped) {
		String[] left = new String[size()];
		byte[] levels = new byte[size()];
		int count = 0;
		for (int k = 0; k < size(); k++) {
			if (!dropped.test(accessPoints[k])) {
				left[count] = accessPoints[k];
				levels[count++] = rssiDbm[k];
			}
		}
		return count == size() ? this : new Readings(Arrays.copyOf(left, count), Arrays.copyOf(levels, count));
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof Readings r && Arrays.equals(accessPoints, r.accessPoints)
				&& Arrays.equals(rssiDbm, r.rssiDbm);
	}

	@Override
	public int hashCode() {
		return Arrays.hashCode(accessPoints) * 31 + Arrays.hashCode(rssiDbm);
	}

	/** The text form. */
	@Override
	public String toString() {
		StringBuilder text = new StringBuilder();
		for (int k = 0; k < size(); k++) {
			text.append(k == 0 ? "" : " ").append(accessPoints[k]).append(':').append(rssiDbm[k]);
		}
		return text.toString();
	}
}
