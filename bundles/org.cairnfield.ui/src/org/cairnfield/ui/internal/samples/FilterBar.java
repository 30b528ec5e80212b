package org.cairnfield.ui.internal.samples;

import java.util.List;
import java.util.function.Consumer;

import org.cairnfield.curation.filter.FilterException;
import org.cairnfield.curation.filter.SampleFilter;
import org.cairnfield.ui.show.IfChanged;
import org.cairnfield.ui.work.Soon;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** The field that says which samples are shown, what is wrong with it, and the words it knows. */
final class FilterBar extends Composite {

	/** So long after the last key it is applied. */
	private static final int PATIENCE_MILLIS = 150;

	private final Text text;
	private final Label problem;
	private final Label help;
	private final Consumer<SampleFilter> changed;
	private SampleFilter filter = SampleFilter.EVERYTHING;

	FilterBar(Composite parent, Consumer<SampleFilter> changed, Runnable leave) {
		super(parent, SWT.NONE);
		this.changed = changed;
		GridLayout layout = new GridLayout(3, false);
		layout.marginHeight = 0;
		layout.marginWidth = 0;
		setLayout(layout);
		Label label = new Label(this, SWT.NONE);
		label.setText(Messages.FilterBar_filter);
		text = new Text(this, SWT.SEARCH | SWT.ICON_CANCEL | SWT.ICON_SEARCH);
		text.setMessage("such as  heard < 5 and floor = 1, or a part of an id");
		text.setData("org.cairnfield.id", "samples.filter");
		text.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
		Button words = new Button(this, SWT.TOGGLE);
		words.setText(Messages.FilterBar_filterHelp);
		words.setToolTipText(Messages.FilterBar_whatCanBeWrittenHere);
		words.setData("org.cairnfield.id", "samples.filter.words");
		problem = line(SWT.WRAP);
		problem.setData("org.cairnfield.id", "samples.filter.problem");
		help = line(SWT.NONE);
		help.setFont(JFaceResources.getTextFont());
		help.setText(String.join("\n", SampleFilter.HELP));
		help.setData("org.cairnfield.id", "samples.filter.help");
		words.addListener(SWT.Selection, e -> IfChanged.shown(help, words.getSelection()));
		Soon apply = new Soon(PATIENCE_MILLIS, this::apply);
		text.addListener(SWT.Modify, e -> apply.postpone());
		text.addListener(SWT.DefaultSelection, e -> apply());
		text.addListener(SWT.KeyDown, e -> {
			if (e.keyCode == SWT.ARROW_DOWN) {
				e.doit = false;
				leave.run();
			} else if (e.keyCode == SWT.ESC && !text.getText().isEmpty()) {
				e.doit = false;
				text.setText("");
			}
		});
		text.getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent e) {
				e.result = Messages.FilterBar_filterOfTheSamples;
			}

			@Override
			public void getDescription(AccessibleEvent e) {
				e.result = problem.getText();
			}
		});
	}

	private Label line(int style) {
		Label line = new Label(this, style);
		GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false, 3, 1);
		data.exclude = true;
		line.setLayoutData(data);
		line.setVisible(false);
		return line;
	}

	private void apply() {
		if (isDisposed()) {
			return;
		}
		try {
			SampleFilter now = SampleFilter.parse(text.getText());
			say(List.of());
			if (!now.toString().equals(filter.toString())) {
				filter = now;
				changed.accept(now);
			}
		} catch (FilterException e) {
			say(List.of("✖ " + e.getMessage()));
		}
	}

	/** Says something about the filter beneath it; nothing where there is nothing to say. */
	void say(List<String> lines) {
		IfChanged.text(problem, String.join(" ", lines));
		IfChanged.shown(problem, !lines.isEmpty());
	}

	/** The last that was understood. */
	SampleFilter filter() {
		return filter;
	}

	/** Writes a filter into the field and applies it. */
	void set(String expression) {
		text.setText(expression);
		apply();
	}

	String expression() {
		return text.getText();
	}

	@Override
	public boolean setFocus() {
		text.selectAll();
		return text.setFocus();
	}
}
