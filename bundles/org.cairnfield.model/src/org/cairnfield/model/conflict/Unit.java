package org.cairnfield.model.conflict;

import java.util.Comparator;

import org.cairnfield.model.Conflict;

/**
 * One thing of an archive that can be set by itself.
 *
 * @param place what it belongs to, see {@link Place}
 * @param name  what of it: the name of an attribute, or one of the constants
 */
public record Unit(String place, String name) implements Comparable<Unit> {

	/** Whether the object is there at all. */
	public static final String PRESENCE = "presence";
	/** x and y of a sample, which make sense together only. */
	public static final String POSITION = "position";
	/** The level that a sample is on. */
	public static final String FLOOR = "floor";
	/** When a sample was taken. */
	public static final String TIME = "time";
	/** Why a sample is set aside; no value where it is not. */
	public static final String STATE = "state";
	/** The device of a survey. */
	public static final String DEVICE = "device";
	/** Begins the level of one access point in a sample; its id follows. */
	public static final String READING = "reading of ";

	private static final Comparator<Unit> ORDER = Comparator.comparing(Unit::place).thenComparing(Unit::name);

	/** What a conflict is about. */
	public static Unit of(Conflict conflict) {
		return new Unit(conflict.getPlace(), conflict.getUnit());
	}

	@Override
	public int compareTo(Unit other) {
		return ORDER.compare(this, other);
	}

	@Override
	public String toString() {
		return place + ": " + name;
	}
}
