package org.cairnfield.core.match;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.reduce.GaussianProcess;
import org.cairnfield.core.reduce.Reduction;
import org.cairnfield.core.reduce.SignalMatrix;
import org.cairnfield.core.stats.Draw;
import org.cairnfield.core.task.Workers;

/**
 * Positions by regression on a few coordinates of a fingerprint instead of by nearest samples. A {@link GaussianProcess} fitted to
 * landmarks of the map predicts x and y relative to the mean of the site, and an indicator for each floor of each site. The floor with
 * the largest prediction wins; x and y are then relative to its site.
 *
 * <p>A query is compared with every landmark, but in the few coordinates only. Fitting 2,000 landmarks takes about 2 s of processor
 * time and 80 MB.
 */
public final class RegressedPositions {

	/** Landmarks by which the kernel is chosen. */
	private static final int FOR_KERNEL = 400;

	/** A floor of a site. */
	private record Storey(int site, int floor) {
	}

	private final Signals signals;
	private final Reduction reduction;
	private final int components;
	private final GaussianProcess process;
	private final List<Storey> storeys;
	private final Frame frame;

	private RegressedPositions(Signals signals, Reduction reduction, int components, GaussianProcess process,
			List<Storey> storeys, Frame frame) {
		this.signals = signals;
		this.reduction = reduction;
		this.components = components;
		this.process = process;
		this.storeys = storeys;
		this.frame = frame;
	}

	/**
	 * Fits it to a map.
	 *
	 * @param signals    of at least one sample
	 * @param reduction  of a {@link SignalMatrix} of these signals
	 * @param components coordinates that are used
	 * @param landmarks  samples that are drawn by seed, at most {@link GaussianProcess#MOST_INPUTS}
	 */
	public static RegressedPositions of(Signals signals, Reduction reduction, int components, int landmarks, long seed,
			Workers workers) {
		RadioMap map = signals.map();
		int[] some = Draw.some(landmarks, map.size(), seed);
		SignalMatrix matrix = new SignalMatrix(signals);
		double[][] inputs = Arrays.stream(some).mapToObj(s -> reduction.scores(matrix, s, components))
				.toArray(double[][]::new);
		Map<Storey, Integer> storeys = new LinkedHashMap<>();
		for (int s : some) {
			storeys.putIfAbsent(storey(map, s), storeys.size());
		}
		Frame frame = Frame.of(map, some);
		double[][] targets = new double[some.length][2 + storeys.size()];
		for (int i = 0; i < some.length; i++) {
			targets[i][0] = (map.x(some[i]) - frame.x[map.site(some[i])]) / frame.scale;
			targets[i][1] = (map.y(some[i]) - frame.y[map.site(some[i])]) / frame.scale;
			Arrays.fill(targets[i], 2, targets[i].length, -1.0 / storeys.size());
			targets[i][2 + storeys.get(storey(map, some[i]))] += 1;
		}
		int[] few = Draw.some(FOR_KERNEL, some.length, seed);
		GaussianProcess.Kernel kernel = GaussianProcess.likeliest(pick(inputs, few), pick(targets, few), workers);
		return new RegressedPositions(signals, reduction, components,
				GaussianProcess.of(inputs, targets, kernel, workers),
				List.copyOf(storeys.keySet()), frame);
	}

	private static Storey storey(RadioMap map, int sample) {
		return new Storey(map.site(sample), map.floor(sample));
	}

	private static double[][] pick(double[][] rows, int[] some) {
		return Arrays.stream(some).mapToObj(i -> rows[i]).toArray(double[][]::new);
	}

	/** Samples that it was fitted to: with so many a query is compared. */
	public int landmarks() {
		return process.inputs();
	}

	/** The kernel under which the landmarks' places were most likely. */
	public GaussianProcess.Kernel kernel() {
		return process.kernel();
	}

	/**
	 * Estimates the position of every query.
	 *
	 * @param queries of {@link Signals#align}
	 */
	public Estimates estimates(SignalRows queries, Workers workers) {
		Estimates estimates = new Estimates(queries.size());
		SignalMatrix matrix = new SignalMatrix(signals, queries);
		workers.progress().begin("matching", queries.size());
		workers.forRanges(queries.size(), () -> (from, to) -> {
			for (int q = from; q < to; q++) {
				double[] means = process.means(reduction.scores(matrix, q, components));
				Storey storey = storeys.get(largest(means, 2) - 2);
				estimates.set(q, storey.site(), storey.floor(), frame.x[storey.site()] + frame.scale * means[0],
						frame.y[storey.site()] + frame.scale * means[1]);
				estimates.setComparisons(q, landmarks());
			}
		});
		return estimates;
	}

	private static int largest(double[] values, int from) {
		int best = from;
		for (int i = from + 1; i < values.length; i++) {
			best = values[i] > values[best] ? i : best;
		}
		return best;
	}

	/** Mean positions by site, and the spread around them in metres. */
	private record Frame(double[] x, double[] y, double scale) {

		static Frame of(RadioMap map, int[] some) {
			int sites = map.sites().size();
			double[] x = new double[sites];
			double[] y = new double[sites];
			int[] count = new int[sites];
			for (int s : some) {
				x[map.site(s)] += map.x(s);
				y[map.site(s)] += map.y(s);
				count[map.site(s)]++;
			}
			for (int site = 0; site < sites; site++) {
				x[site] /= Math.max(1, count[site]);
				y[site] /= Math.max(1, count[site]);
			}
			double squares = 0;
			for (int s : some) {
				squares += Math.pow(map.x(s) - x[map.site(s)], 2) + Math.pow(map.y(s) - y[map.site(s)], 2);
			}
			return new Frame(x, y, squares > 0 ? Math.sqrt(squares / (2 * some.length)) : 1);
		}
	}
}
