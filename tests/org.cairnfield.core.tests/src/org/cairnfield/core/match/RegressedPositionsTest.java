package org.cairnfield.core.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.reduce.KernelReduction;
import org.cairnfield.core.reduce.PlaceOutputs;
import org.cairnfield.core.reduce.SignalMatrix;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Threads;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;

class RegressedPositionsTest {

	private static final Workers HERE = Workers.inline();
	private static final CampusSize SIZE = CampusSize.of(2, 2, 60);
	private static final Signals SIGNALS = Signals.of(RandomMap.of(3, SIZE, 600, HERE));
	private static final RadioMap ASKED = RandomMap.testOf(3, SIZE, 200, HERE);
	private static final KernelReduction REDUCTION = KernelReduction.of(new SignalMatrix(SIGNALS),
			PlaceOutputs.of(SIGNALS.map()),
			KernelReduction.Settings.usual(1), HERE);

	private static RegressedPositions fitted(int landmarks, Workers workers) {
		return RegressedPositions.of(SIGNALS, REDUCTION, 8, landmarks, 1, workers);
	}

	@Test
	void findsPlacesFarBetterThanTheMiddleOfASite() {
		Estimates found = fitted(600, HERE).estimates(SIGNALS.align(ASKED), HERE);
		double error = 0;
		double fromMiddle = 0;
		int rightSite = 0;
		int rightFloor = 0;
		for (int q = 0; q < ASKED.size(); q++) {
			error += Math.hypot(found.x(q) - ASKED.x(q), found.y(q) - ASKED.y(q)) / ASKED.size();
			int site = ASKED.site(q);
			RadioMap all = ASKED.atSite(site);
			double x = 0;
			double y = 0;
			for (int s = 0; s < all.size(); s++) {
				x += all.x(s) / all.size();
				y += all.y(s) / all.size();
			}
			fromMiddle += Math.hypot(x - ASKED.x(q), y - ASKED.y(q)) / ASKED.size();
			boolean sameSite = SIGNALS.map().sites().get(found.site(q)).equals(ASKED.sites().get(site));
			rightSite += sameSite ? 1 : 0;
			rightFloor += sameSite && found.floor(q) == ASKED.floor(q) ? 1 : 0;
		}
		assertTrue(error < 0.5 * fromMiddle, error + " m, " + fromMiddle + " m from the middle");
		assertTrue(rightSite >= 0.97 * ASKED.size() && rightFloor >= 0.9 * ASKED.size(),
				rightSite + " sites, " + rightFloor + " floors");
	}

	@Test
	void comparesWithLandmarksAndIsTheSameForAnyNumberOfThreads() {
		Estimates expected = fitted(150, HERE).estimates(SIGNALS.align(ASKED), HERE);
		assertEquals(150, expected.meanComparisons());
		try (Threads threads = new Threads(2)) {
			Estimates found = fitted(150, threads.workers()).estimates(SIGNALS.align(ASKED), threads.workers());
			EstimatesTest.assertSame(SIGNALS.map(), expected, SIGNALS.map(), found);
		}
	}
}
