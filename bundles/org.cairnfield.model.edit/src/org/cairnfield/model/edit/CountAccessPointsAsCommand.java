package org.cairnfield.model.edit;

import java.util.Collection;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.values.Count;

/** Lets the readings of access points count for another one in the map, or for themselves again. Readings stay as they were recorded. */
public final class CountAccessPointsAsCommand extends FieldCommand {

	private final AccessPoint other;

	/** @param other none of them; null: each counts for itself */
	public CountAccessPointsAsCommand(Collection<AccessPoint> accessPoints, AccessPoint other) {
		super(accessPoints, ModelPackage.Literals.ACCESS_POINT__COUNTS_AS, other == null ? null : other.getId());
		if (accessPoints.contains(other)) {
			throw new IllegalArgumentException(ModelText.name(other) + " counts for itself anyway");
		}
		this.other = other;
	}

	@Override
	protected String label(int changing) {
		return other == null
				? Words.bind(Messages.CountAccessPointsAsCommand_countOnTheirOwn,
						Count.of(changing, Messages.CountAccessPointsAsCommand_accessPoint))
				: Words.bind(Messages.CountAccessPointsAsCommand_countAs,
						Count.of(changing, Messages.CountAccessPointsAsCommand_accessPoint), ModelText.name(other));
	}
}
