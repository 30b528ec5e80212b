package org.cairnfield.curation.team;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;

import org.cairnfield.curation.decide.RecordedVerdicts;
import org.cairnfield.curation.decide.Review;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.decide.ReviewRefused;
import org.cairnfield.curation.decide.Standings;
import org.cairnfield.curation.propose.Band;
import org.cairnfield.curation.propose.Bands;
import org.cairnfield.curation.split.RemoveSplitCommand;
import org.cairnfield.curation.split.SmallArchives;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Assignment;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.SampleKey;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.junit.jupiter.api.Test;

class WorkSharesTest {

	private final Archive archive = SmallArchives.simulated();
	private final Split split = SmallArchives.split(archive, "whole", 90, 4);
	private final Clock clock = Clock.fixed(Instant.parse("2031-05-01T10:00:00Z"), ZoneOffset.UTC);
	private final BasicCommandStack stack = new BasicCommandStack();
	private ReviewPolicy policy = ReviewPolicy.USUAL;

	private final Assigning lead = new Assigning(archive, split, Bands.USUAL, "L. Lead", clock);

	private WorkShares shares() {
		return WorkShares.of(archive, split, Bands.USUAL);
	}

	private void run(TeamChange change) {
		stack.execute(change.command());
	}

	private List<SampleKey> made() {
		return split.getProposals().all().stream().filter(each -> each.strengthR() >= split.getThreshold())
				.map(Proposal::sample).toList();
	}

	private List<SampleKey> of(String reviewer) {
		return made().stream().filter(sample -> shares().reviewersOf(sample).contains(reviewer)).toList();
	}

	private Review by(String person) {
		return new Review(archive, split, person, policy, RecordedVerdicts.of(archive), clock);
	}

	private ShareProgress progress(String reviewer) {
		return shares().progress(Standings.of(archive, split, policy)).stream()
				.filter(each -> each.reviewer().equals(reviewer)).findFirst().orElseThrow();
	}

	@Test
	void assignsABandAsOneChangeThatCanBeUndone() {
		run(lead.assign(List.of("Ada", "Ben"), Share.parse("band close")));
		Band close = Bands.USUAL.named("close").orElseThrow();
		List<SampleKey> wanted = split.getProposals().all().stream().filter(each -> close.has(each.strengthR()))
				.map(Proposal::sample).toList();
		assertTrue(!wanted.isEmpty() && wanted.size() < made().size());
		assertEquals(wanted, of("Ada"));
		assertEquals(wanted, of("Ben"));
		assertEquals(made().size() - wanted.size(), shares().unassigned());
		Assignment kept = archive.getAssignments().get(0);
		assertEquals(List.of("whole", "Ada", "band close", "L. Lead", clock.instant()),
				List.of(kept.getSplit(), kept.getReviewer(), kept.getShare(), kept.getPerson(), kept.getTime()));
		assertEquals(2, archive.getAssignments().stream().map(Assignment::getId).distinct().count());
		assertEquals("Assign band close to Ada, Ben", stack.getUndoCommand().getLabel());
		stack.undo();
		assertEquals(List.of(), archive.getAssignments());
		stack.redo();
		assertEquals(wanted, of("Ada"));
	}

	@Test
	void sharesEveryProposalOutInEqualPartsOnce() {
		run(lead.equally(List.of("Ada", "Ben", "Cy")));
		assertEquals(0, shares().unassigned());
		made().forEach(sample -> assertEquals(1, shares().reviewersOf(sample).size(), sample::toString));
		assertTrue(List.of("Ada", "Ben", "Cy").stream().noneMatch(name -> of(name).isEmpty()));
		assertEquals(List.of("", "", ""), shares().reviewers().stream().map(shares()::overlapText).toList());
	}

	@Test
	void listsWhatElseHoldsTheSameProposals() {
		run(lead.assign(List.of("Ada"), Share.parse("part 1/2")));
		run(lead.assign(List.of("Ben"), Share.parse("part 1/2")));
		run(lead.assign(List.of("Ben"), Share.parse("part 2/2")));
		int ada = of("Ada").size();
		assertEquals(ada + " of the " + ada + " proposals of Ada are also assigned to Ben (" + ada + ").",
				shares().overlapText("Ada"));
		assertEquals(ada + " of the " + made().size() + " proposals of Ben are also assigned to Ada (" + ada + ").",
				shares().overlapText("Ben"));
		assertEquals(List.of("Ada", "Ben"), shares().reviewers());
	}

	@Test
	void offersTheSitesAndFloorsThatHaveProposals() {
		List<Share> choices = shares().choices();
		assertTrue(choices.containsAll(List.of(new Share.OfBand("loose"), new Share.OfBand("close"))),
				choices::toString);
		int floors = choices.stream().filter(each -> each instanceof Share.OfFloor).mapToInt(shares()::size).sum();
		int sites = choices.stream().filter(each -> each instanceof Share.OfSite).mapToInt(shares()::size).sum();
		assertEquals(made().size(), floors);
		assertEquals(made().size(), sites);
	}

	@Test
	void refusesWhatCannotBeGiven() {
		run(lead.assign(List.of("Ada"), Share.parse("part 1/2")));
		refused("ada has part 1/2 of split whole already", () -> lead.assign(List.of("ada "), Share.parse("part 1/2")));
		refused("there is no band 'huge'; the bands are loose",
				() -> lead.assign(List.of("Ada"), Share.parse("band huge")));
		refused("there is no site with the id 'nowhere'; the sites are ",
				() -> lead.assign(List.of("Ada"), Share.parse("site nowhere")));
		refused("there is no floor",
				() -> lead.assign(List.of("Ada"), Share.parse("floor " + archive.getSites().get(0).getId() + "/77")));
		refused("name who is to review", () -> lead.assign(List.of(), Share.parse("part 1/2")));
		refused("a person has a name", () -> lead.assign(List.of("  "), Share.parse("part 1/2")));
		refused("Ben is named twice", () -> lead.equally(List.of("Ada", "Ben", "Ben")));
		refused("equal parts are for two reviewers or more", () -> lead.equally(List.of("Ada")));
		assertEquals(1, archive.getAssignments().size());
	}

	private static void refused(String why, org.junit.jupiter.api.function.Executable what) {
		String said = assertThrows(ReviewRefused.class, what).getMessage();
		assertTrue(said.contains(why), said);
	}

	@Test
	void countsEachProposalOnceByWhoHasDecidedIt() {
		policy = policy.withSecond(Set.of("close"));
		run(lead.equally(List.of("Ada", "Ben")));
		run(lead.assign(List.of("Ben"), Share.parse("part 1/2")));
		Standings before = Standings.of(archive, split, policy);
		List<SampleKey> twice = of("Ada").stream().filter(sample -> before.of(sample).orElseThrow().needsSecond())
				.toList();
		List<SampleKey> once = of("Ada").stream().filter(sample -> !before.of(sample).orElseThrow().needsSecond())
				.toList();
		assertTrue(twice.size() > 2 && once.size() > 2, twice.size() + " and " + once.size());
		stack.execute(by("Ada").approve(twice.get(0), null, null));
		stack.execute(by("Ada").approve(twice.get(1), null, null));
		stack.execute(by("Ada").approve(twice.get(2), null, null));
		stack.execute(by("Ada").approve(once.get(0), null, null));
		stack.execute(by("Cy").pool(once.get(1), null, null));
		stack.execute(by("Ada").defer(once.get(2), null, null));
		stack.execute(by("Ben").approve(twice.get(0), null, null));
		stack.execute(by("Ben").pool(twice.get(1), null, null));
		ShareProgress ada = progress("Ada");
		int all = of("Ada").size();
		assertEquals(List.of(all, 3, 1, all - 5, 0, 1),
				List.of(ada.proposals(), ada.given(), ada.byOthers(), ada.toDo(), ada.secondsDue(), ada.disputed()));
		ShareProgress ben = progress("Ben");
		assertEquals(made().size(), ben.proposals());
		assertEquals(List.of(1, 2, 1, 1), List.of(ben.given(), ben.byOthers(), ben.secondsDue(), ben.disputed()));
		assertEquals(ben.proposals(), ben.given() + ben.byOthers() + ben.toDo() + ben.disputed());
		assertEquals(2, ada.agreement().kappa().items());
		assertEquals(0.5, ada.agreement().kappa().observed());
		assertEquals(List.of(twice.get(1)), ben.agreement().differing());
		assertEquals(0, Standings.of(archive, split, policy).agreement("Cy").kappa().items());
		Assigned own = shares().of("Ben").get(0);
		assertEquals(shares().size(own.share()),
				shares().progress(own, Standings.of(archive, split, policy)).proposals());
	}

	@Test
	void takesAssignmentsAwayAndPutsThemBackWhereTheyWere() {
		run(lead.equally(List.of("Ada", "Ben", "Cy")));
		List<Assignment> before = List.copyOf(archive.getAssignments());
		run(Assigning.remove(archive, List.of(before.get(1).getId())));
		assertEquals(List.of(before.get(0), before.get(2)), archive.getAssignments());
		assertEquals(List.of(), of("Ben"));
		stack.undo();
		assertEquals(before, archive.getAssignments());
		assertEquals(false, Assigning.remove(archive, List.of("unknown")).command().canExecute());
	}

	@Test
	void goesWithItsSplitAndComesBackWithIt() {
		SmallArchives.split(archive, "other", 90, 4);
		run(lead.equally(List.of("Ada", "Ben")));
		run(new Assigning(archive, archive.getSplits().get(1), Bands.USUAL, "L. Lead", clock).assign(List.of("Ada"),
				Share.parse("part 1/1")));
		List<Assignment> before = List.copyOf(archive.getAssignments());
		stack.execute(new RemoveSplitCommand(archive, split));
		assertEquals(List.of("other"), archive.getAssignments().stream().map(Assignment::getSplit).toList());
		stack.undo();
		assertEquals(before, archive.getAssignments());
	}
}
