package org.cairnfield.ui.internal.rules;

import java.util.List;

import org.cairnfield.curation.check.RuleSettings;
import org.cairnfield.ui.notice.Notice;
import org.cairnfield.ui.notice.Notices;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.dialogs.PreferencesUtil;

/** Shows above all perspectives what the archive tells the rules and nobody can follow, until it is mended. */
public final class RuleNotices implements SessionListener {

	private static final String NOTICE = "rules";

	private ArchiveSession session;
	private List<String> said = List.of();

	public RuleNotices() {
		Sessions.workbench().add(this);
	}

	@Override
	public void sessionChanged(ArchiveSession now) {
		session = now;
		structureChanged();
	}

	@Override
	public void structureChanged() {
		List<String> problems = session == null ? List.of() : RuleSettings.of(session.archive()).rules().problems();
		if (problems.equals(said)) {
			return;
		}
		said = problems;
		if (problems.isEmpty()) {
			Notices.workbench().remove(NOTICE);
		} else {
			Notices.workbench().say(new Notice(NOTICE, Notice.Kind.WARNING,
					NLS.bind(Messages.RuleNotices_ruleSetting, problems.get(0),
							problems.size() == 1 ? "." : NLS.bind(Messages.RuleNotices_andMore, problems.size() - 1)),
					List.of(new Notice.Action(Messages.RuleNotices_showTheRules, RuleNotices::show), new Notice.Action(
							Messages.RuleNotices_dismiss, () -> Notices.workbench().remove(NOTICE)))));
		}
	}

	private static void show() {
		PreferencesUtil.createPreferenceDialogOn(null, RulesPage.ID, null, null).open();
	}
}
