package org.cairnfield.curation.maps;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.edit.ModelText;

/** For which access point of an archive the readings of each one count, over any number of successors. */
final class CountedAs {

	private final Map<String, AccessPoint> byId = new HashMap<>();

	CountedAs(Archive archive) {
		archive.getAccessPoints().forEach(each -> byId.put(each.getId(), each));
	}

	/** Its own address where it counts for itself, for one that is not there, or in a circle. */
	String address(AccessPoint accessPoint) {
		Set<AccessPoint> passed = new HashSet<>();
		AccessPoint at = accessPoint;
		while (at.getCountsAs() != null && byId.containsKey(at.getCountsAs())) {
			if (!passed.add(at)) {
				return ModelText.address(accessPoint);
			}
			at = byId.get(at.getCountsAs());
		}
		return ModelText.address(at);
	}
}
