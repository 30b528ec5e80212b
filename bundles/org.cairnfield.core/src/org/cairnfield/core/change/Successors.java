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

	/** Two different access points are that much alike once in a hundred pairs; successors are at least. */
	private static final double OTHERS_PERCENT = 99;
	/** Or once in twenty pairs, where no other comes near and levels agree in the mean, what one device reads above the other taken out. */
	private static final double SOME_PERCENT = 95;
	private static final double NEAR = 0.8;
	private static final double SAME_LEVEL_DB = 4;
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
		double[] usual = vanished.isEmpty() || appeared.isEmpty() ? new double[0] : ofOthers(all.values());
		double least = usual.length == 0 ? 1 : Percentile.of(usual, OTHERS_PERCENT);
		double alone = usual.length == 0 ? 1 : Percentile.of(usual, SOME_PERCENT);
		double shift = Median.of(all.values().stream().filter(one -> one.wasHeard() && one.isHeard()).mapToDouble(one -> meanChange(one, one))
				.filter(change -> !Double.isNaN(change)).toArray());
		Map<String, String> successors = new HashMap<>();
		for (int v = 0; v < alike.length; v++) {
			int best = -1;
			for (int a = 0; a < alike[v].length; a++) {
				best = best < 0 || alike[v][a] > alike[v][best] ? a : best;
			}
			if (best >= 0 && (alike[v][best] > least && isLargest(alike, v, best, 1) || alike[v][best] > alone && isLargest(alike, v, best, NEAR)
					&& Math.abs(meanChange(all.get(vanished.get(v)), all.get(appeared.get(best))) - shift) <= SAME_LEVEL_DB)) {
				successors.put(vanished.get(v), appeared.get(best));
			}
		}
		return successors;
	}

	/** By how many dB the later one is louder, in the mean over places where both were heard; NaN where there is none. */
	private static double meanChange(Presence then, Presence now) {
		double sum = 0;
		int count = 0;
		for (int p = 0; p < then.levelThen.length; p++) {
			double change = now.levelNow[p] - then.levelThen[p];
			if (!Double.isNaN(change)) {
				sum += change;
				count++;
			}
		}
		return count == 0 ? Double.NaN : sum / count;
	}

	/** How much alike two different access points are that both surveys heard, pair by pair. */
	private static double[] ofOthers(Collection<Presence> all) {
		List<Presence> stayed = all.stream().filter(each -> each.wasHeard() && each.isHeard()).toList();
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

	/** Whether no other pair of either is more alike than such a share of this one. */
	private static boolean isLargest(double[][] alike, int v, int a, double share) {
		for (int other = 0; other < alike.length; other++) {
			if (other != v && alike[other][a] > share * alike[v][a]) {
				return false;
			}
		}
		for (int other = 0; other < alike[v].length; other++) {
			if (other != a && alike[v][other] > share * alike[v][a]) {
				return false;
			}
		}
		return true;
	}

	/** Share of places in common among those of either, times the correlation of levels there, 0 … 1. */
	private static double alike(Presence gone, Presence come) {
		int both = 0;
		int either = 0;
		int levels = 0;
		double[] then = new double[gone.shareThen.length];
		double[] now = new double[then.length];
		for (int p = 0; p < then.length; p++) {
			boolean was = gone.shareThen[p] >= Presence.STEADY;
			boolean is = come.shareNow[p] >= Presence.STEADY;
			both += was && is ? 1 : 0;
			either += was || is ? 1 : 0;
			if (gone.shareThen[p] > 0 && come.shareNow[p] > 0) {
				then[levels] = gone.levelThen[p];
				now[levels++] = come.levelNow[p];
			}
		}
		if (levels < FEWEST_LEVELS || both == 0) {
			return 0;
		}
		double r = Pearson.r(Arrays.copyOf(then, levels), Arrays.copyOf(now, levels));
		return Double.isNaN(r) ? 0 : Math.max(0, r) * both / either;
	}
}
