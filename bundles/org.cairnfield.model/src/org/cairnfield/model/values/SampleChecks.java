package org.cairnfield.model.values;

/** The ranges of a sample's values, in one place. Each returns what it was given, in its one form. */
final class SampleChecks {

	private SampleChecks() {
	}

	static String id(String id) {
		if (!Ids.isUsableForSample(id)) {
			throw new IllegalArgumentException("a sample's id has 1 to " + Ids.LONGEST
					+ " characters, none of them a control character, and no blank at either end: '" + id + "'");
		}
		return id;
	}

	static short floorLevel(int level) {
		if (level < Short.MIN_VALUE || level > Short.MAX_VALUE) {
			throw new IllegalArgumentException("floor level outside −32768 … 32767: " + level);
		}
		return (short) level;
	}

	static double position(double metres) {
		if (!Double.isFinite(metres)) {
			throw new IllegalArgumentException("position must be finite: " + metres);
		}
		return metres + 0.0; // there is one zero only
	}

	/** Blank is null: kept. A reason is one line. */
	static String reason(String reason) {
		if (reason == null || reason.isBlank()) {
			return null;
		}
		if (reason.chars().anyMatch(c -> c < ' ' || c == 0x7f)) {
			throw new IllegalArgumentException("a reason has no tabs and line breaks: '" + reason + "'");
		}
		return reason.strip();
	}

	static byte rssiDbm(int rssiDbm) {
		if (rssiDbm < Readings.LOWEST_RSSI_DBM || rssiDbm > Readings.HIGHEST_RSSI_DBM) {
			throw new IllegalArgumentException("RSSI outside " + Readings.LOWEST_RSSI_DBM + " … "
					+ Readings.HIGHEST_RSSI_DBM + " dBm: " + rssiDbm);
		}
		return (byte) rssiDbm;
	}

	static String accessPoint(String id) {
		if (!Ids.isUsable(id)) {
			throw new IllegalArgumentException("no id of an access point: '" + id + "'");
		}
		return id;
	}
}
