package org.cairnfield.ui.internal.history.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.cairnfield.archive.history.SavePoint;

/** Lays out save points, the latest first, in lanes: each line of work is one, and lines meet where work was brought together. */
public final class Branches {

	/**
	 * A line of the list.
	 *
	 * @param lane    of the save point, from 0
	 * @param isBelow whether a line leads up from it to a later save point
	 * @param past    lanes that pass it by
	 * @param down    lanes that lead down from it, one to each parent in the list
	 */
	public record Line(int lane, boolean isBelow, List<Integer> past, List<Integer> down) {

		public Line {
			past = List.copyOf(past);
			down = List.copyOf(down);
		}

		/** How many lanes it takes. */
		public int width() {
			int most = lane;
			for (List<Integer> lanes : List.of(past, down)) {
				most = lanes.stream().reduce(most, Math::max);
			}
			return most + 1;
		}
	}

	/** Id of the save point that a lane leads to; null for a free lane. */
	private final List<String> lanes = new ArrayList<>();
	private final Map<String, Integer> places = new HashMap<>();

	private Branches() {
	}

	/** @param points as they are listed; a parent that is listed before its child, as by a wrong clock, gets no line */
	public static List<Line> of(List<SavePoint> points) {
		Branches branches = new Branches();
		for (int i = 0; i < points.size(); i++) {
			branches.places.put(points.get(i).id(), i);
		}
		List<Line> lines = new ArrayList<>();
		for (int i = 0; i < points.size(); i++) {
			lines.add(branches.line(points.get(i), i));
		}
		return lines;
	}

	private Line line(SavePoint point, int at) {
		int lane = lanes.indexOf(point.id());
		boolean isBelow = lane >= 0;
		if (!isBelow) {
			lane = free();
		}
		lanes.set(lane, null);
		List<Integer> past = new ArrayList<>();
		for (int k = 0; k < lanes.size(); k++) {
			if (lanes.get(k) != null) {
				past.add(k);
			}
		}
		List<Integer> down = new ArrayList<>();
		for (String parent : point.parents()) {
			if (places.getOrDefault(parent, -1) > at) {
				int to = lanes.indexOf(parent);
				if (to < 0) {
					to = lanes.get(lane) == null ? lane : free();
					lanes.set(to, parent);
				}
				down.add(to);
			}
		}
		return new Line(lane, isBelow, past, down);
	}

	private int free() {
		int lane = lanes.indexOf(null);
		if (lane < 0) {
			lane = lanes.size();
			lanes.add(null);
		}
		return lane;
	}
}
