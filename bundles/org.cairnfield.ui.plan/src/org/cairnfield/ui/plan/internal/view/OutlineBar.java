package org.cairnfield.ui.plan.internal.view;

import java.util.Optional;

import org.cairnfield.curation.edit.Editable;
import org.cairnfield.curation.edit.SampledOutline;
import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelPackage.Literals;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.values.Outline;
import org.cairnfield.ui.plan.internal.gef.OutlineEditor;
import org.cairnfield.ui.plan.internal.gef.PlanCanvas;
import org.cairnfield.ui.plan.internal.outline.OutlineShape;
import org.cairnfield.ui.show.IfChanged;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Above the plan while an outline is drawn: what to do, or why it cannot be kept; and an outline made from the samples. */
final class OutlineBar {

	private static final String TITLE = Messages.OutlineBar_outlineFromTheSamples;
	private static final double MOST_METRES = 100;

	private final PlanCanvas plan;
	private final OutlineEditor editor;
	private final Composite bar;
	private final Label hint;

	OutlineBar(Composite pane, PlanCanvas plan) {
		this.plan = plan;
		editor = plan.tools().outline();
		bar = new Composite(pane, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(4).extendedMargins(8, 8, 2, 2).applyTo(bar);
		GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(bar);
		bar.setVisible(false);
		bar.moveAbove(pane.getChildren()[1]);
		hint = new Label(bar, SWT.WRAP);
		hint.setData("org.cairnfield.id", "plan.outline.hint");
		GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER)
				.applyTo(hint);
		button(Messages.OutlineBar_fromTheSamples, "plan.outline.samples", Messages.OutlineBar_drawItAroundTheSamples,
				this::fromSamples);
		button(Messages.OutlineBar_keep, "plan.outline.keep", Messages.OutlineBar_makeItTheOutlineOf, editor::keep);
		button(Messages.OutlineBar_giveUp, "plan.outline.giveUp", Messages.OutlineBar_leaveTheOutlineAsIt,
				editor::giveUp);
		editor.watch(this::show);
	}

	private void button(String text, String id, String tip, Runnable action) {
		Button button = new Button(bar, SWT.PUSH);
		button.setText(text);
		button.setToolTipText(tip);
		button.setData("org.cairnfield.id", id);
		button.addListener(SWT.Selection, event -> {
			action.run();
			plan.canvas().setFocus();
		});
	}

	private void show() {
		if (editor.isOn()) {
			IfChanged.text(hint, editor.problem().isEmpty() ? hint(editor.shape()) : editor.problem());
		}
		if (bar.getVisible() != editor.isOn()) {
			((GridData) bar.getLayoutData()).exclude = !editor.isOn();
			bar.setVisible(editor.isOn());
			bar.requestLayout();
		}
	}

	private static String hint(OutlineShape shape) {
		if (shape.isClosed()) {
			return Messages.OutlineBar_dragACornerOrThe;
		}
		return shape.size() == 0 ? Messages.OutlineBar_clickWhereTheFirstCorner
				: shape.size() < OutlineShape.LEAST_CORNERS ? Messages.OutlineBar_clickTheNextCornerWith
						: Messages.OutlineBar_clickTheNextCornerWith2;
	}

	/** Asks for the margin; while an outline is drawn it replaces that one, else it is a change at once. */
	void fromSamples() {
		Floor floor = plan.scene().floor();
		if (floor == null) {
			return;
		}
		InputDialog dialog = new InputDialog(bar.getShell(), TITLE,
				NLS.bind(Messages.OutlineBar_theOutlineGoesRoundAll, ModelText.name(floor)), "1", OutlineBar::problem);
		if (dialog.open() != Window.OK) {
			return;
		}
		Optional<Outline> outline = SampledOutline.of(floor, Double.parseDouble(dialog.getValue().strip()));
		if (outline.isEmpty()) {
			MessageDialog.openInformation(bar.getShell(), TITLE, Messages.OutlineBar_theFloorHasNoSamples);
		} else if (editor.isOn()) {
			editor.take(OutlineShape.of(outline.get()));
		} else {
			plan.session()
					.run(Editable.of(floor, Literals.FLOOR__OUTLINE).orElseThrow().change(outline.get().toString()));
		}
	}

	private static String problem(String text) {
		try {
			double metres = Double.parseDouble(text.strip());
			return metres >= 0 && metres <= MOST_METRES ? null : Messages.OutlineBar_aMarginIs0To;
		} catch (NumberFormatException e) {
			return Messages.OutlineBar_aNumberOfMetresIs;
		}
	}
}
