package org.cairnfield.curation.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.cairnfield.curation.internal.rules.sample.JumpRule;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.junit.jupiter.api.Test;

/** Each number that a rule goes by has a unit and a reason, where people can read them. */
class ThresholdsTest {

	private static final String RULES = "org.cairnfield.curation.internal.rules.";
	/** What rules share, and work with numbers of its own. */
	private static final List<String> SHARED = List.of("place.SwappedAxes", "place.FloorVotes", "place.PlainVotes",
			"place.Unlikeness", "place.Voters",
			"accesspoint.Absences", "accesspoint.SeasonChange", "accesspoint.Walking", "reading.StrayReadings",
			"reading.LevelCounts",
			"evidence.PlacePairs", "evidence.DeviceDifferences", "evidence.Epochs", "evidence.SignalNeighbours",
			"evidence.Spots",
			"evidence.Sequence");
	/** Sizes of what is kept; no finding depends on them within reason. */
	private static final Set<String> SIZES = Set.of("BINS", "KEPT", "MOST_CELLS");

	private static List<Class<?>> classes() throws ClassNotFoundException {
		List<Class<?>> all = new ArrayList<>();
		CleaningRules.registry().all().forEach(rule -> all.add(rule.getClass()));
		for (String name : SHARED) {
			all.add(Class.forName(RULES + name));
		}
		return all;
	}

	private static Stream<Field> constants(Class<?> type) {
		return Stream.of(type.getDeclaredFields()).filter(field -> Modifier.isStatic(field.getModifiers()));
	}

	@Test
	void haveAUnitAndAReasonWhateverTheRule() throws ClassNotFoundException {
		for (Class<?> type : classes()) {
			List<String> bare = constants(type)
					.filter(field -> field.getType().isPrimitive() && field.getType() != boolean.class)
					.map(Field::getName)
					.filter(name -> !SIZES.contains(name)).toList();
			assertEquals(List.of(), bare, type + " has numbers without a reason");
		}
	}

	@Test
	void areListedByARule() throws ReflectiveOperationException {
		Set<Threshold> listed = new HashSet<>();
		CleaningRules.registry().all().forEach(rule -> listed.addAll(rule.thresholds()));
		for (Class<?> type : classes()) {
			for (Field field : constants(type).toList()) {
				field.setAccessible(true);
				if (field.get(null) instanceof Threshold threshold) {
					assertTrue(listed.contains(threshold), type + " " + field.getName() + " is listed by no rule");
				}
			}
		}
		assertTrue(listed.size() > 80, () -> listed.size() + " are too few to be all");
	}

	@Test
	void beginWithThoseThatCanBeSet() {
		Rule jump = new JumpRule();
		assertEquals(jump.parameters().stream().map(Parameter::title).toList(),
				jump.thresholds().stream().limit(jump.parameters().size()).map(Threshold::title).toList());
		assertTrue(jump.thresholds().size() > jump.parameters().size());
		Threshold speed = jump.thresholds().get(0);
		assertTrue(speed.words().startsWith("walking speed not exceeded: 2.5 m/s (judgement, not measured: "),
				speed.words());
		assertTrue(speed.words().contains("from memory"), "a value from memory says so");
	}

	@Test
	void areListedOnceByEachRule() {
		for (Rule rule : CleaningRules.registry().all()) {
			assertEquals(new HashSet<>(rule.thresholds()).size(), rule.thresholds().size(), rule.id());
			assertFalse(rule.thresholds().stream().anyMatch(each -> each.reason().text().endsWith(".")), rule.id());
		}
	}

	@Test
	void refuseAReasonWithoutWords() {
		assertThrows(IllegalArgumentException.class, () -> Reason.measured(" "));
	}
}
