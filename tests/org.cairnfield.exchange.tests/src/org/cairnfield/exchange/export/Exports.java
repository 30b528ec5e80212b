package org.cairnfield.exchange.export;

import java.util.List;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;

/** A small map for tests of exports: two sites on Earth, one that nobody has said the place of. */
final class Exports {

	private Exports() {
	}

	static RadioMap map() {
		RadioMapBuilder b = new RadioMapBuilder();
		b.sample("Tide House", 0, 0, 0).time(1601130306250L).device("guide A").reading("00:00:5E:00:53:01", -61)
				.reading("02:00:5E:00:53:02", -70);
		b.sample("Tide House", 1, 12.4, 7.85).time(1601130306000L).reading("00:00:5E:00:53:01", -44);
		b.sample("Lantern Store", -1, -3.5, 100).reading("=cmd", -90);
		b.sample("Sailmakers' Hall", 0, 1, 2).reading("00:00:5E:00:53:01", -80);
		return b.build();
	}

	static MapExport export(RadioMap map) {
		double[] x = { 0, 40, 40, 0 };
		double[] y = { 0, 0, 25, 25 };
		double[] back = { 25, 25, 0, 0 };
		return new MapExport("Marrow \"Quay\"", map, List.of("th-spring/S1", "th-spring/S2", "ls/é\"1", "sh/1"),
				List.of(new SiteFrame("Tide House", new SiteFrame.Anchor(40, -40, 0),
						List.of(new SiteFrame.FloorOutline(0, "Ground", x, y),
								new SiteFrame.FloorOutline(1, "1", x, back))),
						new SiteFrame("Lantern Store", new SiteFrame.Anchor(-33.9, 18.4, 90), List.of())));
	}
}
