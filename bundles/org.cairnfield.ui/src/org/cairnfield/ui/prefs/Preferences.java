package org.cairnfield.ui.prefs;

import org.cairnfield.archive.history.Person;
import org.cairnfield.ui.problem.Problems;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;

/** What the workbench remembers of the person. */
public final class Preferences {

	/** Bundle that they are kept under. */
	public static final String NODE = "org.cairnfield.ui";
	/** Name that save points, waivers and verdicts carry. */
	public static final String PERSON = "person";

	private Preferences() {
	}

	public static String get(String key, String otherwise) {
		return node().get(key, otherwise);
	}

	/** Kept at once, since a crash must not forget it. */
	public static void put(String key, String value) {
		node().put(key, value);
		try {
			node().flush();
		} catch (BackingStoreException e) {
			Problems.log(Messages.Preferences_preferencesCouldNotBeKept, e);
		}
	}

	/** Who sits at the workbench. */
	public static Person person() {
		String name = get(PERSON, "");
		return name.isBlank() ? Person.ofComputer() : Person.named(name);
	}

	private static IEclipsePreferences node() {
		return InstanceScope.INSTANCE.getNode(NODE);
	}
}
