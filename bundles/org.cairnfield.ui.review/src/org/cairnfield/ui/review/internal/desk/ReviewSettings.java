package org.cairnfield.ui.review.internal.desk;

import java.util.Map;

import org.cairnfield.ui.prefs.Preferences;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;

/** What the preferences say of how proposals are made, and who sits at the workbench. */
public final class ReviewSettings {

	/** Bundle that they are kept under. */
	public static final String NODE = "org.cairnfield.ui.review";

	private ReviewSettings() {
	}

	/** As set, or as usual. */
	public static double number(ReviewNumber which) {
		return which.kept(node().get(which.key(), ""));
	}

	/** Keeps all at once. */
	public static void put(Map<ReviewNumber, Double> numbers) throws BackingStoreException {
		numbers.forEach((which, value) -> node().put(which.key(), which.toKeep(value)));
		node().flush();
	}

	/** Name that verdicts carry. */
	static String person() {
		return Preferences.person().name();
	}

	/** Tells of changes. */
	public static IEclipsePreferences node() {
		return InstanceScope.INSTANCE.getNode(NODE);
	}

	/** Tells when another person sits down. */
	public static IEclipsePreferences personNode() {
		return InstanceScope.INSTANCE.getNode(Preferences.NODE);
	}
}
