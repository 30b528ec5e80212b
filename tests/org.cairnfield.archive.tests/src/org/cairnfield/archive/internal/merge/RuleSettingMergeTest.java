package org.cairnfield.archive.internal.merge;

import static org.cairnfield.archive.internal.merge.ArchiveMergeTest.archive;
import static org.cairnfield.archive.internal.merge.ArchiveMergeTest.edited;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;
import java.util.function.Consumer;

import org.cairnfield.model.Archive;
import org.cairnfield.model.RuleSetting;
import org.cairnfield.model.conflict.Place;
import org.cairnfield.model.conflict.Unit;
import org.cairnfield.model.conflict.UnitText;
import org.cairnfield.model.conflict.Units;
import org.junit.jupiter.api.Test;

/** What two people tell the rules at the same time, setting by setting. */
class RuleSettingMergeTest {

	private static final Unit FASTEST = new Unit("rule setting jump.fastest", "value");

	private final Archive base = archive(1);

	private static Consumer<Archive> fastest(String value) {
		return archive -> archive.getRuleSettings().get(0).setValue(value);
	}

	private Archive merged(Consumer<Archive> mine, Consumer<Archive> theirs) {
		return ArchiveMerge
				.of(base, edited(base, mine), (unit, value) -> new Authors.Author("M", Instant.EPOCH),
						edited(base, theirs),
						(unit, value) -> new Authors.Author("T", Instant.EPOCH), new GateTexts(null, null, null, null))
				.archive();
	}

	private static List<String> settings(Archive archive) {
		return archive.getRuleSettings().stream().map(setting -> Place.key(setting) + " = " + setting.getValue())
				.sorted().toList();
	}

	private static List<String> claims(Archive archive) {
		return archive.getConflicts().get(0).getClaims().stream()
				.map(claim -> claim.getValue() + ' ' + claim.getPerson()).toList();
	}

	@Test
	void keepsWhatEitherHasSet() {
		Archive merged = merged(fastest("5"),
				archive -> archive.getRuleSettings().add(RandomWork.setting(null, "off", "a bicycle")));
		assertEquals(List.of("jump = off", "jump.fastest = 5"), settings(merged));
		assertEquals(0, merged.getConflicts().size());
	}

	@Test
	void leavesANumberThatBothHaveSetAsItWasUntilSomebodyDecides() {
		Archive merged = merged(fastest("5"), fastest("6"));
		assertEquals(List.of("jump.fastest = 4"), settings(merged));
		assertEquals(FASTEST, Unit.of(merged.getConflicts().get(0)));
		assertEquals(List.of("5 M", "6 T"), claims(merged));
		Runnable back = Units.set(merged, FASTEST, "6");
		assertEquals(List.of("jump.fastest = 6"), settings(merged));
		back.run();
		assertEquals("4", Units.get(merged, FASTEST));
	}

	@Test
	void asksAboutANumberThatOneHasSetBackAndTheOtherChanged() {
		Archive merged = merged(archive -> archive.getRuleSettings().clear(), fastest("6"));
		assertEquals(List.of("jump.fastest = 6"), settings(merged));
		assertEquals(new Unit(FASTEST.place(), Unit.PRESENCE), Unit.of(merged.getConflicts().get(0)));
		assertEquals(List.of("null M", UnitText.KEPT + " T"), claims(merged));
	}

	@Test
	void keepsWhatThisVersionDoesNotKnow() {
		Archive merged = merged(archive -> {
			RuleSetting newer = RandomWork.setting("of-tomorrow", "steep \u202e", null);
			newer.setRule("a/b");
			archive.getRuleSettings().add(newer);
		}, fastest("6"));
		assertEquals(List.of("a/b.of-tomorrow = steep \u202e", "jump.fastest = 6"), settings(merged));
	}
}
