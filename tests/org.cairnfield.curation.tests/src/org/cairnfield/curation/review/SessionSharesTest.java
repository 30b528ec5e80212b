package org.cairnfield.curation.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.cairnfield.curation.filter.FilterException;
import org.cairnfield.curation.propose.Bands;
import org.cairnfield.curation.team.Assigning;
import org.cairnfield.curation.team.Share;
import org.cairnfield.model.values.SampleKey;
import org.junit.jupiter.api.Test;

/** The queue of a reviewer to whom a part of the proposals is assigned. */
class SessionSharesTest {

	private final SessionFixture f = new SessionFixture();
	private final ReviewSession session = f.session;

	private void assign(String reviewer, String share) {
		f.stack.execute(new Assigning(f.archive, f.split, Bands.USUAL, "L. Lead", f.clock)
				.assign(List.of(reviewer), Share.parse(share)).command());
		session.archiveChanged();
	}

	private List<SampleKey> listed() {
		return session.queue().list().lines().stream().filter(line -> !line.isHeading()).map(line -> line.row().key())
				.toList();
	}

	@Test
	void listsWhatIsAssignedToThePersonAndCountsItAlone() {
		f.compute();
		String all = session.countText();
		session.arrange(session.queue().settings().withShown(QueueShown.MINE));
		assertEquals(List.of(), listed());
		assertEquals("", session.countText());
		assign("m.q.", "part 1/2");
		List<SampleKey> mine = session.queue().rows().stream()
				.filter(row -> row.evidence().made() && new Share.OfPart(1, 2).equals(
						session.queue().shares().of("M.Q.").get(0).share()) && !row.assigned().isEmpty())
				.map(QueueRow::key).toList();
		assertTrue(!mine.isEmpty() && mine.size() < session.queue().rows().size());
		assertEquals(mine, listed());
		assertEquals(mine.size() + " of " + mine.size() + " left", session.countText());
		session.show(mine.get(0));
		assertTrue(session.decide(Choice.APPROVE) || session.decide(Choice.POOL), session.message().text());
		assertTrue(mine.contains(session.current()), "the next one is of the same share");
		assertEquals(mine.size() - 1 + " of " + mine.size() + " left", session.countText());
		session.arrange(session.queue().settings().withShown(QueueShown.ALL));
		assertEquals(all.replaceFirst("\\d+", String.valueOf(Integer.parseInt(all.split(" ")[0]) - 1)),
				session.countText());
	}

	@Test
	void followsAnAssignmentThatIsUndone() throws FilterException {
		f.compute();
		session.arrange(session.queue().settings().withFilter(QueueFilter.parse("assigned ~ ada")));
		assertEquals(List.of(), listed());
		assign("Ada", "part 2/2");
		assertEquals(session.queue().shares().size(new Share.OfPart(2, 2)), listed().size());
		assertTrue(session.queue().rows().stream().filter(row -> !row.assigned().isEmpty())
				.allMatch(row -> row.summary().contains("assigned to Ada")));
		f.stack.undo();
		session.archiveChanged();
		assertEquals(List.of(), listed());
	}
}
