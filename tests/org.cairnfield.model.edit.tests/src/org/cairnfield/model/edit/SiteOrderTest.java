package org.cairnfield.model.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;

import org.cairnfield.model.Archive;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Site;
import org.eclipse.emf.common.command.Command;
import org.junit.jupiter.api.Test;

public class SiteOrderTest {

	private final Archive archive = ModelFactory.eINSTANCE.createArchive();
	private final Site c = site("c");
	private final Site a = site("a");
	private final Site b = site("b");

	private Site site(String id) {
		Site site = ModelFactory.eINSTANCE.createSite();
		site.setId(id);
		site.setName("House " + id);
		archive.getSites().add(site);
		return site;
	}

	private String order() {
		return SiteOrder.of(archive).stream().map(Site::getId).collect(Collectors.joining());
	}

	@Test
	public void isByIdUntilPeopleSayOtherwise() {
		assertEquals("abc", order());
		archive.setSiteOrder("c gone");
		assertEquals("cab", order(), "those that are not named come behind, a site that is gone does no harm");
	}

	@Test
	public void movesASiteByAStepAndBack() {
		Command down = SiteOrder.move(a, 1);
		assertEquals("Move House a down", down.getLabel());
		assertTrue(down.canExecute());
		down.execute();
		assertEquals("bac", order());
		SiteOrder.move(c, -1).execute();
		assertEquals("b c a", archive.getSiteOrder());
		SiteOrder.move(c, -1).execute();
		assertEquals("cba", order());
		down.undo();
		assertEquals("abc", order());
		assertEquals(List.of(c, a, b), archive.getSites(), "what is computed from has its own order");
	}

	@Test
	public void forgetsAnOrderThatIsTheUsualOne() {
		SiteOrder.move(b, -1).execute();
		SiteOrder.move(b, 1).execute();
		assertNull(archive.getSiteOrder());
		assertFalse(SiteOrder.move(a, -1).canExecute(), "it is the first");
		assertFalse(SiteOrder.move(c, 1).canExecute(), "it is the last");
	}
}
