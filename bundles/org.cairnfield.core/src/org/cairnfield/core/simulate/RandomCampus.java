package org.cairnfield.core.simulate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/** Makes campuses by chance: every site a rectangle or an L, with rooms and walls of its own kind. */
final class RandomCampus {

	private static final double NEAR_METRES = 12;
	private static final double FAR_METRES = 5000;
	private static final double MOST_POWER_DBM = 20;
	private static final int PROBES = 300;

	private RandomCampus() {
	}

	static Campus build(long seed, CampusSize size) {
		long key = Streams.key(seed, "random campus");
		int floors = size.sites() * size.floorsPerSite();
		double areaPerFloor = size.squareMetresPerAccessPoint() * size.accessPoints() / floors;
		List<Site> sites = new ArrayList<>();
		AccessPointPlacing placing = new AccessPointPlacing(0);
		double east = 0;
		int floorsDone = 0;
		for (int s = 0; s < size.sites(); s++) {
			long siteKey = Streams.key(key, s);
			Site site = site(s, areaPerFloor, east, size.floorsPerSite(), siteKey);
			sites.add(site);
			east += site.floors().get(0).outline().width() + (size.sitesOverlap() ? NEAR_METRES : FAR_METRES);
			for (Floor floor : site.floors()) {
				int from = (int) ((long) size.accessPoints() * floorsDone / floors);
				int to = (int) ((long) size.accessPoints() * (floorsDone + 1) / floors);
				floorsDone++;
				long floorKey = Streams.key(Streams.key(siteKey, "access points"), floor.level());
				placing.hang(s, floor, to - from, Streams.random(floorKey));
			}
		}
		return powered(new Campus("Campus " + seed, sites, placing.placed()), size.heardPerSample(), key);
	}

	/** Gives all access points the same amount more, by what a device hears at some places. */
	private static Campus powered(Campus campus, double heardPerSample, long key) {
		double[] levels = levelsAtProbes(campus, key);
		Arrays.sort(levels);
		int wanted = (int) Math.min(levels.length, Math.round(heardPerSample * PROBES));
		double weakestWanted = levels[levels.length - wanted];
		double gain = Math.min(MOST_POWER_DBM, SurveyDevice.of("any", 0).thresholdDbm() - weakestWanted);
		List<AccessPoint> powered = new ArrayList<>();
		for (AccessPoint a : campus.accessPoints()) {
			powered.add(new AccessPoint(a.address(), a.site(), a.level(), a.x(), a.y(), a.channel(),
					a.powerDbm() + gain));
		}
		return new Campus(campus.name(), campus.sites(), powered);
	}

	private static double[] levelsAtProbes(Campus campus, long key) {
		LevelModel model = new LevelModel(campus, RadioEnvironment.museum(), key, Double.NEGATIVE_INFINITY);
		SplittableRandom random = Streams.random(Streams.key(key, "probes"));
		double[] levels = new double[PROBES * campus.accessPoints().size()];
		int at = 0;
		for (int p = 0; p < PROBES; p++) {
			int site = p % campus.sites().size();
			List<Floor> floors = campus.sites().get(site).floors();
			int floor = p / campus.sites().size() % floors.size();
			Place place = Walk.wander(1, 1).places(floors.get(floor), random).get(0);
			for (int i = 0; i < model.accessPointCount(); i++) {
				levels[at++] = model.meanDbm(i, site, floor, place.x(), place.y());
			}
		}
		return levels;
	}

	private static Site site(int index, double area, double east, int floors, long siteKey) {
		SplittableRandom random = Streams.random(Streams.key(siteKey, "shape"));
		double aspect = random.nextDouble(1.2, 2.0);
		FloorOutline outline;
		if (random.nextBoolean()) {
			double depth = Math.sqrt(area / aspect);
			outline = FloorOutline.rectangle(depth * aspect, depth);
		} else {
			double notch = random.nextDouble(0.35, 0.55);
			double depth = Math.sqrt(area / aspect / (1 - notch * notch));
			outline = FloorOutline.lShape(depth * aspect, depth, depth * aspect * notch, depth * notch);
		}
		FloorLayout layout = new FloorLayout(2.5, random.nextDouble(6, 11), random.nextDouble(3, 6), 12);
		List<Floor> levels = new ArrayList<>();
		for (int level = 0; level < floors; level++) {
			levels.add(layout.draw(level, outline));
		}
		String code = String.format(Locale.ROOT, "S%02d", index + 1);
		return new Site("Site " + code, code, east, 0, random.nextDouble(3.2, 4.5), levels);
	}
}
