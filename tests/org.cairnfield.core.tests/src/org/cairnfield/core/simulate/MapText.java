package org.cairnfield.core.simulate;

import org.cairnfield.core.map.RadioMap;

/** A map written out, to compare two by every value they hold. */
final class MapText {

	private MapText() {
	}

	static String of(RadioMap map) {
		StringBuilder text = new StringBuilder();
		for (int s = 0; s < map.size(); s++) {
			text.append(sample(map, s)).append('\n');
		}
		return text.toString();
	}

	static String sample(RadioMap map, int s) {
		StringBuilder text = new StringBuilder();
		text.append(map.sites().get(map.site(s))).append(' ').append(map.floor(s)).append(' ');
		text.append(map.x(s)).append(' ').append(map.y(s)).append(' ').append(map.timeMillis(s));
		for (int k = map.firstReading(s); k < map.endReading(s); k++) {
			text.append(' ').append(map.accessPoints().get(map.accessPoint(k))).append('=').append(map.rssiDbm(k));
		}
		return text.toString();
	}
}
