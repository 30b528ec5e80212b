package org.cairnfield.core.simulate;

import java.util.ArrayList;
import java.util.List;

/** The three buildings of the invented Marrow Quay Museums, and 146 access points. */
final class MarrowQuayCampus {

	private static final double POWER_DBM = 9;

	private MarrowQuayCampus() {
	}

	static Campus build() {
		List<Site> sites = List.of(
				// A long hall with a side wing on the quay; plaster between the galleries.
				site(MarrowQuay.SAILMAKERS_HALL, "SH", 0, 0, 4.2, 3, FloorOutline.lShape(62, 38, 34, 18),
						new FloorLayout(3, 9, 4, 12)),
				// Two floors of large rooms across the yard.
				site(MarrowQuay.TIDE_HOUSE, "TH", 84, 4, 3.8, 2, FloorOutline.rectangle(42, 26),
						new FloorLayout(2.5, 10, 4, 12)),
				// A narrow warehouse of thick walls.
				site(MarrowQuay.LANTERN_STORE, "LS", 10, 64, 3.4, 4, FloorOutline.rectangle(46, 22),
						new FloorLayout(2.5, 7.5, 6, 14)));
		int[] perFloor = { 20, 15, 14 };
		AccessPointPlacing placing = new AccessPointPlacing(POWER_DBM);
		long key = Streams.key(0, "Marrow Quay access points");
		for (int s = 0; s < sites.size(); s++) {
			for (Floor floor : sites.get(s).floors()) {
				placing.hang(s, floor, perFloor[s],
						Streams.random(Streams.key(Streams.key(key, s), floor.level())));
			}
		}
		return new Campus("Marrow Quay Museums", sites, placing.placed());
	}

	private static Site site(String name, String code, double east, double north, double height, int floors,
			FloorOutline outline, FloorLayout layout) {
		List<Floor> levels = new ArrayList<>();
		for (int level = 0; level < floors; level++) {
			levels.add(layout.draw(level, outline));
		}
		return new Site(name, code, east, north, height, levels);
	}
}
