package org.cairnfield.ui.plan.internal.view;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;

import org.cairnfield.ui.plan.internal.errors.FloorErrors;
import org.cairnfield.ui.plan.internal.gef.PlanCanvas;
import org.cairnfield.ui.plan.internal.scene.SampleText;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The line below the plan: what pointer or keyboard are at, or how many samples there are. A screen reader reads the same as the value of the plan. */
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
	}

	void show() {
		String text = text();
		if (!text.equals(label.getText())) {
			label.setText(text);
			plan.canvas().getAccessible().sendEvent(ACC.EVENT_VALUE_CHANGED, null);
		}
	}

	private String text() {
		return plan.tools().words().orElseGet(() -> plan.read() < 0 ? plan.scene().summary() : ofSample(plan.read()));
	}

	private String ofSample(int sample) {
		return plan.scene().errors() == null ? SampleText.line(plan.scene().samples(), sample) : errorsOf(sample);
	}

	private String errorsOf(int sample) {
		return plan.scene().samples().table(sample).id(plan.scene().samples().row(sample)) + "   "
				+ errors.get().stream()
						.map(each -> each.words(sample)).collect(Collectors.joining(";   "));
	}
}
