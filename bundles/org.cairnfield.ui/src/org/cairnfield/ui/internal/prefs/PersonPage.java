package org.cairnfield.ui.internal.prefs;

import java.util.Optional;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.cairnfield.archive.history.Person;
import org.cairnfield.ui.prefs.Preferences;
import org.cairnfield.ui.save.Saving;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.jface.preference.StringFieldEditor;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.eclipse.ui.preferences.ScopedPreferenceStore;

/** The page of the preferences for who sits at the workbench. */
public final class PersonPage extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {

	/** As the plug-in names the page. */
	public static final String ID = "org.cairnfield.ui.person";

	private StringFieldEditor name;

	public PersonPage() {
		super(GRID);
		setDescription(Messages.PersonPage_savePointsWaiversAndVerdicts);
	}

	@Override
	public void init(IWorkbench workbench) {
		ScopedPreferenceStore store = new ScopedPreferenceStore(InstanceScope.INSTANCE, Preferences.NODE);
		store.setDefault(Preferences.PERSON, Person.ofComputer().name());
		setPreferenceStore(store);
	}

	@Override
	protected void createFieldEditors() {
		name = new StringFieldEditor(Preferences.PERSON, Messages.PersonPage_nameOrInitials, getFieldEditorParent());
		name.setEmptyStringAllowed(false);
		name.getTextControl(getFieldEditorParent()).setData("org.cairnfield.id", "person.name");
		addField(name);
	}

	/** Unsaved work is that of whoever did it. */
	@Override
	public boolean performOk() {
		Optional<ArchiveSession> unsaved = Sessions.workbench().present().filter(ArchiveSession::isModified);
		String before = Preferences.person().name();
		if (unsaved.isPresent() && !name.getStringValue().strip().equals(before)) {
			int answer = MessageDialog.open(MessageDialog.QUESTION_WITH_CANCEL, getShell(),
					Messages.PersonPage_unsavedChanges,
					NLS.bind(Messages.PersonPage_thereAreUnsavedChangesBy, before), 0,
					NLS.bind(Messages.PersonPage_saveAs, before), Messages.PersonPage_theyAreMine,
					Messages.PersonPage_cancel);
			if (answer != 1 && (answer != 0 || !Saving.save(unsaved.get()))) {
				return false;
			}
		}
		return super.performOk();
	}
}
