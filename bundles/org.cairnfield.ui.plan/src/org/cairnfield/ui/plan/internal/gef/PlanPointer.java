package org.cairnfield.ui.plan.internal.gef;

import org.cairnfield.ui.charts.scale.ShownNumbers;
import org.cairnfield.ui.plan.internal.model.EstimatedPlace;
import org.cairnfield.ui.plan.internal.model.ShownPlace;
import org.cairnfield.ui.plan.internal.scene.PlanScene;
import org.cairnfield.ui.plan.internal.scene.SampleText;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Event;

/** The wheel, and what the pointer is over. */
final class PlanPointer {

	private static final double STEP = 1.2;

	private final PlanCanvas plan;
	private final Canvas canvas;

	PlanPointer(PlanCanvas plan, Canvas canvas) {
		this.plan = plan;
		this.canvas = canvas;
		canvas.addListener(SWT.MouseWheel, this::wheel);
		canvas.addListener(SWT.MouseMove, this::move);
		canvas.addListener(SWT.MouseDown, event -> tip(null));
		canvas.addListener(SWT.MouseExit, event -> plan.hover(-1));
	}

	private void wheel(Event event) {
		plan.look().zoom(event.count > 0 ? STEP : 1 / STEP, event.x, event.y);
		event.doit = false;
	}

	private void move(Event event) {
		if ((event.stateMask & SWT.BUTTON_MASK) != 0) {
			return;
		}
		if (plan.tools().active() != null) {
			plan.tools().active().pointAt(event.x, event.y, (event.stateMask & SWT.SHIFT) != 0);
			tip(null);
			return;
		}
		int sample = plan.sampleAt(event.x, event.y);
		plan.hover(sample);
		tip(sample >= 0 ? sampleText(sample) : plan.placeAt(event.x, event.y).map(this::placeText).orElse(null));
	}

	private void tip(String text) {
		if (text == null ? canvas.getToolTipText() != null : !text.equals(canvas.getToolTipText())) {
			canvas.setToolTipText(text);
		}
	}

	private String sampleText(int sample) {
		PlanScene scene = plan.scene();
		return SampleText.lines(scene.samples(), sample, scene.archive(),
				plan.session().findings().of(scene.samples().ref(sample)));
	}

	private String placeText(ShownPlace place) {
		String address = plan.choice().address(place.accessPoint());
		if (!(place instanceof EstimatedPlace estimate)) {
			return NLS.bind(Messages.PlanPointer_mountedAtXY, new Object[] { address,
					ShownNumbers.text(place.xMetres(), 2, "m"), ShownNumbers.text(place.yMetres(), 2, "m") });
		}
		String known = plan.scene().mounted().stream().filter(each -> each.accessPoint().equals(place.accessPoint()))
				.findFirst()
				.map(each -> NLS.bind(Messages.PlanPointer_fromWhereItIsMounted, ShownNumbers
						.text(Math.hypot(each.xMetres() - place.xMetres(), each.yMetres() - place.yMetres()), 1, "m")))
				.orElse("");
		return NLS.bind(Messages.PlanPointer_aboutXYEstimatedFrom,
				new Object[] { address, ShownNumbers.text(place.xMetres(), 1, "m"),
						ShownNumbers.text(place.yMetres(), 1, "m"), estimate.readings(),
						ShownNumbers.text(estimate.strongestDbm(), 0, "dBm"), known });
	}
}
