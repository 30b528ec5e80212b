package org.cairnfield.core.match;

import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;

/**
 * Several searches of one split at once, to compare them: a centroid or cell that some of them look at is looked at once for all.
 * Each finds what its {@link SplitMatcher} finds alone, and counts what that compares.
 */
public final class JointSearch {

	private final SplitMap split;
	private final List<Search> searches;
	private final boolean relative;
	private final int k;

	/**
	 * @param split    in two levels where any of the searches is; a small one has one level only, which is then searched
	 * @param searches all by relative distances, or none; of numbers of voters up to k
	 * @throws IllegalArgumentException for both, or several cells of a split whose zones overlap
	 */
	public JointSearch(SplitMap split, List<Search> searches, int k) {
		if (searches.stream().map(Search::relative).distinct().count() > 1) {
			throw new IllegalArgumentException(
					"some searches by relative distances and some by plain ones: " + searches);
		}
		searches.forEach(search -> search.matcher(split)); // refuses what cannot be searched
		this.split = split;
		this.searches = List.copyOf(searches);
		this.relative = !searches.isEmpty() && searches.get(0).relative();
		this.k = k;
	}

	/** The map that is searched; queries are aligned to it. */
	public Signals signals() {
		return split.signals;
	}

	/**
	 * Matches every query.
	 *
	 * @param votings of k up to that of the search
	 * @return by search, then by voting
	 */
	public List<List<Estimates>> estimates(List<Voting> votings, SignalRows queries, Workers workers) {
		List<List<Estimates>> out = searches.stream()
				.map(search -> votings.stream().map(v -> new Estimates(queries.size())).toList()).toList();
		workers.progress().begin("matching", queries.size());
		workers.forRanges(queries.size(), () -> {
			Session session = new Session();
			return (from, to) -> {
				for (int q = from; q < to; q++) {
					session.begin(queries, q);
					for (int s = 0; s < out.size(); s++) {
						Nearest nearest = session.nearest(s);
						for (int v = 0; v < votings.size(); v++) {
							votings.get(v).vote(split.signals.map(), nearest, out.get(s).get(v), q);
							out.get(s).get(v).setComparisons(q, session.comparisons[s]);
						}
					}
					session.end(queries, q);
				}
			};
		});
		return out;
	}

	private final class Session {
		private final SplitQuery query = new SplitQuery(split, relative);
		private final boolean[] twoLevels = new boolean[searches.size()];
		private final double[] toCells = new double[split.centroids.size()];
		private final double[] toGroups = new double[split.groups()];
		private final Nearest groups;
		/** By search: the cells it looks at. */
		private final Nearest[] cells = new Nearest[searches.size()];
		private final int[] comparisons = new int[searches.size()];
		/** By cell, and last of the pool: its nearest samples, null where no search has looked yet. */
		private final Nearest[] found = new Nearest[split.cells.length + 1];
		private final Nearest[] spare;
		private final int[] looked;
		private int used;
		private final Nearest nearest = new Nearest(k, split.rank);

		Session() {
			int most = 1;
			int seen = 1;
			for (int s = 0; s < twoLevels.length; s++) {
				Search search = searches.get(s);
				twoLevels[s] = search.twoLevels() && split.groups != null;
				cells[s] = new Nearest(search.cellProbes(), SplitQuery.inOrder(split.cells.length));
				most = Math.max(most, search.groupProbes());
				seen += search.cellProbes();
			}
			groups = new Nearest(most, SplitQuery.inOrder(toGroups.length));
			spare = Stream.generate((Supplier<Nearest>) () -> new Nearest(k, split.rank)).limit(seen)
					.toArray(Nearest[]::new);
			looked = new int[seen];
		}

		void begin(SignalRows queries, int row) {
			query.begin(queries, row);
			for (Nearest each : cells) {
				each.clear();
			}
			Arrays.fill(comparisons, 0);
			if (isAny(false)) {
				split.centroids.distances(queries, row, toCells);
				for (int cell = 0; cell < toCells.length; cell++) {
					offer(cell, query.coarse(split.centroids, cell, toCells[cell]), false, 0);
				}
			}
			if (isAny(true)) {
				findGroups(queries, row);
				for (int g = 0; g < groups.size(); g++) {
					for (int cell : split.cellsOfGroup[groups.sample(g)]) {
						offer(cell, query.toCell(cell), true, g);
					}
				}
			}
		}

		private boolean isAny(boolean inTwoLevels) {
			for (boolean each : twoLevels) {
				if (each == inTwoLevels) {
					return true;
				}
			}
			return false;
		}

		private void findGroups(SignalRows queries, int row) {
			Centroids of = split.groups;
			of.distances(queries, row, toGroups);
			groups.clear();
			for (int g = 0; g < toGroups.length; g++) {
				groups.offer(g, query.coarse(of, g, toGroups[g]));
			}
			for (int s = 0; s < twoLevels.length; s++) {
				comparisons[s] += twoLevels[s] ? toGroups.length : 0;
			}
		}

		/** To all searches of one level, or to those of two that enter the group. @param group how many groups are nearer */
		private void offer(int cell, double d, boolean inTwoLevels, int group) {
			for (int s = 0; s < cells.length; s++) {
				if (twoLevels[s] == inTwoLevels && (!inTwoLevels || group < searches.get(s).groupProbes())) {
					comparisons[s]++;
					if (d <= cells[s].reach()) {
						cells[s].offer(cell, d);
					}
				}
			}
		}

		/** What one of the searches finds; valid until the next call. */
		Nearest nearest(int search) {
			nearest.clear();
			for (int i = 0; i < cells[search].size(); i++) {
				add(cells[search].sample(i), search);
			}
			add(split.cells.length, search);
			return nearest;
		}

		private void add(int cell, int search) {
			if (found[cell] == null) {
				found[cell] = spare[used];
				looked[used++] = cell;
				found[cell].clear();
				query.search(cell, found[cell]);
			}
			for (int i = 0; i < found[cell].size(); i++) {
				nearest.offer(found[cell].sample(i), found[cell].distance(i));
			}
			comparisons[search] += split.packed.size(cell);
		}

		void end(SignalRows queries, int row) {
			query.end(queries, row);
			while (used > 0) {
				found[looked[--used]] = null;
			}
		}
	}
}
