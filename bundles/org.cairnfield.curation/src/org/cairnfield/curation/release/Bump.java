package org.cairnfield.curation.release;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import org.cairnfield.archive.history.ArchiveDiff;
import org.cairnfield.archive.history.FieldChange;
import org.cairnfield.archive.history.ObjectChange;
import org.cairnfield.core.text.Words;

/**
 * Which version comes next, and why.
 *
 * @param version proposed
 * @param part    counted up; empty for the first release
 * @param reasons in words
 */
public record Bump(SemanticVersion version, Optional<SemanticVersion.Part> part, List<String> reasons) {

	/** Kinds of things whose loss takes positions away from those who use the map. */
	private static final Set<String> PLACES = Set.of("site", "floor");
	/** Kinds of things that the map is made of. */
	private static final Set<String> MAP = Set.of(Messages.Bump_accessPoint, "survey", "split", "cluster", "label",
			"proposal",
			"verdict",
			"ledger", "device");
	/** Properties that say what a position means. */
	private static final Set<String> FRAME = Set.of("georeference", "level", "id");
	/** Properties that say which surveys make the map. */
	private static final Set<String> DAYS = Set.of("mapFrom", "mapUntil");
	/** Properties that people read and no device does. */
	private static final Set<String> TEXTS = Set.of("name", "surveyor", "protocol", "group", "place", "planImage",
			"planPlacement", "outline",
			"heightMetres", "sourceFile", "sourceDigest", "firstHeard", "lastHeard", "text", "date");

	/** @param last null before the first release */
	public static Bump after(SemanticVersion last, ArchiveDiff changes) {
		if (last == null) {
			return new Bump(SemanticVersion.FIRST, Optional.empty(), List.of(Messages.Bump_theFirstRelease));
		}
		Set<String> major = new TreeSet<>();
		Set<String> minor = new TreeSet<>();
		for (ObjectChange change : changes.objects()) {
			if (PLACES.contains(change.what())) {
				place(change, major, minor);
			} else if (MAP.contains(change.what()) && !isTextOnly(change)) {
				minor.add(Words.bind(Messages.Bump_theMapIsMadeOf, plural(change.what())));
			}
		}
		if (!changes.surveys().isEmpty()) {
			minor.add(Messages.Bump_samplesOrReadingsDiffer);
		}
		SemanticVersion.Part part = !major.isEmpty() ? SemanticVersion.Part.MAJOR
				: !minor.isEmpty() ? SemanticVersion.Part.MINOR : SemanticVersion.Part.PATCH;
		List<String> reasons = new ArrayList<>(major);
		reasons.addAll(minor);
		if (reasons.isEmpty()) {
			reasons.add(changes.isEmpty() ? Messages.Bump_nothingDiffers : Messages.Bump_onlyTextsDifferWhichNo);
		}
		return new Bump(last.next(part), Optional.of(part), List.copyOf(reasons));
	}

	private static void place(ObjectChange change, Set<String> major, Set<String> minor) {
		switch (change.way()) {
		case REMOVED -> major.add(Words.bind(Messages.Bump_isGone, change.what(), change.id()));
		case ADDED -> minor.add(Words.bind(Messages.Bump_isNew, change.what(), change.id()));
		case CHANGED -> change.fields().stream().map(FieldChange::name).forEach(field -> {
			if (FRAME.contains(field)) {
				major.add(Words.bind(Messages.Bump_positionsAtMeanAnotherPlace, change.what(), change.id(), field));
			} else if (DAYS.contains(field)) {
				minor.add(Words.bind(Messages.Bump_theMapOfIsMade, change.what(), change.id()));
			}
		});
		}
	}

	private static boolean isTextOnly(ObjectChange change) {
		return change.way() == ObjectChange.Way.CHANGED
				&& change.fields().stream().allMatch(f -> TEXTS.contains(f.name()));
	}

	private static String plural(String what) {
		return what + "s";
	}
}
