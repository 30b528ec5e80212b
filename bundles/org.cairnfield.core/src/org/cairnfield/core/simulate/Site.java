package org.cairnfield.core.simulate;

import java.util.List;

/**
 * A building.
 *
 * @param code              two or three letters for ids of samples
 * @param eastMetres        where the floors' origin lies in the campus
 * @param northMetres       likewise
 * @param floorHeightMetres from floor to floor
 * @param floors            by rising level, levels without gap
 */
public record Site(String name, String code, double eastMetres, double northMetres, double floorHeightMetres,
		List<Floor> floors) {

	public Site {
		floors = List.copyOf(floors);
		for (int i = 1; i < floors.size(); i++) {
			if (floors.get(i).level() != floors.get(0).level() + i) {
				throw new IllegalArgumentException("floors of " + name + " must rise without gap");
			}
		}
	}

	/** The floor of that level. */
	public Floor floor(int level) {
		return floors.get(level - floors.get(0).level());
	}

	/** Square metres of all floors. */
	public double area() {
		return floors.stream().mapToDouble(f -> f.outline().area()).sum();
	}
}
