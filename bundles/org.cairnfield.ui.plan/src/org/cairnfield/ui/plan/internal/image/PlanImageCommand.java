package org.cairnfield.ui.plan.internal.image;

import java.util.List;

import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.edit.FieldCommand;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.values.Placement;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.osgi.util.NLS;

/** Gives a floor a plan image and its place. */
final class PlanImageCommand extends FieldCommand {

	private final String label;

	private PlanImageCommand(Floor floor, EAttribute attribute, Object value, String label) {
		super(List.of(floor), attribute, value);
		this.label = label;
	}

	@Override
	protected String label(int changing) {
		return label;
	}

	/** @param image in the archive's folder, such as "plans/sh-0.png" */
	static Command of(Floor floor, String image, Placement placement) {
		String label = NLS.bind(Messages.PlanImageCommand_placeAPlanImageOn, ModelText.name(floor));
		CompoundCommand both = new CompoundCommand(label);
		if (!image.equals(floor.getPlanImage())) {
			both.append(new PlanImageCommand(floor, ModelPackage.Literals.FLOOR__PLAN_IMAGE, image, label));
		}
		if (!placement.equals(floor.getPlanPlacement())) {
			both.append(new PlanImageCommand(floor, ModelPackage.Literals.FLOOR__PLAN_PLACEMENT, placement, label));
		}
		return both;
	}
}
