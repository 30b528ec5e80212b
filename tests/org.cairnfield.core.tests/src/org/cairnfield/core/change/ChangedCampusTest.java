package org.cairnfield.core.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.cairnfield.core.simulate.FaultKind;
import org.cairnfield.core.simulate.MarrowQuay;
import org.cairnfield.core.simulate.PlantedFault;
import org.cairnfield.core.simulate.SimulatedArchive;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Everything at once: access points gone, new, replaced and moved between two walks, the second with another device. */
class ChangedCampusTest {

	private static Set<String> addresses(SiteChange change, Fate fate) {
		return change.with(fate).stream().map(AccessPointFate::address).collect(Collectors.toSet());
	}

	/** Precision and recall of at least nine in ten. */
	private static void assertFound(Collection<?> planted, Collection<?> found, String what) {
		long right = found.stream().filter(planted::contains).count();
		assertTrue(right >= 0.9 * found.size() && right >= 0.9 * planted.size(),
				() -> what + " planted " + planted + ", found " + found);
	}

	@ParameterizedTest
	@CsvSource({ "1, 1, -6", "2, 1, 5", "3, 0.8, -12", "4, 1.25, 15", "5, 1, 0", "6, 1, -4" })
	void isToldApartKindByKind(long seed, double slope, double shiftDb) {
		ChangedCampus campus = ChangedCampus.of(seed, slope, shiftDb);
		SiteChange change = SiteChange.between(campus.spring(), campus.autumn(), ChangeLimits.SAME_PLACE_METRES);
		assertFound(campus.gone(), addresses(change, Fate.VANISHED), "gone");
		Set<String> appeared = addresses(change, Fate.APPEARED);
		appeared.removeAll(campus.replaced().values());
		assertFound(campus.come(), appeared, "new");
		Map<String, String> successors = change.with(Fate.REPLACED).stream()
				.collect(Collectors.toMap(AccessPointFate::address, AccessPointFate::successor));
		assertFound(campus.replaced().entrySet(), successors.entrySet(), "replaced");
		assertFound(campus.moved(), addresses(change, Fate.MOVED), "moved");
		LevelFit fit = LevelFit.of(campus.autumn(), campus.spring(), ChangeLimits.SAME_PLACE_METRES).orElseThrow();
		assertEquals(slope != 1, fit.hasSlope(), fit::toString);
		assertEquals(1 / slope, fit.slope(), 0.05, fit::toString);
		if (slope == 1) {
			assertEquals(shiftDb != 0, fit.hasOffset(), fit::toString);
			assertEquals(-shiftDb, fit.middleDb(), 1, fit::toString);
		}
	}

	/** The next spring lies half a grid off the autumn before it, and its device reads 5 dB more. */
	@Test
	void namesAllThatTheWinterDidToTheDemo() {
		SimulatedArchive spring = MarrowQuay.later(MarrowQuay.DEFAULT_SEED);
		Map<String, String> replaced = new TreeMap<>();
		Set<String> gone = new TreeSet<>();
		for (PlantedFault planted : spring.truth(FaultKind.VANISHED_ACCESS_POINT)) {
			if (planted.detail().startsWith("replaced by ")) {
				replaced.put(planted.accessPoint(), planted.detail().substring("replaced by ".length()));
			} else {
				gone.add(planted.accessPoint());
			}
		}
		SiteChange change = SiteChange.between(MarrowQuay.clean(MarrowQuay.DEFAULT_SEED).survey("sh-autumn").map(),
				spring.surveys().get(0).map(),
				ChangeLimits.SAME_PLACE_METRES);
		assertEquals(gone, new TreeSet<>(addresses(change, Fate.VANISHED)));
		assertEquals(replaced, new TreeMap<>(change.with(Fate.REPLACED).stream()
				.collect(Collectors.toMap(AccessPointFate::address, AccessPointFate::successor))));
	}
}
