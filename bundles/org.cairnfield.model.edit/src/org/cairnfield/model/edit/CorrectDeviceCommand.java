package org.cairnfield.model.edit;

import java.util.List;
import java.util.Locale;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.Device;
import org.cairnfield.model.ModelPackage;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.EAttribute;

/** Sets by which line levels of a device become those of the reference device in the map. Readings stay as they were recorded. */
public final class CorrectDeviceCommand extends CompoundCommand {

	/**
	 * @param slope   dB of the reference device for one of this one, 0.25 … 4; null: none is corrected
	 * @param shiftDb added after that, within ±60; null likewise
	 */
	public CorrectDeviceCommand(Device device, Double slope, Double shiftDb) {
		super(slope == null || shiftDb == null
				? Words.bind(Messages.CorrectDeviceCommand_takeTheLevelsOfAs, ModelText.name(device))
				: String.format(Locale.ROOT, Messages.CorrectDeviceCommand_correctTheLevelsOfOf, ModelText.name(device),
						slope, shiftDb));
		if ((slope == null) != (shiftDb == null)) {
			throw new IllegalArgumentException("slope and shift belong together");
		}
		if (slope != null && !(slope >= 0.25 && slope <= 4 && Math.abs(shiftDb) <= 60)) {
			throw new IllegalArgumentException(
					"slope outside 0.25 … 4, or shift outside −60 … 60 dB: " + slope + ", " + shiftDb);
		}
		appendIfCanExecute(new Part(device, ModelPackage.Literals.DEVICE__MAP_SLOPE, slope));
		appendIfCanExecute(new Part(device, ModelPackage.Literals.DEVICE__MAP_SHIFT_DB, shiftDb));
	}

	private static final class Part extends FieldCommand {

		Part(Device device, EAttribute attribute, Double value) {
			super(List.of(device), attribute, value);
		}

		@Override
		protected String label(int changing) {
			return Messages.CorrectDeviceCommand_correctLevels;
		}
	}
}
