package org.cairnfield.ui.internal.intake;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** A line of a form: a name, a choice, and why it stands as it does. */
final class IntakeChoice {

	private final Combo combo;
	/** Shortens what is too long; the tool tip has it in full. */
	private final CLabel why;
	private boolean filling;
	private String told = "";

	/**
	 * @param free   whether something else than the proposals can be written
	 * @param chosen hears what the person chooses or writes
	 */
	IntakeChoice(Composite parent, String name, String id, boolean free, Consumer<String> chosen) {
		Label label = new Label(parent, SWT.NONE);
		label.setText(name);
		combo = new Combo(parent, free ? SWT.DROP_DOWN : SWT.DROP_DOWN | SWT.READ_ONLY);
		combo.setData("org.cairnfield.id", id);
		GridData data = new GridData(SWT.FILL, SWT.CENTER, false, false);
		data.widthHint = 190;
		combo.setLayoutData(data);
		why = new CLabel(parent, SWT.LEFT);
		why.setMargins(4, 0, 0, 0);
		GridData rest = new GridData(SWT.FILL, SWT.CENTER, true, false);
		rest.widthHint = 120; // as wide as there is room, not as the text is long
		why.setLayoutData(rest);
		combo.addListener(SWT.Selection, e -> tell(chosen));
		if (free) {
			combo.addListener(SWT.DefaultSelection, e -> tell(chosen));
			combo.addListener(SWT.FocusOut, e -> tell(chosen));
		}
	}

	private void tell(Consumer<String> chosen) {
		if (!filling && !combo.isDisposed() && !combo.getText().equals(told)) {
			told = combo.getText();
			chosen.accept(told.strip());
		}
	}

	void fill(List<String> proposals, String value, String evidence) {
		filling = true;
		if (!List.of(combo.getItems()).equals(proposals)) {
			combo.setItems(proposals.toArray(String[]::new));
		}
		combo.setText(value);
		told = combo.getText();
		filling = false;
		why.setText(evidence.replace("&", "&&"));
		why.setToolTipText(evidence);
	}

	void enable(boolean enabled) {
		combo.setEnabled(enabled);
	}
}
