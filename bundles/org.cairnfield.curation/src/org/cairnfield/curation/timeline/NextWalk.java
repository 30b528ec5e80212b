package org.cairnfield.curation.timeline;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

import org.cairnfield.core.geometry.ShortWalk;
import org.cairnfield.core.task.Workers;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;

/**
 * The next survey of a site: the places where a new sample would tell most, in an order in which they can be walked, floor by
 * floor.
 *
 * @param site   its id
 * @param metres of the walk, the stairs not counted
 */
public record NextWalk(String site, List<NextPlace> places, double metres) {

	/** As many places as one person measures in an hour or so; common practice. */
	public static final int USUAL_PLACES = 40;

	public NextWalk {
		places = List.copyOf(places);
	}

	/**
	 * Plans the walk.
	 *
	 * @param archive that nobody changes meanwhile
	 * @param most    places, at least 1
	 */
	public static NextWalk of(Archive archive, Site site, int most, Workers workers) {
		List<NextPlace> best = new PlaceWorth(archive, site, workers).places().stream()
				.sorted(Comparator.comparingDouble(NextPlace::worth).reversed().thenComparing(NextPlace::floor)
						.thenComparing(NextPlace::x)
						.thenComparing(NextPlace::y))
				.limit(most).toList();
		SortedMap<Integer, List<NextPlace>> floors = new TreeMap<>();
		best.forEach(place -> floors.computeIfAbsent(place.floor(), floor -> new ArrayList<>()).add(place));
		List<NextPlace> walk = new ArrayList<>();
		double metres = 0;
		for (List<NextPlace> floor : floors.values()) {
			double[] x = floor.stream().mapToDouble(NextPlace::x).toArray();
			double[] y = floor.stream().mapToDouble(NextPlace::y).toArray();
			int[] order = ShortWalk.order(x, y);
			metres += ShortWalk.metres(x, y, order);
			for (int place : order) {
				walk.add(floor.get(place));
			}
		}
		return new NextWalk(site.getId(), walk, metres);
	}
}
