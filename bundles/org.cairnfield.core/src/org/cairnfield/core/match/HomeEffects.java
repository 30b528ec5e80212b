package org.cairnfield.core.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.Components;
import org.cairnfield.core.distance.DistanceKernel;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;

/**
 * What it does to positions where a sample goes that a split has left without a cluster: into one of the clusters, or into the
 * pool, which every query searches; each compared with leaving it out of the map. Samples of the map itself are the questions,
 * each without the samples of its own fold, so that no answer stands at the place asked about. Each home is judged alone:
 * effects do not add up. Centroids are held still, and groups of cells are passed over: of all cells the nearest are searched.
 */
public final class HomeEffects {

	/** In place of a cluster. */
	public static final int POOL = -2;

	/**
	 * Where a sample could go.
	 *
	 * @param sample  without a cluster
	 * @param cluster its number, or {@link #POOL}
	 */
	public record Home(int sample, int cluster) {
	}

	private static final double Z_95 = 1.959964;

	/**
	 * What a home does, compared with leaving the sample out.
	 *
	 * @param asked            questions that could have found the sample
	 * @param affected         those whose position changes
	 * @param changeMetres     change of the error in the plane, mean over all that were asked; below 0 for better
	 * @param halfWidthMetres  half of its 95 % interval; changes at one place count as one observation
	 * @param floorsWon        questions put on their floor by it, less those put off it
	 * @param comparisonsAdded fingerprints compared more a query, mean
	 */
	public record Effect(int asked, int affected, double changeMetres, double halfWidthMetres, int floorsWon,
			double comparisonsAdded) {
	}

	private final Signals signals;
	private final RadioMap map;
	private final SignalRows rows;
	private final Search search;
	private final int[] fold;
	private final int[][] cells;
	private final Centroids centroids;
	/** The cluster of each cell. */
	private final int[] clusterOfCell;
	private final int[] rank;
	private final int[] samples;
	/** By place in {@link #samples}: homes of that sample, and the cell that each would be in, or {@link #POOL}. */
	private final int[][] homesOf;
	private final int[][] cellsOf;
	private final int homes;
	private final int[] questions;
	private final Answer[] answers;

	private HomeEffects(Signals signals, Clustering clusters, Search search, List<Home> wanted, int[] fold,
			int[] questions, long seed,
			Workers workers) {
		this.signals = signals;
		this.questions = questions;
		answers = new Answer[questions.length];
		this.search = search;
		this.fold = fold;
		map = signals.map();
		rows = signals.rows();
		rank = Neighbours.rankByPlace(map);
		cells = search.cells(signals, clusters, seed, workers).members();
		centroids = Centroids.of(signals, cells, Centroids.Kind.MEAN);
		clusterOfCell = Arrays.stream(cells).mapToInt(members -> clusters.label(members[0])).toArray();
		homes = wanted.size();
		Map<Integer, List<Integer>> bySample = new TreeMap<>();
		for (int h = 0; h < homes; h++) {
			bySample.computeIfAbsent(wanted.get(h).sample(), s -> new ArrayList<>()).add(h);
		}
		samples = bySample.keySet().stream().mapToInt(Integer::intValue).toArray();
		homesOf = bySample.values().stream().map(of -> of.stream().mapToInt(Integer::intValue).toArray())
				.toArray(int[][]::new);
		double[] coarse = new double[cells.length];
		cellsOf = new int[samples.length][];
		for (int i = 0; i < samples.length; i++) {
			centroids.distances(rows, samples[i], coarse);
			cellsOf[i] = Arrays.stream(homesOf[i]).map(h -> cell(wanted.get(h).cluster(), coarse)).toArray();
		}
	}

	/** The cell of a cluster that a sample would be in: the nearest. */
	private int cell(int cluster, double[] coarse) {
		if (cluster == POOL) {
			return POOL;
		}
		return IntStream.range(0, cells.length).filter(c -> clusterOfCell[c] == cluster).boxed()
				.min((a, b) -> Double.compare(coarse[a], coarse[b]))
				.orElseThrow(() -> new IllegalArgumentException("no cluster " + cluster));
	}

	/**
	 * @param clusters      noise is left out of the search
	 * @param wanted        homes of noise samples
	 * @param fold          by sample; see {@link org.cairnfield.core.choose.PositionBlocks#folds}
	 * @param questions     samples that are asked about
	 * @param seed          of {@link Search#cells}
	 */
	public static HomeEffects of(Signals signals, Clustering clusters, Search search, List<Home> wanted, int[] fold,
			int[] questions,
			long seed, Workers workers) {
		HomeEffects effects = new HomeEffects(signals, clusters, search, wanted, fold,
				clusters.clusters() == 0 ? new int[0] : questions, seed, workers);
		effects.ask(workers);
		return effects;
	}

	/** What one question says of the homes that would have changed its position, and which cells it searched. */
	private record Answer(int[] home, double[] change, int[] floor, int[] searched) {
	}

	private void ask(Workers workers) {
		workers.progress().begin(Messages.HomeEffects_effectsOfHomes, questions.length);
		workers.forRanges(questions.length, () -> {
			Asking asking = new Asking();
			return (from, to) -> {
				for (int q = from; q < to; q++) {
					answers[q] = asking.answer(questions[q]);
				}
			};
		});
	}

	/** One thread's questions. */
	private final class Asking {
		private final DistanceKernel kernel = signals.kernel();
		private final double[] row = new double[signals.components().largest()];
		private final double[] distance = new double[signals.size()];
		private final double[] coarse = new double[cells.length];
		private final boolean[] isSearched = new boolean[cells.length];
		private final Nearest nearestCells = new Nearest(search.cellProbes(),
				IntStream.range(0, cells.length).toArray());
		private final Nearest nearest = new Nearest(search.voting().k(), rank);
		private final Nearest with = new Nearest(search.voting().k(), rank);
		private final Estimates before = new Estimates(1);
		private final Estimates after = new Estimates(1);

		Answer answer(int question) {
			measure(question);
			int[] searched = findCells(question);
			nearest.clear();
			for (int cell : searched) {
				isSearched[cell] = true;
				for (int s : cells[cell]) {
					if (fold[s] != fold[question] && distance[s] <= nearest.reach()) {
						nearest.offer(s, distance[s]);
					}
				}
			}
			List<double[]> changes = new ArrayList<>();
			if (nearest.size() > 0) {
				search.voting().vote(map, nearest, before, 0);
				for (int i = 0; i < samples.length; i++) {
					if (fold[samples[i]] != fold[question] && distance[samples[i]] <= nearest.reach()) {
						change(question, i, changes);
					}
				}
			}
			for (int cell : searched) {
				isSearched[cell] = false;
			}
			return new Answer(changes.stream().mapToInt(c -> (int) c[0]).toArray(),
					changes.stream().mapToDouble(c -> c[1]).toArray(),
					changes.stream().mapToInt(c -> (int) c[2]).toArray(), searched);
		}

		private void measure(int question) {
			Components components = signals.components();
			for (int c = 0; c < components.count(); c++) {
				int n = kernel.row(rows, question, c, row);
				for (int place = 0; place < n; place++) {
					distance[components.member(c, place)] = row[place];
				}
			}
		}

		private int[] findCells(int question) {
			centroids.distances(rows, question, coarse);
			nearestCells.clear();
			for (int c = 0; c < cells.length; c++) {
				double both = rows.magnitude(question) + centroids.magnitude(c);
				nearestCells.offer(c, search.relative() && both > 0 ? coarse[c] / both : coarse[c]);
			}
			return IntStream.range(0, nearestCells.size()).map(nearestCells::sample).toArray();
		}

		private void change(int question, int i, List<double[]> changes) {
			boolean any = false;
			for (int cell : cellsOf[i]) {
				any |= cell == POOL || isSearched[cell];
			}
			if (!any) {
				return;
			}
			with.clear();
			for (int j = 0; j < nearest.size(); j++) {
				with.offer(nearest.sample(j), nearest.distance(j));
			}
			with.offer(samples[i], distance[samples[i]]);
			search.voting().vote(map, with, after, 0);
			double metres = metres(after, question) - metres(before, question);
			int floors = right(after, question) - right(before, question);
			if (metres != 0 || floors != 0) {
				for (int h = 0; h < homesOf[i].length; h++) {
					if (cellsOf[i][h] == POOL || isSearched[cellsOf[i][h]]) {
						changes.add(new double[] { homesOf[i][h], metres, floors });
					}
				}
			}
		}

		private double metres(Estimates at, int question) {
			return Math.hypot(at.x(0) - map.x(question), at.y(0) - map.y(question));
		}

		private int right(Estimates at, int question) {
			return at.site(0) == map.site(question) && at.floor(0) == map.floor(question) ? 1 : 0;
		}
	}

	/** An effect for each home, in their order. */
	public List<Effect> all() {
		return of(question -> true);
	}

	/** The same by some of the questions only, as though no others had been asked. */
	public List<Effect> of(IntPredicate isCounted) {
		double[] change = new double[homes];
		int[] affected = new int[homes];
		int[] floors = new int[homes];
		List<Map<List<Number>, Double>> byPlace = new ArrayList<>();
		for (int h = 0; h < homes; h++) {
			byPlace.add(new HashMap<>());
		}
		int[] searched = new int[cells.length];
		int[] inFold = new int[Arrays.stream(fold).max().orElse(0) + 1];
		int counted = 0;
		for (int q = 0; q < questions.length; q++) {
			if (!isCounted.test(questions[q])) {
				continue;
			}
			Answer answer = answers[q];
			counted++;
			inFold[fold[questions[q]]]++;
			Arrays.stream(answer.searched()).forEach(cell -> searched[cell]++);
			List<Number> place = List.of(map.site(questions[q]), map.floor(questions[q]), map.x(questions[q]),
					map.y(questions[q]));
			for (int i = 0; i < answer.home().length; i++) {
				int h = answer.home()[i];
				change[h] += answer.change()[i];
				affected[h]++;
				floors[h] += answer.floor()[i];
				byPlace.get(h).merge(place, answer.change()[i], Double::sum);
			}
		}
		Effect[] effects = new Effect[homes];
		for (int i = 0; i < samples.length; i++) {
			int asked = counted - inFold[fold[samples[i]]];
			for (int j = 0; j < homesOf[i].length; j++) {
				int h = homesOf[i][j];
				double squares = byPlace.get(h).values().stream().mapToDouble(d -> d * d).sum();
				double share = counted == 0 ? Double.NaN
						: cellsOf[i][j] == POOL ? 1 : (double) searched[cellsOf[i][j]] / counted;
				effects[h] = asked == 0 ? new Effect(0, 0, Double.NaN, Double.NaN, 0, share)
						: new Effect(asked, affected[h], change[h] / asked, Z_95 * Math.sqrt(squares) / asked,
								floors[h], share);
			}
		}
		return List.of(effects);
	}
}
