package org.cairnfield.ui.plan.internal.gef;

import java.util.BitSet;

import org.cairnfield.ui.plan.internal.geometry.Bounds;
import org.cairnfield.ui.plan.internal.geometry.Camera;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;

/** From where the plan is seen, and how that changes. */
public final class PlanLook {

	private static final int MARGIN = 24;
	/** At the right and at the bottom, for north and scale. */
	private static final int FURNITURE = 34;
	/** Some pixels apart, samples are told apart well enough to be worked on. */
	private static final double CLOSE_PIXELS_PER_METRE = 40;

	private final PlanCanvas plan;
	private Point size;
	private boolean fitted = true;

	PlanLook(PlanCanvas plan) {
		this.plan = plan;
		plan.canvas().addListener(SWT.Resize, event -> resized());
	}

	private void resized() {
		Rectangle area = plan.canvas().getClientArea();
		if (area.width == 0 || area.height == 0) {
			return;
		}
		if (size == null || fitted) {
			size = new Point(area.width, area.height);
			fit();
		} else { // twins are as large as each other, and each shifts itself
			plan.see(plan.camera().panned((area.width - size.x) / 2, (area.height - size.y) / 2));
			size = new Point(area.width, area.height);
		}
	}

	/** Sees it from elsewhere. */
	public void from(Camera other) {
		from(other, false);
	}

	private void from(Camera other, boolean isFit) {
		follow(other, isFit);
		if (plan.twin() != null) {
			plan.twin().look().follow(other, isFit);
		}
	}

	private void follow(Camera other, boolean isFit) {
		fitted = isFit;
		plan.see(other);
	}

	/** All of the floor. */
	public void fit() {
		Rectangle area = plan.canvas().getClientArea();
		int shorter = Math.min(area.width, area.height);
		int furniture = Math.min(FURNITURE, shorter / 10);
		from(Camera.fitting(plan.scene().bounds(), area.width - furniture, area.height - furniture,
				Math.min(MARGIN, shorter / 12)), true);
	}

	/** The selected samples of this floor, and those beside them, with some room round them. */
	public void fitSelection() {
		Bounds wanted = plan.scene().boundsOf(plan.scene().marked());
		if (!wanted.isEmpty()) {
			Rectangle area = plan.canvas().getClientArea();
			Camera close = Camera.fitting(wanted.grown(2), area.width, area.height, MARGIN);
			from(close.pixelsPerMetre() <= CLOSE_PIXELS_PER_METRE ? close
					: close.zoomed(CLOSE_PIXELS_PER_METRE / close.pixelsPerMetre(), area.width / 2.0,
							area.height / 2.0));
		}
	}

	/** Larger or smaller, in the middle. */
	public void zoom(double factor) {
		Rectangle area = plan.canvas().getClientArea();
		zoom(factor, area.width / 2.0, area.height / 2.0);
	}

	/** Larger or smaller, a pixel staying where it is. */
	public void zoom(double factor, double column, double row) {
		from(plan.camera().zoomed(factor, column, row));
	}

	/** Brings samples into the middle, unless one of them is seen. */
	void bringIntoSight(BitSet samples) {
		Rectangle area = plan.canvas().getClientArea();
		Bounds seen = plan.camera().visible(area.width, area.height);
		Bounds wanted = plan.scene().boundsOf(samples);
		if (wanted.isEmpty() || area.width == 0 || samples.stream()
				.anyMatch(i -> seen.contains(plan.scene().xMetres()[i], plan.scene().yMetres()[i]))) {
			return;
		}
		from(plan.camera().showing((wanted.left() + wanted.right()) / 2, (wanted.bottom() + wanted.top()) / 2,
				area.width / 2.0,
				area.height / 2.0));
	}

	/** Brings a place into the middle, unless it is seen. */
	void bringIntoSight(double xMetres, double yMetres) {
		Rectangle area = plan.canvas().getClientArea();
		if (!plan.camera().visible(area.width, area.height).contains(xMetres, yMetres)) {
			from(plan.camera().showing(xMetres, yMetres, area.width / 2.0, area.height / 2.0));
		}
	}
}
