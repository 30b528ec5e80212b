package org.cairnfield.ui.plan.internal.gef;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.cairnfield.curation.edit.Editable;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.ModelPackage.Literals;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.values.KnownPlace;
import org.cairnfield.ui.charts.scale.ShownNumbers;
import org.cairnfield.ui.plan.internal.geometry.Camera;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.gef.DragTracker;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;

/**
 * Sets where an access point is mounted: a click does it, or arrows, by 0.1 m or with Shift by 1 m, and Enter. Escape leaves it as it was.
 */
public final class MountEditor implements PlanTool {

	private static final double SMALL_STEP = 0.1;
	private static final double LARGE_STEP = 1;

	private final PlanCanvas plan;
	private final List<Runnable> watchers = new ArrayList<>();
	private final Figure figure = new Mark();
	private AccessPoint accessPoint;
	private double xMetres;
	private double yMetres;

	MountEditor(PlanCanvas plan) {
		this.plan = plan;
		figure.setVisible(false);
	}

	Figure figure() {
		return figure;
	}

	/** Hears when it begins or ends, and of each step. */
	public void watch(Runnable watcher) {
		watchers.add(watcher);
	}

	/** Whether a place is being set now. */
	public boolean isOn() {
		return accessPoint != null;
	}

	/** Begins for an access point, where it is known or seems to be, else in the middle. Nothing where nothing can be changed. */
	public void begin(AccessPoint of) {
		if (plan.scene().floor() == null || plan.isReadOnly()) {
			return;
		}
		plan.tools().leave();
		Rectangle area = plan.canvas().getClientArea();
		xMetres = plan.camera().xMetres(area.width / 2.0);
		yMetres = plan.camera().yMetres(area.height / 2.0);
		Stream.concat(plan.scene().mounted().stream(), plan.scene().places().stream())
				.filter(place -> place.accessPoint().equals(of.getId()))
				.findFirst().ifPresent(place -> {
					xMetres = place.xMetres();
					yMetres = place.yMetres();
				});
		accessPoint = of;
		plan.hover(-1);
		tell();
		plan.canvas().setFocus();
	}

	/** What to do, and where it would be, in a line. */
	@Override
	public String words() {
		return NLS.bind(Messages.MountEditor_clickWhereIsMountedOr, new Object[] { ModelText.address(accessPoint),
				ShownNumbers.text(xMetres, 2, "m"), ShownNumbers.text(yMetres, 2, "m") });
	}

	private void keep() {
		AccessPoint of = accessPoint;
		KnownPlace place = new KnownPlace(plan.scene().site().getId(), plan.scene().floor().getLevel(), cut(xMetres),
				cut(yMetres));
		giveUp();
		plan.session().run(Editable.of(of, Literals.ACCESS_POINT__PLACE).orElseThrow().change(place.toString()));
	}

	private static double cut(double metres) {
		return Math.rint(metres * 100) / 100;
	}

	@Override
	public void giveUp() {
		if (isOn()) {
			accessPoint = null;
			tell();
		}
	}

	/** A place that was not clicked is none. */
	@Override
	public void leave() {
		giveUp();
	}

	@Override
	public void check() {
		if (accessPoint.eContainer() == null) {
			giveUp();
		}
	}

	private void tell() {
		figure.setVisible(isOn());
		figure.repaint();
		watchers.forEach(Runnable::run);
	}

	@Override
	public void pointAt(int column, int row, boolean isRight) {
		xMetres = plan.camera().xMetres(column);
		yMetres = plan.camera().yMetres(row);
		tell();
	}

	@Override
	public boolean tab(int by) {
		return false;
	}

	@Override
	public boolean down(Event event) {
		if ((event.stateMask & SWT.MOD1) != 0) {
			return false;
		}
		double step = (event.stateMask & SWT.SHIFT) != 0 ? LARGE_STEP : SMALL_STEP;
		switch (event.keyCode) {
		case SWT.ARROW_LEFT -> move(-step, 0);
		case SWT.ARROW_RIGHT -> move(step, 0);
		case SWT.ARROW_UP -> move(0, step);
		case SWT.ARROW_DOWN -> move(0, -step);
		case SWT.CR, SWT.KEYPAD_CR -> keep();
		case SWT.ESC -> giveUp();
		default -> {
			return false;
		}
		}
		return true;
	}

	private void move(double right, double up) {
		xMetres += right;
		yMetres += up;
		plan.look().bringIntoSight(xMetres, yMetres);
		tell();
	}

	@Override
	public DragTracker gesture() {
		return new Gesture() {

			@Override
			void drag() {
				if (isOn()) {
					pointAt(getLocation().x, getLocation().y, false);
				}
			}

			@Override
			void dragged() {
				click();
			}

			@Override
			void click() {
				if (isOn()) {
					pointAt(getLocation().x, getLocation().y, false);
					keep();
				}
			}

			@Override
			void erase() {
				// what is shown follows the pointer in any case
			}
		};
	}

	/** The mark of a known place where it would be. */
	private final class Mark extends Figure {

		@Override
		public boolean containsPoint(int x, int y) {
			return false;
		}

		@Override
		protected void paintFigure(Graphics graphics) {
			Camera camera = plan.camera();
			graphics.setAntialias(SWT.ON);
			graphics.setForegroundColor(Colours.of(plan.scene().ink().accent()));
			graphics.setBackgroundColor(Colours.of(plan.scene().ink().background()));
			graphics.setLineWidth(2);
			PlaceFigure.paintKnown(graphics, (int) Math.round(camera.column(xMetres)),
					(int) Math.round(camera.row(yMetres)));
		}
	}
}
