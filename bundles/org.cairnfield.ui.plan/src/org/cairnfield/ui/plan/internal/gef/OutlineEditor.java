package org.cairnfield.ui.plan.internal.gef;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.IntToDoubleFunction;

import org.cairnfield.curation.edit.Editable;
import org.cairnfield.curation.edit.UnfitValueException;
import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelPackage.Literals;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.values.Outline;
import org.cairnfield.ui.notice.Notice;
import org.cairnfield.ui.notice.Notices;
import org.cairnfield.ui.plan.internal.geometry.Camera;
import org.cairnfield.ui.plan.internal.outline.OutlineDraft;
import org.cairnfield.ui.plan.internal.outline.OutlineShape;
import org.eclipse.gef.DragTracker;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Event;

/** Draws the outline of the floor on show, or changes it. What is kept is one change of the archive; until then it is a draft. */
public final class OutlineEditor implements PlanTool {

	/** How far from a handle the pointer may be, in points. */
	private static final int REACH = 8;
	/** Shorter sides have no handle in the middle, in points. */
	private static final int LEAST_SIDE = 44;

	private final PlanCanvas plan;
	private final OutlineFigure figure;
	private final OutlineKeys keys;
	private final List<Runnable> watchers = new ArrayList<>();
	private Floor floor;
	private Outline before;
	private OutlineDraft draft;
	private String problem = "";

	OutlineEditor(PlanCanvas plan) {
		this.plan = plan;
		figure = new OutlineFigure(plan);
		keys = new OutlineKeys(plan, this);
	}

	OutlineFigure figure() {
		return figure;
	}

	/** Hears when it begins or ends, and of each step. */
	public void watch(Runnable watcher) {
		watchers.add(watcher);
	}

	/** Whether an outline is drawn now. */
	public boolean isOn() {
		return draft != null;
	}

	/** Why it could not be kept; empty where it was not tried, or changed since. */
	public String problem() {
		return problem;
	}

	/** How far it is drawn; only while it is on. */
	public OutlineShape shape() {
		return draft.shape();
	}

	/** Begins with the outline that the floor on show has, or with none. Nothing where nothing can be changed. */
	public void begin() {
		if (!isOn() && plan.scene().floor() != null && !plan.isReadOnly()) {
			floor = plan.scene().floor();
			before = floor.getOutline();
			plan.tools().leave();
			draft = new OutlineDraft(OutlineShape.of(before));
			figure.pointAt(null);
			plan.hover(-1);
			turned();
			plan.canvas().setFocus();
		}
	}

	/** Makes it the floor's outline. @return false where it is none; then it goes on being drawn */
	public boolean keep() {
		if (!isOn()) {
			return true;
		}
		draft.release();
		try {
			plan.session().run(
					Editable.of(floor, Literals.FLOOR__OUTLINE).orElseThrow().change(shape().corners().toString()));
			giveUp();
			return true;
		} catch (UnfitValueException e) {
			problem = e.getMessage() + ".";
			tell();
			return false;
		}
	}

	/** Forgets what was drawn. */
	@Override
	public void giveUp() {
		if (isOn()) {
			draft = null;
			problem = "";
			turned();
		}
	}

	/** Where it is no outline the window says so. */
	@Override
	public void leave() {
		if (!keep()) {
			Notices.workbench()
					.say(new Notice("outline", Notice.Kind.WARNING,
							NLS.bind(Messages.OutlineEditor_theOutlineThatWasDrawn, ModelText.name(floor), problem),
							List.of(new Notice.Action(Messages.OutlineEditor_dismiss,
									() -> Notices.workbench().remove("outline")))));
			giveUp();
		}
	}

	@Override
	public String words() {
		return NLS.bind(Messages.OutlineEditor_outline, shape().words());
	}

	/** Where the floor has another outline now, that one is meant. */
	@Override
	public void check() {
		if (isOn() && !Objects.equals(before, floor.getOutline())) {
			giveUp();
		}
	}

	private void turned() {
		plan.scene().hideOutline(isOn());
		plan.drawAgain();
		tell();
	}

	private void tell() {
		figure.setVisible(isOn());
		figure.repaint();
		watchers.forEach(Runnable::run);
	}

	/** Shows a shape while something is dragged. */
	void show(OutlineShape passing) {
		draft.show(passing);
		tell();
	}

	/** Shows again what was there before a drag. */
	void release() {
		if (isOn()) {
			draft.release();
			tell();
		}
	}

	/** The next step. */
	public void take(OutlineShape next) {
		problem = "";
		draft.take(next);
		tell();
	}

	/** Back by a step. */
	public void undo() {
		problem = "";
		draft.undo();
		tell();
	}

	/** Forth again by a step. */
	public void redo() {
		problem = "";
		draft.redo();
		tell();
	}

	@Override
	public DragTracker gesture() {
		return new OutlineGesture(plan);
	}

	@Override
	public boolean down(Event event) {
		return keys.down(event);
	}

	@Override
	public boolean tab(int by) {
		return keys.tab(by);
	}

	/** A ring that is not closed follows it. */
	@Override
	public void pointAt(int column, int row, boolean isRight) {
		figure.pointAt(next(column, row, isRight));
	}

	/** Where the next corner of an open ring comes to lie, in metres. @param isRight whether at a right angle to the side before */
	double[] next(int column, int row, boolean isRight) {
		double x = plan.camera().xMetres(column);
		double y = plan.camera().yMetres(row);
		return isRight ? shape().atRightAngle(shape().size(), x, y) : new double[] { x, y };
	}

	/** The corner at a pixel; of several the nearest, -1 for none. */
	int cornerAt(int column, int row) {
		return nearest(shape().size(), column, row, i -> shape().corners().xMetres(i),
				i -> shape().corners().yMetres(i));
	}

	/** The side whose middle is at a pixel and has a handle; -1 for none. */
	int sideAt(int column, int row) {
		int side = nearest(shape().sides(), column, row, shape()::middleX, shape()::middleY);
		return side >= 0 && hasHandle(side) ? side : -1;
	}

	/** Whether the side is long enough for a handle in its middle. */
	boolean hasHandle(int side) {
		return shape().metres(side) * plan.camera().pixelsPerMetre() >= LEAST_SIDE;
	}

	private int nearest(int count, int column, int row, IntToDoubleFunction x, IntToDoubleFunction y) {
		Camera camera = plan.camera();
		int found = -1;
		double least = REACH;
		for (int i = 0; i < count; i++) {
			double away = Math.hypot(camera.column(x.applyAsDouble(i)) - column, camera.row(y.applyAsDouble(i)) - row);
			if (away <= least) {
				least = away;
				found = i;
			}
		}
		return found;
	}
}
