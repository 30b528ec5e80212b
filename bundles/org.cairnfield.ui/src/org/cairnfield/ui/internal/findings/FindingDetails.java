package org.cairnfield.ui.internal.findings;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.cairnfield.curation.check.ArchiveCheck;
import org.cairnfield.curation.remedy.RemedyCommands;
import org.cairnfield.curation.rules.Figure;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.curation.rules.Waiver;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.cairnfield.model.edit.WaiveCommand;
import org.cairnfield.model.edit.WithdrawWaiversCommand;
import org.cairnfield.ui.prefs.Preferences;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/** Explains the findings selected, and offers to remedy or to waive them. */
final class FindingDetails {

	private static final int NAMED = 8;

	private final Text text;
	private final Button place;
	private final Button remedy;
	private final Text reason;
	private final Button waive;
	private ArchiveSession session;
	private List<Finding> findings = List.of();
	private List<org.cairnfield.model.Waiver> waivers = List.of();

	FindingDetails(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(4).applyTo(page);
		text = new Text(page, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL);
		text.setData("org.cairnfield.id", "findings.explanation");
		GridDataFactory.fillDefaults().grab(true, true).span(4, 1).hint(200, 60).applyTo(text);
		place = button(page, "Show the &place", "findings.place");
		place.addListener(SWT.Selection, event -> session.select(Evidence.of(session, findings.get(0))));
		remedy = button(page, "Apply the &remedy", "findings.remedy");
		remedy.addListener(SWT.Selection, event -> applyRemedies());
		reason = new Text(page, SWT.BORDER | SWT.SINGLE);
		reason.setMessage("Why it is all right as it is");
		reason.setData("org.cairnfield.id", "findings.reason");
		reason.addListener(SWT.Modify, event -> enable());
		reason.addListener(SWT.DefaultSelection, event -> waive());
		GridDataFactory.fillDefaults().grab(true, false).indent(12, 0).applyTo(reason);
		waive = button(page, "&Waive", "findings.waive");
		waive.addListener(SWT.Selection, event -> waive());
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
		waive.setText(waivers.isEmpty() ? "&Waive" : "&Withdraw the waiver");
		waive.requestLayout();
		text.setText(describe());
		enable();
	}

	private void enable() {
		boolean mayChange = session != null && session.readOnlyReason().isEmpty();
		boolean offered = findings.stream().anyMatch(finding -> finding.remedy().isPresent());
		place.setEnabled(!findings.isEmpty());
		remedy.setEnabled(mayChange && offered);
		reason.setEnabled(mayChange && !findings.isEmpty() && waivers.isEmpty());
		waive.setEnabled(waivers.isEmpty() ? reason.getEnabled() && !reason.getText().isBlank() : mayChange);
	}

	private String describe() {
		if (session == null) {
			return "";
		}
		if (findings.isEmpty() && !waivers.isEmpty()) {
			return "The waiver covers nothing that the rules report now: what it was about has changed, or is mended.";
		}
		if (findings.isEmpty()) {
			return session.findings().open().isEmpty() && !session.findings().isChecking() ? "Nothing is wrong that the rules know of."
					: "Select a finding to see why it matters and what can be done. Enter shows its place.";
		}
		Finding first = findings.get(0);
		Rule rule = CleaningRules.registry().rule(first.rule());
		StringBuilder all = new StringBuilder(rule.title()).append(" (").append(word(first.severity())).append(", rule ")
				.append(rule.id()).append(")\n").append(rule.explanation()).append("\n\n");
		if (findings.size() > 1) {
			long remedies = findings.stream().filter(finding -> finding.remedy().isPresent()).count();
			all.append(findings.size()).append(" findings are selected; ").append(remedies).append(" have a remedy.\n\n");
		}
		all.append(first.message()).append('\n');
		for (Figure figure : first.evidence()) {
			all.append("  ").append(figure.name()).append(": ").append(number(figure.value())).append(' ').append(figure.unit()).append('\n');
		}
		all.append("\nAbout: ").append(names(first.subjects()));
		if (!first.related().isEmpty()) {
			all.append("\nCompare: ").append(names(first.related()));
		}
		first.remedy().ifPresent(offer -> all.append("\n\nRemedy: ").append(offer.preview()));
		return all.toString();
	}

	private static String names(List<Subject> subjects) {
		String names = String.join(", ", subjects.stream().limit(NAMED).map(Subject::label).toList());
		return subjects.size() > NAMED ? names + " and " + (subjects.size() - NAMED) + " more" : names;
	}

	private static String number(double value) {
		return value == Math.rint(value) ? String.format(Locale.ROOT, "%,.0f", value) : String.format(Locale.ROOT, "%,.3g", value);
	}

	/** All remedies selected, as one change. */
	private void applyRemedies() {
		RemedyCommands commands = new RemedyCommands(session.archive());
		List<Remedy> remedies = findings.stream().flatMap(finding -> finding.remedy().stream()).toList();
		if (remedies.size() == 1) {
			session.run(commands.command(remedies.get(0)));
			return;
		}
		CompoundCommand all = new CompoundCommand(0, "Remedy " + remedies.size() + " findings") {
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
		session.run(all);
	}

	private void waive() {
		if (!waive.getEnabled()) {
			return;
		}
		if (!waivers.isEmpty()) {
			session.run(new WithdrawWaiversCommand(session.archive(), waivers));
			return;
		}
		String why = reason.getText().strip();
		List<org.cairnfield.model.Waiver> given = new ArrayList<>();
		for (Finding finding : findings) {
			given.add(ArchiveCheck.toModel(Waiver.of(finding, why, Preferences.person().name(), Instant.now())));
		}
		if (session.run(new WaiveCommand(session.archive(), given))) {
			reason.setText("");
		}
	}

	/** The word for people. */
	static String word(Severity severity) {
		return severity.code();
	}
}
