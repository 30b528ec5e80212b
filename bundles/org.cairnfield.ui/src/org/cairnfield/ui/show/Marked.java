package org.cairnfield.ui.show;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** Makes controls that tests and screen readers find. */
public final class Marked {

	static final String ID = "org.cairnfield.id";

	private Marked() {
	}

	/** Gives a control its id, and returns it. */
	public static <T extends Control> T id(T control, String id) {
		control.setData(ID, id);
		return control;
	}

	/** Gives a control a name for screen readers, where no label says it, and returns it. */
	public static <T extends Control> T named(T control, String name) {
		control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = name;
			}
		});
		return control;
	}

	/** A label without its mnemonic and what ends it. */
	public static String words(String label) {
		return label.replace("&", "").replaceFirst("(:| …)$", "");
	}

	/** A button that does something. */
	public static Button button(Composite parent, String text, String id, Runnable action) {
		Button button = id(new Button(parent, SWT.PUSH), id);
		button.setText(text);
		button.addListener(SWT.Selection, event -> action.run());
		return button;
	}

	/** A label and a choice behind it. */
	public static Combo choice(Composite parent, String label, String id, Runnable changed) {
		new Label(parent, SWT.NONE).setText(label);
		Combo combo = id(new Combo(parent, SWT.READ_ONLY), id);
		combo.addListener(SWT.Selection, event -> changed.run());
		return combo;
	}

	/** A line of text that wraps and takes all the width; set it by {@link #say}. */
	public static Label line(Composite parent, String id, int columns) {
		Label line = id(new Label(parent, SWT.WRAP), id);
		GridDataFactory.fillDefaults().grab(true, false).span(columns, 1).hint(100, SWT.DEFAULT).exclude(true)
				.applyTo(line);
		line.setVisible(false);
		return line;
	}

	/** Text of a label; an empty one takes no room. */
	public static void say(Label line, String text) {
		IfChanged.text(line, text);
		IfChanged.shown(line, !text.isEmpty());
	}

	/**
	 * Gives the focus to the control that a view begins with, unless something in the view has it: the view may have become active
	 * by a click into it, or by the tab key, which would lead past what does not keep the focus.
	 */
	public static void focus(Control first) {
		Control view = first;
		for (Control at = first; at.getParent() != null; at = at.getParent()) {
			if (at.getParent() instanceof CTabFolder) {
				view = at;
			}
		}
		if (!holdsFocus(view)) {
			first.setFocus();
		}
	}

	/** Whether a control, or one inside it, has the focus; then nobody may take it away. */
	public static boolean holdsFocus(Control control) {
		for (Control at = control.getDisplay().getFocusControl(); at != null; at = at.getParent()) {
			if (at == control) {
				return true;
			}
		}
		return false;
	}
}
