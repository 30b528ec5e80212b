package org.cairnfield.exchange.floors;

import java.util.Locale;
import java.util.Set;

/** What a feature of a floor is on a plan. In the order in which they are drawn, so that a later one lies on an earlier. */
public enum DrawnAs {
	/** Where people walk. */
	WALKWAY("walkway"),
	/** Any other room. */
	ROOM("room"),
	/** A hole in the floor. */
	VOID("void"),
	/** Furniture, and the like. */
	FIXTURE("fixture"),
	/** A wall or column by its area or its line. */
	SOLID("wall"),
	/** A door or gate: a gap in walls. */
	OPENING("door");

	private static final Set<String> SOLIDS = Set.of("structure", "column", "brick", "concrete", "drywall", "glass",
			"wood", "wall", "walls", "solid");
	private static final Set<String> WALKWAYS = Set.of("walkway", "walkway.island", "movingwalkway", "footbridge",
			"ramp", "platform", "corridor", "hall");
	private static final Set<String> OPENINGS = Set.of("opening", "openings", "door", "doors", "entrance", "gate");
	private static final Set<String> FIXTURES = Set.of("fixture", "fixtures", "furniture", "equipment", "kiosk",
			"desk");

	private final String one;

	DrawnAs(String one) {
		this.one = one;
	}

	/** In a word, for one of them. */
	public String one() {
		return one;
	}

	/** A unit of IMDF by its category (OGC 20-094, Unit and Categories); any other room for one that is not known. */
	static DrawnAs unit(String category) {
		return SOLIDS.contains(category) ? SOLID
				: category.equals("opentobelow") ? VOID : WALKWAYS.contains(category) ? WALKWAY : ROOM;
	}

	/** A fixture of IMDF by its category. */
	static DrawnAs fixture(String category) {
		return SOLIDS.contains(category) ? SOLID : FIXTURE;
	}

	/** A feature of plain GeoJSON by whatever word it has for its kind. */
	static DrawnAs word(String kind) {
		String word = kind.toLowerCase(Locale.ROOT);
		return OPENINGS.contains(word) || word.startsWith("pedestrian") ? OPENING
				: FIXTURES.contains(word) ? FIXTURE : unit(word);
	}
}
