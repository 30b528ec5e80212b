package org.cairnfield.core.change;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.cairnfield.core.map.RadioMap;

/**
 * Where two surveys of one site have both been. A place is where one or several samples of the earlier survey are; a sample of
 * the later one belongs to the nearest place on its floor, where one is near enough.
 */
public final class SharedPlaces {

	private record Cell(int floor, long column, long row) {
	}

	private record Spot(int floor, double x, double y) {
	}

	private final List<Spot> spots = new ArrayList<>();
	private final List<int[]> before = new ArrayList<>();
	private final List<int[]> after = new ArrayList<>();

	private SharedPlaces() {
	}

	/**
	 * Takes time by the samples, and by how many places lie within the radius.
	 *
	 * @param metres how far apart two samples of one place may be in the plane, above 0
	 */
	public static SharedPlaces of(RadioMap before, RadioMap after, double metres) {
		Map<Spot, List<Integer>> places = new LinkedHashMap<>();
		for (int s = 0; s < before.size(); s++) {
			places.computeIfAbsent(new Spot(before.floor(s), before.x(s), before.y(s)), spot -> new ArrayList<>())
					.add(s);
		}
		Map<Cell, List<Spot>> grid = new HashMap<>();
		places.keySet().forEach(spot -> grid
				.computeIfAbsent(cell(spot.floor, spot.x, spot.y, metres, 0, 0), cell -> new ArrayList<>()).add(spot));
		Map<Spot, List<Integer>> visitors = new HashMap<>();
		for (int s = 0; s < after.size(); s++) {
			Spot nearest = nearest(grid, after.floor(s), after.x(s), after.y(s), metres);
			if (nearest != null) {
				visitors.computeIfAbsent(nearest, spot -> new ArrayList<>()).add(s);
			}
		}
		SharedPlaces shared = new SharedPlaces();
		places.forEach((spot, samples) -> {
			if (visitors.containsKey(spot)) {
				shared.spots.add(spot);
				shared.before.add(samples.stream().mapToInt(Integer::intValue).toArray());
				shared.after.add(visitors.get(spot).stream().mapToInt(Integer::intValue).toArray());
			}
		});
		return shared;
	}

	private static Cell cell(int floor, double x, double y, double metres, int right, int up) {
		return new Cell(floor, (long) Math.floor(x / metres) + right, (long) Math.floor(y / metres) + up);
	}

	/** Of equally near places the first of the survey. */
	private static Spot nearest(Map<Cell, List<Spot>> grid, int floor, double x, double y, double metres) {
		Spot nearest = null;
		double least = metres;
		for (int right = -1; right <= 1; right++) {
			for (int up = -1; up <= 1; up++) {
				for (Spot spot : grid.getOrDefault(cell(floor, x, y, metres, right, up), List.of())) {
					double distance = Math.hypot(spot.x - x, spot.y - y);
					if (distance < least || nearest == null && distance == least) {
						least = distance;
						nearest = spot;
					}
				}
			}
		}
		return nearest;
	}

	/** The number of places. */
	public int size() {
		return before.size();
	}

	int floor(int place) {
		return spots.get(place).floor;
	}

	/** Metres, in the frame of the floor. */
	double x(int place) {
		return spots.get(place).x;
	}

	double y(int place) {
		return spots.get(place).y;
	}

	/** Samples of the earlier survey at a place. */
	public int[] before(int place) {
		return before.get(place);
	}

	/** Samples of the later survey at a place. */
	int[] after(int place) {
		return after.get(place);
	}
}
