package org.cairnfield.core.distance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.map.ScatteredMap;
import org.junit.jupiter.api.Test;

/** Distances of a few samples at a time against those of one sample and of the dense form. */
class DistanceRowsTest {

	@Test
	void ofWholeNumbersEqualThoseOfOneSampleAtATime() {
		int several = 0;
		for (long seed = 1; seed <= 60; seed++) {
			Signals signals = Signals.of(ScatteredMap.of(seed, 70));
			assertInstanceOf(WholeDistanceRows.class, signals.distanceRows(signals.stepLists()));
			compare(signals, seed);
			several += signals.components().count() > 1 ? 1 : 0;
		}
		assertTrue(several > 30, several + " maps of several components");
	}

	@Test
	void ofAnyOtherNumbersToo() {
		for (String representation : new String[] { "positive", "normalised", "exponential", "powed" }) {
			for (Distance distance : Distance.values()) {
				for (long seed = 1; seed <= 10; seed++) {
					Signals signals = Signals.of(ScatteredMap.of(seed, 70), Representation.named(representation),
							distance);
					compare(signals, seed);
				}
			}
		}
	}

	@Test
	void ofNumbersThatAreTooLargeToShareALongToo() {
		RadioMapBuilder b = new RadioMapBuilder();
		for (int s = 0; s < 12; s++) {
			b.sample("Tide House", 0, s, 0);
			for (int a = 0; a < 330; a++) { // up to 100 each: twice the magnitude is just above 2^16
				b.reading("ap " + a, a == s ? -100 : -1);
			}
		}
		Signals signals = Signals.of(b.build());
		assertInstanceOf(PlainDistanceRows.class, signals.distanceRows(signals.stepLists()));
		compare(signals, 1);
	}

	@Test
	void fillAllOfTheirRoomWithoutRunningOver() {
		RadioMapBuilder b = new RadioMapBuilder();
		for (int s = 0; s < 20; s++) { // two halves that share one access point only: distances just below 2^16
			b.sample("Tide House", 0, s, 0).reading("shared", -100);
			for (int a = 0; a < 327; a++) {
				b.reading("ap " + (s % 2 * 327 + a), -1);
			}
		}
		Signals signals = Signals.of(b.build());
		assertInstanceOf(WholeDistanceRows.class, signals.distanceRows(signals.stepLists()));
		double[] row = new double[20];
		signals.kernel().row(0, row);
		assertEquals(65_400, Arrays.stream(row).max().getAsDouble());
		compare(signals, 1);
	}

	private static void compare(Signals signals, long seed) {
		StepLists lists = signals.stepLists();
		DistanceRows rows = signals.distanceRows(lists);
		Components components = signals.components();
		Random random = new Random(seed);
		for (int c = 0; c < components.count(); c++) {
			int component = c;
			int[] members = IntStream.range(0, components.size(c)).map(m -> components.member(component, m)).toArray();
			for (int size = 1; size <= DistanceRows.BATCH; size++) {
				int[] batch = random.ints(size, 0, members.length).map(m -> members[m]).toArray();
				rows.begin(batch);
				compare(signals, rows, batch, members);
			}
		}
	}

	private static void compare(Signals signals, DistanceRows rows, int[] batch, int[] members) {
		double tolerance = signals.representation().equals(Representation.positive()) && signals.distance().isSum() ? 0
				: 1e-9;
		double[][] moments = new double[3][DistanceRows.BATCH];
		rows.moments(moments[0], moments[1], moments[2]);
		double[] row = new double[members.length];
		double[] sums = new double[DistanceRows.BATCH + 3];
		for (int i = 0; i < batch.length; i++) {
			signals.kernel().row(batch[i], row);
			double plain = 0;
			double squares = 0;
			double weighted = 0;
			for (int m = 0; m < members.length; m++) {
				assertEquals(row[m], rows.distance(i, m));
				plain += row[m];
				squares += row[m] * row[m];
				weighted += row[m] * signals.rows().magnitude(members[m]);
			}
			assertEquals(plain, moments[0][i], tolerance * plain);
			assertEquals(squares, moments[1][i], tolerance * squares);
			assertEquals(weighted, moments[2][i], tolerance * weighted);
			RadioMap map = signals.map();
			for (int column = 0; column < Math.min(12, map.accessPointCount()); column++) {
				for (int step = 1; step < signals.steps(); step += 7) {
					int ofColumn = column;
					int ofStep = step;
					double expected = IntStream.range(0, members.length)
							.filter(m -> heardAt(signals.rows(), members[m], ofColumn, ofStep)).mapToDouble(m -> row[m])
							.sum();
					if (signals.componentOfColumn(column) == signals.components().componentOf(batch[0])) {
						rows.sum(column, step, sums, 2);
						assertEquals(expected, sums[2 + i], tolerance * Math.abs(expected));
					}
				}
			}
		}
	}

	private static boolean heardAt(SignalRows rows, int sample, int column, int step) {
		return IntStream.range(rows.start(sample), rows.end(sample))
				.anyMatch(k -> rows.column(k) == column && rows.step(k) == step);
	}
}
