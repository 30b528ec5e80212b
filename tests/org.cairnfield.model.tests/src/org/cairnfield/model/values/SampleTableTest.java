package org.cairnfield.model.values;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;

import org.junit.jupiter.api.Test;

public class SampleTableTest {

	/** Samples S-00000, S-00001 … of three floors; every seventh is set aside, every fifth has no time. */
	static List<Sample> samples(int count, Random random) {
		List<Sample> samples = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			TreeMap<String, Integer> levels = new TreeMap<>();
			for (int k = random.nextInt(6); k > 0; k--) {
				levels.put(String.format("ap%02d", random.nextInt(40)), -random.nextInt(100));
			}
			samples.add(new Sample(String.format("S-%05d", i), i % 3, random.nextInt(4000) / 100.0, random.nextDouble(),
					i % 5 == 0 ? SampleTable.NO_TIME : 1_700_000_000_000L + i,
					i % 7 == 0 ? "stood in the doorway" : null,
					Readings.of(levels)));
		}
		return samples;
	}

	static SampleTable table(List<Sample> samples) {
		SampleTableBuilder builder = SampleTable.builder();
		samples.forEach(builder::add);
		return builder.build();
	}

	@Test
	public void givesBackWhatWasPutIn() {
		List<Sample> samples = samples(2 * SampleChunk.ROWS + 77, new Random(1));
		SampleTable table = table(samples);
		assertEquals(samples.size(), table.size());
		for (int row = 0; row < samples.size(); row++) {
			Sample sample = samples.get(row);
			assertEquals(sample, table.sample(row));
			assertEquals(row, table.row(sample.id()));
			assertEquals(sample.isKept(), table.isKept(row));
			for (int k = 0; k < table.heard(row); k++) {
				assertEquals(sample.readings().accessPoint(k), table.accessPoints().get(table.accessPoint(row, k)));
				assertEquals(sample.readings().rssiDbm(k), table.rssiDbm(row, k));
			}
		}
		assertEquals(-1, table.row("S-99999"));
		assertEquals(samples.stream().filter(Sample::isKept).count(), table.keptCount());
		assertEquals(samples.stream().mapToLong(s -> s.readings().size()).sum(), table.readingCount());
	}

	@Test
	public void isTheSameWhateverTheOrderOfArrival() {
		List<Sample> samples = samples(SampleChunk.ROWS + 300, new Random(2));
		SampleTable sorted = table(samples);
		List<Sample> shuffled = new ArrayList<>(samples);
		Collections.shuffle(shuffled, new Random(3));
		SampleTable other = table(shuffled);
		assertEquals(sorted, other);
		assertEquals(sorted.hashCode(), other.hashCode());
		assertEquals(sorted.accessPoints(), other.accessPoints());
		for (int row = 0; row < sorted.size(); row++) {
			assertEquals(sorted.sample(row), other.sample(row));
		}
	}

	@Test
	public void differsInEachColumn() {
		SampleTable table = table(samples(50, new Random(4)));
		int row = 10;
		assertNotEquals(table, table.edit().reason(row, "other").done());
		assertNotEquals(table, table.edit().position(row, 99, table.yMetres(row)).done());
		assertNotEquals(table, table.edit().position(row, table.xMetres(row), 99).done());
		assertNotEquals(table, table.edit().floorLevel(row, 9).done());
		assertNotEquals(table, table.edit().readings(row, Readings.parse("ap01:-99 ap39:-1")).done());
		assertNotEquals(table, table(samples(49, new Random(4))));
	}

	@Test
	public void refusesTwoSamplesOfOneId() {
		SampleTableBuilder sorted = SampleTable.builder().sample("A", 0, 0, 0).sample("A", 1, 1, 1);
		assertTrue(assertThrows(IllegalArgumentException.class, sorted::build).getMessage().contains("'A'"));
		SampleTableBuilder mixed = SampleTable.builder().sample("A", 0, 0, 0).sample("B", 1, 1, 1).sample("A", 1, 1, 1);
		assertThrows(IllegalArgumentException.class, mixed::build);
	}

	@Test
	public void staysAsItWasWhenAValueIsRefused() {
		SampleTableBuilder builder = SampleTable.builder().sample("A", 0, 1, 2).reading("ap1", -50);
		assertThrows(IllegalArgumentException.class, () -> builder.reading("ap1", -51));
		assertThrows(IllegalArgumentException.class, () -> builder.reading("ap2", -129));
		assertThrows(IllegalArgumentException.class, () -> builder.reading("ap:2", -50));
		assertThrows(IllegalArgumentException.class, () -> builder.sample("B", 0, Double.NaN, 0));
		assertThrows(IllegalArgumentException.class, () -> builder.sample("B\t", 0, 0, 0));
		assertThrows(IllegalArgumentException.class, () -> builder.sample("B", 40_000, 0, 0));
		assertThrows(IllegalArgumentException.class, () -> builder.reason("two\nlines"));
		SampleTable table = builder.build();
		assertEquals(new Sample("A", 0, 1, 2, SampleTable.NO_TIME, null, Readings.parse("ap1:-50")), table.sample(0));
		assertEquals(1, table.size());
	}

	@Test
	public void keepsACodeForNotHeardThatADeviceWrote() {
		SampleTable table = SampleTable.builder().sample("A", 0, 0, 0).reading("ap1", 100).reading("ap2", -110).build();
		assertEquals("ap1:100 ap2:-110", table.readings(0).toString());
	}

	@Test
	public void sortsReadingsByAccessPoint() {
		SampleTable table = SampleTable.builder().sample("A", 0, 0, 0).reading("ap3", -30).reading("ap1", -10)
				.reading("ap2", -20).build();
		assertEquals("ap1:-10 ap2:-20 ap3:-30", table.readings(0).toString());
		assertEquals(List.of("ap1", "ap2", "ap3"), table.accessPoints());
	}

	@Test
	public void countsWhoHeardWhom() {
		SampleTable table = SampleTable.builder().sample("A", 0, 0, 0).reading("ap2", -60).reading("ap1", -50)
				.sample("B", 0, 0, 0).reading("ap2", -60).build();
		assertEquals(List.of("ap1", "ap2"), table.accessPoints());
		assertEquals(List.of(1, 2), List.of(table.heardCounts()[0], table.heardCounts()[1]));
	}

	@Test
	public void hasOneZeroOnly() {
		SampleTable table = SampleTable.builder().sample("A", 0, -0.0, 0.0).build();
		assertEquals("0.0", String.valueOf(table.xMetres(0)));
	}

	@Test
	public void isEmptyWithoutSamples() {
		assertEquals(SampleTable.EMPTY, SampleTable.builder().build());
		assertEquals(-1, SampleTable.EMPTY.row("A"));
		assertThrows(IndexOutOfBoundsException.class, () -> SampleTable.EMPTY.id(0));
	}

	@Test
	public void keepsBlankReasonsAsKept() {
		SampleTable table = SampleTable.builder().sample("A", 0, 0, 0).reason("  ").build();
		assertNull(table.reason(0));
		assertTrue(table.isKept(0));
		assertFalse(table.edit().reason(0, " left open ").done().isKept(0));
	}
}
