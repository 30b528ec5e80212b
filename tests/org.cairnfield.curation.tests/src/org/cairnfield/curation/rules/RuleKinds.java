package org.cairnfield.curation.rules;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.cairnfield.core.simulate.FaultKind;

/** Which planted faults each rule is to find, and which others it may name without being wrong. */
final class RuleKinds {

	static final Map<String, Set<FaultKind>> SAMPLES = new LinkedHashMap<>();
	static final Map<String, Set<FaultKind>> ALSO_RIGHT = new HashMap<>();
	static final Map<String, Set<FaultKind>> ACCESS_POINTS = new LinkedHashMap<>();
	static final Map<String, Set<FaultKind>> SURVEYS = new LinkedHashMap<>();

	static {
		SAMPLES.put("few-readings", EnumSet.of(FaultKind.SPARSE, FaultKind.EMPTY));
		SAMPLES.put("repeated-scan", EnumSet.of(FaultKind.CACHED_SCAN));
		SAMPLES.put("swapped-axes", EnumSet.of(FaultKind.SWAPPED_AXES));
		SAMPLES.put("wrong-floor", EnumSet.of(FaultKind.WRONG_FLOOR));
		SAMPLES.put("wrong-place", EnumSet.of(FaultKind.WRONG_POSITION, FaultKind.SCAN_ELSEWHERE));
		SAMPLES.put("jump", EnumSet.of(FaultKind.WRONG_POSITION));
		SAMPLES.put("not-heard-code", EnumSet.of(FaultKind.NOT_HEARD_CODE));
		SAMPLES.put("level-out-of-range", EnumSet.of(FaultKind.IMPLAUSIBLE_LEVEL));
		SAMPLES.put("exact-duplicate", EnumSet.of(FaultKind.COPIED_ROW));
		SAMPLES.put("contradictory-samples", EnumSet.of(FaultKind.FOREIGN_SCAN));
		SAMPLES.put("levels-apart", EnumSet.of(FaultKind.LEVEL_JUMP));
		SAMPLES.put("one-scan-two-places", EnumSet.of(FaultKind.SCAN_ELSEWHERE));
		Set<FaultKind> places = EnumSet.of(FaultKind.WRONG_POSITION, FaultKind.SWAPPED_AXES, FaultKind.WRONG_FLOOR,
				FaultKind.FOREIGN_SCAN);
		ALSO_RIGHT.put("wrong-place", places);
		ALSO_RIGHT.put("jump", places);
		ALSO_RIGHT.put("levels-apart", places);
		ALSO_RIGHT.put("wrong-floor", EnumSet.of(FaultKind.FOREIGN_SCAN, FaultKind.SCAN_ELSEWHERE));
		ALSO_RIGHT.put("one-scan-two-places", EnumSet.of(FaultKind.FOREIGN_SCAN));
		ALSO_RIGHT.put("level-out-of-range", EnumSet.of(FaultKind.NOT_HEARD_CODE));
		ALSO_RIGHT.put("hotspot", EnumSet.of(FaultKind.GROUP_ADDRESS, FaultKind.PASSING_SENDER));
		ALSO_RIGHT.put("new-access-point", EnumSet.of(FaultKind.GROUP_ADDRESS));
		// Somebody's phone is elsewhere in autumn, too.
		ALSO_RIGHT.put("moved-access-point", EnumSet.of(FaultKind.HOTSPOT));
		ALSO_RIGHT.put("rarely-heard", EnumSet.of(FaultKind.GROUP_ADDRESS));
		ACCESS_POINTS.put("hotspot", EnumSet.of(FaultKind.HOTSPOT));
		ACCESS_POINTS.put("moved-access-point", EnumSet.of(FaultKind.MOVED_ACCESS_POINT));
		ACCESS_POINTS.put("vanished-access-point", EnumSet.of(FaultKind.VANISHED_ACCESS_POINT));
		ACCESS_POINTS.put("new-access-point", EnumSet.of(FaultKind.NEW_ACCESS_POINT));
		ACCESS_POINTS.put("shared-radio", EnumSet.of(FaultKind.SECOND_ADDRESS));
		ACCESS_POINTS.put("stuck-level", EnumSet.of(FaultKind.STUCK_LEVEL));
		ACCESS_POINTS.put("impossible-address", EnumSet.of(FaultKind.GROUP_ADDRESS));
		ACCESS_POINTS.put("local-address",
				EnumSet.of(FaultKind.HOTSPOT, FaultKind.SECOND_ADDRESS, FaultKind.PASSING_SENDER));
		ACCESS_POINTS.put("rarely-heard", EnumSet.of(FaultKind.PASSING_SENDER));
		SURVEYS.put("duplicate-survey", EnumSet.of(FaultKind.DUPLICATE_IMPORT));
		SURVEYS.put("saturated-levels", EnumSet.of(FaultKind.SATURATED));
	}

	private RuleKinds() {
	}
}
