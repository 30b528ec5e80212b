package org.cairnfield.core.simulate;

/**
 * How large a random campus is. Floors get as much area as their share of the access points asks for, and power is
 * set so that a usual device hears about as many as wanted under {@link RadioEnvironment#museum()}.
 *
 * @param accessPoints                 addresses in all, at least one a floor
 * @param sitesOverlap                 whether sites stand so near that one hears the other's access points
 * @param squareMetresPerAccessPoint area of a floor for each address on it
 * @param heardPerSample             wanted on average; fewer come where 20 dBm do not suffice
 */
public record CampusSize(int sites, int floorsPerSite, int accessPoints, boolean sitesOverlap,
		double squareMetresPerAccessPoint, double heardPerSample) {

	public CampusSize {
		if (sites < 1 || floorsPerSite < 1 || accessPoints < sites * floorsPerSite
				|| !(squareMetresPerAccessPoint > 0) || !(heardPerSample > 0)) {
			throw new IllegalArgumentException("no campus of " + sites + " sites, " + floorsPerSite + " floors, "
					+ accessPoints + " access points");
		}
	}

	/** Sites near each other, one address on 110 m², about 19 heard by a sample. */
	public static CampusSize of(int sites, int floorsPerSite, int accessPoints) {
		return new CampusSize(sites, floorsPerSite, accessPoints, true, 110, 19);
	}

	/** The same with sites out of each other's reach. */
	public CampusSize apart() {
		return new CampusSize(sites, floorsPerSite, accessPoints, false, squareMetresPerAccessPoint,
				heardPerSample);
	}
}
