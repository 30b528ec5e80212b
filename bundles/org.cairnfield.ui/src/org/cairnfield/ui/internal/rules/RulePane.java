package org.cairnfield.ui.internal.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

import org.cairnfield.curation.rules.Parameter;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.RuleWords;
import org.cairnfield.ui.internal.rules.model.RuleDrafts;
import org.cairnfield.ui.show.Marked;
import org.eclipse.jface.fieldassist.ControlDecoration;
import org.eclipse.jface.fieldassist.FieldDecorationRegistry;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** One rule: why it matters, whether it is asked, and the numbers that it goes by. */
final class RulePane {

	private static final int COLUMNS = 4;

	private final ScrolledComposite scrolled;
	private final boolean mayChange;
	private final Runnable changed;
	private final List<Runnable> marks = new ArrayList<>();
	private Composite page;

	/** @param changed hears of each change of the drafts */
	RulePane(Composite parent, boolean mayChange, Runnable changed) {
		this.mayChange = mayChange;
		this.changed = changed;
		scrolled = new ScrolledComposite(parent, SWT.V_SCROLL | SWT.BORDER);
		scrolled.setExpandHorizontal(true);
		scrolled.setExpandVertical(true);
		scrolled.setShowFocusedControl(true);
		scrolled.addListener(SWT.Resize, event -> fit());
	}

	void show(Rule rule, RuleDrafts drafts) {
		if (page != null) {
			page.dispose();
		}
		marks.clear();
		page = new Composite(scrolled, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(COLUMNS).spacing(9, 5).applyTo(page);
		wrapped(rule.title() + " (" + rule.id() + ")", COLUMNS)
				.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
		wrapped(rule.explanation(), COLUMNS);
		Button ask = Marked.id(new Button(page, SWT.CHECK), "rules.ask");
		ask.setText(Messages.RulePane_askThisRule);
		ask.setSelection(drafts.isAsked(rule));
		ask.setEnabled(mayChange);
		GridDataFactory.fillDefaults().span(COLUMNS, 1).applyTo(ask);
		rule.parameters().forEach(parameter -> number(rule, parameter, drafts));
		if (rule.parameters().isEmpty()) {
			wrapped(Messages.RulePane_itGoesByNoNumber, COLUMNS);
		}
		new Label(page, SWT.NONE).setText(Messages.RulePane_whyOtherwiseThanUsual);
		Text why = Marked.id(new Text(page, SWT.BORDER), "rules.why");
		why.setText(drafts.why(rule));
		why.setMessage(Messages.RulePane_keptWithTheArchiveA);
		why.setEditable(mayChange);
		GridDataFactory.fillDefaults().grab(true, false).span(COLUMNS - 1, 1).applyTo(why);
		mark(why,
				() -> drafts.problem(rule)
						.filter(problem -> !drafts.isAsked(rule) && drafts.settings().find(rule.id(), null).isEmpty())
						.orElse(null));
		ask.addListener(SWT.Selection, event -> {
			drafts.ask(rule, ask.getSelection());
			told();
		});
		why.addListener(SWT.Modify, event -> {
			drafts.why(rule, why.getText());
			told();
		});
		told();
		scrolled.setContent(page);
		fit();
	}

	private void number(Rule rule, Parameter parameter, RuleDrafts drafts) {
		wrapped(capital(parameter.title()), 1);
		Text field = Marked.named(Marked.id(new Text(page, SWT.BORDER | SWT.RIGHT), "rules." + parameter.id()),
				parameter.title());
		field.setText(drafts.number(rule, parameter));
		field.setToolTipText(parameter.reason().toString());
		field.setEditable(mayChange);
		GridDataFactory.fillDefaults().hint(70, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(field);
		Label unit = new Label(page, SWT.NONE);
		unit.setText((parameter.unit().isEmpty() ? "" : parameter.unit() + ", ") + RuleDrafts.range(parameter));
		Button reset = Marked.id(new Button(page, SWT.PUSH), "rules.reset." + parameter.id());
		reset.setText(Messages.RulePane_reset);
		Marked.named(reset, NLS.bind(Messages.RulePane_resetNumber, parameter.title()));
		reset.setToolTipText(
				NLS.bind(Messages.RulePane_backTo, RuleWords.measure(parameter.usual(), parameter.unit())));
		reset.addListener(SWT.Selection, event -> field.setText(RuleWords.number(parameter.usual())));
		mark(field, () -> drafts.problem(rule, parameter).orElse(null));
		marks.add(() -> reset
				.setEnabled(mayChange && !drafts.number(rule, parameter).equals(RuleWords.number(parameter.usual()))));
		field.addListener(SWT.Modify, event -> {
			drafts.number(rule, parameter, field.getText());
			told();
		});
	}

	private static String capital(String text) {
		return Character.toUpperCase(text.charAt(0)) + text.substring(1);
	}

	private Label wrapped(String text, int columns) {
		Label label = new Label(page, SWT.WRAP);
		label.setText(text);
		GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).span(columns, 1)
				.hint(180, SWT.DEFAULT).applyTo(label);
		return label;
	}

	/** Shows beside a field what is wrong with it. */
	private void mark(Control field, Supplier<String> problem) {
		ControlDecoration decoration = new ControlDecoration(field, SWT.TOP | SWT.LEFT);
		decoration.setImage(
				FieldDecorationRegistry.getDefault().getFieldDecoration(FieldDecorationRegistry.DEC_ERROR).getImage());
		marks.add(() -> {
			String wrong = problem.get();
			decoration.setDescriptionText(wrong);
			if (wrong == null) {
				decoration.hide();
			} else {
				decoration.show();
			}
		});
	}

	private void told() {
		marks.forEach(Runnable::run);
		changed.run();
	}

	private void fit() {
		if (page != null && !page.isDisposed()) {
			scrolled.setMinSize(page.computeSize(Math.max(1, scrolled.getClientArea().width), SWT.DEFAULT));
		}
	}
}
