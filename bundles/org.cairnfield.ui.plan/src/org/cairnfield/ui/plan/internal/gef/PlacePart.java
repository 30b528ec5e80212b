package org.cairnfield.ui.plan.internal.gef;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;

import org.cairnfield.ui.plan.internal.model.MountedPlace;
import org.cairnfield.ui.plan.internal.model.ShownPlace;
import org.cairnfield.ui.plan.internal.scene.PlaceLabel;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.Request;
import org.eclipse.gef.editparts.AbstractGraphicalEditPart;

/** Where an access point seems to be, or is known to be; a click chooses it. */
final class PlacePart extends AbstractGraphicalEditPart {

	private final PlanCanvas plan;

	PlacePart(PlanCanvas plan) {
		this.plan = plan;
	}

	ShownPlace place() {
		return (ShownPlace) getModel();
	}

	@Override
	protected IFigure createFigure() {
		return new PlaceFigure(plan.scene()::ink, place() instanceof MountedPlace);
	}

	@Override
	protected void refreshVisuals() {
		String address = plan.choice().address(place().accessPoint());
		boolean chosen = Objects.equals(place().accessPoint(), plan.choice().chosenAccessPoint());
		String label = chosen ? address : PlaceLabel.of(address);
		((PlaceFigure) getFigure()).show((int) Math.round(plan.camera().column(place().xMetres())),
				(int) Math.round(plan.camera().row(place().yMetres())), label, chosen);
	}

	/** What the triangle or square covers. */
	Rectangle symbol() {
		return ((PlaceFigure) getFigure()).symbol();
	}

	/**
	 * Labels it on the first side with room; the chosen one in any case.
	 *
	 * @return what the label covers; empty where there was no room
	 */
	Optional<Rectangle> label(Predicate<Rectangle> isFree) {
		return ((PlaceFigure) getFigure()).label(isFree);
	}

	@Override
	protected void createEditPolicies() {
		// it is not dragged
	}

	@Override
	public DragTracker getDragTracker(Request request) {
		return plan.gestureOverPlace(request, place());
	}
}
