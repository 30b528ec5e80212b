package org.cairnfield.exchange;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.text.Words;

/** Tells where sites share access points by a name that is no address and may be numbered per site. */
final class SharedNames {

	private SharedNames() {
	}

	static void note(RadioMap map, List<String> notes) {
		if (map.sites().size() < 2) {
			return;
		}
		int[] firstSite = new int[map.accessPointCount()];
		java.util.Arrays.fill(firstSite, -1);
		BitSet shared = new BitSet();
		for (int s = 0; s < map.size(); s++) {
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				int ap = map.accessPoint(k);
				if (firstSite[ap] < 0) {
					firstSite[ap] = map.site(s);
				} else if (firstSite[ap] != map.site(s)) {
					shared.set(ap);
				}
			}
		}
		List<String> names = new ArrayList<>();
		shared.stream().mapToObj(map.accessPoints()::get).filter(n -> !HeaderWords.isAddress(n)).forEach(names::add);
		if (!names.isEmpty()) {
			notes.add(Words.bind(Messages.SharedNames_accessPointsAreHeardAt, names.size(),
					String.join(", ", names.subList(0, Math.min(4, names.size()))), names.size() > 4 ? " …" : ""));
		}
	}
}
