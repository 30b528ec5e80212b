package org.cairnfield.curation.floors;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.floors.MappedFloors;
import org.cairnfield.exchange.floors.MappedLevel;
import org.cairnfield.exchange.floors.MappedShape;

/** Which levels of a file are those of a site: one for each ordinal. */
final class LevelChoice {

	private LevelChoice() {
	}

	/** @param notes gets what is left out or joined */
	static List<MappedLevel> of(MappedFloors floors, String siteName, FloorWish wish, List<String> notes)
			throws IntakeException {
		Optional<String> building = building(floors, siteName, wish);
		boolean indoors = floors.levels().stream().anyMatch(level -> !level.isOutdoor());
		SortedMap<Integer, List<MappedLevel>> byOrdinal = new TreeMap<>();
		SortedSet<String> others = new TreeSet<>(floors.buildings());
		building.ifPresent(others::remove);
		if (!others.isEmpty()) {
			notes.add("the file has levels of " + String.join(", ", others) + " too, which are left out");
		}
		for (MappedLevel level : floors.levels()) {
			if (building.isPresent() && !level.buildings().isEmpty() && !level.buildings().contains(building.get())) {
				continue;
			}
			if (level.buildings().isEmpty() && (level.isOutdoor() && indoors || floors.buildings().size() > 1)) {
				notes.add(title(level) + " is left out: it belongs to no building");
			} else {
				byOrdinal.computeIfAbsent(level.ordinal(), ordinal -> new ArrayList<>()).add(level);
			}
		}
		if (byOrdinal.isEmpty()) {
			throw new IntakeException(floors.file(), 0, "no level of it belongs to the site",
					"Give the plans of the site");
		}
		requireFloors(floors, wish, byOrdinal);
		List<MappedLevel> chosen = new ArrayList<>();
		byOrdinal.values().forEach(same -> chosen.add(joined(same, notes)));
		return chosen;
	}

	private static void requireFloors(MappedFloors floors, FloorWish wish,
			SortedMap<Integer, List<MappedLevel>> byOrdinal) throws IntakeException {
		if ((long) byOrdinal.firstKey() + wish.shift() < Short.MIN_VALUE
				|| (long) byOrdinal.lastKey() + wish.shift() > Short.MAX_VALUE) {
			throw new IntakeException(floors.file(), 0,
					"shifted by " + wish.shift() + ", its levels are outside −32768 … 32767", "Give another shift");
		}
	}

	/** The name of the building that is the site; empty where the file tells no buildings apart. */
	private static Optional<String> building(MappedFloors floors, String siteName, FloorWish wish)
			throws IntakeException {
		SortedSet<String> all = floors.buildings();
		String wanted = wish.building() != null ? wish.building() : all.size() > 1 ? siteName : null;
		if (wanted == null) {
			return all.stream().findFirst();
		}
		Optional<String> found = all.stream().filter(name -> name.equalsIgnoreCase(wanted)).findFirst();
		if (found.isEmpty()) {
			throw all.isEmpty()
					? new IntakeException(floors.file(), 0, "its levels name no building", "Name no building")
					: new IntakeException(floors.file(), 0,
							"it has levels of " + String.join(", ", all) + ", and none of them is called '" + wanted
									+ "'",
							"Say which of them is the site (\"--building\" in batch)");
		}
		return found;
	}

	/** Wings that are levels of their own are one floor. */
	private static MappedLevel joined(List<MappedLevel> same, List<String> notes) {
		MappedLevel first = same.get(0);
		int parts = same.stream().mapToInt(level -> level.extent().size()).sum();
		if (parts > 1) {
			String what = same.size() > 1 ? same.size() + " levels of ordinal " + first.ordinal() + " become one floor"
					: title(first) + " consists of " + parts + " areas";
			notes.add(what + ", and the outline goes around all of them: correct it where that is too wide");
		}
		long holes = same.stream().flatMap(level -> level.extent().stream()).mapToInt(polygon -> polygon.size() - 1)
				.sum();
		if (holes > 0) {
			notes.add(title(first) + " has " + (holes == 1 ? "a hole" : holes + " holes")
					+ ", drawn in the plan image; the outline goes around what is in it");
		}
		if (same.size() == 1) {
			return first;
		}
		List<List<double[][]>> extent = same.stream().flatMap(level -> level.extent().stream()).toList();
		List<MappedShape> shapes = same.stream().flatMap(level -> level.shapes().stream()).toList();
		return new MappedLevel(first.feature(), first.ordinal(), first.name(), first.buildings(), first.isOutdoor(),
				extent, shapes);
	}

	static String title(MappedLevel level) {
		return "level " + level.ordinal() + (level.name() == null ? "" : " (" + level.name() + ')');
	}
}
