package org.cairnfield.ui.plan.internal.gef;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.ui.plan.internal.geometry.Bounds;
import org.cairnfield.ui.plan.internal.geometry.Camera;
import org.cairnfield.ui.plan.internal.raster.FloorRaster;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.Request;
import org.eclipse.gef.editparts.AbstractGraphicalEditPart;
import org.eclipse.gef.requests.SelectionRequest;

/** The floor: all samples in one figure, and parts for what can be dragged or named. */
final class PlanPart extends AbstractGraphicalEditPart {

	/** More than these are dragged by nobody. */
	static final int MOST_SAMPLE_PARTS = 50;

	private final PlanCanvas plan;

	PlanPart(PlanCanvas plan) {
		this.plan = plan;
		setModel(plan);
	}

	@Override
	protected IFigure createFigure() {
		IFigure figure = new Figure() {
			@Override
			protected void paintFigure(Graphics graphics) {
				plan.tiles().paint(graphics);
			}
		};
		figure.setOpaque(true);
		return figure;
	}

	@Override
	protected List<?> getModelChildren() {
		List<Object> children = new ArrayList<>();
		if (plan.showsPlaces()) {
			children.addAll(plan.scene().mounted());
			children.addAll(plan.scene().places());
		}
		if (plan.scene().selected().cardinality() <= MOST_SAMPLE_PARTS) {
			plan.scene().selected().stream()
					.forEach(index -> children.add(new SamplePart.Item(plan.scene().samples().ref(index))));
		}
		return children;
	}

	@Override
	protected void createEditPolicies() {
		// gestures on the floor select and look; they change nothing
	}

	@Override
	public DragTracker getDragTracker(Request request) {
		int button = request instanceof SelectionRequest selection ? selection.getLastButtonPressed() : 1;
		return plan.gesture(button);
	}

	/** The parts go where the camera sees them, with labels where these cover neither a sample nor each other. */
	void place() {
		List<Rectangle> taken = new ArrayList<>();
		for (Object child : getChildren()) {
			((AbstractGraphicalEditPart) child).refresh();
			if (child instanceof PlacePart place) {
				taken.add(place.symbol());
			}
		}
		for (Object child : getChildren()) {
			if (child instanceof PlacePart place) {
				place.label(area -> taken.stream().noneMatch(area::intersects) && !coversSample(area))
						.ifPresent(taken::add);
			}
		}
	}

	private boolean coversSample(Rectangle area) {
		Camera camera = plan.camera();
		int radius = (int) FloorRaster.radiusPoints(camera.pixelsPerMetre());
		Rectangle near = area.getExpanded(radius, radius);
		boolean[] some = { false };
		plan.scene().grid()
				.within(Bounds.between(camera.xMetres(near.x), camera.yMetres(near.y), camera.xMetres(near.right()),
						camera.yMetres(near.bottom())), i -> some[0] = true);
		return some[0];
	}
}
