package org.cairnfield.curation.split;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.curation.rules.ContentKeys;

/** A key of what a map holds, so that results can be found again: the same content has the same key in any run. */
final class MapKeys {

	private MapKeys() {
	}

	static long of(RadioMap map) {
		long[] accessPoints = map.accessPoints().stream().mapToLong(ContentKeys::of).toArray();
		long[] sites = map.sites().stream().mapToLong(ContentKeys::of).toArray();
		long key = map.size();
		for (int s = 0; s < map.size(); s++) {
			key = ContentKeys.join(key, sites[map.site(s)]);
			key = ContentKeys.join(key, map.floor(s));
			key = ContentKeys.join(key, Double.doubleToLongBits(map.x(s)));
			key = ContentKeys.join(key, Double.doubleToLongBits(map.y(s)));
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				key = ContentKeys.join(key, accessPoints[map.accessPoint(k)]);
				key = ContentKeys.join(key, map.rssiDbm(k));
			}
		}
		return key;
	}
}
