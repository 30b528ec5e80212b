package org.cairnfield.ui.plan.internal.gef;

import java.util.List;

import org.cairnfield.model.edit.MoveSampleCommand;
import org.cairnfield.ui.charts.scale.ShownNumbers;
import org.cairnfield.ui.plan.internal.geometry.Camera;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.UnexecutableCommand;
import org.eclipse.gef.editpolicies.NonResizableEditPolicy;
import org.eclipse.gef.requests.ChangeBoundsRequest;
import org.eclipse.osgi.util.NLS;

/** Corrects the position of a sample, to a centimetre. */
final class MoveSamplePolicy extends NonResizableEditPolicy {

	private final PlanCanvas plan;

	MoveSamplePolicy(PlanCanvas plan) {
		this.plan = plan;
	}

	private double x(ChangeBoundsRequest request) {
		return cut(((SamplePart) getHost()).xMetres() + request.getMoveDelta().x / camera().pixelsPerMetre());
	}

	private double y(ChangeBoundsRequest request) {
		return cut(((SamplePart) getHost()).yMetres() - request.getMoveDelta().y / camera().pixelsPerMetre());
	}

	private static double cut(double metres) {
		return Math.rint(metres * 100) / 100;
	}

	private Camera camera() {
		return plan.camera();
	}

	@Override
	protected Command getMoveCommand(ChangeBoundsRequest request) {
		if (plan.isReadOnly()) {
			return UnexecutableCommand.INSTANCE;
		}
		return new ModelCommand(new MoveSampleCommand(((SamplePart) getHost()).ref(), x(request), y(request)));
	}

	@Override
	protected List<?> createSelectionHandles() {
		return List.of(); // the floor shows what is selected
	}

	@Override
	protected IFigure createDragSourceFeedbackFigure() {
		IFigure figure = new MoveFeedback(plan.scene().ink());
		addFeedback(figure);
		return figure;
	}

	@Override
	protected void showChangeBoundsFeedback(ChangeBoundsRequest request) {
		MoveFeedback feedback = (MoveFeedback) getDragSourceFeedbackFigure();
		Rectangle from = getInitialFeedbackBounds();
		Point start = from.getCenter();
		Point end = start.getTranslated(request.getMoveDelta());
		boolean several = plan.scene().selected().cardinality() > 1;
		double metres = request.getMoveDelta().getDistance(new Point()) / camera().pixelsPerMetre();
		feedback.show(start, end, several ? ShownNumbers.text(metres, 2, "m")
				: NLS.bind(Messages.MoveSamplePolicy_xYMoved, new Object[] { ShownNumbers.text(x(request), 2, "m"),
						ShownNumbers.text(y(request), 2, "m"), ShownNumbers.text(metres, 2, "m") }));
	}
}
