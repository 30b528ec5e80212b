package org.cairnfield.archive.history;

import java.util.List;
import java.util.stream.Stream;

import org.cairnfield.archive.fault.Damage;

/**
 * As much of a history as can be read.
 *
 * @param points  each before those that it came from
 * @param damages what ends a line of the history before its beginning, none as a rule
 */
public record SavePoints(List<SavePoint> points, List<Damage> damages) {

	public SavePoints {
		points = List.copyOf(points);
		damages = List.copyOf(damages);
	}

	/** The same, and more that cannot be read. */
	public SavePoints with(List<Damage> more) {
		return new SavePoints(points, Stream.concat(damages.stream(), more.stream()).toList());
	}
}
