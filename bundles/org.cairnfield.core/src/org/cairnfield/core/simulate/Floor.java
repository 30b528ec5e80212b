package org.cairnfield.core.simulate;

import java.util.List;

/** A level of a site: outline, walls (outer ones included) and corridors. */
public record Floor(int level, FloorOutline outline, List<Wall> walls, List<Corridor> corridors) {

	public Floor {
		walls = List.copyOf(walls);
		corridors = List.copyOf(corridors);
	}
}
