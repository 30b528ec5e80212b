package org.cairnfield.ui.internal.findings;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;

import org.cairnfield.curation.check.RuleCheck;
import org.cairnfield.curation.check.Judgement;
import org.cairnfield.curation.check.RuleSettings;
import org.cairnfield.curation.remedy.RemedyCommands;
import org.cairnfield.curation.rules.Figure;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.curation.rules.Threshold;
import org.cairnfield.curation.rules.Waiver;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.cairnfield.curation.team.CommentSubject;
import org.cairnfield.model.edit.AddWaiversCommand;
import org.cairnfield.model.edit.WithdrawWaiversCommand;
import org.cairnfield.model.values.Count;
import org.cairnfield.ui.prefs.Preferences;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.show.CommentBox;
import org.cairnfield.ui.show.IfChanged;
import org.cairnfield.ui.show.Marked;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/** Explains the findings selected, and offers to remedy or to waive them. */
final class FindingDetails {

	private static final int NAMED = 8;
	private static final int COLUMNS = 4;

	private final Text text;
	private final Button place;
	private final Combo way;
	private final Button remedy;
	private final Text reason;
	private final Button waive;
	private final CommentBox comments;
	private final Consumer<Command> told;
	private ArchiveSession session;
	private List<Finding> findings = List.of();
	private List<RemedyChoice> choices = List.of();
	private List<org.cairnfield.model.Waiver> waivers = List.of();
	private final EffectReader effect = new EffectReader(this::refresh);

	/** @param told hears of what was done */
	FindingDetails(Composite parent, Consumer<Command> told) {
		this.told = told;
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(COLUMNS).applyTo(page);
		text = new Text(page, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL);
		Marked.named(Marked.id(text, "findings.explanation"), Messages.FindingDetails_aboutTheFinding);
		GridDataFactory.fillDefaults().grab(true, true).span(COLUMNS, 1).hint(200, 60).applyTo(text);
		way = new Combo(page, SWT.READ_ONLY);
		Marked.named(Marked.id(way, "findings.way"), Messages.FindingDetails_remedy);
		way.setToolTipText(Messages.FindingDetails_whichRemedy);
		way.addListener(SWT.Selection, event -> refresh());
		// never wider than the text
		GridDataFactory.fillDefaults().grab(true, false).hint(0, SWT.DEFAULT).span(COLUMNS, 1).exclude(true)
				.applyTo(way);
		way.setVisible(false);
		place = button(page, Messages.FindingDetails_showThePlace, "findings.place");
		place.addListener(SWT.Selection, event -> session.select(FindingEvidence.of(session, findings.get(0))));
		remedy = button(page, Messages.FindingDetails_applyTheRemedy, "findings.remedy");
		remedy.addListener(SWT.Selection, event -> applyRemedies());
		reason = new Text(page, SWT.BORDER | SWT.SINGLE);
		reason.setMessage(Messages.FindingDetails_whyItIsAllRight);
		reason.setData("org.cairnfield.id", "findings.reason");
		reason.addListener(SWT.Modify, event -> enable());
		reason.addListener(SWT.DefaultSelection, event -> waive());
		GridDataFactory.fillDefaults().grab(true, false).indent(12, 0).applyTo(reason);
		waive = button(page, Messages.FindingDetails_waive, "findings.waive");
		waive.addListener(SWT.Selection, event -> waive());
		comments = new CommentBox(page, COLUMNS, "findings");
		show(null, List.of(), List.of());
	}

	private static Button button(Composite parent, String text, String id) {
		Button button = new Button(parent, SWT.PUSH);
		button.setText(text);
		button.setData("org.cairnfield.id", id);
		GridDataFactory.fillDefaults().applyTo(button);
		return button;
	}

	/** @param covering waivers that cover the findings selected; none where these are open */
	void show(ArchiveSession of, List<Finding> selected, List<org.cairnfield.model.Waiver> covering) {
		session = of;
		findings = selected;
		waivers = covering;
		IfChanged.text(waive,
				waivers.isEmpty() ? Messages.FindingDetails_waive : Messages.FindingDetails_withdrawTheWaiver);
		long offered = offered();
		IfChanged.text(remedy, offered > 1 ? NLS.bind(Messages.FindingDetails_applyRemedies, offered)
				: Messages.FindingDetails_applyTheRemedy);
		choose();
		comments.show(session,
				findings.size() == 1
						? new CommentSubject.OfFinding(findings.get(0).rule(), findings.get(0).contentKey())
						: null,
				false);
		effect.read(session == null ? null : session.findings().last().orElse(null), choices);
		refresh();
	}

	/** Lists the ways to remedy what is selected, the same as before chosen where there is one. */
	private void choose() {
		choices = RemedyChoice.of(findings);
		String before = way.getText();
		List<String> titles = choices.size() < 2 ? List.of() : choices.stream().map(RemedyChoice::title).toList();
		if (!titles.equals(List.of(way.getItems()))) {
			way.setItems(titles.toArray(new String[0]));
			way.select(Math.max(0, titles.indexOf(before)));
			IfChanged.shown(way, !titles.isEmpty());
		}
	}

	private List<Remedy> chosen() {
		return choices.isEmpty() ? List.of() : choices.get(Math.max(0, way.getSelectionIndex())).remedies();
	}

	/** Breaks off what is being computed. */
	void dispose() {
		effect.stop();
	}

	private void refresh() {
		if (!text.isDisposed()) {
			int top = text.getTopIndex();
			text.setText(describe());
			text.setTopIndex(top);
			enable();
		}
	}

	private long offered() {
		return findings.stream().filter(finding -> finding.remedy().isPresent()).count();
	}

	private void enable() {
		boolean mayChange = session != null && session.readOnlyReason().isEmpty();
		place.setEnabled(!findings.isEmpty());
		remedy.setEnabled(mayChange && offered() > 0 && !effect.isReading()); // nobody applies what he could not read
		reason.setEnabled(mayChange && !findings.isEmpty() && waivers.isEmpty());
		waive.setEnabled(waivers.isEmpty() ? reason.getEnabled() && !reason.getText().isBlank() : mayChange);
	}

	private String describe() {
		if (session == null) {
			return "";
		}
		if (findings.isEmpty() && !waivers.isEmpty()) {
			return Messages.FindingDetails_theWaiverCoversNothingThat;
		}
		if (findings.isEmpty()) {
			return session.findings().open().isEmpty() && !session.findings().isChecking()
					? Messages.FindingDetails_noOpenFindings
					: Messages.FindingDetails_selectAFindingToSee;
		}
		return (findings.size() == 1 ? one(findings.get(0)) : several())
				+ effect.words().map(words -> NLS.bind(Messages.FindingDetails_effect, words)).orElse("")
				+ (findings.size() == 1 ? thresholds(findings.get(0)) + told(findings.get(0)) : "");
	}

	private String one(Finding finding) {
		Rule rule = CleaningRules.registry().rule(finding.rule());
		StringBuilder all = new StringBuilder(rule.title()).append(" (").append(word(finding.severity()))
				.append(Messages.FindingDetails_rule)
				.append(rule.id()).append(")\n").append(rule.explanation()).append("\n\n");
		all.append(finding.message()).append('\n');
		for (Figure figure : finding.evidence()) {
			all.append("  ").append(figure.name()).append(": ").append(number(figure.value())).append(' ')
					.append(figure.unit()).append('\n');
		}
		if (finding.precision().isPresent()) {
			all.append('\n').append(Judgement.words(finding)).append('\n');
		}
		all.append(Messages.FindingDetails_about).append(names(finding.subjects()));
		if (!finding.related().isEmpty()) {
			all.append(Messages.FindingDetails_compare).append(names(finding.related()));
		}
		chosen().forEach(offer -> all.append(Messages.FindingDetails_remedy2).append(offer.preview()));
		return all.toString();
	}

	/** The numbers behind the finding, with their reasons. */
	private static String thresholds(Finding finding) {
		StringBuilder all = new StringBuilder();
		for (Threshold each : CleaningRules.registry().rule(finding.rule()).thresholds()) {
			all.append(all.isEmpty() ? Messages.FindingDetails_thresholdsOfTheRule : "").append("\n  ")
					.append(each.words());
		}
		return all.toString();
	}

	/** What the archive tells the rule otherwise. */
	private String told(Finding finding) {
		List<String> words = RuleSettings.of(session.archive()).rules().told().stream()
				.filter(told -> told.rule().id().equals(finding.rule()))
				.map(told -> "\n  " + told.words()).toList();
		return words.isEmpty() ? "" : NLS.bind(Messages.FindingDetails_otherwiseThanUsual, String.join("", words));
	}

	/** What all of them say together: nothing of it is about one alone. */
	private String several() {
		StringBuilder all = new StringBuilder(
				NLS.bind(Messages.FindingDetails_findingsAreSelectedHaveA, findings.size(), offered()));
		Map<String, List<Finding>> byRule = new LinkedHashMap<>();
		findings.forEach(finding -> byRule.computeIfAbsent(finding.rule(), rule -> new ArrayList<>()).add(finding));
		byRule.forEach((id, some) -> {
			Rule rule = CleaningRules.registry().rule(id);
			all.append('\n').append(rule.title()).append(" (").append(word(some.get(0).severity()))
					.append(Messages.FindingDetails_rule).append(id).append("): ")
					.append(Count.of(some.size(), "finding")).append('\n').append(rule.explanation()).append('\n');
			some.stream().map(Judgement::words).filter(words -> !words.isEmpty()).distinct().limit(NAMED)
					.forEach(words -> all.append(words).append('\n'));
		});
		return all.toString();
	}

	private static String names(List<Subject> subjects) {
		String names = String.join(", ", subjects.stream().limit(NAMED).map(Subject::label).toList());
		return subjects.size() > NAMED ? NLS.bind(Messages.FindingDetails_andMore, names, subjects.size() - NAMED)
				: names;
	}

	private static String number(double value) {
		return value == Math.rint(value) ? String.format(Locale.ROOT, "%,.0f", value)
				: String.format(Locale.ROOT, "%,.3g", value);
	}

	/** All remedies selected, as one change. */
	private void applyRemedies() {
		RemedyCommands commands = new RemedyCommands(session.archive());
		List<Remedy> remedies = chosen();
		if (remedies.size() == 1) {
			run(commands.command(remedies.get(0)));
			return;
		}
		CompoundCommand all = new CompoundCommand(0,
				NLS.bind(Messages.FindingDetails_remedyFindings, remedies.size())) {
			@Override
			protected boolean prepare() {
				return !remedies.isEmpty();
			}

			@Override
			public void execute() {
				for (Remedy each : remedies) { // each sees what those before it have changed
					Command command = commands.command(each);
					if (command.canExecute()) {
						appendAndExecute(command);
					}
				}
			}
		};
		run(all);
	}

	/** @return whether there was anything to change */
	private boolean run(Command command) {
		boolean done = session.run(command);
		if (done) {
			told.accept(command);
		}
		return done;
	}

	private void waive() {
		if (!waive.getEnabled()) {
			return;
		}
		if (!waivers.isEmpty()) {
			run(new WithdrawWaiversCommand(session.archive(), waivers));
			return;
		}
		String why = reason.getText().strip();
		List<org.cairnfield.model.Waiver> given = new ArrayList<>();
		for (Finding finding : findings) {
			given.add(RuleCheck.toModel(Waiver.of(finding, why, Preferences.person().name(), Instant.now())));
		}
		if (run(new AddWaiversCommand(session.archive(), given))) {
			reason.setText("");
		}
	}

	/** The word for people. */
	static String word(Severity severity) {
		return severity.code();
	}
}
