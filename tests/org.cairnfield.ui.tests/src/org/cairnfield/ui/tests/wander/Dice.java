package org.cairnfield.ui.tests.wander;

import java.util.List;
import java.util.Random;

/** What chance decides. */
final class Dice {

	private final Random random;

	Dice(long seed) {
		random = new Random(seed);
	}

	/** From 0 to below a bound. */
	int below(int bound) {
		return random.nextInt(bound);
	}

	/** Between two numbers, both included. */
	int between(int least, int most) {
		return least + random.nextInt(most - least + 1);
	}

	boolean onceIn(int times) {
		return random.nextInt(times) == 0;
	}

	long seed() {
		return random.nextLong();
	}

	/** @throws NotNow where there is nothing to take one of */
	<T> T oneOf(List<T> all) {
		if (all.isEmpty()) {
			throw new NotNow("nothing to choose from");
		}
		return all.get(random.nextInt(all.size()));
	}

	@SafeVarargs
	final <T> T oneOf(T... all) {
		return all[random.nextInt(all.length)];
	}

	/** By weight. */
	Act act(List<Act> acts) {
		int at = random.nextInt(acts.stream().mapToInt(Act::weight).sum());
		for (Act act : acts) {
			at -= act.weight();
			if (at < 0) {
				return act;
			}
		}
		throw new AssertionError();
	}
}
