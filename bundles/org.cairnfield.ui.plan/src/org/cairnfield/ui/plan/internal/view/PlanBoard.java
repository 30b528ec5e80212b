package org.cairnfield.ui.plan.internal.view;

import org.cairnfield.ui.charts.Spoken;
import org.cairnfield.ui.charts.colour.Palette;
import org.cairnfield.ui.plan.SampleColouring;
import org.cairnfield.ui.plan.internal.gef.PlanCanvas;
import org.cairnfield.ui.plan.internal.raster.Ink;
import org.cairnfield.ui.plan.internal.errors.ErrorsShown;
import org.cairnfield.ui.plan.internal.scene.PlanScene;
import org.cairnfield.ui.plan.internal.scene.SampleText;
import org.cairnfield.ui.plan.internal.surface.FloorSurface;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** One plan: of the map, or under a caption of the errors of one way of matching. */
final class PlanBoard {

	private final Composite page;
	private final Label caption;
	private final PlanCanvas plan;
	private final FloorBackdrop backdrop;

	/** @param suffix of the ids by which tests find its parts */
	PlanBoard(Composite parent, Ink ink, SampleColouring colouring, String suffix) {
		page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(page);
		page.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
		caption = new Label(page, SWT.WRAP);
		caption.setData("org.cairnfield.id", "plan.caption" + suffix);
		GridData captionData = new GridData(SWT.FILL, SWT.TOP, true, false);
		captionData.horizontalIndent = 8;
		captionData.widthHint = 100;
		captionData.exclude = true;
		caption.setLayoutData(captionData);
		caption.setVisible(false);
		plan = new PlanCanvas(page, new PlanScene(ink, colouring), "plan.canvas" + suffix);
		plan.canvas().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
		Spoken.picture(plan.canvas(),
				() -> suffix.isEmpty() ? Messages.PlanBoard_floorPlan : Messages.PlanBoard_floorPlanOfTheOther,
				this::content, this::reading);
		backdrop = new FloorBackdrop(plan);
		page.addListener(SWT.Dispose, event -> backdrop.cancel());
	}

	PlanCanvas plan() {
		return plan;
	}

	void wear(Ink ink, Palette colours) {
		caption.setForeground(colours == null ? null : new Color(colours.foreground()));
		caption.setBackground(colours == null ? null : new Color(colours.background()));
		plan.wear(ink, colours == Palette.PAPER);
	}

	/** Whether it is there at all. */
	boolean isShown() {
		return page.getVisible();
	}

	void show(boolean shown) {
		((GridData) page.getLayoutData()).exclude = !shown;
		page.setVisible(shown);
		page.requestLayout();
	}

	/** All that it shows, in words. */
	private String content() {
		String empty = plan.emptyText();
		return empty != null ? empty
				: PlanPane.floorName(plan.scene().floor()) + ", " + plan.scene().summary()
						+ (caption.getText().isEmpty() ? "" : ". " + caption.getText());
	}

	/** The tool at work, or the sample at the pointer or the keyboard, in words. */
	private String reading() {
		return plan.tools().words().orElseGet(() -> plan.read() < 0 ? "" : ofSample(plan.read()));
	}

	private String ofSample(int sample) {
		PlanScene scene = plan.scene();
		return scene.errors() == null ? SampleText.line(scene.samples(), sample) : scene.errors().words(sample);
	}

	void showFloor(ArchiveSession session) {
		plan.showFloor(session);
		backdrop.read(session, true);
		writeCaption();
	}

	void readAgain(ArchiveSession session) {
		plan.readAgain();
		backdrop.read(session, false);
		writeCaption();
	}

	void showErrors(ErrorsShown errors) {
		plan.showErrors(errors);
		writeCaption();
	}

	/** Shows a surface below the samples, or none (null). */
	void showSurface(FloorSurface surface) {
		plan.scene().surface(surface);
		plan.drawAgain();
		writeCaption();
	}

	private void writeCaption() {
		String text = plan.scene().errors() != null ? plan.scene().errors().summary()
				: plan.scene().surface() == null ? "" : plan.scene().surface().words();
		if (!text.equals(caption.getText())) {
			caption.setText(text);
			((GridData) caption.getLayoutData()).exclude = text.isEmpty();
			caption.setVisible(!text.isEmpty());
			caption.requestLayout();
		}
	}
}
