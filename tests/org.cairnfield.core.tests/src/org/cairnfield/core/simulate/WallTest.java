package org.cairnfield.core.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class WallTest {

	@Test
	void standsBetweenOnlyWhereTheWayCrossesIt() {
		Wall wall = new Wall(2, 0, 2, 4, 5);
		assertTrue(wall.isBetween(0, 1, 4, 3));
		assertFalse(wall.isBetween(0, 5, 4, 5));
		assertFalse(wall.isBetween(0, 1, 1.9, 3));
		assertTrue(new Wall(0, 0, 3, 3, 5).isBetween(2, 0, 0, 2));
	}

	@Test
	void layoutPutsWallsBetweenRoomsAndDoorwaysToTheCorridor() {
		Floor floor = new FloorLayout(2, 5, 4, 12).draw(0, FloorOutline.rectangle(20, 12));
		assertEquals(1, floor.corridors().size());
		assertTrue(floor.corridors().get(0).contains(10, 6.9));
		assertFalse(floor.corridors().get(0).contains(10, 7.1));
		// Room to room, room to corridor beside the doorway and through it, and out of the house.
		assertEquals(4, attenuation(floor, 2, 2, 7, 2));
		assertEquals(4, attenuation(floor, 1, 2, 1, 6));
		assertEquals(0, attenuation(floor, 2.5, 2, 2.5, 6));
		assertEquals(12, attenuation(floor, 2, 2, 2, -3));
	}

	@Test
	void letterShapedOutlineLacksItsNotch() {
		FloorOutline outline = FloorOutline.lShape(60, 40, 30, 20);
		assertTrue(outline.contains(50, 19));
		assertFalse(outline.contains(50, 21));
		assertTrue(outline.contains(29, 39));
		assertEquals(1800, outline.area(), 1e-9);
		assertEquals(60, outline.width(), 0);
		assertEquals(40, outline.depth(), 0);
		// Shoelace formula over its corners.
		double twice = 0;
		for (int i = 0; i < outline.corners().size(); i++) {
			Place a = outline.corners().get(i);
			Place b = outline.corners().get((i + 1) % outline.corners().size());
			twice += a.x() * b.y() - b.x() * a.y();
		}
		assertEquals(1800, twice / 2, 1e-9);
	}

	private static double attenuation(Floor floor, double ax, double ay, double bx, double by) {
		return floor.walls().stream().filter(w -> w.isBetween(ax, ay, bx, by)).mapToDouble(Wall::attenuationDb).sum();
	}
}
