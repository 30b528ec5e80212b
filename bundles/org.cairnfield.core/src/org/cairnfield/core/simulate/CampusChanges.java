package org.cairnfield.core.simulate;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SplittableRandom;

import org.cairnfield.core.radio.MacAddress;

/** What happens to the access points of a campus between two seasons: some are moved, some replaced. */
final class CampusChanges {

	private static final int MOVED = 2;
	private static final int REPLACED = 2;
	private static final double FARTHER_THAN_METRES = 18;

	private CampusChanges() {
	}

	/** The campus as it is in autumn; the rows of truth go to {@code truth}. */
	static Campus overSummer(Campus spring, SplittableRandom random, List<PlantedFault> truth) {
		List<AccessPoint> changed = some(spring.accessPoints(), MOVED + REPLACED, random);
		Campus autumn = spring;
		for (AccessPoint accessPoint : changed.subList(0, MOVED)) {
			Site site = spring.sites().get(accessPoint.site());
			Floor floor = site.floors().get(random.nextInt(site.floors().size()));
			Place to = farFrom(accessPoint, floor, random);
			autumn = autumn.withMoved(accessPoint.address(), floor.level(), to.x(), to.y());
			truth.add(new PlantedFault(FaultKind.MOVED_ACCESS_POINT, "", "", accessPoint.address().toString(),
					String.format(Locale.ROOT, "spring floor %d x %.1f m y %.1f m, autumn floor %d x %.1f m y %.1f m",
							accessPoint.level(), accessPoint.x(), accessPoint.y(), floor.level(), to.x(), to.y())));
		}
		List<AccessPoint> hanging = new ArrayList<>(autumn.accessPoints());
		int next = hanging.size();
		for (AccessPoint old : changed.subList(MOVED, MOVED + REPLACED)) {
			MacAddress address = AccessPointPlacing.address(next++);
			hanging.set(hanging.indexOf(old), new AccessPoint(address, old.site(), old.level(), old.x(), old.y(),
					old.channel(), old.powerDbm()));
			truth.add(new PlantedFault(FaultKind.VANISHED_ACCESS_POINT, "", "", old.address().toString(),
					"replaced by " + address));
			truth.add(new PlantedFault(FaultKind.NEW_ACCESS_POINT, "", "", address.toString(),
					"replaces " + old.address()));
		}
		return new Campus(autumn.name(), autumn.sites(), hanging);
	}

	/** Some access points, no two of one place. */
	static List<AccessPoint> some(List<AccessPoint> all, int count, SplittableRandom random) {
		List<AccessPoint> some = new ArrayList<>();
		Set<String> places = new HashSet<>();
		while (some.size() < count) {
			AccessPoint next = all.get(random.nextInt(all.size()));
			if (places.add(next.site() + " " + next.level() + " " + next.x())) {
				some.add(next);
			}
		}
		return some;
	}

	/** On another floor anywhere, on its own floor at least so far off, or the farthest met. */
	private static Place farFrom(AccessPoint accessPoint, Floor floor, SplittableRandom random) {
		Place from = new Place(accessPoint.x(), accessPoint.y());
		Place best = from;
		for (int tries = 0; tries < 200 && best.metresTo(from) < FARTHER_THAN_METRES; tries++) {
			Place next = new Place(random.nextDouble(0, floor.outline().width()),
					random.nextDouble(0, floor.outline().depth()));
			if (floor.outline().contains(next.x(), next.y()) && next.metresTo(from) > best.metresTo(from)) {
				best = next;
			}
		}
		return best;
	}
}
