package org.cairnfield.ui.show;

import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/**
 * Sets what a control shows, and lays the window out again only where that is something else: views are told of much that
 * changes nothing in them, and a layout measures all that lies beside and around the control.
 */
public final class IfChanged {

	private IfChanged() {
	}

	/** Text of a button, its mnemonic marked. */
	public static void text(Button button, String text) {
		if (!button.getText().equals(text)) {
			button.setText(text);
			button.requestLayout();
		}
	}

	/** Text of a label as it is, without a mnemonic. */
	public static void text(Label label, String text) {
		String escaped = text.replace("&", "&&");
		if (!label.getText().equals(escaped)) {
			label.setText(escaped);
			label.requestLayout();
		}
	}

	/** Likewise. */
	public static void text(CLabel label, String text) {
		String escaped = text.replace("&", "&&");
		if (!escaped.equals(label.getText())) {
			label.setText(escaped);
			label.requestLayout();
		}
	}

	/** Whether a control of a grid layout is there at all. */
	public static void shown(Control control, boolean shown) {
		GridData data = (GridData) control.getLayoutData();
		if (data.exclude == shown) {
			data.exclude = !shown;
			control.setVisible(shown);
			control.requestLayout();
		}
	}
}
