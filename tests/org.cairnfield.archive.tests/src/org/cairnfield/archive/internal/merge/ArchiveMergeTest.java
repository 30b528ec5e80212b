package org.cairnfield.archive.internal.merge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cairnfield.archive.SampleArchives;
import org.cairnfield.archive.internal.resource.ArchiveFiles;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Survey;
import org.cairnfield.model.Verdict;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

/** Laws that a merge of models must obey whatever people did, and what it does with single records. */
class ArchiveMergeTest {

	private static final int RUNS = 60;

	private static Archive archive(long seed) {
		Archive archive = ModelFactory.eINSTANCE.createArchive();
		SampleArchives.fill(archive, seed, 3, 5);
		return archive;
	}

	/** The files of an archive, byte by byte. */
	private static SortedMap<String, String> files(Archive archive) throws IOException {
		SortedMap<String, String> files = new TreeMap<>();
		ByteArrayOutputStream structure = new ByteArrayOutputStream();
		ArchiveFiles.writeStructure(archive, structure);
		files.put(ArchiveLayout.STRUCTURE, structure.toString(StandardCharsets.ISO_8859_1));
		for (Map.Entry<String, EObject> part : ArchiveFiles.parts(archive).entrySet()) {
			ByteArrayOutputStream out = new ByteArrayOutputStream();
			ArchiveFiles.writePart(part.getValue(), out);
			files.put(part.getKey(), out.toString(StandardCharsets.ISO_8859_1));
		}
		return files;
	}

	private static ArchiveMerge.Merged merge(Archive base, Archive mine, Archive theirs) {
		return ArchiveMerge.of(base, mine, theirs);
	}

	@Test
	void whatOnlyOneSideHasChangedIsAsThatSideHasIt() throws IOException {
		for (int run = 0; run < RUNS; run++) {
			Archive base = archive(run);
			Archive x = RandomWork.on(base, "M", new Random(run));
			SortedMap<String, String> wanted = files(x);
			for (ArchiveMerge.Merged merged : List.of(merge(x, x, x), merge(base, x, base), merge(base, base, x), merge(base, x, x))) {
				assertEquals(wanted, files(merged.archive()), "run " + run);
				assertEquals(List.of(), merged.conflicts(), "run " + run);
			}
			assertEquals(wanted, files(x), "the models are not touched");
		}
	}

	private static SortedSet<String> ids(Archive archive) {
		SortedSet<String> ids = new TreeSet<>();
		archive.getLedgers().forEach(ledger -> ledger.getVerdicts().forEach(verdict -> ids.add("verdict " + verdict.getId())));
		archive.getWaivers().forEach(waiver -> ids.add("waiver " + waiver.getRule() + waiver.getContentKey()));
		archive.getSites().forEach(site -> site.getSurveys().forEach(survey -> ids.add("survey " + survey.getId())));
		return ids;
	}

	@Test
	void nothingIsDroppedThatNoSideHasTakenAway() throws IOException {
		int conflicts = 0;
		for (int run = 0; run < RUNS; run++) {
			Archive base = archive(run);
			Archive mine = RandomWork.on(base, "M", new Random(run));
			Archive theirs = RandomWork.on(base, "T", new Random(1000 + run));
			ArchiveMerge.Merged merged = merge(base, mine, theirs);
			conflicts += merged.conflicts().size();
			SortedSet<String> wanted = ids(mine);
			wanted.addAll(ids(theirs));
			for (String id : ids(base)) {
				if (!id.startsWith("verdict ") && !(ids(mine).contains(id) && ids(theirs).contains(id))) {
					wanted.remove(id); // one side has taken it away
				}
			}
			SortedSet<String> found = ids(merged.archive());
			wanted.removeAll(found);
			assertEquals(new TreeSet<>(), wanted, "run " + run);
		}
		assertTrue(conflicts > RUNS / 4, "the runs hardly ever met: " + conflicts);
	}

	@Test
	void makesNoDifferenceWhichSideIsWhich() throws IOException {
		for (int run = 0; run < RUNS; run++) {
			Archive base = archive(run);
			Archive mine = RandomWork.on(base, "M", new Random(run));
			Archive theirs = RandomWork.on(base, "T", new Random(2000 + run));
			ArchiveMerge.Merged one = merge(base, mine, theirs);
			ArchiveMerge.Merged other = merge(base, theirs, mine);
			assertEquals(files(one.archive()), files(other.archive()), "run " + run);
			assertEquals(one.conflicts().size(), other.conflicts().size(), "run " + run);
		}
	}

	/** In each order of three the same, where nobody met: what is to be decided depends on who comes first. */
	@Test
	void makesNoDifferenceInWhichOrderThreeComeTogether() throws IOException {
		int compared = 0;
		for (int run = 0; run < RUNS * 3; run++) {
			Archive base = archive(run % 7);
			List<Archive> work = new ArrayList<>();
			for (String person : List.of("A", "B", "C")) {
				work.add(RandomWork.on(base, person, new Random(31L * run + person.charAt(0))));
			}
			SortedMap<String, String> first = null;
			for (int[] order : new int[][] {{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}}) {
				ArchiveMerge.Merged two = merge(base, work.get(order[0]), work.get(order[1]));
				ArchiveMerge.Merged three = merge(base, two.archive(), work.get(order[2]));
				if (!two.conflicts().isEmpty() || !three.conflicts().isEmpty()) {
					first = null;
					break;
				}
				if (first == null) {
					first = files(three.archive());
				}
				assertEquals(first, files(three.archive()), "run " + run + ", order " + order[0] + order[1] + order[2]);
			}
			compared += first == null ? 0 : 1;
		}
		assertTrue(compared > RUNS, "only " + compared + " runs without a conflict");
	}

	@Test
	void ledgersComeTogetherInTheOrderOfTheirTimesAndEachSideKeepsItsOwn() {
		Random random = new Random(5);
		for (int run = 0; run < RUNS; run++) {
			Archive base = archive(run);
			Archive mine = RandomWork.on(base, "M", random);
			Archive theirs = RandomWork.on(base, "T", random);
			Ledger merged = merge(base, mine, theirs).archive().getLedgers().get(0);
			List<String> order = merged.getVerdicts().stream().map(Verdict::getId).toList();
			for (Archive side : List.of(mine, theirs)) {
				List<String> own = side.getLedgers().get(0).getVerdicts().stream().map(Verdict::getId).toList();
				assertEquals(own, order.stream().filter(own::contains).toList(), "run " + run);
			}
		}
	}

	private static Survey survey(Archive archive) {
		return SampleArchives.survey(archive, "survey-0");
	}

	@Test
	void mergesTheFloorByOneAndThePositionByTheOtherOfOneSample() {
		Archive base = archive(1);
		Archive mine = EcoreUtil.copy(base);
		Archive theirs = EcoreUtil.copy(base);
		survey(mine).getSamples().setTable(survey(mine).table().edit().floorLevel(2, 7).done());
		survey(theirs).getSamples().setTable(survey(theirs).table().edit().position(2, 3, 4).done());
		ArchiveMerge.Merged merged = merge(base, mine, theirs);
		assertEquals(List.of(), merged.conflicts());
		assertEquals(List.of(7.0, 3.0, 4.0), List.of((double) survey(merged.archive()).table().floorLevel(2), survey(merged.archive()).table().xMetres(2),
				survey(merged.archive()).table().yMetres(2)));
	}

	@Test
	void keepsTheBaseAndNamesBothWhereTwoMoveOneSample() {
		Archive base = archive(1);
		Archive mine = EcoreUtil.copy(base);
		Archive theirs = EcoreUtil.copy(base);
		survey(mine).getSamples().setTable(survey(mine).table().edit().position(2, 1, 4).done());
		survey(theirs).getSamples().setTable(survey(theirs).table().edit().position(2, 3, 4).done());
		ArchiveMerge.Merged merged = merge(base, mine, theirs);
		assertEquals(survey(base).table(), survey(merged.archive()).table());
		assertEquals(1, merged.conflicts().size());
		MergeConflict conflict = merged.conflicts().get(0);
		assertTrue(conflict.where().endsWith("survey survey-0, sample " + survey(base).table().id(2)), conflict::toString);
		assertEquals("position", conflict.what());
		assertTrue(conflict.mine().contains("1.0") && conflict.theirs().contains("3.0"), conflict::toString);
	}

	@Test
	void keepsAndNamesASurveyThatOneHasRemovedAndTheOtherChanged() {
		Archive base = archive(1);
		Archive mine = EcoreUtil.copy(base);
		Archive theirs = EcoreUtil.copy(base);
		mine.getSites().forEach(site -> site.getSurveys().removeIf(survey -> survey.getId().equals("survey-0")));
		survey(theirs).getSamples().setTable(survey(theirs).table().edit().reason(0, "on a ladder").done());
		ArchiveMerge.Merged merged = merge(base, mine, theirs);
		assertEquals("on a ladder", survey(merged.archive()).table().reason(0));
		assertEquals(List.of("presence"), merged.conflicts().stream().map(MergeConflict::what).toList());
	}

	@Test
	void keepsASplitThatOneHasRemovedWhereTheOtherHasJudgedByIt() {
		Archive base = archive(1);
		base.getLedgers().get(0).setId("all");
		Archive mine = EcoreUtil.copy(base);
		Archive theirs = EcoreUtil.copy(base);
		mine.getSplits().removeIf(split -> split.getId().equals("all"));
		Verdict verdict = EcoreUtil.copy(base.getLedgers().get(0).getVerdicts().get(0));
		verdict.setId("v-new");
		theirs.getLedgers().get(0).getVerdicts().add(verdict);
		ArchiveMerge.Merged merged = merge(base, mine, theirs);
		assertTrue(merged.archive().getSplits().stream().anyMatch(split -> split.getId().equals("all")));
		assertEquals(List.of(), merged.conflicts());
	}

	@Test
	void namesAVerdictThatIsThereInTwoVersions() {
		Archive base = archive(1);
		Archive mine = EcoreUtil.copy(base);
		Archive theirs = EcoreUtil.copy(base);
		theirs.getLedgers().get(0).getVerdicts().get(3).setPerson("somebody else");
		Verdict verdict = EcoreUtil.copy(base.getLedgers().get(0).getVerdicts().get(0));
		verdict.setId("v-new");
		mine.getLedgers().get(0).getVerdicts().add(verdict);
		ArchiveMerge.Merged merged = merge(base, mine, theirs);
		assertTrue(merged.conflicts().stream().anyMatch(conflict -> conflict.where().equals("ledger mq, verdict v-3")), merged.conflicts()::toString);
	}
}
