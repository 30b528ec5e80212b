package org.cairnfield.core.change;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.radio.MacAddress;
import org.cairnfield.core.simulate.AccessPoint;
import org.cairnfield.core.simulate.Campus;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.Floor;
import org.cairnfield.core.simulate.RadioEnvironment;
import org.cairnfield.core.simulate.SurveyDevice;
import org.cairnfield.core.simulate.SurveyPlan;
import org.cairnfield.core.simulate.Surveyor;
import org.cairnfield.core.simulate.Walk;
import org.cairnfield.core.task.Workers;

/**
 * A simulated site in spring and, walked again half a metre off with another device, in autumn, between which all that can happen
 * to a network has happened at once: access points are gone, new, replaced and moved.
 *
 * @param replaced the new one by the old one
 */
record ChangedCampus(RadioMap spring, RadioMap autumn, Set<String> gone, Set<String> come, Map<String, String> replaced,
		Set<String> moved) {

	private static final int EACH = 10;
	private static final double FARTHER_THAN_METRES = 18;

	/** @param slope and @param shiftDb what the autumn's device reads of a level that the spring's reads rightly: slope times it plus shift */
	static ChangedCampus of(long seed, double slope, double shiftDb) {
		Campus all = Campus.random(seed, CampusSize.of(1, 2, 140));
		List<AccessPoint> order = new ArrayList<>(all.accessPoints());
		Random random = new Random(seed);
		Collections.shuffle(order, random);
		Set<AccessPoint> gone = new HashSet<>(order.subList(0, EACH));
		Set<AccessPoint> come = new HashSet<>(order.subList(EACH, 2 * EACH));
		List<AccessPoint> then = new ArrayList<>(all.accessPoints());
		then.removeAll(come);
		List<AccessPoint> now = new ArrayList<>(all.accessPoints());
		now.removeAll(gone);
		Map<String, String> replaced = new HashMap<>();
		for (AccessPoint old : order.subList(2 * EACH, 3 * EACH)) {
			AccessPoint fresh = old.replacedBy(MacAddress.parse(String.format("00:00:5E:00:54:%02X", replaced.size())));
			now.set(now.indexOf(old), fresh);
			replaced.put(old.address().toString(), fresh.address().toString());
		}
		Set<String> moved = new HashSet<>();
		for (AccessPoint old : order.subList(3 * EACH, 4 * EACH)) {
			now.set(now.indexOf(old), elsewhere(old, all, random));
			moved.add(old.address().toString());
		}
		RadioMap spring = walk(new Campus(all.name(), all.sites(), then), "spring", 0.3, seed);
		RadioMap autumn = walk(new Campus(all.name(), all.sites(), now), "autumn", 0.8, seed);
		return new ChangedCampus(spring, LevelFitTest.read(autumn, slope, shiftDb), addresses(gone), addresses(come),
				replaced, moved);
	}

	private static AccessPoint elsewhere(AccessPoint old, Campus campus, Random random) {
		List<Floor> floors = campus.sites().get(0).floors();
		while (true) {
			Floor floor = floors.get(random.nextInt(floors.size()));
			double x = random.nextDouble(floor.outline().width());
			double y = random.nextDouble(floor.outline().depth());
			if (floor.outline().contains(x, y) && Math.hypot(x - old.x(), y - old.y()) > FARTHER_THAN_METRES) {
				return old.movedTo(floor.level(), x, y);
			}
		}
	}

	private static RadioMap walk(Campus campus, String season, double off, long seed) {
		SurveyPlan plan = SurveyPlan.of("s-" + season, season, Walk.corridorsAndGrid(2.2, 3, off),
				SurveyDevice.of("guide", 0),
				Instant.parse("2031-04-07T08:00:00Z"));
		return new Surveyor(campus, RadioEnvironment.museum(), seed).survey(0, plan, Workers.inline());
	}

	private static Set<String> addresses(Set<AccessPoint> some) {
		Set<String> addresses = new HashSet<>();
		some.forEach(each -> addresses.add(each.address().toString()));
		return addresses;
	}
}
