package org.cairnfield.ui.plan.internal.view;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;

import org.cairnfield.ui.charts.scale.ShownNumbers;
import org.cairnfield.ui.plan.internal.errors.FloorErrors;
import org.cairnfield.ui.plan.internal.gef.PlanCanvas;
import org.cairnfield.ui.plan.internal.scene.SampleText;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The line below the plan: what pointer or keyboard are at, or how many samples there are. A screen reader reads it as the name of the plan. */
final class ReadingLine {

	private final Label label;
	private final PlanCanvas plan;
	private final Supplier<List<FloorErrors>> errors;

	/** @param errors on show */
	ReadingLine(Composite parent, PlanCanvas plan, Supplier<List<FloorErrors>> errors) {
		this.plan = plan;
		this.errors = errors;
		label = new Label(parent, SWT.NONE);
		label.setData("org.cairnfield.id", "plan.reading");
		GridData data = new GridData(SWT.FILL, SWT.BOTTOM, true, false);
		data.horizontalIndent = 8;
		data.verticalIndent = 2;
		label.setLayoutData(data);
		plan.watch(this::show);
		plan.tools().outline().watch(this::show);
		plan.tools().mount().watch(this::show);
		plan.canvas().getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = "Floor plan. " + (plan.scene().floor() == null ? "" : PlanPane.floorName(plan.scene().floor()) + ", "
						+ plan.scene().samples().size() + " samples. ") + label.getText();
			}
		});
	}

	void show() {
		String text = text();
		if (!text.equals(label.getText())) {
			label.setText(text);
			plan.canvas().getAccessible().sendEvent(ACC.EVENT_NAME_CHANGED, null);
		}
	}

	private String text() {
		int sample = plan.read();
		if (plan.tools().outline().isOn()) {
			return "Outline: " + plan.tools().outline().shape().words();
		} else if (plan.tools().mount().isOn()) {
			return plan.tools().mount().words();
		} else if (sample < 0) {
			return summary();
		}
		return plan.scene().errors() == null ? SampleText.line(plan.scene().samples(), sample) : errorsOf(sample);
	}

	private String errorsOf(int sample) {
		return plan.scene().samples().table(sample).id(plan.scene().samples().row(sample)) + "   " + errors.get().stream()
				.map(each -> each.words(sample)).collect(Collectors.joining(";   "));
	}

	private String summary() {
		int all = plan.scene().samples().size();
		int selected = plan.scene().selected().cardinality();
		boolean isErrorMap = plan.scene().errors() != null;
		return all == 0 ? "" : ShownNumbers.text(all, 0) + (isErrorMap ? " test samples" : " samples")
				+ (isErrorMap ? ": arrows lead from where each was taken to where it was put" : "")
				+ (selected == 0 ? "" : ", " + ShownNumbers.text(selected, 0) + " selected");
	}
}
