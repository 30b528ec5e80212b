package org.cairnfield.core.map;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RadioMapBuilderTest {

	private final RadioMapBuilder builder = new RadioMapBuilder();

	@Test
	void sortsTheReadingsOfASampleByAccessPoint() {
		for (String name : List.of("a", "b", "c", "d")) {
			builder.accessPoint(name);
		}
		builder.sample("Tide House", 0, 1, 2).reading("d", -40).reading("a", -70).reading("c", -50).reading("b", -60);
		builder.sample("Tide House", 0, 1, 2).reading("c", -51).reading("b", -61);
		RadioMap map = builder.build();
		assertArrayEquals(new int[] { 0, 1, 2, 3 }, accessPoints(map, 0));
		assertArrayEquals(new int[] { -70, -60, -50, -40 }, levels(map, 0));
		assertArrayEquals(new int[] { 1, 2 }, accessPoints(map, 1));
		assertArrayEquals(new int[] { -61, -51 }, levels(map, 1));
	}

	@Test
	void numbersNamesInTheOrderInWhichTheyAreSeen() {
		builder.sample("Tide House", 0, 0, 0).device("guide 2").reading("x", -40);
		builder.sample("Lantern Store", 0, 0, 0).device("guide 1").reading("w", -40);
		builder.sample("Tide House", 0, 0, 0).device("guide 2").reading("w", -40);
		RadioMap map = builder.build();
		assertEquals(List.of("x", "w"), map.accessPoints());
		assertEquals(List.of("Tide House", "Lantern Store"), map.sites());
		assertEquals(List.of("guide 2", "guide 1"), map.devices());
		assertEquals(0, map.site(2));
		assertEquals(0, map.device(2));
	}

	@Test
	void refusesAnAccessPointHeardTwiceAtTheNextSample() {
		builder.sample("Tide House", 0, 0, 0).reading("x", -40).reading("y", -41).reading("x", -42);
		String message = assertThrows(IllegalArgumentException.class, () -> builder.sample("Tide House", 0, 0, 0))
				.getMessage();
		assertTrue(message.contains("x"), message);
	}

	@Test
	void refusesAnAccessPointHeardTwiceInTheLastSample() {
		builder.sample("Tide House", 0, 0, 0).reading("x", -40).reading("x", -40);
		assertThrows(IllegalArgumentException.class, builder::build);
	}

	@Test
	void takesOneAccessPointInSeveralSamples() {
		builder.sample("Tide House", 0, 0, 0).reading("x", -40);
		builder.sample("Tide House", 0, 0, 0).reading("x", -40);
		assertEquals(2, builder.build().readingCount());
	}

	@ParameterizedTest
	@ValueSource(ints = { -121, 1, 100, Integer.MIN_VALUE, 127 })
	void refusesALevelOutOfRange(int rssiDbm) {
		builder.sample("Tide House", 0, 0, 0);
		assertThrows(IllegalArgumentException.class, () -> builder.reading("x", rssiDbm));
		assertEquals(0, builder.build().readingCount());
	}

	@Test
	void takesTheLowestAndTheHighestLevel() {
		builder.sample("Tide House", 0, 0, 0).reading("x", -120).reading("y", 0);
		assertArrayEquals(new int[] { -120, 0 }, levels(builder.build(), 0));
	}

	@Test
	void refusesWhatBelongsToNoSample() {
		assertThrows(IllegalStateException.class, () -> builder.reading("x", -40));
		assertThrows(IllegalStateException.class, () -> builder.device("guide"));
		assertThrows(IllegalStateException.class, () -> builder.time(0));
	}

	@Test
	void refusesAnAccessPointNeverNamed() {
		builder.sample("Tide House", 0, 0, 0).reading("x", -40);
		assertThrows(IllegalArgumentException.class, () -> builder.reading(1, -40));
		assertThrows(IllegalArgumentException.class, () -> builder.reading(-1, -40));
	}

	@ParameterizedTest
	@ValueSource(doubles = { Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY })
	void refusesAPositionThatIsNotFinite(double metres) {
		assertThrows(IllegalArgumentException.class, () -> builder.sample("Tide House", 0, metres, 0));
		assertThrows(IllegalArgumentException.class, () -> builder.sample("Tide House", 0, 0, metres));
		assertEquals(0, builder.build().size());
	}

	@Test
	void takesFloorsWithinAShortOnly() {
		assertThrows(IllegalArgumentException.class, () -> builder.sample("Tide House", 32768, 0, 0));
		assertThrows(IllegalArgumentException.class, () -> builder.sample("Tide House", -32769, 0, 0));
		builder.sample("Tide House", 32767, 0, 0).sample("Tide House", -32768, 0, 0);
		assertEquals(32767, builder.build().floor(0));
		assertEquals(-32768, builder.build().floor(1));
	}

	@Test
	void refusesMoreSitesAndDevicesThanItCanNumber() {
		for (int i = 0; i <= Short.MAX_VALUE; i++) {
			builder.sample("site " + i, 0, 0, 0).device("guide " + i);
		}
		RadioMap map = builder.build();
		assertEquals("site 32767", map.sites().get(map.site(32767)));
		assertEquals("guide 32767", map.devices().get(map.device(32767)));
		assertThrows(IllegalArgumentException.class, () -> builder.sample("one site more", 0, 0, 0));
		assertThrows(IllegalArgumentException.class, () -> builder.device("one device more"));
		assertEquals(32768, builder.build().size());
	}

	@Test
	void hasNoDeviceAndNoTimeUnlessTold() {
		builder.sample("Tide House", 0, 0, 0);
		assertEquals(RadioMap.NO_DEVICE, builder.build().device(0));
		assertEquals(RadioMap.NO_TIME, builder.build().timeMillis(0));
		builder.sample("Tide House", 0, 0, 0).device("guide").time(5);
		builder.sample("Tide House", 0, 0, 0);
		RadioMap map = builder.build();
		assertArrayEquals(new int[] { RadioMap.NO_DEVICE, 0, RadioMap.NO_DEVICE },
				IntStream.range(0, 3).map(map::device).toArray());
		assertArrayEquals(new long[] { RadioMap.NO_TIME, 5, RadioMap.NO_TIME },
				IntStream.range(0, 3).mapToLong(map::timeMillis).toArray());
	}

	@Test
	void keepsEverythingWhileItGrows() {
		int samples = 5000;
		SplittableRandom random = new SplittableRandom(1);
		for (int s = 0; s < samples; s++) {
			builder.sample("site " + s % 3, s % 7, s, -s);
			if (s % 2 == 0) {
				builder.device("guide " + s % 5).time(s);
			}
			for (int a = 9; a >= 0; a--) {
				builder.reading("AP " + a, -20 - (s + 7 * a) % 90);
			}
		}
		RadioMap map = builder.build();
		assertEquals(samples, map.size());
		assertEquals(10L * samples, map.readingCount());
		for (int s = 0; s < samples; s++) {
			assertEquals("site " + s % 3, map.sites().get(map.site(s)));
			assertEquals(s % 7, map.floor(s));
			assertEquals(s, map.x(s));
			assertEquals(-s, map.y(s));
			assertEquals(s % 2 == 0 ? s : RadioMap.NO_TIME, map.timeMillis(s));
			assertEquals(s % 2 == 0 ? "guide " + s % 5 : "none",
					map.device(s) == RadioMap.NO_DEVICE ? "none" : map.devices().get(map.device(s)));
			int a = random.nextInt(10);
			assertEquals(-20 - (s + 7 * a) % 90, map.rssiDbm(s, map.accessPoints().indexOf("AP " + a), 1));
		}
	}

	@Test
	void mayGoOnWithoutTouchingTheMapBuiltBefore() {
		builder.accessPoint("a");
		builder.sample("Tide House", 0, 0, 0).reading("b", -40);
		RadioMap before = builder.build();
		builder.reading("a", -50); // comes to stand before the other
		builder.sample("Lantern Store", 1, 3, 4).reading("a", -60);
		RadioMap after = builder.build();
		assertEquals(1, before.size());
		assertEquals(1, before.readingCount());
		assertArrayEquals(new int[] { -40 }, levels(before, 0));
		assertArrayEquals(new int[] { 1 }, accessPoints(before, 0));
		assertEquals(List.of("a", "b"), before.accessPoints());
		assertEquals(List.of("Tide House"), before.sites());
		assertEquals(2, after.size());
		assertArrayEquals(new int[] { -50, -40 }, levels(after, 0));
	}

	private static int[] accessPoints(RadioMap map, int sample) {
		return IntStream.range(map.firstReading(sample), map.endReading(sample)).map(map::accessPoint).toArray();
	}

	private static int[] levels(RadioMap map, int sample) {
		return IntStream.range(map.firstReading(sample), map.endReading(sample)).map(map::rssiDbm).toArray();
	}
}
