package org.cairnfield.ui.internal.conflicts.model;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.cairnfield.model.Archive;
import org.cairnfield.model.Conflict;
import org.cairnfield.model.Floor;
import org.cairnfield.model.conflict.DecidedLater;
import org.cairnfield.model.conflict.Unit;
import org.cairnfield.ui.scope.MarkedPlace;

/**
 * An open conflict in words.
 *
 * @param place  such as "Sample S-12 of spring, Tide House"
 * @param unit   what of it, such as "position"
 * @param values the one from before, then those that people have set, in their order in the archive
 */
public record ConflictRow(Conflict conflict, String place, String unit, List<ConflictValue> values) {

	public ConflictRow {
		values = List.copyOf(values);
	}

	/** Of all open conflicts of an archive. */
	public static List<ConflictRow> of(Archive archive) {
		return DecidedLater.open(archive).stream().map(conflict -> of(archive, conflict)).toList();
	}

	private static ConflictRow of(Archive archive, Conflict conflict) {
		ConflictWords words = new ConflictWords(archive, conflict);
		List<ConflictValue> values = new ArrayList<>();
		values.add(new ConflictValue(conflict.getBase(), words.value(conflict.getBase()), null, null));
		conflict.getClaims().forEach(claim -> values.add(new ConflictValue(claim.getValue(),
				words.claim(claim.getValue()), claim.getPerson(), claim.getTime())));
		return new ConflictRow(conflict, words.place(), words.unit(), values);
	}

	/** The value from before, which holds until somebody decides. */
	public String before() {
		return values.get(0).words();
	}

	/** Where people have put a sample, on the floor that it is on; none where that is not what the conflict is about. */
	public List<MarkedPlace> places(Floor floor) {
		List<MarkedPlace> places = new ArrayList<>();
		for (ConflictValue value : values) {
			double[] at = conflict.getUnit().equals(Unit.POSITION) ? ConflictWords.position(value.value()) : null;
			if (at != null) {
				places.add(new MarkedPlace(floor, at[0], at[1], value.who()));
			}
		}
		return places;
	}

	/** What people have set, in one line. */
	public String claims() {
		return values.stream().skip(1).map(value -> value.who() + ": " + value.words())
				.collect(Collectors.joining("; "));
	}
}
