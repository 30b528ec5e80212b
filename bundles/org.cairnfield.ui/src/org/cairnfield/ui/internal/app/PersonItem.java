package org.cairnfield.ui.internal.app;

import org.cairnfield.ui.internal.prefs.PersonPage;
import org.cairnfield.ui.prefs.Preferences;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.action.ContributionItem;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.dialogs.PreferencesUtil;

/** Shows in the status line in whose name work is saved; a click opens the preference. */
final class PersonItem extends ContributionItem {

	private Link link;

	PersonItem() {
		super("org.cairnfield.ui.person");
	}

	@Override
	public void fill(Composite line) {
		Composite middle = new Composite(line, SWT.NONE); // the line gives its height to what is in it, and a link stands at the top
		GridLayoutFactory.fillDefaults().extendedMargins(6, 6, 0, 0).applyTo(middle);
		link = new Link(middle, SWT.NONE);
		GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(false, true).applyTo(link);
		link.setData("org.cairnfield.id", "status.person");
		link.setToolTipText(Messages.PersonItem_savePointsWaiversAndVerdicts);
		link.addListener(SWT.Selection,
				event -> PreferencesUtil.createPreferenceDialogOn(link.getShell(), PersonPage.ID, null, null).open());
		IEclipsePreferences preferences = InstanceScope.INSTANCE.getNode(Preferences.NODE);
		IEclipsePreferences.IPreferenceChangeListener changed = event -> {
			if (event.getKey().equals(Preferences.PERSON)) {
				link.getDisplay().asyncExec(this::show);
			}
		};
		preferences.addPreferenceChangeListener(changed);
		link.addDisposeListener(event -> preferences.removePreferenceChangeListener(changed));
		show();
	}

	private void show() {
		if (!link.isDisposed()) {
			link.setText("<a>Person: " + Preferences.person().name().replace("&", "&&") + "</a>");
			link.requestLayout();
		}
	}
}
