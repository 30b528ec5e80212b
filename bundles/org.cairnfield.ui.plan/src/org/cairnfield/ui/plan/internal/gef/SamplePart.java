package org.cairnfield.ui.plan.internal.gef;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.SampleTable;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;
import org.eclipse.gef.editparts.AbstractGraphicalEditPart;
import org.eclipse.gef.tools.DragEditPartsTracker;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

/** A selected sample, to be dragged. It draws nothing: the floor draws all samples. */
final class SamplePart extends AbstractGraphicalEditPart {

	/** Half the side of the square that takes the pointer. */
	static final int REACH = 8;

	/** What the part stands for. */
	record Item(SampleRef ref) {
	}

	private final PlanCanvas plan;

	SamplePart(PlanCanvas plan) {
		this.plan = plan;
	}

	SampleRef ref() {
		return ((Item) getModel()).ref();
	}

	double xMetres() {
		return table().xMetres(ref().row());
	}

	double yMetres() {
		return table().yMetres(ref().row());
	}

	private SampleTable table() {
		return ref().survey().table();
	}

	@Override
	protected IFigure createFigure() {
		return new Figure();
	}

	@Override
	protected void refreshVisuals() {
		if (ref().row() < table().size()) {
			int column = (int) Math.round(plan.camera().column(xMetres()));
			int row = (int) Math.round(plan.camera().row(yMetres()));
			getFigure().setBounds(new Rectangle(column - REACH, row - REACH, 2 * REACH + 1, 2 * REACH + 1));
		}
	}

	@Override
	protected void createEditPolicies() {
		installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE, new MoveSamplePolicy(plan));
	}

	@Override
	public DragTracker getDragTracker(Request request) {
		DragTracker other = plan.gestureOverSample(request);
		return other != null ? other : new Tracker();
	}

	/** Drags all selected samples; a click selects as on the floor. */
	private final class Tracker extends DragEditPartsTracker {

		Tracker() {
			super(SamplePart.this);
		}

		@Override
		protected List<?> createOperationSet() {
			List<Object> parts = new ArrayList<>();
			for (Object each : getParent().getChildren()) {
				if (each instanceof SamplePart) {
					parts.add(each);
				}
			}
			return parts;
		}

		@Override
		protected boolean isMove() {
			return true; // to wherever on the floor
		}

		@Override
		protected boolean isCloneActive() {
			return false;
		}

		@Override
		protected boolean handleKeyDown(KeyEvent event) {
			if (event.keyCode == SWT.ESC && stateTransition(STATE_DRAG_IN_PROGRESS, STATE_INVALID)) {
				eraseSourceFeedback();
				setCurrentCommand(null);
				return true;
			}
			return super.handleKeyDown(event);
		}

		@Override
		protected void performConditionalSelection() {
			// at the end of a click, not before a drag
		}

		@Override
		protected boolean handleHover() {
			return false; // nothing scrolls by itself
		}

		@Override
		protected void performSelection() {
			// the session knows what is selected
		}

		@Override
		protected boolean handleButtonUp(int button) {
			if (isInState(STATE_DRAG) && movedPastThreshold()) {
				handleDragStarted(); // released before any move has arrived
			}
			boolean click = isInState(STATE_DRAG);
			handleDragInProgress(); // drops at the place of the release, not at that of the last move
			boolean handled = super.handleButtonUp(button);
			if (click && button == 1) {
				plan.click(getLocation().x, getLocation().y, getCurrentInput().isModKeyDown(SWT.MOD1),
						getCurrentInput().isShiftKeyDown());
			}
			return handled;
		}
	}
}
