package org.cairnfield.archive.internal.merge;

import static org.cairnfield.archive.internal.merge.ArchiveMergeTest.archive;
import static org.cairnfield.archive.internal.merge.ArchiveMergeTest.edited;
import static org.cairnfield.archive.internal.merge.ArchiveMergeTest.files;
import static org.cairnfield.archive.internal.merge.ArchiveMergeTest.moveTo;
import static org.cairnfield.archive.internal.merge.ArchiveMergeTest.survey;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import java.util.SortedMap;
import java.util.function.Consumer;

import org.cairnfield.archive.internal.merge.ArchiveMergeTest.Work;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Claim;
import org.cairnfield.model.conflict.Place;
import org.cairnfield.model.conflict.Unit;
import org.cairnfield.model.conflict.Units;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

/** What is open on one side of a merge stays open until it is decided, whoever comes first. */
class OpenConflictMergeTest {

	private static final String SURVEY = "site th/survey survey-0";

	/** Three come together in one way, whatever the order, with these conflicts: the unit, then what is claimed. */
	private static void assertOneOutcome(List<String> conflicts, Archive base, Archive a, Archive b, Archive c)
			throws IOException {
		List<Work> work = List.of(Work.of("A", a), Work.of("B", b), Work.of("C", c));
		SortedMap<String, String> first = null;
		for (int last = 0; last < work.size(); last++) {
			Archive all = work.get((last + 1) % 3).with(work.get((last + 2) % 3), base).with(work.get(last), base)
					.archive();
			assertEquals(conflicts, conflicts(all), "with the work of " + "ABC".charAt(last) + " last");
			first = first == null ? files(all) : first;
			assertEquals(first, files(all), "with the work of " + "ABC".charAt(last) + " last");
		}
	}

	private static List<String> conflicts(Archive archive) {
		return archive.getConflicts().stream().map(conflict -> conflict.getUnit() + ' '
				+ conflict.getClaims().stream().map(Claim::getValue).toList()).toList();
	}

	/** What two have made of an archive, who were there before A, B and C. */
	private static Archive before(Archive base, Consumer<Archive> one, Consumer<Archive> other) {
		return Work.of("1", edited(base, one)).with(Work.of("2", edited(base, other)), base).archive();
	}

	private static Consumer<Archive> setAside(String reason) {
		return archive -> survey(archive).getSamples()
				.setTable(survey(archive).table().edit().reason(0, reason).done());
	}

	private static Consumer<Archive> decide(String value) {
		return archive -> {
			Unit unit = Unit.of(archive.getConflicts().get(0));
			archive.getConflicts().clear();
			Units.set(archive, unit, value);
		};
	}

	private static void remove(Archive archive) {
		EcoreUtil.remove(survey(archive));
		archive.getConflicts().clear();
	}

	private static Unit unit(Archive archive, String name) {
		return new Unit(Place.ofSample(SURVEY, survey(archive).table().id(0)), name);
	}

	@Test
	void whatTwoDisputeInASurveyStaysOpenWhereAThirdHasRemovedIt() throws IOException {
		Archive base = archive(1);
		assertOneOutcome(List.of("presence [null, kept]", "state [in a lift, on a ladder]"), base,
				edited(base, OpenConflictMergeTest::remove),
				edited(base, setAside("on a ladder")), edited(base, setAside("in a lift")));
	}

	@Test
	void whatTwoDisputeInASampleStaysOpenWhereAThirdHasRemovedIt() throws IOException {
		Archive base = archive(1);
		Archive removed = edited(base, archive -> Units.set(archive, unit(base, Unit.PRESENCE), null));
		assertOneOutcome(List.of("presence [null, kept]", "state [in a lift, on a ladder]"), base, removed,
				edited(base, setAside("on a ladder")),
				edited(base, setAside("in a lift")));
	}

	@Test
	void aReadingThatTwoHaveAddedWithTwoLevelsStaysOpenWhereAThirdSetsTheSampleAside() throws IOException {
		Archive base = archive(1);
		Unit reading = unit(base, Unit.READING + "0000000000ff");
		assertOneOutcome(List.of(reading.name() + " [-50, -60]"), base,
				edited(base, archive -> Units.set(archive, reading, "-50")),
				edited(base, archive -> Units.set(archive, reading, "-60")), edited(base, setAside("on a ladder")));
	}

	@Test
	void whatIsOpenInANewSurveyArrivesOpen() {
		Archive without = edited(archive(1), OpenConflictMergeTest::remove);
		Archive with = before(archive(1), moveTo(1), moveTo(3));
		Archive merged = Work.of("A", with)
				.with(Work.of("B", edited(without, archive -> archive.setName("other work"))), without).archive();
		assertEquals(List.of("position [1.0 4.0, 3.0 4.0]"), conflicts(merged));
	}

	@Test
	void aSurveyStaysWhereOneHasRemovedItAndTheOtherHasDecidedSomethingInIt() {
		Archive open = before(archive(1), moveTo(1), moveTo(3));
		Archive decided = edited(open, archive -> archive.getConflicts().clear()); // for the position before
		Archive merged = Work.of("A", edited(open, OpenConflictMergeTest::remove)).with(Work.of("B", decided), open)
				.archive();
		assertEquals(List.of("presence [null, kept]"), conflicts(merged));
	}

	@Test
	void whatOneDecidesToKeepAndAnotherToRemoveStaysOpenWhereAThirdWorksOnIt() throws IOException {
		Archive open = before(archive(1), OpenConflictMergeTest::remove, moveTo(3));
		assertEquals(List.of("presence [null, kept]"), conflicts(open));
		assertOneOutcome(List.of("presence [null, kept]"), open, edited(open, decide("kept").andThen(moveTo(5))),
				edited(open, OpenConflictMergeTest::remove), edited(open, setAside("on a ladder")));
	}

	@Test
	void twoDecisionsThatDifferStayOpenWhereAThirdHasSetTheValueWithoutDeciding() throws IOException {
		Archive open = before(archive(1), archive -> archive.setName("Quay"), archive -> archive.setName("Marrow"));
		String name = archive(1).getName();
		Archive set = edited(open, archive -> archive.setName("Quay"));
		assertOneOutcome(List.of("name " + List.of(name, "Marrow", "Quay")), open, edited(open, decide(name)),
				edited(open, decide("Marrow")), set);
	}
}
