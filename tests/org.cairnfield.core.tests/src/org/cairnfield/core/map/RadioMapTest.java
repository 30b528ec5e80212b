package org.cairnfield.core.map;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RadioMapTest {

	private static final RadioMap MAP = map();

	private static RadioMap map() {
		RadioMapBuilder b = new RadioMapBuilder();
		b.sample("Tide House", 0, 0, 0).reading("a", -50).reading("b", -60);
		b.sample("Tide House", 1, 1, 0).reading("b", -70);
		b.sample("Lantern Store", 0, 2, 0);
		b.sample("Tide House", 0, 3, 4).reading("c", -90).reading("a", -55).reading("d", 0);
		b.sample("Lantern Store", 1, 4, 0).reading("c", -80);
		return b.build();
	}

	@Test
	void givesTheLevelOfAnAccessPointOrWhatIsAskedForInstead() {
		assertEquals(-55, MAP.rssiDbm(3, 0, 7));
		assertEquals(-90, MAP.rssiDbm(3, 2, 7));
		assertEquals(7, MAP.rssiDbm(3, 1, 7));
		assertEquals(7, MAP.rssiDbm(2, 0, 7));
		assertEquals(7, MAP.rssiDbm(1, 0, 7)); // the neighbour before hears it
	}

	@Test
	void countsReadings() {
		assertArrayEquals(new int[] { 2, 1, 0, 3, 1 }, IntStream.range(0, 5).map(MAP::heard).toArray());
		assertEquals(7, MAP.readingCount());
		assertEquals(1, MAP.view(new int[] { 2, 4 }).readingCount());
		assertEquals(4, MAP.accessPointCount());
	}

	@Test
	void viewsListTheSamplesInTheOrderAskedFor() {
		RadioMap view = MAP.view(new int[] { 4, 0, 4 });
		assertEquals(3, view.size());
		assertArrayEquals(new double[] { 4, 0, 4 }, IntStream.range(0, 3).mapToDouble(view::x).toArray());
		assertArrayEquals(new int[] { 1, 0, 1 }, IntStream.range(0, 3).map(view::floor).toArray());
		assertArrayEquals(new int[] { 1, 0, 1 }, IntStream.range(0, 3).map(view::site).toArray());
		assertEquals(-80, view.rssiDbm(0, 2, 7));
		assertEquals(MAP.accessPoints(), view.accessPoints());
	}

	@Test
	void viewsOfViewsLeadBackToTheWholeMap() {
		RadioMap view = MAP.view(new int[] { 4, 3, 1 }).view(new int[] { 2, 1 });
		assertArrayEquals(new int[] { 1, 3 }, new int[] { view.row(0), view.row(1) });
		assertEquals(3, view.x(1));
		assertEquals(3, MAP.view(new int[] { 4, 3, 1 }).where(s -> s == 1).row(0));
	}

	@Test
	void viewsPointIntoTheReadingsOfTheWholeMap() {
		RadioMap view = MAP.view(new int[] { 3, 1 }).where(s -> true);
		assertEquals(MAP.firstReading(3), view.firstReading(0));
		assertEquals(MAP.endReading(3), view.endReading(0));
		assertEquals(MAP.firstReading(1), view.firstReading(1));
	}

	@Test
	void refusesAViewOnWhatIsNotThere() {
		assertThrows(IndexOutOfBoundsException.class, () -> MAP.view(new int[] { 5 }));
		assertThrows(IndexOutOfBoundsException.class, () -> MAP.view(new int[] { -1 }));
		RadioMap two = MAP.view(new int[] { 3, 4 });
		assertThrows(IndexOutOfBoundsException.class, () -> two.view(new int[] { 2 }));
	}

	@Test
	void doesNotKeepTheCallersArray() {
		int[] asked = { 1 };
		RadioMap view = MAP.view(asked);
		asked[0] = 4;
		assertEquals(1, view.row(0));
	}

	@Test
	void findsSitesAndFloors() {
		assertArrayEquals(new int[] { 0, 1, 3 }, rows(MAP.atSite(0)));
		assertArrayEquals(new int[] { 0, 3 }, rows(MAP.onFloor(0, 0)));
		assertArrayEquals(new int[] { 4 }, rows(MAP.onFloor(1, 1)));
		assertArrayEquals(new int[0], rows(MAP.onFloor(1, 2)));
		assertArrayEquals(new int[] { 3 }, rows(MAP.view(new int[] { 1, 3, 4 }).onFloor(0, 0)));
	}

	@Test
	void knowsTheLowestLevelInView() {
		assertEquals(-90, MAP.lowestRssiDbm());
		assertEquals(-70, MAP.view(new int[] { 0, 1, 2 }).lowestRssiDbm());
		assertEquals(RadioMap.LOWEST_RSSI_DBM, MAP.view(new int[] { 2 }).lowestRssiDbm());
		assertEquals(RadioMap.LOWEST_RSSI_DBM, new RadioMapBuilder().build().lowestRssiDbm());
	}

	@Test
	void measuresMetresOnOneFloorOnly() {
		assertEquals(5, MAP.metresApart(0, 3));
		assertEquals(Double.POSITIVE_INFINITY, MAP.metresApart(0, 1));
		assertEquals(Double.POSITIVE_INFINITY, MAP.metresApart(0, 2));
	}

	@Test
	void namesCannotBeChanged() {
		List<String> names = MAP.accessPoints();
		assertThrows(UnsupportedOperationException.class, () -> names.set(0, "z"));
	}

	@Test
	void travelsSerialised() throws IOException, ClassNotFoundException {
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
			out.writeObject(MAP.view(new int[] { 3, 2 }));
		}
		try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
			RadioMap read = (RadioMap) in.readObject();
			assertEquals(2, read.size());
			assertEquals(-90, read.rssiDbm(0, 2, 7));
			assertEquals("Lantern Store", read.sites().get(read.site(1)));
		}
	}

	private static int[] rows(RadioMap map) {
		return IntStream.range(0, map.size()).map(map::row).toArray();
	}

	@Test
	void hearsSomeAccessPointsOnly() {
		RadioMap whole = ScatteredMap.of(6, 50);
		for (RadioMap map : new RadioMap[] { whole, whole.where(s -> s % 3 != 0) }) {
			RadioMap some = map.hearing(a -> a % 2 == 0);
			assertEquals(map.size(), some.size());
			assertEquals(map.accessPoints(), some.accessPoints());
			for (int s = 0; s < map.size(); s++) {
				assertEquals(map.row(s), some.row(s));
				assertEquals(map.x(s), some.x(s));
				assertEquals(map.site(s), some.site(s));
				for (int a = 0; a < map.accessPointCount(); a++) {
					assertEquals(a % 2 == 0 ? map.rssiDbm(s, a, 1) : 1, some.rssiDbm(s, a, 1));
				}
			}
		}
	}
}
