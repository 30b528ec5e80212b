package org.cairnfield.exchange;

/** Where, when and by what a sample was taken; device and id may be null. */
record Place(String site, int floor, double x, double y, String device, long timeMillis, String id) {

	static Place of(PlaceReader r) {
		return new Place(r.site, r.floor, r.x, r.y, r.device, r.timeMillis, r.id);
	}

	boolean sameSpot(Place other) {
		return site.equals(other.site) && floor == other.floor && x == other.x && y == other.y;
	}
}
