package org.cairnfield.model.check;

import org.cairnfield.model.Device;
import org.eclipse.emf.common.util.DiagnosticChain;

/** Constraints of a device. */
public final class DeviceCheck {

	/** More than two receivers differ by; value from memory. */
	private static final double LARGEST_OFFSET_DB = 40;

	private static final double LEAST_SLOPE = 0.25;
	private static final double LARGEST_SHIFT_DB = 60;

	private DeviceCheck() {
	}

	/** @see Device#idIsUsable */
	public static boolean idIsUsable(Device device, DiagnosticChain diagnostics) {
		return Report.usableId(device.getId(), diagnostics, device, Report.named("Device", device.getName(), ""));
	}

	private static boolean isPlausible(Double slope, Double shift) {
		return slope == null ? shift == null
				: shift != null && slope >= LEAST_SLOPE && slope <= 1 / LEAST_SLOPE
						&& Math.abs(shift) <= LARGEST_SHIFT_DB;
	}

	/** @see Device#offsetIsPlausible */
	public static boolean offsetIsPlausible(Device device, DiagnosticChain diagnostics) {
		Double offset = device.getOffsetDb();
		return Report.require(offset == null || Math.abs(offset) <= LARGEST_OFFSET_DB, diagnostics, device,
				"The RSSI offset of " + Report.named("device", device.getName(), device.getId()) + ", " + offset
						+ " dB, is not within −40 … 40 dB: calibrate it anew, or unset it")
				& Report.require(isPlausible(device.getMapSlope(), device.getMapShiftDb()), diagnostics, device,
						"The correction of " + Report.named("device", device.getName(), device.getId()) + ", "
								+ device.getMapSlope() + " of each level and "
								+ device.getMapShiftDb()
								+ " dB, is not within 0.25 … 4 and −60 … 60 dB, or lacks one of the two: fit it anew, or unset both");
	}
}
