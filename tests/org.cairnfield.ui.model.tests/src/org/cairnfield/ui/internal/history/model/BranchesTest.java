package org.cairnfield.ui.internal.history.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;

import org.cairnfield.archive.history.SavePoint;
import org.junit.jupiter.api.Test;

class BranchesTest {

	private static SavePoint point(String id, String... parents) {
		return new SavePoint(id, "A. Steward", Instant.EPOCH, id, id, List.of(parents));
	}

	@Test
	void oneLineOfWorkIsOneLane() {
		List<Branches.Line> lines = Branches.of(List.of(point("c", "b"), point("b", "a"), point("a")));
		assertEquals(List.of(new Branches.Line(0, false, List.of(), List.of(0)),
				new Branches.Line(0, true, List.of(), List.of(0)),
				new Branches.Line(0, true, List.of(), List.of())), lines);
	}

	@Test
	void linesPartAndMeet() {
		List<Branches.Line> lines = Branches.of(List.of(point("merge", "mine", "theirs"), point("theirs", "root"),
				point("mine", "root"), point("root")));
		assertEquals(new Branches.Line(0, false, List.of(), List.of(0, 1)), lines.get(0), "two parents");
		assertEquals(new Branches.Line(1, true, List.of(0), List.of(1)), lines.get(1), "mine passes by");
		assertEquals(new Branches.Line(0, true, List.of(1), List.of(1)), lines.get(2), "both come from one");
		assertEquals(new Branches.Line(1, true, List.of(), List.of()), lines.get(3));
		assertEquals(2, lines.get(0).width());
	}

	@Test
	void aLaneThatHasEndedIsUsedAgain() {
		List<Branches.Line> lines = Branches
				.of(List.of(point("coming", "root"), point("here", "root"), point("root", "gone"), point("other")));
		assertEquals(List.of(0, 1, 0, 0), lines.stream().map(Branches.Line::lane).toList());
		assertEquals(List.of(), lines.get(2).down(), "what is not listed gets no line");
	}

	@Test
	void aParentThatIsListedFirstGetsNoLine() {
		List<Branches.Line> lines = Branches.of(List.of(point("parent"), point("child", "parent")));
		assertEquals(List.of(), lines.get(1).down());
	}
}
