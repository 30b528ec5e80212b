package org.cairnfield.core.change;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.cairnfield.core.stats.Median;
import org.cairnfield.core.stats.Pearson;
import org.cairnfield.core.stats.Percentile;

/** Which access point that appeared took the place of which one that vanished: each is the most alike of all to the other. */
final class Successors {

	/** Two different access points are that much alike once in a hundred pairs; successors are more. */
	private static final double OTHERS_PERCENT = 99;
	/** One that stayed is as much alike to itself in the middle; successors are such a share of it at least. */
	private static final double SHARE_OF_STAYED = 0.6;
	/** As many access points are compared to learn how much that is. */
	private static final int COMPARED = 100;
	private static final int FEWEST_LEVELS = 5;

	private Successors() {
	}

	/**
	 * @param all by address, of all access points of both surveys
	 * @return by address of one that vanished, that of its successor
	 */
	static Map<String, String> of(Map<String, Presence> all, List<String> vanished, List<String> appeared) {
		double[][] alike = new double[vanished.size()][appeared.size()];
		for (int v = 0; v < alike.length; v++) {
			for (int a = 0; a < alike[v].length; a++) {
				alike[v][a] = alike(all.get(vanished.get(v)), all.get(appeared.get(a)));
			}
		}
		double least = vanished.isEmpty() || appeared.isEmpty() ? 1 : least(all.values());
		Map<String, String> successors = new HashMap<>();
		for (int v = 0; v < alike.length; v++) {
			for (int a = 0; a < alike[v].length; a++) {
				if (alike[v][a] > least && isLargest(alike, v, a)) {
					successors.put(vanished.get(v), appeared.get(a));
				}
			}
		}
		return successors;
	}

	private static double least(Collection<Presence> all) {
		List<Presence> stayed = all.stream()
				.filter(one -> one.stayed() && one.steadyPlaces(true) >= ChangeLimits.STEADY_PLACES).toList();
		double[] others = ofOthers(stayed);
		return others.length == 0 ? 1
				: Math.max(Percentile.of(others, OTHERS_PERCENT),
						SHARE_OF_STAYED * Median.of(stayed.stream().mapToDouble(one -> alike(one, one)).toArray()));
	}

	/** How much alike two different access points are, pair by pair. */
	private static double[] ofOthers(List<Presence> stayed) {
		int step = Math.max(1, stayed.size() / COMPARED);
		double[] alike = new double[(stayed.size() / step + 1) * (stayed.size() / step + 1)];
		int pairs = 0;
		for (int i = 0; i < stayed.size(); i += step) {
			for (int j = 0; j < stayed.size(); j += step) {
				if (i != j) {
					alike[pairs++] = alike(stayed.get(i), stayed.get(j));
				}
			}
		}
		return Arrays.copyOf(alike, pairs);
	}

	/** Whether no other pair of either is as much alike. */
	private static boolean isLargest(double[][] alike, int v, int a) {
		for (int other = 0; other < alike.length; other++) {
			if (other != v && alike[other][a] >= alike[v][a]) {
				return false;
			}
		}
		for (int other = 0; other < alike[v].length; other++) {
			if (other != a && alike[v][other] >= alike[v][a]) {
				return false;
			}
		}
		return true;
	}

	/** Share of places in common among those of either, times the correlation of levels there, 0 … 1. */
	private static double alike(Presence gone, Presence come) {
		int both = 0;
		int levels = 0;
		double[] then = new double[gone.size()];
		double[] now = new double[then.length];
		int j = 0;
		for (int i = 0; i < gone.size(); i++) {
			while (j < come.size() && come.place(j) < gone.place(i)) {
				j++;
			}
			if (j < come.size() && come.place(j) == gone.place(i)) {
				both += gone.isSteady(i, true) && come.isSteady(j, false) ? 1 : 0;
				if (gone.share(i, true) > 0 && come.share(j, false) > 0) {
					then[levels] = gone.level(i, true);
					now[levels++] = come.level(j, false);
				}
			}
		}
		int either = gone.steadyPlaces(true) + come.steadyPlaces(false) - both;
		if (levels < FEWEST_LEVELS || both == 0) {
			return 0;
		}
		double r = Pearson.r(Arrays.copyOf(then, levels), Arrays.copyOf(now, levels));
		return Double.isNaN(r) ? 0 : Math.max(0, r) * both / either;
	}
}
