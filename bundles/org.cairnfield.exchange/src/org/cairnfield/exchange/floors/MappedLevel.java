package org.cairnfield.exchange.floors;

import java.util.List;

/**
 * A level of a building as a file tells it.
 *
 * @param feature   its id
 * @param ordinal   its place in the stack of levels; 0 as a rule is the ground floor
 * @param name      what people call it, or null
 * @param buildings names of the buildings that it belongs to; none where the file does not say
 * @param isOutdoor whether it is the ground outside of a building
 * @param extent    polygons, each its outer ring and then its holes, as positions {longitude, latitude} in degrees, the first not
 *                  repeated; none where the file has no outline of it
 * @param shapes    what is drawn on it
 */
public record MappedLevel(String feature, int ordinal, String name, List<String> buildings, boolean isOutdoor,
		List<List<double[][]>> extent, List<MappedShape> shapes) {

	/** Copies the lists. */
	public MappedLevel {
		buildings = List.copyOf(buildings);
		extent = List.copyOf(extent);
		shapes = List.copyOf(shapes);
	}

	/** How many features are drawn so. */
	public long count(DrawnAs as) {
		return shapes.stream().filter(shape -> shape.as() == as).count();
	}
}
