package org.cairnfield.ui.internal.conflicts.model;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

import org.cairnfield.model.Archive;
import org.cairnfield.model.Conflict;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.conflict.DecidedLater;
import org.cairnfield.model.conflict.Place;
import org.cairnfield.model.conflict.Unit;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.ModelText;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;

/** Place, unit and values of one conflict as people read them. */
final class ConflictWords {

	private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT)
			.withZone(ZoneId.systemDefault());

	private final Archive archive;
	private final Conflict conflict;
	private final String name;

	ConflictWords(Archive archive, Conflict conflict) {
		this.archive = archive;
		this.conflict = conflict;
		this.name = conflict.getUnit();
	}

	/** Where it is, from the inside out; as the archive has it where that is gone. */
	String place() {
		String place = conflict.getPlace();
		if (DecidedLater.isOverFile(conflict)) {
			return Messages.ConflictWords_gatesOfARelease;
		}
		EObject object = Place.find(archive, place);
		if (object == null || object == archive) {
			return object == archive ? Messages.ConflictWords_theArchive : capital(place);
		}
		String sample = Place.sample(place);
		StringBuilder words = new StringBuilder(sample == null ? capital(kind(object)) + ' ' + ModelText.name(object)
				: NLS.bind(Messages.ConflictWords_sampleOf, sample, ((Survey) object).getId()));
		for (EObject at = object.eContainer(); at != null && at != archive; at = at.eContainer()) {
			words.append(", ").append(ModelText.name(at));
		}
		return words.toString();
	}

	private static String kind(EObject object) {
		return spaced(object.eClass().getName());
	}

	String unit() {
		if (DecidedLater.isOverFile(conflict)) {
			return name;
		}
		return switch (name) {
		case Unit.PRESENCE -> Messages.ConflictWords_keptOrRemoved;
		case Unit.STATE -> Messages.ConflictWords_setAsideOrNot;
		default -> name.startsWith(Unit.READING)
				? NLS.bind(Messages.ConflictWords_levelOf, name.substring(Unit.READING.length()))
				: spaced(name);
		};
	}

	/** What somebody has set; of a position, how far it is from the one before as well. */
	String claim(String value) {
		double[] before = name.equals(Unit.POSITION) ? position(conflict.getBase()) : null;
		double[] now = position(value);
		return before == null || now == null ? value(value)
				: value(value) + String.format(Locale.ROOT, Messages.ConflictWords_mFromBefore,
						Math.hypot(now[0] - before[0], now[1] - before[1]));
	}

	String value(String value) {
		if (DecidedLater.isOverFile(conflict)) {
			return value == null ? Messages.ConflictWords_notAsked : text(value.replaceFirst("^= ?", ""));
		}
		boolean ofSample = Place.sample(conflict.getPlace()) != null;
		switch (name) {
		case Unit.PRESENCE:
			return value == null ? "removed" : "kept";
		case Unit.STATE:
			return ofSample && value == null ? Messages.ConflictWords_inTheMap
					: ofSample ? NLS.bind(Messages.ConflictWords_setAside, value) : text(value);
		case Unit.FLOOR:
			return ofSample ? floor(value) : text(value);
		case Unit.TIME:
			return ofSample && value != null ? TIME.format(Instant.parse(value)) : text(value);
		case Unit.DEVICE:
			return value == null ? Messages.ConflictWords_noValue
					: ArchiveIndex.of(archive).device(value).map(ModelText::name).orElse(value);
		case Unit.POSITION:
			double[] at = position(value);
			return at == null ? text(value) : String.format(Locale.ROOT, "x %.2f m, y %.2f m", at[0], at[1]);
		default:
			return !name.startsWith(Unit.READING) ? text(value)
					: value == null ? Messages.ConflictWords_notHeard : NLS.bind(Messages.ConflictWords_dbm, value);
		}
	}

	/** x and y in metres; null for what is none. */
	static double[] position(String value) {
		String[] parts = value == null ? new String[0] : value.strip().split("\\s+");
		try {
			return parts.length != 2 ? null
					: new double[] { Double.parseDouble(parts[0]), Double.parseDouble(parts[1]) };
		} catch (NumberFormatException e) {
			return null; // shown as it is
		}
	}

	private String floor(String level) {
		Survey survey = Place.survey(archive, conflict.getPlace());
		return level == null ? Messages.ConflictWords_noFloor
				: survey != null && survey.eContainer() instanceof Site site
						? ArchiveIndex.floor(site, Integer.parseInt(level)).map(ModelText::name)
								.orElse(NLS.bind(Messages.ConflictWords_floor, level))
						: NLS.bind(Messages.ConflictWords_floor, level);
	}

	private static String text(String value) {
		return value == null || value.isBlank() ? Messages.ConflictWords_noValue : value;
	}

	private static String spaced(String camelCase) {
		return camelCase.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
	}

	private static String capital(String text) {
		return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
	}
}
