package org.cairnfield.curation.floors;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cairnfield.core.text.Words;
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
			notes.add(Words.bind(Messages.LevelChoice_theFileHasLevelsOf, String.join(", ", others)));
		}
		for (MappedLevel level : floors.levels()) {
			if (building.isPresent() && !level.buildings().isEmpty() && !level.buildings().contains(building.get())) {
				continue;
			}
			if (level.buildings().isEmpty() && (level.isOutdoor() && indoors || floors.buildings().size() > 1)) {
				notes.add(Words.bind(Messages.LevelChoice_isLeftOutItBelongs, title(level)));
			} else {
				byOrdinal.computeIfAbsent(level.ordinal(), ordinal -> new ArrayList<>()).add(level);
			}
		}
		if (byOrdinal.isEmpty()) {
			throw new IntakeException(floors.file(), 0, Messages.LevelChoice_noLevelOfItBelongs,
					Messages.LevelChoice_giveThePlansOfThe);
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
					Words.bind(Messages.LevelChoice_shiftedByItsLevelsAre, wish.shift()),
					Messages.LevelChoice_giveAnotherShift);
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
					? new IntakeException(floors.file(), 0, Messages.LevelChoice_itsLevelsNameNoBuilding,
							Messages.LevelChoice_nameNoBuilding)
					: new IntakeException(floors.file(), 0,
							Words.bind(Messages.LevelChoice_itHasLevelsOfAnd, String.join(", ", all), wanted),
							Messages.LevelChoice_sayWhichOfThemIs);
		}
		return found;
	}

	/** Wings that are levels of their own are one floor. */
	private static MappedLevel joined(List<MappedLevel> same, List<String> notes) {
		MappedLevel first = same.get(0);
		int parts = same.stream().mapToInt(level -> level.extent().size()).sum();
		if (parts > 1) {
			String what = same.size() > 1
					? Words.bind(Messages.LevelChoice_levelsOfOrdinalBecomeOne, same.size(), first.ordinal())
					: Words.bind(Messages.LevelChoice_consistsOfAreas, title(first), parts);
			notes.add(Words.bind(Messages.LevelChoice_andTheOutlineGoesAround, what));
		}
		long holes = same.stream().flatMap(level -> level.extent().stream()).mapToInt(polygon -> polygon.size() - 1)
				.sum();
		if (holes > 0) {
			notes.add(Words.bind(Messages.LevelChoice_hasDrawnInThePlan, title(first),
					holes == 1 ? Messages.LevelChoice_aHole : Words.bind(Messages.LevelChoice_holes, holes)));
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
		return Words.bind(Messages.LevelChoice_level, level.ordinal(),
				level.name() == null ? "" : " (" + level.name() + ')');
	}
}
