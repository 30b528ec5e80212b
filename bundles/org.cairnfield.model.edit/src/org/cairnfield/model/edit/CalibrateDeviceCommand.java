package org.cairnfield.model.edit;

import java.util.List;
import java.util.Locale;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.Device;
import org.cairnfield.model.ModelPackage;

/** Gives a device an RSSI offset, or takes it away. Readings stay as they were recorded. */
public final class CalibrateDeviceCommand extends FieldCommand {

	private final Device device;
	private final Double offsetDb;

	/** @param offsetDb by how many dB it reads above the reference device, within ±40; null: not calibrated */
	public CalibrateDeviceCommand(Device device, Double offsetDb) {
		super(List.of(device), ModelPackage.Literals.DEVICE__OFFSET_DB, offsetDb);
		if (offsetDb != null && !(Math.abs(offsetDb) <= 40)) {
			throw new IllegalArgumentException("RSSI offset outside −40 … 40 dB: " + offsetDb);
		}
		this.device = device;
		this.offsetDb = offsetDb;
	}

	@Override
	protected String label(int changing) {
		return offsetDb == null
				? Words.bind(Messages.CalibrateDeviceCommand_takeTheCalibrationOff, ModelText.name(device))
				: String.format(Locale.ROOT, Messages.CalibrateDeviceCommand_calibrateByDb, ModelText.name(device),
						offsetDb);
	}
}
