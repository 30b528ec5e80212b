package org.cairnfield.exchange;

/** Where, when and by what a sample was taken; device and id may be null. */
record RowPlace(String site, int floor, double x, double y, String device, long timeMillis, String id) {

	static RowPlace of(PlaceReader r) {
		return new RowPlace(r.site, r.floor, r.x, r.y, r.device, r.timeMillis, r.id);
	}

	boolean sameSpot(RowPlace other) {
		return site.equals(other.site) && floor == other.floor && x == other.x && y == other.y;
	}
}
