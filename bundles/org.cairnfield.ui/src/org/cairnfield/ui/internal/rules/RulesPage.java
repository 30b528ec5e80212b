package org.cairnfield.ui.internal.rules;

import java.util.Optional;

import org.cairnfield.curation.check.RuleSettings;
import org.cairnfield.curation.check.SetRuleSettingsCommand;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.ui.internal.rules.model.RuleDrafts;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;

/** The page of the preferences for what the rules are told. The archive keeps it, and Apply is one change that can be undone. */
public final class RulesPage extends PreferencePage implements IWorkbenchPreferencePage {

	/** As the plug-in names the page. */
	public static final String ID = "org.cairnfield.ui.rules";

	private RuleDrafts drafts;
	private RuleTree tree;
	private RulePane pane;
	private Rule shown;
	private String wanted;

	@Override
	public void init(IWorkbench workbench) {
		if (!mayChange()) {
			noDefaultAndApplyButton();
		}
	}

	private static Optional<ArchiveSession> session() {
		return Sessions.workbench().current();
	}

	private static boolean mayChange() {
		return session().filter(each -> each.readOnlyReason().isEmpty()).isPresent();
	}

	/** @param data id of the rule to open at */
	@Override
	public void applyData(Object data) {
		wanted = (String) data;
		if (tree != null) {
			tree.select(wanted);
		}
	}

	@Override
	protected Control createContents(Composite parent) {
		Optional<ArchiveSession> session = session();
		drafts = new RuleDrafts(session.map(each -> RuleSettings.of(each.archive())).orElse(RuleSettings.USUAL));
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().applyTo(page);
		Label kept = new Label(page, SWT.WRAP);
		kept.setData("org.cairnfield.id", "rules.kept");
		kept.setText(session.map(RulesPage::words).orElse(Messages.RulesPage_noArchiveIsOpenAn));
		GridDataFactory.fillDefaults().grab(true, false).hint(300, SWT.DEFAULT).applyTo(kept);
		SashForm parts = new SashForm(page, SWT.VERTICAL | SWT.SMOOTH);
		GridDataFactory.fillDefaults().grab(true, true).hint(560, 420).applyTo(parts);
		tree = new RuleTree(parts, () -> drafts, this::show);
		pane = new RulePane(parts, mayChange(), this::changed);
		parts.setWeights(45, 55);
		tree.select(wanted == null ? CleaningRules.registry().all().get(0).id() : wanted);
		return page;
	}

	private static String words(ArchiveSession session) {
		return session.readOnlyReason().map(reason -> NLS.bind(Messages.RulesPage_readOnly, reason))
				.orElse(NLS.bind(Messages.RulesPage_theArchiveKeepsThisEverybody, ModelText.name(session.archive())));
	}

	private void show(Rule rule) {
		shown = rule;
		if (pane != null) {
			pane.show(rule, drafts);
		}
	}

	private void changed() {
		tree.refresh();
		setErrorMessage(drafts.problem(shown).or(drafts::problem).orElse(null));
		setValid(drafts.problem().isEmpty());
	}

	@Override
	protected void performDefaults() {
		drafts.resetAll();
		tree.again();
		changed();
		super.performDefaults();
	}

	@Override
	public boolean performOk() {
		if (drafts != null) { // otherwise nobody has looked at the page
			session().ifPresent(each -> each.run(new SetRuleSettingsCommand(each.archive(), drafts.settings())));
		}
		return true;
	}
}
