package org.cairnfield.core.choose;

import java.util.Arrays;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.match.Estimates;
import org.cairnfield.core.match.Matcher;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Workers;

/** A small simulated site: a map, and a walk on another day to measure by. */
final class SimulatedSite {

	static final int SAMPLES = 500;
	private static final CampusSize SIZE = CampusSize.of(1, 2, 30);

	final RadioMap map;
	final RadioMap walk;
	final Signals signals;

	SimulatedSite(long seed) {
		map = RandomMap.of(seed, SIZE, SAMPLES, Workers.inline());
		walk = RandomMap.testOf(seed, SIZE, 300, Workers.inline());
		signals = Signals.of(map);
	}

	Estimates estimate(Matcher matcher) {
		return Estimates.of(matcher, matcher.signals().align(walk), Workers.inline());
	}

	double meanErrorMetres(Estimates estimates) {
		double[] errors = new double[walk.size()];
		Arrays.setAll(errors, q -> Math.hypot(estimates.x(q) - walk.x(q), estimates.y(q) - walk.y(q)));
		return Arrays.stream(errors).average().orElseThrow();
	}

	/** The same samples, held as part of a larger map that contains the walk too. */
	RadioMap withinMapAndWalk() {
		RadioMapBuilder b = new RadioMapBuilder();
		map.accessPoints().forEach(b::accessPoint);
		for (RadioMap part : new RadioMap[] { map, walk }) {
			for (int s = 0; s < part.size(); s++) {
				b.sample(part.sites().get(part.site(s)), part.floor(s), part.x(s), part.y(s));
				for (int k = part.firstReading(s); k < part.endReading(s); k++) {
					b.reading(part.accessPoints().get(part.accessPoint(k)), part.rssiDbm(k));
				}
			}
		}
		return b.build().where(s -> s < map.size());
	}
}
