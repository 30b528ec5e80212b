package org.cairnfield.curation.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.cairnfield.curation.decide.Home;
import org.cairnfield.curation.decide.ReviewState;
import org.cairnfield.model.values.SampleKey;
import org.junit.jupiter.api.Test;

/** Audits of bands, as a reviewer goes through them. */
class SessionAuditTest {

	private final SessionFixture f = new SessionFixture();
	private final ReviewSession session = f.session;

	private List<SampleKey> listed() {
		return session.queue().list().lines().stream().filter(line -> !line.isHeading()).map(line -> line.row().key())
				.toList();
	}

	private long joined() {
		return session.standings().homes().stream().filter(home -> home.kind() == Home.Kind.CLUSTER).count();
	}

	private void approve() {
		session.setDraft(new RulingDraft("known-place", ""));
		assertTrue(session.decide(Choice.APPROVE), session.message().text());
	}

	@Test
	void drawsAnotherLotWhereAnAuditHasFailed() {
		f.compute();
		String band = session.reviewer().policy().bands().all().stream().map(each -> each.name())
				.max((a, b) -> session.audit().of(a).orElseThrow().lot().size()
						- session.audit().of(b).orElseThrow().lot().size())
				.orElseThrow();
		session.lookAtAudit(band);
		String first = session.audit().looking().orElseThrow().id();
		assertTrue(session.decide(Choice.POOL));
		session.ledgersChanged();
		assertTrue(session.audit().looking().orElseThrow().isFailed());
		f.stack.undo();
		session.undone("Pool");
		assertTrue(session.audit().of(band).orElseThrow().isFailed());
		session.lookAtAudit(null);
		session.lookAtAudit(band);
		assertNotEquals(first, session.audit().looking().orElseThrow().id());
		assertEquals(List.of(first), session.audit().looking().orElseThrow().failed());
		assertEquals(Set.copyOf(session.audit().looking().orElseThrow().drawn()), Set.copyOf(listed()));
		session.ledgersChanged();
		assertEquals(List.of(first), session.audit().looking().orElseThrow().failed(), "before its first verdict");
	}

	@Test
	void looksAtTheDrawnSamplesAndThenApprovesTheRestOfABand() {
		f.compute();
		String band = session.reviewer().policy().bands().all().stream().map(each -> each.name())
				.max((a, b) -> session.audit().of(a).orElseThrow().lot().size()
						- session.audit().of(b).orElseThrow().lot().size())
				.orElseThrow();
		assertFalse(session.approveRest(band));
		assertTrue(session.message().refused());
		session.lookAtAudit(band);
		Set<SampleKey> drawn = Set.copyOf(session.audit().looking().orElseThrow().drawn());
		assertEquals(drawn, Set.copyOf(listed()));
		assertTrue(drawn.contains(session.current()));
		for (int i = 0; i < drawn.size(); i++) {
			approve();
			session.ledgersChanged();
		}
		int rest = session.audit().of(band).orElseThrow().rest().size();
		assertTrue(rest > 0);
		assertTrue(session.approveRest(band), session.message().text());
		assertEquals(rest + " proposals of band " + band + " approved after the audit.", session.message().text());
		assertTrue(session.audit().looking().isEmpty());
		assertEquals(drawn.size() + rest, joined());
	}

	@Test
	void countsADrawnSampleThatIsDecidedWhileTheWholeQueueIsListed() {
		f.compute();
		String band = session.reviewer().policy().bands().all().stream().map(b -> b.name())
				.max((a, b) -> session.audit().of(a).orElseThrow().lot().size()
						- session.audit().of(b).orElseThrow().lot().size())
				.orElseThrow();
		session.lookAtAudit(band);
		String id = session.audit().looking().orElseThrow().id();
		List<SampleKey> drawn = session.audit().looking().orElseThrow().drawn();
		approve();
		session.lookAtAudit(null);
		session.ledgersChanged();
		SampleKey left = drawn.stream().filter(key -> session.standings().of(key).state() == ReviewState.UNDECIDED)
				.findFirst().orElseThrow();
		session.show(left);
		assertTrue(session.decide(Choice.POOL), session.message().text());
		session.ledgersChanged();
		assertEquals(id, session.standings().all().of(left).orElseThrow().first().orElseThrow().batch());
		assertTrue(session.audit().of(band).orElseThrow().isFailed());
	}
}
