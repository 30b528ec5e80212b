package org.cairnfield.core.simulate;

import java.util.ArrayList;
import java.util.List;

/**
 * Draws a floor of rooms on both sides of a corridor, one corridor a wing. Rooms have a doorway to the
 * corridor, through which a wave passes freely.
 *
 * @param corridorMetres width of the corridors
 * @param roomMetres     about the width of a room; rooms of a wing are equally wide
 * @param innerDb        attenuation of a wall between rooms
 * @param outerDb        attenuation of an outer wall
 */
record FloorLayout(double corridorMetres, double roomMetres, double innerDb, double outerDb) {

	private static final double DOORWAY_METRES = 1.4;

	Floor draw(int level, FloorOutline outline) {
		List<Wall> walls = new ArrayList<>();
		List<Corridor> corridors = new ArrayList<>();
		List<Place> corners = outline.corners();
		for (int i = 0; i < corners.size(); i++) {
			Place a = corners.get(i);
			Place b = corners.get((i + 1) % corners.size());
			walls.add(new Wall(a.x(), a.y(), b.x(), b.y(), outerDb));
		}
		for (Wing wing : outline.wings()) {
			furnish(wing, walls);
			corridors.add(corridor(wing, corridors.isEmpty() ? "main corridor" : "side corridor"));
		}
		return new Floor(level, outline, walls, corridors);
	}

	private Corridor corridor(Wing wing, String name) {
		double middleX = (wing.x0() + wing.x1()) / 2;
		double middleY = (wing.y0() + wing.y1()) / 2;
		return wing.alongX() ? new Corridor(name, wing.x0(), middleY, wing.x1(), middleY, corridorMetres)
				: new Corridor(name, middleX, wing.y0(), middleX, wing.y1(), corridorMetres);
	}

	/** Walls in the wing's own directions: u along the corridor, v across. */
	private void furnish(Wing wing, List<Wall> walls) {
		double u0 = wing.alongX() ? wing.x0() : wing.y0();
		double u1 = wing.alongX() ? wing.x1() : wing.y1();
		double v0 = wing.alongX() ? wing.y0() : wing.x0();
		double v1 = wing.alongX() ? wing.y1() : wing.x1();
		double low = (v0 + v1 - corridorMetres) / 2;
		double high = (v0 + v1 + corridorMetres) / 2;
		int rooms = Math.max(1, (int) Math.round((u1 - u0) / roomMetres));
		double width = (u1 - u0) / rooms;
		for (int room = 0; room < rooms; room++) {
			double start = u0 + room * width;
			double doorFrom = start + (width - DOORWAY_METRES) / 2;
			double doorTo = doorFrom + DOORWAY_METRES;
			for (double side : new double[] { low, high }) {
				walls.add(wall(wing, start, side, doorFrom, side));
				walls.add(wall(wing, doorTo, side, start + width, side));
			}
			if (room > 0) {
				walls.add(wall(wing, start, v0, start, low));
				walls.add(wall(wing, start, high, start, v1));
			}
		}
	}

	private Wall wall(Wing wing, double u1, double v1, double u2, double v2) {
		return wing.alongX() ? new Wall(u1, v1, u2, v2, innerDb) : new Wall(v1, u1, v2, u2, innerDb);
	}
}
