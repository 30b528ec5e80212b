package org.cairnfield.core.reduce;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.ScatteredMap;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;

class OrthogonalSearchTest {

	private static final Workers HERE = Workers.inline();

	/** Rows with zeros, and outputs that follow from some columns and chance. */
	private record Problem(double[][] rows, double[][] outputs) {

		static Problem of(long seed, int n, int columns, int outputs) {
			Random random = new Random(seed);
			double[][] rows = new double[n][columns];
			double[][] out = new double[n][outputs];
			double[][] weight = new double[outputs][columns];
			for (double[] w : weight) {
				Arrays.setAll(w, c -> random.nextInt(3) == 0 ? random.nextGaussian() : 0);
			}
			for (int r = 0; r < n; r++) {
				double common = random.nextGaussian();
				for (int c = 0; c < columns; c++) {
					rows[r][c] = random.nextInt(3) == 0 ? 0 : 3 + common + random.nextGaussian();
				}
				for (int o = 0; o < outputs; o++) {
					double sum = 5 + random.nextGaussian();
					for (int c = 0; c < columns; c++) {
						sum += weight[o][c] * rows[r][c];
					}
					out[r][o] = sum;
				}
			}
			return new Problem(rows, out);
		}

		OrthogonalSearch search(int most, double share) {
			return OrthogonalSearch.of(new DenseAsSparse(rows), outputs, most, share, HERE);
		}

		/** Coefficients by term, the constant first, then output: least squares by Commons Math's QR decomposition. */
		RealMatrix fitted(List<Integer> terms) {
			return new QRDecomposition(design(terms)).getSolver().solve(new Array2DRowRealMatrix(outputs));
		}

		private RealMatrix design(List<Integer> terms) {
			RealMatrix design = new Array2DRowRealMatrix(rows.length, terms.size() + 1);
			for (int r = 0; r < rows.length; r++) {
				design.setEntry(r, 0, 1);
				for (int t = 0; t < terms.size(); t++) {
					design.setEntry(r, t + 1, rows[r][terms.get(t)]);
				}
			}
			return design;
		}

		double squaresLeft(List<Integer> terms) {
			double norm = new Array2DRowRealMatrix(outputs).subtract(design(terms).multiply(fitted(terms)))
					.getFrobeniusNorm();
			return norm * norm;
		}

		/** Forward selection by brute force: every candidate is fitted, and the best one kept. */
		List<Integer> forward(int most) {
			List<Integer> chosen = new ArrayList<>();
			while (chosen.size() < most) {
				int best = -1;
				double least = Double.POSITIVE_INFINITY;
				for (int c = 0; c < rows[0].length; c++) {
					if (!chosen.contains(c)) {
						List<Integer> tried = new ArrayList<>(chosen);
						tried.add(c);
						double left = squaresLeft(tried);
						if (left < least) {
							least = left;
							best = c;
						}
					}
				}
				chosen.add(best);
			}
			return chosen;
		}
	}

	@Test
	void choosesAndFitsLikeForwardLeastSquares() {
		for (long seed = 1; seed <= 30; seed++) {
			Problem problem = Problem.of(seed, 80, 12, 1 + (int) (seed % 3));
			OrthogonalSearch found = problem.search(7, 1);
			List<Integer> expected = problem.forward(7);
			assertEquals(expected, Arrays.stream(found.columns()).boxed().toList(), "seed " + seed);
			double all = problem.squaresLeft(List.of());
			for (int terms = 0; terms <= 7; terms++) {
				RealMatrix fitted = problem.fitted(expected.subList(0, terms));
				for (int output = 0; output < problem.outputs()[0].length; output++) {
					double[] wanted = fitted.getColumn(output);
					double[] coefficients = found.coefficients(output, terms);
					double size = Arrays.stream(wanted).map(Math::abs).max().orElseThrow();
					assertArrayEquals(wanted, coefficients, 1e-12 * size, "seed " + seed + ", " + terms + " terms");
				}
				assertEquals(1 - problem.squaresLeft(expected.subList(0, terms)) / all, found.explained(terms), 1e-12);
			}
		}
	}

	@Test
	void stopsOnceEnoughIsExplained() {
		Problem problem = Problem.of(5, 80, 12, 2);
		OrthogonalSearch all = problem.search(12, 1);
		double share = (all.explained(3) + all.explained(4)) / 2;
		OrthogonalSearch some = problem.search(12, share);
		assertEquals(4, some.terms());
		assertArrayEquals(Arrays.copyOf(all.columns(), 4), some.columns());
		assertTrue(some.explained(4) >= share && some.explained(3) < share);
	}

	@Test
	void neverChoosesWhatFollowsFromTheChosen() {
		Problem problem = Problem.of(6, 60, 5, 1);
		double[][] rows = Arrays.stream(problem.rows())
				.map(r -> new double[] { r[0], r[1], r[0] + 2 * r[1], r[2], r[2], 4, 0, r[3] })
				.toArray(double[][]::new);
		OrthogonalSearch found = OrthogonalSearch.of(new DenseAsSparse(rows), problem.outputs(), 8, 1, HERE);
		assertEquals(4, found.terms());
		int[] chosen = Arrays.stream(found.columns()).sorted().toArray();
		assertTrue(chosen[2] == 3 && chosen[3] == 7, Arrays.toString(chosen)); // of equal columns the first
	}

	@Test
	void choosesNothingWhereNothingVaries() {
		OrthogonalSearch found = OrthogonalSearch.of(new DenseAsSparse(new double[][] { { 1, 2 }, { 2, 1 } }),
				new double[][] { { 3 }, { 3 } }, 2, 1, HERE);
		assertEquals(0, found.terms());
		assertArrayEquals(new double[] { 3 }, found.coefficients(0, 0));
	}

	@Test
	void explainsMoreOfPlacesWithEachAccessPoint() {
		Signals signals = Signals.of(ScatteredMap.of(4, 120));
		OrthogonalSearch found = OrthogonalSearch.of(new SignalMatrix(signals), PlaceOutputs.of(signals.map()), 50, 1,
				HERE);
		assertTrue(found.terms() > 3);
		for (int terms = 1; terms <= found.terms(); terms++) {
			assertTrue(found.explained(terms) > found.explained(terms - 1) && found.explained(terms) <= 1 + 1e-12);
		}
	}

	@Test
	void refusesTooLittle() {
		SparseRows rows = new DenseAsSparse(new double[][] { { 1 } });
		assertThrows(IllegalArgumentException.class, () -> OrthogonalSearch.of(rows, new double[0][], 1, 1, HERE));
		assertThrows(IllegalArgumentException.class,
				() -> OrthogonalSearch.of(rows, new double[][] { { 1 } }, 0, 1, HERE));
		assertThrows(IllegalArgumentException.class,
				() -> OrthogonalSearch.of(rows, new double[][] { { 1 } }, 1, 0, HERE));
	}
}
