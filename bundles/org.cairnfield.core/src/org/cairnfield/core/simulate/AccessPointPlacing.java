package org.cairnfield.core.simulate;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.cairnfield.core.radio.MacAddress;
import org.cairnfield.core.radio.WifiBand;
import org.cairnfield.core.radio.WifiChannel;

/**
 * Hangs access points over floors: boxes spread evenly with some chance; two of three addresses at 2.4 GHz, the
 * third the 5 GHz radio of the same box. Addresses are 00:00:5E:00:53:00 … FF, the range for documentation
 * of RFC 9542; after those 256 come 02:00:5E:53:00:00 and on, locally administered and invented.
 */
final class AccessPointPlacing {

	private static final long BEYOND_DOCUMENTATION = 0x0200_5E53_0000L;
	private static final int[] CHANNELS_2_4 = { 1, 6, 11 };
	private static final int[] CHANNELS_5 = { 36, 40, 44, 48, 100, 104, 108, 112 };
	private static final double FROM_WALL_METRES = 0.8;

	private final List<AccessPoint> placed = new ArrayList<>();
	private final double powerDbm;

	AccessPointPlacing(double powerDbm) {
		this.powerDbm = powerDbm;
	}

	List<AccessPoint> placed() {
		return placed;
	}

	/** Hangs {@code addresses} access points on one floor. */
	void hang(int site, Floor floor, int addresses, SplittableRandom random) {
		int boxes = (2 * addresses + 2) / 3;
		List<Place> places = spread(floor.outline(), boxes, random);
		for (int i = 0; i < addresses; i++) {
			boolean second = i >= boxes;
			Place at = places.get(second ? 2 * (i - boxes) % boxes : i);
			WifiChannel channel = second ? new WifiChannel(WifiBand.GHZ_5, pick(CHANNELS_5, random))
					: new WifiChannel(WifiBand.GHZ_2_4, pick(CHANNELS_2_4, random));
			double power = powerDbm + (second ? 3 : 0) + random.nextDouble(-1.5, 1.5);
			placed.add(new AccessPoint(address(placed.size()), site, floor.level(), at.x(), at.y(), channel, power));
		}
	}

	static MacAddress address(int index) {
		return index < 256 ? MacAddress.documentation(index) : new MacAddress(BEYOND_DOCUMENTATION + index - 256);
	}

	/** One after the other, each the farthest of some candidates from those before. */
	private static List<Place> spread(FloorOutline outline, int count, SplittableRandom random) {
		List<Place> places = new ArrayList<>();
		while (places.size() < count) {
			Place best = null;
			double farthest = -1;
			for (int tries = 0; tries < 12; tries++) {
				Place candidate = inside(outline, random);
				double nearest = Double.MAX_VALUE;
				for (Place other : places) {
					nearest = Math.min(nearest, candidate.metresTo(other));
				}
				if (nearest > farthest) {
					farthest = nearest;
					best = candidate;
				}
			}
			places.add(best);
		}
		return places;
	}

	private static Place inside(FloorOutline outline, SplittableRandom random) {
		while (true) {
			double x = random.nextDouble(FROM_WALL_METRES, outline.width() - FROM_WALL_METRES);
			double y = random.nextDouble(FROM_WALL_METRES, outline.depth() - FROM_WALL_METRES);
			if (outline.contains(x, y)) {
				return new Place(x, y);
			}
		}
	}

	private static int pick(int[] channels, SplittableRandom random) {
		return channels[random.nextInt(channels.length)];
	}
}
