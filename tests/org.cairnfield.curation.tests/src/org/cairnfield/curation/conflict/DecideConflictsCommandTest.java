package org.cairnfield.curation.conflict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;

import org.cairnfield.model.Archive;
import org.cairnfield.model.Claim;
import org.cairnfield.model.Conflict;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.conflict.DecidedLater;
import org.junit.jupiter.api.Test;

class DecideConflictsCommandTest {

	private final Archive archive = ModelFactory.eINSTANCE.createArchive();

	private Conflict conflict(String place, String unit, String... claims) {
		Conflict conflict = ModelFactory.eINSTANCE.createConflict();
		conflict.setPlace(place);
		conflict.setUnit(unit);
		for (String value : claims) {
			Claim claim = ModelFactory.eINSTANCE.createClaim();
			claim.setValue(value);
			conflict.getClaims().add(claim);
		}
		archive.getConflicts().add(conflict);
		return conflict;
	}

	private static List<String> values(Conflict conflict) {
		return conflict.getClaims().stream().map(Claim::getValue).toList();
	}

	@Test
	void whatIsOverTheModelIsSetAndWhatIsOverAFileWaitsForTheNextSave() {
		archive.setName("the quay");
		Conflict name = conflict("archive", "name", "east", "west");
		Conflict gate = conflict("file releases/gates.txt", "mean", "at most 1.1", "at most 1.3");
		DecideConflictsCommand decide = new DecideConflictsCommand(archive, Map.of(name, "west", gate, "at most 1.3"));
		assertTrue(decide.canExecute());
		for (int times = 0; times < 2; times++) { // done again after it was undone
			decide.execute();
			assertEquals("west", archive.getName());
			assertEquals(List.of(), DecidedLater.open(archive));
			assertEquals(List.of(gate), archive.getConflicts());
			assertEquals(List.of("at most 1.3"), values(gate));
			assertFalse(new DecideConflictsCommand(archive, Map.of(gate, "at most 1.1")).canExecute(), "it is decided");
			decide.undo();
			assertEquals("the quay", archive.getName());
			assertEquals(List.of(name, gate), DecidedLater.open(archive));
			assertEquals(List.of("at most 1.1", "at most 1.3"), values(gate));
		}
	}
}
