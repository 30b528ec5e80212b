package org.cairnfield.model.check;

import org.cairnfield.core.text.Words;
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
		return Report.usableId(device.getId(), diagnostics, device,
				Report.named(Messages.DeviceCheck_device, device.getName(), ""));
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
				Words.bind(Messages.DeviceCheck_theRssiOffsetOfDb,
						Report.named("device", device.getName(), device.getId()), offset))
				& Report.require(isPlausible(device.getMapSlope(), device.getMapShiftDb()), diagnostics, device,
						Words.bind(Messages.DeviceCheck_theCorrectionOfOfEach,
								Report.named("device", device.getName(), device.getId()), device.getMapSlope(),
								device.getMapShiftDb()));
	}
}
