package org.cairnfield.model.edit;

import java.util.Collection;

import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.values.Count;

/** Sets access points aside for a reason, or takes them back into the map. */
public final class SetAccessPointStateCommand extends FieldCommand {

	private final boolean kept;

	private SetAccessPointStateCommand(Collection<AccessPoint> accessPoints, String reason) {
		super(accessPoints, ModelPackage.Literals.ACCESS_POINT__REASON, reason);
		this.kept = reason == null;
	}

	/**
	 * @param reason not blank
	 * @throws IllegalArgumentException where it is blank
	 */
	public static SetAccessPointStateCommand setAside(Collection<AccessPoint> accessPoints, String reason) {
		if (reason == null || reason.isBlank()) {
			throw new IllegalArgumentException("an access point is set aside for a reason");
		}
		return new SetAccessPointStateCommand(accessPoints, reason.strip());
	}

	/** Back into the map. */
	public static SetAccessPointStateCommand keep(Collection<AccessPoint> accessPoints) {
		return new SetAccessPointStateCommand(accessPoints, null);
	}

	@Override
	protected String label(int changing) {
		return (kept ? Messages.SetAccessPointStateCommand_keep : Messages.SetAccessPointStateCommand_setAside)
				+ Count.of(changing, Messages.SetAccessPointStateCommand_accessPoint);
	}
}
