package org.cairnfield.model.conflict;

import java.util.Locale;

import org.cairnfield.model.Archive;
import org.cairnfield.model.Floor;
import org.cairnfield.model.RuleSetting;
import org.cairnfield.model.Survey;
import org.cairnfield.model.Waiver;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Names an object of an archive, or a sample, by words and ids from the outermost in: {@code archive}, {@code split all},
 * {@code site th/floor 2}, {@code site th/survey spring/sample S-12}.
 */
public final class Place {

	/** The archive itself. */
	public static final String ARCHIVE = "archive";
	/** Begins the name of a file that is not part of the model; its path follows. */
	public static final String FILE = "file ";

	private static final String SAMPLE = "sample ";

	private Place() {
	}

	/** Of an object within another, that of the other given. */
	public static String of(String container, EObject object) {
		String name = word(object) + ' ' + key(object);
		return container.equals(ARCHIVE) ? name : container + '/' + name;
	}

	/** Of a sample, that of its survey given. */
	public static String ofSample(String survey, String sample) {
		return survey + '/' + SAMPLE + sample;
	}

	/** What tells an object from others of its kind within the same container; a waiver is what it says, a rule setting
	 * what it sets: {@code few-readings.fewest-readings}, or the rule alone. */
	public static String key(EObject object) {
		if (object instanceof Floor floor) {
			return Integer.toString(floor.getLevel());
		}
		if (object instanceof Waiver waiver) {
			return String.join(" ", waiver.getRule(), waiver.getContentKey(), waiver.getPerson(),
					String.valueOf(waiver.getTime()), waiver.getReason());
		}
		if (object instanceof RuleSetting setting) {
			return setting.getRule() + (setting.getParameter() == null ? "" : '.' + setting.getParameter());
		}
		return EcoreUtil.getID(object);
	}

	private static String word(EObject object) {
		return object.eClass().getName().replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
	}

	/** The object of a place; null where it is not there. Of a sample, its survey. */
	public static EObject find(Archive archive, String place) {
		if (place.equals(ARCHIVE)) {
			return archive;
		}
		EObject found = archive;
		String at = ARCHIVE;
		String whole = surveyOf(place);
		while (!at.equals(whole)) {
			EObject next = null;
			for (EObject each : found.eContents()) {
				String name = of(at, each);
				if (whole.equals(name) || whole.startsWith(name + '/')) {
					next = each;
				}
			}
			if (next == null) {
				return null;
			}
			at = of(at, next);
			found = next;
		}
		return found;
	}

	/** What an object or a sample is in, as a place. */
	public static String container(String place) {
		int sample = sampleAt(place);
		int inSite = place.startsWith("site ") ? place.indexOf('/') : -1;
		return sample >= 0 ? place.substring(0, sample) : inSite >= 0 ? place.substring(0, inSite) : ARCHIVE;
	}

	/** The sample that a place names, within its survey; null where it names none. */
	public static String sample(String place) {
		int at = sampleAt(place);
		return at < 0 ? null : place.substring(at + 1 + SAMPLE.length());
	}

	private static String surveyOf(String place) {
		int at = sampleAt(place);
		return at < 0 ? place : place.substring(0, at);
	}

	/** Ids of sites and surveys have no slash, those of samples may. */
	private static int sampleAt(String place) {
		int site = place.startsWith("site ") ? place.indexOf('/') : -1;
		int survey = site < 0 || !place.startsWith("survey ", site + 1) ? -1 : place.indexOf('/', site + 1);
		return survey >= 0 && place.startsWith(SAMPLE, survey + 1) ? survey : -1;
	}

	/** The survey of a sample's place, as an object; null where it is not there. */
	public static Survey survey(Archive archive, String place) {
		return find(archive, surveyOf(place)) instanceof Survey survey ? survey : null;
	}
}
