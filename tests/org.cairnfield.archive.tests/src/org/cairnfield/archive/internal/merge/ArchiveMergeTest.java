package org.cairnfield.archive.internal.merge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;

import org.cairnfield.archive.SampleArchives;
import org.cairnfield.archive.internal.resource.ArchiveFiles;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.model.Archive;
import org.cairnfield.model.values.KnownPlace;
import org.cairnfield.model.Claim;
import org.cairnfield.model.Conflict;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Survey;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.conflict.Place;
import org.cairnfield.model.conflict.Unit;
import org.cairnfield.model.conflict.Units;
import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

/** Laws that a merge of models must obey whatever people did, and what it does with single records. */
class ArchiveMergeTest {

	private static final int RUNS = 60;

	static Archive archive(long seed) {
		Archive archive = ModelFactory.eINSTANCE.createArchive();
		SampleArchives.fill(archive, seed, 3, 5);
		archive.getRuleSettings().add(RandomWork.setting("fastest", "4", null));
		return archive;
	}

	/** The files of an archive, byte by byte. */
	static SortedMap<String, String> files(Archive archive) throws IOException {
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

	/** What some people have done, each to a copy of the same archive. */
	record Work(Archive archive, Map<String, Archive> by) {

		static Work of(String person, Archive archive) {
			return new Work(archive, Map.of(person, archive));
		}

		/** Who was the first to set a unit to a value; the one whose name comes first was. */
		Authors authors(Archive base) {
			return (unit, value) -> by.keySet().stream().sorted()
					.filter(person -> Objects.equals(Units.get(by.get(person), unit), value)
							&& !says(by.get(person), unit.place()).equals(says(base, unit.place())))
					.findFirst()
					.map(person -> new Authors.Author(person, Instant.ofEpochSecond(person.charAt(0))))
					.orElse(new Authors.Author("nobody", Instant.EPOCH));
		}

		private static String says(Archive archive, String place) {
			EObject object = Place.find(archive, place);
			if (object instanceof Survey survey && Place.sample(place) != null) {
				int row = survey.table().row(Place.sample(place));
				return row < 0 ? "gone" : survey.table().sample(row).toString();
			}
			StringBuilder text = new StringBuilder();
			for (TreeIterator<EObject> all = object == null ? null
					: EcoreUtil.getAllContents(List.of(object)); all != null && all.hasNext();) {
				EObject each = all.next();
				each.eClass().getEAllAttributes().forEach(attribute -> text.append(each.eGet(attribute)).append(' '));
				if (each instanceof Survey survey) {
					for (int row = 0; row < survey.table().size(); row++) {
						text.append(survey.table().sample(row));
					}
				}
			}
			return text.toString();
		}

		Work with(Work other, Archive base) {
			Map<String, Archive> all = new HashMap<>(by);
			all.putAll(other.by);
			return new Work(merge(base, this, other).archive(), all);
		}
	}

	private static ArchiveMerge.Merged merge(Archive base, Work mine, Work theirs) {
		return ArchiveMerge.of(base, mine.archive, mine.authors(base), theirs.archive, theirs.authors(base),
				new GateTexts(null, null, null, null));
	}

	private static ArchiveMerge.Merged merge(Archive base, Archive mine, Archive theirs) {
		return merge(base, Work.of("M", mine), Work.of("T", theirs));
	}

	@Test
	void whatOnlyOneSideHasChangedIsAsThatSideHasIt() throws IOException {
		for (int run = 0; run < RUNS; run++) {
			Archive base = archive(run);
			Archive x = RandomWork.on(base, "M", new Random(run));
			SortedMap<String, String> wanted = files(x);
			for (ArchiveMerge.Merged merged : List.of(merge(x, x, x), merge(base, x, base), merge(base, base, x),
					merge(base, x, x))) {
				assertEquals(wanted, files(merged.archive()), "run " + run);
				assertEquals(0, merged.archive().getConflicts().size(), "run " + run);
			}
			assertEquals(wanted, files(x), "the models are not touched");
		}
	}

	private static SortedSet<String> ids(Archive archive) {
		SortedSet<String> ids = new TreeSet<>();
		archive.getLedgers()
				.forEach(ledger -> ledger.getVerdicts().forEach(verdict -> ids.add("verdict " + verdict.getId())));
		archive.getWaivers().forEach(waiver -> ids.add("waiver " + waiver.getRule() + waiver.getContentKey()));
		archive.getRuleSettings().forEach(setting -> ids.add("setting " + Place.key(setting)));
		archive.getSites().forEach(site -> site.getSurveys().forEach(survey -> ids.add("survey " + survey.getId())));
		return ids;
	}

	@Test
	void nothingIsDroppedThatNoSideHasTakenAway() {
		int conflicts = 0;
		for (int run = 0; run < RUNS; run++) {
			Archive base = archive(run);
			Archive mine = RandomWork.on(base, "M", new Random(run));
			Archive theirs = RandomWork.on(base, "T", new Random(1000 + run));
			ArchiveMerge.Merged merged = merge(base, mine, theirs);
			conflicts += merged.archive().getConflicts().size();
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
			Work one = Work.of("M", mine);
			Work other = Work.of("T", theirs);
			assertEquals(files(merge(base, one, other).archive()), files(merge(base, other, one).archive()),
					"run " + run);
		}
	}

	/** In each order of three, what is still to be decided included. */
	@Test
	void makesNoDifferenceInWhichOrderThreeComeTogether() throws IOException {
		int conflicts = 0;
		for (int run = 0; run < RUNS * 3; run++) {
			Archive base = archive(run % 7);
			List<Work> work = new ArrayList<>();
			for (String person : List.of("A", "B", "C")) {
				work.add(Work.of(person, RandomWork.on(base, person, new Random(31L * run + person.charAt(0)))));
			}
			SortedMap<String, String> first = null;
			for (int[] order : new int[][] { { 0, 1, 2 }, { 0, 2, 1 }, { 1, 0, 2 }, { 1, 2, 0 }, { 2, 0, 1 },
					{ 2, 1, 0 } }) {
				Archive all = work.get(order[0]).with(work.get(order[1]), base).with(work.get(order[2]), base)
						.archive();
				if (first == null) {
					first = files(all);
					conflicts += all.getConflicts().size();
				}
				SortedMap<String, String> found = files(all);
				for (String path : first.keySet()) {
					assertEquals(List.of(first.get(path).split("\n")),
							List.of(String.valueOf(found.get(path)).split("\n")),
							"run " + run + ", order " + order[0] + order[1] + order[2] + ", " + path);
				}
				assertEquals(first.keySet(), found.keySet());
			}
		}
		assertTrue(conflicts > RUNS, "only " + conflicts + " conflicts");
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

	static Survey survey(Archive archive) {
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
		assertEquals(0, merged.archive().getConflicts().size());
		assertEquals(List.of(7.0, 3.0, 4.0),
				List.of((double) survey(merged.archive()).table().floorLevel(2),
						survey(merged.archive()).table().xMetres(2),
						survey(merged.archive()).table().yMetres(2)));
	}

	@Test
	void asksWhereTwoKnowOneAccessPointAtTwoPlaces() {
		Archive base = archive(1);
		Archive mine = EcoreUtil.copy(base);
		Archive theirs = EcoreUtil.copy(base);
		mine.getAccessPoints().get(1).setPlace(KnownPlace.parse("th/0 1,2"));
		theirs.getAccessPoints().get(1).setPlace(KnownPlace.parse("th/1 1,2"));
		mine.getAccessPoints().get(2).setPlace(KnownPlace.parse("th/0 5,6"));
		theirs.getAccessPoints().get(2).setChannel(7);
		Archive merged = merge(base, mine, theirs).archive();
		assertEquals(List.of("place"), merged.getConflicts().stream().map(Conflict::getUnit).toList());
		assertEquals(List.of("th/0 1.0,2.0", "th/1 1.0,2.0"),
				merged.getConflicts().get(0).getClaims().stream().map(Claim::getValue).sorted().toList());
		assertEquals(KnownPlace.parse("th/0 5,6"), merged.getAccessPoints().get(2).getPlace());
		assertEquals(7, merged.getAccessPoints().get(2).getChannel());
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
		assertEquals(1, merged.archive().getConflicts().size());
		Conflict conflict = merged.archive().getConflicts().get(0);
		assertTrue(conflict.getPlace().endsWith("/survey survey-0/sample " + survey(base).table().id(2)),
				conflict::getPlace);
		assertEquals("position", conflict.getUnit());
		assertEquals(List.of("1.0 4.0 M", "3.0 4.0 T"),
				conflict.getClaims().stream().map(claim -> claim.getValue() + ' ' + claim.getPerson()).toList());
	}

	static Archive edited(Archive archive, Consumer<Archive> edit) {
		Archive copy = EcoreUtil.copy(archive);
		edit.accept(copy);
		return copy;
	}

	static Consumer<Archive> moveTo(double x) {
		return archive -> survey(archive).getSamples()
				.setTable(survey(archive).table().edit().position(2, x, 4).done());
	}

	@Test
	void aDecisionReachesThoseWhoHaveTheConflictAndAThirdValueJoinsIt() {
		Archive base = archive(1);
		Archive both = merge(base, edited(base, moveTo(1)), edited(base, moveTo(3))).archive();
		Conflict conflict = both.getConflicts().get(0);
		Archive decided = edited(both, archive -> {
			Units.set(archive, Unit.of(conflict), conflict.getClaims().get(1).getValue());
			archive.getConflicts().clear();
		});
		Archive other = edited(both, archive -> archive.setName("other work"));
		Archive merged = merge(both, decided, other).archive();
		assertEquals(0, merged.getConflicts().size());
		assertEquals(3.0, survey(merged).table().xMetres(2));
		Archive third = merge(base, both, edited(base, moveTo(5))).archive();
		assertEquals(List.of("1.0 4.0", "3.0 4.0", "5.0 4.0"),
				third.getConflicts().get(0).getClaims().stream().map(Claim::getValue).toList());
		Archive late = merge(base, decided, edited(base, moveTo(5))).archive();
		assertEquals(List.of("3.0 4.0", "5.0 4.0"),
				late.getConflicts().get(0).getClaims().stream().map(Claim::getValue).toList());
	}

	@Test
	void decidingForTheValueBeforeClosesTheConflictForAll() {
		Archive base = archive(1);
		Archive both = merge(base, edited(base, moveTo(1)), edited(base, moveTo(3))).archive();
		Archive decided = edited(both, archive -> archive.getConflicts().clear());
		Archive merged = merge(both, edited(both, archive -> archive.setName("other work")), decided).archive();
		assertEquals(0, merged.getConflicts().size());
		assertEquals(survey(base).table(), survey(merged).table());
	}

	@Test
	void twoWhoSetTheSameAgree() {
		Archive base = archive(1);
		Archive merged = merge(base, edited(base, moveTo(1)), edited(base, moveTo(1))).archive();
		assertEquals(0, merged.getConflicts().size());
		assertEquals(1.0, survey(merged).table().xMetres(2));
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
		assertEquals(List.of("presence"), merged.archive().getConflicts().stream().map(Conflict::getUnit).toList());
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
		assertEquals(0, merged.archive().getConflicts().size());
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
		assertEquals(List.of("v-3"), merged.changed());
	}
}
