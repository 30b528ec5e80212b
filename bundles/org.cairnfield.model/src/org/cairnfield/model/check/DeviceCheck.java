package org.cairnfield.model.check;

import org.cairnfield.model.Device;
import org.eclipse.emf.common.util.DiagnosticChain;

/** Constraints of a device. */
public final class DeviceCheck {

	/** More than two receivers differ by; value from memory. */
	private static final double LARGEST_OFFSET_DB = 40;

	private DeviceCheck() {
	}

	/** @see Device#idIsUsable */
	public static boolean idIsUsable(Device device, DiagnosticChain diagnostics) {
		return Report.usableId(device.getId(), diagnostics, device, Report.named("Device", device.getName(), ""));
	}

	/** @see Device#offsetIsPlausible */
	public static boolean offsetIsPlausible(Device device, DiagnosticChain diagnostics) {
		Double offset = device.getOffsetDb();
		return Report.require(offset == null || Math.abs(offset) <= LARGEST_OFFSET_DB, diagnostics, device,
				"The RSSI offset of " + Report.named("device", device.getName(), device.getId()) + ", " + offset
						+ " dB, is not within −40 … 40 dB: calibrate it anew, or unset it");
	}
}
