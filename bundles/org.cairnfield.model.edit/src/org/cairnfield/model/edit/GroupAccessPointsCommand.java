package org.cairnfield.model.edit;

import java.util.Collection;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.values.Count;

/** Notes that access points share one radio, or that they do not. */
public final class GroupAccessPointsCommand extends FieldCommand {

	private final String radio;

	/** @param radio what they shall have in common, any text; null: nothing */
	public GroupAccessPointsCommand(Collection<AccessPoint> accessPoints, String radio) {
		super(accessPoints, ModelPackage.Literals.ACCESS_POINT__GROUP, radio);
		this.radio = radio;
	}

	@Override
	protected String label(int changing) {
		return radio == null
				? Words.bind(Messages.GroupAccessPointsCommand_ungroup,
						Count.of(changing, Messages.GroupAccessPointsCommand_accessPoint))
				: Words.bind(Messages.GroupAccessPointsCommand_groupAsRadio,
						Count.of(changing, Messages.GroupAccessPointsCommand_accessPoint), radio);
	}
}
