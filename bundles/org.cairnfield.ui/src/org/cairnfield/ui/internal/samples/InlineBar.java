package org.cairnfield.ui.internal.samples;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntConsumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** A line above the table that asks or says something where others would open a dialog. Hidden while it has nothing to say. */
final class InlineBar extends Composite {

	private final Runnable closed;
	private Control first;

	/** @param closed called when it goes away and the focus has to go elsewhere */
	InlineBar(Composite parent, Runnable closed) {
		super(parent, SWT.NONE);
		this.closed = closed;
		GridLayout layout = new GridLayout(4, false);
		layout.marginHeight = 2;
		layout.marginWidth = 0;
		setLayout(layout);
		setData("org.cairnfield.id", "samples.bar");
		setVisible(false);
		GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
		data.exclude = true;
		setLayoutData(data);
		// whoever presses Esc anywhere in it wants it gone
		closeOnEscape(this);
	}

	/**
	 * Asks for a text.
	 *
	 * @param verb      on the button, such as "Set aside"
	 * @param proposals to choose from
	 * @param problem   what is wrong with a text and what to write instead, or null
	 * @param then      hears the text, once it is sound and confirmed
	 */
	void ask(String question, String verb, List<String> proposals, Function<String, String> problem,
			Consumer<String> then) {
		clear();
		label(question, 1);
		Combo field = new Combo(this, SWT.DROP_DOWN);
		field.setItems(proposals.toArray(String[]::new));
		field.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
		field.setData("org.cairnfield.id", "samples.bar.field");
		Label wrong = new Label(this, SWT.WRAP);
		Runnable done = () -> {
			String what = problem.apply(field.getText().strip());
			if (what == null) {
				String text = field.getText().strip();
				close();
				then.accept(text);
			} else {
				wrong.setText("✖ " + what);
				wrong.setVisible(true);
				((GridData) wrong.getLayoutData()).exclude = false;
				wrong.requestLayout();
			}
		};
		button(verb, "samples.bar.do", done);
		button(Messages.InlineBar_cancel, "samples.bar.cancel", this::close);
		GridData below = new GridData(SWT.FILL, SWT.CENTER, true, false, 4, 1);
		below.exclude = true;
		wrong.setLayoutData(below);
		wrong.moveBelow(null);
		wrong.setVisible(false);
		wrong.setData("org.cairnfield.id", "samples.bar.problem");
		field.addListener(SWT.DefaultSelection, e -> done.run());
		closeOnEscape(field);
		open(field);
	}

	/**
	 * Asks for one of several things.
	 *
	 * @param chosen at first
	 * @param then   hears which one, once it is confirmed
	 */
	void choose(String question, String verb, List<String> choices, int chosen, IntConsumer then) {
		clear();
		label(question, 1);
		Combo field = new Combo(this, SWT.DROP_DOWN | SWT.READ_ONLY);
		field.setItems(choices.toArray(String[]::new));
		field.select(chosen);
		field.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
		field.setData("org.cairnfield.id", "samples.bar.field");
		Runnable done = () -> {
			int index = field.getSelectionIndex();
			close();
			then.accept(index);
		};
		button(verb, "samples.bar.do", done);
		button(Messages.InlineBar_cancel, "samples.bar.cancel", this::close);
		field.addListener(SWT.KeyDown, e -> {
			if (e.character == SWT.CR) {
				e.doit = false; // it would open the list
				done.run();
			}
		});
		closeOnEscape(field);
		open(field);
	}

	private void closeOnEscape(Control control) {
		control.addListener(SWT.Traverse, e -> {
			if (e.detail == SWT.TRAVERSE_ESCAPE) {
				e.doit = false;
				close();
			}
		});
	}

	/** Offers to do something that a person should think of first. */
	void confirm(String text, String verb, Runnable then) {
		clear();
		label(text, 2);
		Button go = button(verb, "samples.bar.do", () -> {
			close();
			then.run();
		});
		button(Messages.InlineBar_cancel, "samples.bar.cancel", this::close);
		open(go);
	}

	/** Says something until it is closed or something else is said; the focus stays where it is. */
	void say(String text) {
		clear();
		label(text, 3);
		button(Messages.InlineBar_close, "samples.bar.cancel", this::close);
		open(null);
	}

	void close() {
		if (isVisible() || !((GridData) getLayoutData()).exclude) {
			boolean focused = holdsFocus();
			((GridData) getLayoutData()).exclude = true;
			setVisible(false);
			requestLayout();
			if (focused) {
				closed.run();
			}
		}
	}

	private boolean holdsFocus() {
		for (Control at = getDisplay().getFocusControl(); at != null; at = at.getParent()) {
			if (at == this) {
				return true;
			}
		}
		return false;
	}

	private void clear() {
		for (Control child : getChildren()) {
			child.dispose();
		}
	}

	private void label(String text, int columns) {
		Label label = new Label(this, SWT.WRAP);
		label.setText(text.replace("&", "&&"));
		label.setLayoutData(
				new GridData(columns > 1 ? SWT.FILL : SWT.LEFT, SWT.CENTER, columns > 1, false, columns, 1));
		label.setData("org.cairnfield.id", "samples.bar.text");
	}

	private Button button(String text, String id, Runnable action) {
		Button button = new Button(this, SWT.PUSH);
		button.setText(text);
		button.setData("org.cairnfield.id", id);
		button.addListener(SWT.Selection, e -> action.run());
		closeOnEscape(button);
		return button;
	}

	private void open(Control focused) {
		((GridData) getLayoutData()).exclude = false;
		setVisible(true);
		requestLayout();
		first = focused;
		if (first != null) {
			first.setFocus();
		}
	}
}
