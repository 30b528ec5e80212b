package org.cairnfield.core.simulate;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;

/** What happens in the Sailmakers' Hall over the winter: galleries are done up, and part of the network with them. */
final class MarrowQuayWinter {

	static final int SITE = 0;
	private static final int GONE = 16;
	private static final int REPLACED = 10;

	private MarrowQuayWinter() {
	}

	/** The campus as it is in the next spring; the rows of truth go to {@code truth}. */
	static Campus after(Campus autumn, long seed, List<PlantedFault> truth) {
		SplittableRandom random = Streams.random(Streams.key(seed, "Marrow Quay winter"));
		List<AccessPoint> here = autumn.accessPoints().stream().filter(each -> each.site() == SITE).toList();
		List<AccessPoint> changed = CampusChanges.some(here, GONE + REPLACED, random);
		Set<AccessPoint> gone = new HashSet<>(changed.subList(0, GONE));
		List<AccessPoint> hanging = new ArrayList<>(
				autumn.accessPoints().stream().filter(each -> !gone.contains(each)).toList());
		gone.stream().map(each -> each.address().toString()).sorted()
				.forEach(address -> truth.add(new PlantedFault(FaultKind.VANISHED_ACCESS_POINT, "", "", address,
						"taken down over the winter")));
		int next = autumn.accessPoints().size();
		for (AccessPoint old : changed.subList(GONE, GONE + REPLACED)) {
			AccessPoint fresh = old.replacedBy(AccessPointPlacing.address(next++));
			hanging.set(hanging.indexOf(old), fresh);
			truth.add(new PlantedFault(FaultKind.VANISHED_ACCESS_POINT, "", "", old.address().toString(),
					"replaced by " + fresh.address()));
			truth.add(new PlantedFault(FaultKind.NEW_ACCESS_POINT, "", "", fresh.address().toString(),
					"replaces " + old.address()));
		}
		return new Campus(autumn.name(), autumn.sites(), hanging);
	}
}
