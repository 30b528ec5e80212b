package org.cairnfield.core.simulate;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.cairnfield.core.radio.MacAddress;

/** Sites and the access points in them. */
public record Campus(String name, List<Site> sites, List<AccessPoint> accessPoints) {

	/** @throws IllegalArgumentException where two access points share an address */
	public Campus {
		sites = List.copyOf(sites);
		accessPoints = List.copyOf(accessPoints);
		Set<MacAddress> seen = new HashSet<>();
		for (AccessPoint accessPoint : accessPoints) {
			if (!seen.add(accessPoint.address())) {
				throw new IllegalArgumentException("two access points have address " + accessPoint.address());
			}
		}
	}

	/** The invented Marrow Quay Museums: Sailmakers' Hall, Tide House, Lantern Store. Always the same. */
	public static Campus marrowQuay() {
		return MarrowQuayCampus.build();
	}

	/** Some campus of the size given; the same for the same seed. */
	public static Campus random(long seed, CampusSize size) {
		return RandomCampus.build(seed, size);
	}

	/** Index of the site of that name. */
	public int site(String siteName) {
		for (int i = 0; i < sites.size(); i++) {
			if (sites.get(i).name().equals(siteName)) {
				return i;
			}
		}
		throw new IllegalArgumentException("no site " + siteName);
	}

	/** The same campus after one access point was moved. */
	public Campus withMoved(MacAddress address, int level, double x, double y) {
		List<AccessPoint> moved = new ArrayList<>();
		boolean found = false;
		for (AccessPoint accessPoint : accessPoints) {
			boolean it = accessPoint.address().equals(address);
			found |= it;
			moved.add(it ? accessPoint.movedTo(level, x, y) : accessPoint);
		}
		if (!found) {
			throw new IllegalArgumentException("no access point " + address);
		}
		return new Campus(name, sites, moved);
	}
}
