package org.cairnfield.core.simulate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;

/** The way a surveyor takes over a floor: places to stop at, in order. */
@FunctionalInterface
public interface Walk {

	/** @param random the walk's own source of chance on this floor */
	List<Place> places(Floor floor, SplittableRandom random);

	/**
	 * A grid over the whole floor, row by row, there and back.
	 *
	 * @param offsetShare where the grid begins, as a share of the spacing, 0 … 1; two surveys with different
	 *                    offsets share no place
	 */
	static Walk grid(double spacingMetres, double offsetShare) {
		return (floor, random) -> grid(floor.outline(), spacingMetres, offsetShare);
	}

	/** Every corridor along its centre line, then the grid's places outside the corridors. */
	static Walk corridorsAndGrid(double corridorSpacingMetres, double gridSpacingMetres, double offsetShare) {
		return (floor, random) -> {
			List<Place> places = new ArrayList<>();
			for (Corridor corridor : floor.corridors()) {
				double length = corridor.length();
				for (double at = corridorSpacingMetres
						* Math.max(0.1, offsetShare); at < length; at += corridorSpacingMetres) {
					double x = corridor.x1() + (corridor.x2() - corridor.x1()) * at / length;
					double y = corridor.y1() + (corridor.y2() - corridor.y1()) * at / length;
					places.add(new Place(x, y));
				}
			}
			for (Place place : grid(floor.outline(), gridSpacingMetres, offsetShare)) {
				if (floor.corridors().stream().noneMatch(c -> c.contains(place.x(), place.y()))) {
					places.add(place);
				}
			}
			return places;
		};
	}

	/** As a visitor wanders: straight from one chance place to the next, a stop every {@code stepMetres}. */
	static Walk wander(int stops, double stepMetres) {
		return (floor, random) -> {
			List<Place> places = new ArrayList<>();
			FloorOutline outline = floor.outline();
			Place here = anywhere(outline, random);
			Place goal = anywhere(outline, random);
			while (places.size() < stops) {
				if (outline.contains(here.x(), here.y())) {
					places.add(here);
				}
				while (here.metresTo(goal) < stepMetres) {
					goal = anywhere(outline, random);
				}
				double share = stepMetres / here.metresTo(goal);
				here = new Place(here.x() + share * (goal.x() - here.x()), here.y() + share * (goal.y() - here.y()));
			}
			return places;
		};
	}

	/** Exactly {@code stops} places spread evenly: the widest grid that has enough, the surplus left out evenly. */
	static Walk spread(int stops) {
		return (floor, random) -> {
			double spacing = 1.05 * Math.sqrt(floor.outline().area() / Math.max(1, stops));
			List<Place> all = grid(floor.outline(), spacing, 0.5);
			while (all.size() < stops) {
				spacing *= 0.98;
				all = grid(floor.outline(), spacing, 0.5);
			}
			List<Place> chosen = new ArrayList<>();
			for (int i = 0; i < stops; i++) {
				chosen.add(all.get((int) ((long) i * all.size() / stops)));
			}
			return chosen;
		};
	}

	private static List<Place> grid(FloorOutline outline, double spacing, double offsetShare) {
		List<Place> places = new ArrayList<>();
		boolean back = false;
		for (double y = spacing * offsetShare; y <= outline.depth(); y += spacing) {
			List<Place> row = new ArrayList<>();
			for (double x = spacing * offsetShare; x <= outline.width(); x += spacing) {
				if (outline.contains(x, y)) {
					row.add(new Place(x, y));
				}
			}
			if (back) {
				Collections.reverse(row);
			}
			places.addAll(row);
			back = !back;
		}
		return places;
	}

	private static Place anywhere(FloorOutline outline, SplittableRandom random) {
		while (true) {
			double x = random.nextDouble(0.5, outline.width() - 0.5);
			double y = random.nextDouble(0.5, outline.depth() - 0.5);
			if (outline.contains(x, y)) {
				return new Place(x, y);
			}
		}
	}
}
