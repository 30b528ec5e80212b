package org.cairnfield.model.values;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

public class SampleEditTest {

	private final List<Sample> samples = SampleTableTest.samples(3 * SampleChunk.ROWS, new Random(5));
	private final SampleTable before = SampleTableTest.table(samples);

	/** The same changes made to a plain list of samples and to a table. */
	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4, 5 })
	public void changesWhatItIsToldAndNothingElse(long seed) {
		Random random = new Random(seed);
		List<Sample> expected = new ArrayList<>(samples);
		SampleEdit edit = before.edit();
		for (int i = 0; i < 400; i++) {
			int row = random.nextInt(expected.size());
			Sample s = expected.get(row);
			switch (random.nextInt(4)) {
			case 0 -> {
				String reason = random.nextBoolean() ? null : "reason " + i % 3;
				edit.reason(row, reason);
				s = new Sample(s.id(), s.floorLevel(), s.xMetres(), s.yMetres(), s.timeMillis(), reason, s.readings());
			}
			case 1 -> {
				edit.position(row, i, -i);
				s = new Sample(s.id(), s.floorLevel(), i, -i, s.timeMillis(), s.reason(), s.readings());
			}
			case 2 -> {
				edit.floorLevel(row, i % 5);
				s = new Sample(s.id(), i % 5, s.xMetres(), s.yMetres(), s.timeMillis(), s.reason(), s.readings());
			}
			default -> {
				// ap005 sorts before ap01, so that all indices shift
				Readings readings = Readings
						.parse(i % 3 == 0 ? "" : "ap005:-" + i % 90 + " ap39:-" + i % 80 + " zz:-1");
				edit.readings(row, readings);
				s = new Sample(s.id(), s.floorLevel(), s.xMetres(), s.yMetres(), s.timeMillis(), s.reason(), readings);
			}
			}
			expected.set(row, s);
		}
		SampleTable after = edit.done();
		for (int row = 0; row < expected.size(); row++) {
			assertEquals(expected.get(row), after.sample(row));
			assertEquals(samples.get(row), before.sample(row), "the table edited stays as it was");
		}
		assertEquals(SampleTableTest.table(expected), after, "equal, though its list of access points may be longer");
	}

	@Test
	public void sharesWhatItDoesNotTouch() {
		int row = SampleChunk.ROWS + 3;
		SampleTable after = before.edit().position(row, 1, 2).done();
		assertSame(before.chunks[0], after.chunks[0]);
		assertNotSame(before.chunks[1], after.chunks[1]);
		assertNotSame(before.chunks[1].xMetres, after.chunks[1].xMetres);
		assertSame(before.chunks[1].id, after.chunks[1].id);
		assertSame(before.chunks[1].rssiDbm, after.chunks[1].rssiDbm);
		assertSame(before.chunks[2], after.chunks[2]);
	}

	@Test
	public void givesTheSameTableWhereNothingChanges() {
		Sample s = before.sample(8);
		assertSame(before, before.edit().reason(8, s.reason()).position(8, s.xMetres(), s.yMetres())
				.floorLevel(8, s.floorLevel()).readings(8, s.readings()).done());
	}

	@Test
	public void refusesRowsAndValuesThatAreNone() {
		SampleEdit edit = before.edit();
		assertThrows(IndexOutOfBoundsException.class, () -> edit.reason(before.size(), "x"));
		assertThrows(IndexOutOfBoundsException.class, () -> edit.readings(-1, Readings.NONE));
		assertThrows(IllegalArgumentException.class, () -> edit.position(0, Double.POSITIVE_INFINITY, 0));
		assertThrows(IllegalArgumentException.class, () -> edit.floorLevel(0, 1 << 20));
		assertSame(before, edit.done());
	}
}
