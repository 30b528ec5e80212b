package org.cairnfield.ui.review.internal.desk;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.propose.Bands;
import org.cairnfield.curation.review.Reviewer;
import org.cairnfield.ui.prefs.Preferences;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;

/** What the preferences say of proposals, bands, second reviews and audits, and who sits at the workbench. */
public final class ReviewSettings {

	/** Bundle that they are kept under. */
	public static final String NODE = "org.cairnfield.ui.review";
	/** Text of {@link Bands}. */
	public static final String BANDS = "bands";
	/** Names of bands that need a second review, separated by commas. */
	public static final String SECOND = "secondReview";

	private ReviewSettings() {
	}

	/** Bands, which of them need a second person, and how they are audited; what cannot be read counts as not set. */
	public static ReviewPolicy policy() {
		Bands bands = bands();
		Set<String> second = secondBands(secondBandsText()).stream().filter(name -> bands.named(name).isPresent())
				.collect(Collectors.toSet());
		return new ReviewPolicy(bands, second, number(ReviewNumber.AUDIT_LIMIT), number(ReviewNumber.AUDIT_CONFIDENCE));
	}

	/** As set, or as usual. */
	public static double number(ReviewNumber which) {
		return which.kept(node().get(which.key(), ""));
	}

	/** The bands set, or the usual ones. */
	public static Bands bands() {
		try {
			return Bands.parse(node().get(BANDS, Bands.USUAL.toString()));
		} catch (IllegalArgumentException e) {
			return Bands.USUAL;
		}
	}

	/** Names from a text with commas. */
	public static Set<String> secondBands(String text) {
		return Arrays.stream(text.split(",")).map(String::strip).filter(name -> !name.isEmpty())
				.collect(Collectors.toCollection(LinkedHashSet::new));
	}

	/** As {@link #NODE} has it. */
	public static String secondBandsText() {
		return node().get(SECOND, "");
	}

	/** Keeps all at once. */
	public static void put(Bands bands, Set<String> second, Map<ReviewNumber, Double> numbers) throws BackingStoreException {
		node().put(BANDS, bands.toString());
		node().put(SECOND, String.join(", ", second));
		numbers.forEach((which, value) -> node().put(which.key(), which.toKeep(value)));
		node().flush();
	}

	/** Who sits at the workbench, and the policy set. */
	static Reviewer reviewer() {
		return new Reviewer(Preferences.person().name(), policy());
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
