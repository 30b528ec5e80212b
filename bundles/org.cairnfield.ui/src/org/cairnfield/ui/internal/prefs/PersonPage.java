package org.cairnfield.ui.internal.prefs;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.cairnfield.ui.prefs.Preferences;
import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.jface.preference.StringFieldEditor;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.eclipse.ui.preferences.ScopedPreferenceStore;

/** The page of the preferences for who sits at the workbench. */
public final class PersonPage extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {

	public PersonPage() {
		super(GRID);
		setDescription("Save points, waivers and verdicts carry this name. Others who have the archive can read it.");
	}

	@Override
	public void init(IWorkbench workbench) {
		ScopedPreferenceStore store = new ScopedPreferenceStore(InstanceScope.INSTANCE, Preferences.NODE);
		store.setDefault(Preferences.PERSON, System.getProperty("user.name", ""));
		setPreferenceStore(store);
	}

	@Override
	protected void createFieldEditors() {
		addField(new StringFieldEditor(Preferences.PERSON, "&Name or initials:", getFieldEditorParent()));
	}
}
