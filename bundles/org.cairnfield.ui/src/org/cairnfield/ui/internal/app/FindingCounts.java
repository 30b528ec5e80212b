package org.cairnfield.ui.internal.app;

import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.show.IfChanged;
import org.eclipse.jface.action.ContributionItem;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.widgets.Composite;

/** Tells in the status line how many findings there are, whatever part has the focus. */
final class FindingCounts extends ContributionItem implements SessionListener {

	private CLabel label;

	FindingCounts() {
		super("org.cairnfield.ui.findingCounts");
	}

	@Override
	public void fill(Composite line) {
		label = new CLabel(line, SWT.NONE);
		label.setData("org.cairnfield.id", "status.findings");
		label.addDisposeListener(event -> Sessions.workbench().remove(this));
		Sessions.workbench().add(this);
	}

	@Override
	public void sessionChanged(ArchiveSession session) {
		show();
	}

	@Override
	public void findingsChanged() {
		show();
	}

	private void show() {
		if (!label.isDisposed()) {
			IfChanged.text(label,
					Sessions.workbench().current().map(session -> session.findings().summary()).orElse(""));
		}
	}
}
