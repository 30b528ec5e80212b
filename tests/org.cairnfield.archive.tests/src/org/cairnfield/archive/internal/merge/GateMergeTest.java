package org.cairnfield.archive.internal.merge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.cairnfield.archive.internal.git.LineMerge;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Claim;
import org.cairnfield.model.Conflict;
import org.cairnfield.model.ModelFactory;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

/** Gates that several people have set, each in a copy of the file. */
class GateMergeTest {

	private static final Authors SOMEBODY = (unit, value) -> new Authors.Author("by " + value, Instant.EPOCH);
	private static final String BASE = "# ours\nmean at most 1.2\nfloor at most 1.5\nsigner = anyone\n";

	/** A state: what is open, and the file. */
	private record State(Archive archive, String gates) {

		static State of(String gates) {
			return new State(ModelFactory.eINSTANCE.createArchive(), gates);
		}

		State with(State other, State base) throws IOException {
			byte[] both = gates == null || other.gates == null ? null
					: LineMerge.merge(base.gates == null ? new byte[0] : bytes(base.gates), bytes(gates),
							bytes(other.gates));
			ArchiveMerge.Merged merged = ArchiveMerge.of(base.archive, archive, SOMEBODY, other.archive, SOMEBODY,
					new GateTexts(base.gates, gates, other.gates,
							both == null ? null : new String(both, StandardCharsets.UTF_8)));
			return new State(merged.archive(), merged.gates());
		}

		private static byte[] bytes(String text) {
			return text.getBytes(StandardCharsets.UTF_8);
		}

		List<String> open() {
			return archive.getConflicts().stream().map(State::text).toList();
		}

		private static String text(Conflict conflict) {
			return conflict.getPlace() + ' ' + conflict.getUnit() + ": " + conflict.getBase() + " -> "
					+ conflict.getClaims().stream().map(Claim::getValue).toList();
		}
	}

	@Test
	void aGateThatTwoHaveSetStaysAsBeforeAndTheOthersAreAsSet() throws IOException {
		State merged = State.of(BASE.replace("1.2", "1.1"))
				.with(State.of(BASE.replace("1.2", "1.3").replace("1.5", "1.4")), State.of(BASE));
		assertEquals(BASE.replace("1.5", "1.4"), merged.gates);
		assertEquals(List.of("file releases/gates.txt mean: at most 1.2 -> [at most 1.1, at most 1.3]"), merged.open());
	}

	@Test
	void oneWhoDropsAGateAndOneWhoSetsItAreInConflict() throws IOException {
		State merged = State.of(BASE.replace("mean at most 1.2\n", "")).with(State.of(BASE.replace("1.2", "1.3")),
				State.of(BASE));
		assertEquals(BASE, merged.gates);
		assertEquals(List.of("file releases/gates.txt mean: at most 1.2 -> [null, at most 1.3]"), merged.open());
	}

	@Test
	void blanksAndCommentsMakeNoConflict() throws IOException {
		State merged = State.of(BASE.replace("mean at most 1.2", "mean   at most  1.1  # agreed"))
				.with(State.of(BASE.replace("1.2", "1.1")), State.of(BASE));
		assertEquals(List.of(), merged.open());
		assertEquals("at most 1.1", GateLines.value(merged.gates, "mean"));
	}

	/** With gates set, dropped and added, and a file that nobody had before. */
	@Test
	void makesNoDifferenceInWhichOrderThreeComeTogether() throws IOException {
		for (String before : new String[] { BASE, null }) {
			State base = State.of(before);
			List<State> work = List.of(State.of(BASE.replace("1.2", "1.1") + "site at most 2\n"),
					State.of(BASE.replace("1.2", "1.3").replace("anyone", "another")),
					State.of(BASE.replace("floor at most 1.5\n", "").replace("1.2", "1.4")));
			Set<List<Object>> outcomes = new HashSet<>();
			for (int[] order : new int[][] { { 0, 1, 2 }, { 0, 2, 1 }, { 1, 0, 2 }, { 1, 2, 0 }, { 2, 0, 1 },
					{ 2, 1, 0 } }) {
				State all = work.get(order[0]).with(work.get(order[1]), base).with(work.get(order[2]), base);
				outcomes.add(List.of(GateLines.words(all.gates).stream()
						.map(word -> word + ' ' + GateLines.value(all.gates, word)).toList(), all.open()));
			}
			assertEquals(1, outcomes.size(), () -> String.join("\n", outcomes.stream().map(Object::toString).toList()));
		}
	}

	@Test
	void whatIsOpenStaysOpenWhereTheFileIsNotThere() throws IOException {
		State both = State.of(BASE.replace("1.2", "1.1")).with(State.of(BASE.replace("1.2", "1.3")), State.of(BASE));
		State merged = new State(both.archive, null).with(new State(EcoreUtil.copy(both.archive), both.gates), both);
		assertNull(merged.gates);
		assertEquals(both.open(), merged.open());
	}

	@Test
	void aLineIsSetInItsPlaceAddedOrLeftOut() {
		assertEquals(BASE.replace("1.2", "1"), GateLines.with(BASE, "mean", "at most 1"));
		assertEquals(BASE + "site at most 2\n", GateLines.with(BASE, "site", "at most 2"));
		assertEquals(BASE.replace("signer = anyone\n", ""), GateLines.with(BASE, "signer", null));
		assertEquals("mean at most 1\n", GateLines.with("", "mean", "at most 1"));
	}
}
