package org.cairnfield.exchange.floors;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.core.text.Words;

/**
 * What is drawn on levels, as it is read. What bounds a floor must be right, or the whole file is refused; what is only drawn is left
 * out where it is not, and told.
 */
final class ShapeCollector {

	private static final int NAMED = 20;

	private final List<String> notes = new ArrayList<>();
	private int leftOut;

	/** The notes so far, the number of what was left out without being named at the end. */
	List<String> notes() {
		List<String> all = new ArrayList<>(notes);
		if (leftOut > NAMED) {
			all.add(Words.bind(Messages.ShapeCollector_moreFeaturesAreLeftOut, leftOut - NAMED));
		}
		return all;
	}

	void note(String sentence) {
		notes.add(sentence);
	}

	/** Says why a feature is not drawn. */
	void leaveOut(MapFeature feature, String why) {
		if (leftOut++ < NAMED) {
			notes.add(Words.bind(Messages.ShapeCollector_isLeftOut, feature.where(), why));
		}
	}

	/** Adds a feature to what is drawn on a level, as area or as line, whichever it is. */
	void add(List<MappedShape> shapes, MapFeature feature, DrawnAs as) {
		try {
			if (MapGeometry.type(feature).endsWith("LineString")) {
				shapes.add(new MappedShape(as, feature.id(), false, MapGeometry.lines(feature)));
			} else {
				shapes.add(new MappedShape(as, feature.id(), true,
						MapGeometry.polygons(feature).stream().flatMap(List::stream).toList()));
			}
		} catch (UnfitShapeException e) {
			leaveOut(feature, e.getMessage());
		}
	}
}
