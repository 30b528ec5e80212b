package org.cairnfield.curation.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.split.SmallArchives;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.edit.MoveSampleCommand;
import org.cairnfield.model.values.SampleKey;
import org.junit.jupiter.api.Test;

class CarryOverTest {

	private final ReviewFixture f = new ReviewFixture();

	private CarryOver to(Split other) {
		return CarryOver.of(f.archive, f.split, other, f.policy, "L.D.", f.recorded, f.clock);
	}

	@Test
	void carriesAllToTheSameSplitMadeAnew() {
		f.withSecond();
		f.run(f.by("M.Q.").approve(f.sample(0), "fits", "by the stairs"));
		f.run(f.by("J.T.").reject(f.sample(0), "far", null));
		f.run(f.by("A.L.").resolve(f.sample(0), org.cairnfield.model.Decision.REJECT, "far", "seen"));
		f.run(f.by("M.Q.").defer(f.sample(1), "ask", null));
		Split again = SmallArchives.split(f.archive, "again", 90, 4);
		CarryOver over = to(again);
		assertEquals(List.of(), over.left());
		assertEquals(4, over.carried().size());
		f.run(over.command());
		Standings there = Standings.of(f.archive, again, f.policy);
		assertEquals(ReviewState.REJECTED, there.of(f.sample(0)).get().state());
		assertEquals(ReviewState.DEFERRED, there.of(f.sample(1)).get().state());
		LedgerEntry first = there.of(f.sample(0)).get().entries().get(0);
		LedgerEntry was = f.standing(f.sample(0)).entries().get(0);
		assertEquals("M.Q.", first.person());
		assertEquals("L.D.", first.enteredBy());
		assertEquals(was.time(), first.time());
		assertTrue(first.text().startsWith("by the stairs (carried over from whole, verdict " + was.id()),
				first.text());
		f.stack.undo();
		assertTrue(Standings.of(f.archive, again, f.policy).entries().isEmpty());
	}

	@Test
	void leavesWhatHasChangedAndSaysWhat() {
		for (int i = 0; i < f.proposals().size(); i++) {
			f.run(f.by("M.Q.").approve(f.sample(i), "fits", null));
		}
		Split wider = SmallArchives.split(f.archive, "wider", 110, 4);
		CarryOver over = to(wider);
		assertEquals(f.proposals().size(), over.left().size() + over.carried().size());
		Map<SampleKey, String> why = over.left().stream()
				.collect(Collectors.toMap(CarryOver.Left::sample, CarryOver.Left::why));
		int noLonger = 0;
		for (var p : f.proposals()) {
			int row = wider.getLabels().row(p.sample());
			if (wider.getLabels().cluster(row) >= 0) {
				assertEquals("it is noise no longer: it is in cluster " + wider.getLabels().cluster(row),
						why.get(p.sample()));
				noLonger++;
			}
		}
		assertTrue(noLonger > 0 && noLonger < f.proposals().size());
		assertTrue(why.values().stream().anyMatch(w -> w.startsWith("the evidence has changed: ")), why::toString);
	}

	@Test
	void leavesStaleOnesAndThoseDecidedThereAlready() {
		f.run(f.by("M.Q.").approve(f.sample(0), "fits", null));
		f.run(f.by("M.Q.").approve(f.sample(1), "fits", null));
		Split again = SmallArchives.split(f.archive, "again", 90, 4);
		f.run(new Review(f.archive, again, "J.T.", f.policy, f.recorded, f.clock).reject(f.sample(1), "far", null));
		var ref = f.ref(f.sample(0));
		f.run(new MoveSampleCommand(ref, ref.sample().xMetres() + 3, ref.sample().yMetres()));
		List<String> why = to(again).left().stream().map(CarryOver.Left::why).toList();
		assertEquals(List.of("it was stale already", "it was decided there already"), why);
	}

	@Test
	void carriesInTheArchiveOfWhichACopyWasLookedAt() {
		f.run(f.by("M.Q.").approve(f.sample(0), "fits", null));
		Split again = SmallArchives.split(f.archive, "again", 90, 4);
		Archive copy = ArchiveCopy.of(f.archive);
		CarryOver over = CarryOver.of(copy, copy.getSplits().get(0), copy.getSplits().get(1), f.policy, "L.D.",
				f.recorded, f.clock);
		f.run(over.command().on(f.archive));
		assertEquals(ReviewState.APPROVED, Standings.of(f.archive, again, f.policy).of(f.sample(0)).get().state());
		assertEquals(0, Standings.of(copy, copy.getSplits().get(1), f.policy).entries().size());
		assertEquals("Carry over 1 verdict from whole", f.stack.getUndoCommand().getLabel());
	}
}
