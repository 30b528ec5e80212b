package org.cairnfield.curation.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.cairnfield.curation.split.SearchChoice;
import org.cairnfield.curation.split.SetSearchCommand;
import org.junit.jupiter.api.Test;

class MapStateTest {

	private final SessionFixture f = new SessionFixture();

	@Test
	void asksForEvidenceAgainOnceTheSplitIsSearchedInAnotherWay() {
		f.compute();
		f.stack.execute(new SetSearchCommand(f.split, SearchChoice.parse("cut cells 4 relative k 3 weighted")));
		f.session.archiveChanged();
		assertEquals(2, f.wanted.size(), "what homes do to positions depends on the search");
		assertTrue(f.session.evidence().isWaiting());
		f.compute();
		assertEquals("cut cells 4 relative k 3 weighted", f.session.evidence().onMap().search().code());
		f.session.archiveChanged();
		assertEquals(2, f.wanted.size(), "nothing has changed since");
	}
}
