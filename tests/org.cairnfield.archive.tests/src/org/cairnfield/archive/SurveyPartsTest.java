package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.history.ArchiveDiff;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.internal.text.SamplesText;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;
import org.cairnfield.model.values.Sha256;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A survey of so many samples that they lie in several files. */
class SurveyPartsTest {

	private static final Person PERSON = Person.named("M.Q.");
	private static final int SAMPLES = 3_000;
	private static final String LIST = "surveys/th/spring.samples";
	private static final String PARTS = "surveys/th/spring.parts/";

	@TempDir
	Path folder;
	private Path root;
	private OpenArchive open;
	private SavePoint first;

	@BeforeEach
	void makeArchive() throws IOException {
		root = folder.resolve("archive");
		open = make(root, table(0, SAMPLES));
		first = open.savePoint(PERSON, "intake").orElseThrow();
	}

	@AfterEach
	void close() throws IOException {
		open.close();
	}

	private static OpenArchive make(Path root, SampleTable table) throws IOException {
		OpenArchive made = new ArchiveStore().create(root, "n");
		Site site = ModelFactory.eINSTANCE.createSite();
		site.setId("th");
		site.setName("Tide House");
		made.archive().getSites().add(site);
		Survey survey = ModelFactory.eINSTANCE.createSurvey();
		survey.setId("spring");
		survey.setSamples(ModelFactory.eINSTANCE.createSamples());
		survey.getSamples().setTable(table);
		site.getSurveys().add(survey);
		return made;
	}

	private static SampleTable table(int from, int to) {
		SampleTableBuilder table = SampleTable.builder();
		for (int i = from; i < to; i++) {
			add(table, i);
		}
		return table.build();
	}

	private static void add(SampleTableBuilder table, int i) {
		table.sample(String.format("TH-%05d", i), i % 4, i % 70, i / 70.0).reading("00005e005301", -40 - i % 50)
				.reading("00005e005302", -90 + i % 7);
	}

	private Survey survey() {
		return SampleArchives.survey(open.archive(), "spring");
	}

	private void move(int row, double x) {
		survey().getSamples().setTable(survey().table().edit().position(row, x, 0).done());
	}

	private Set<String> parts() throws IOException {
		Set<String> parts = new TreeSet<>(FolderText.of(root).keySet());
		parts.removeIf(path -> !path.startsWith(PARTS));
		return parts;
	}

	private void reopen() throws IOException {
		open.close();
		open = new ArchiveStore().open(root, Mode.EDIT);
	}

	/** As the first version of the format has it. */
	private void toOneFile() throws IOException {
		for (String part : parts()) {
			Files.delete(root.resolve(part));
		}
		ByteArrayOutputStream whole = new ByteArrayOutputStream();
		SamplesText.write(survey().table(), whole);
		Files.write(root.resolve(LIST), whole.toByteArray());
	}

	private SavePoint commitInOneFile() throws IOException {
		toOneFile();
		PlainGit git = new PlainGit(root);
		git.run("add", "-A", "surveys");
		git.run("commit", "-q", "-m", "as of old");
		reopen();
		try (History history = open.history()) {
			return history.last();
		}
	}

	@Test
	void readsWhatItWrote() throws IOException {
		SampleTable table = survey().table();
		reopen();
		assertEquals(List.of(), open.damages());
		assertEquals(List.of(), open.notices());
		assertEquals(table, survey().table());
		assertTrue(parts().size() > SAMPLES / 256 && parts().size() <= SAMPLES / 64, "parts of 64 to 256 samples");
	}

	@Test
	void writesOneSmallFileForOneSample() throws IOException {
		long whole = Files.size(root.resolve(LIST));
		for (String part : parts()) {
			whole += Files.size(root.resolve(part));
		}
		move(1_234, 99);
		SortedSet<String> written = open.save();
		assertEquals(1, written.size(), written::toString);
		assertTrue(written.first().startsWith(PARTS), written::toString);
		assertTrue(Files.size(root.resolve(written.first())) < whole / 8, "at most a few hundred samples");
	}

	@Test
	void movesOnlyCutsNearbyForASampleMore() throws IOException {
		SampleTable table = survey().table();
		SampleTableBuilder more = SampleTable.builder();
		for (int row = 0; row < table.size(); row++) {
			more.add(table.sample(row));
		}
		add(more, SAMPLES);
		more.sample("TH-00400-b", 0, 1, 1);
		survey().getSamples().setTable(more.build());
		SortedSet<String> written = open.save();
		assertTrue(written.size() <= 12, written::toString);
		reopen();
		assertEquals(SAMPLES + 2, survey().table().size());
	}

	@Test
	void dependsOnTheContentAloneHoweverItCameAbout() throws IOException {
		try (OpenArchive other = make(folder.resolve("other"), table(100, SAMPLES + 500))) {
			other.save();
			Survey survey = SampleArchives.survey(other.archive(), "spring");
			survey.getSamples().setTable(table(0, 500));
			other.save();
			assertFalse(FolderText.of(other.folder()).keySet().stream().anyMatch(path -> path.startsWith(PARTS)),
					"a small survey is one file");
			survey.getSamples().setTable(table(0, SAMPLES));
			other.save();
			assertEquals(FolderText.of(root), FolderText.of(other.folder()));
			assertEquals(open.digest(), other.digest());
		}
	}

	@Test
	void keepsTheDigestOfOneFileASurvey() throws IOException {
		String digest = open.digest();
		toOneFile();
		MessageDigest expected = Sha256.begin();
		SortedMap<String, String> files = new TreeMap<>(FolderText.of(root));
		files.remove(".gitattributes");
		for (String path : files.keySet()) { // the structure comes first
			expected.update((path + '\n' + Sha256.of(root.resolve(path)) + '\n').getBytes(StandardCharsets.UTF_8));
		}
		assertEquals(Set.of("archive.xmi", LIST), files.keySet());
		assertEquals(Sha256.hex(expected), digest);
	}

	@Test
	void opensAnArchiveOfOldAndConvertsItOnTheFirstSave() throws IOException {
		String digest = open.digest();
		SortedMap<String, String> inParts = FolderText.of(root);
		SavePoint old = commitInOneFile();
		assertEquals(List.of(), open.damages());
		assertEquals(digest, open.digest());
		assertTrue(open.notices().get(0).contains("of format 1") && open.notices().get(0).startsWith(LIST),
				open.notices()::toString);
		try (History history = open.history()) {
			assertEquals(digest, history.open(old).digest());
			open.save();
			assertEquals(inParts, FolderText.of(root));
			assertEquals(List.of(), history.differences(old), "the same samples, in other files");
			SavePoint converted = open.savePoint(PERSON, null).orElseThrow();
			assertTrue(history.compare(old, converted).isEmpty(), "nothing has changed but the form");
			assertEquals(digest, history.open(converted).digest());
			Files.writeString(root.resolve(parts().iterator().next()), "x");
			assertFalse(history.differences(old).isEmpty(), "that is other samples");
		}
	}

	@Test
	void showsWhatASavePointChanged() throws IOException {
		move(5, 77);
		move(2_900, 78);
		SavePoint second = open.savePoint(PERSON, null).orElseThrow();
		try (History history = open.history()) {
			ArchiveDiff diff = history.changesOf(second);
			assertEquals(List.of("TH-00005", "TH-02900"),
					diff.surveys().get(0).samples().stream().map(change -> change.after().id()).toList());
			assertEquals(SAMPLES, history.changesOf(first).surveys().get(0).samples().size());
		}
	}

	@Test
	void undoesOneChangeOfAPartAndKeepsALaterOne() throws IOException {
		move(5, 77);
		SavePoint wrong = open.savePoint(PERSON, null).orElseThrow();
		move(6, 78);
		open.savePoint(PERSON, null);
		open.undo(wrong, PERSON, null);
		assertEquals(5, survey().table().xMetres(5));
		assertEquals(78, survey().table().xMetres(6));
		assertEquals(List.of(), open.damages());
		reopen();
		assertEquals(List.of(), open.damages());
	}

	@Test
	void undoesAndRestoresAcrossTheConversion() throws IOException {
		move(5, 77);
		open.save();
		SavePoint old = commitInOneFile(); // which has moved the sample
		move(6, 78);
		SavePoint converted = open.savePoint(PERSON, null).orElseThrow();
		open.undo(old, PERSON, null);
		assertEquals(5, survey().table().xMetres(5));
		assertEquals(78, survey().table().xMetres(6));
		assertEquals(List.of(), open.damages());
		open.restore(old, PERSON, null);
		assertEquals(6, survey().table().xMetres(6));
		assertEquals(Set.of(), parts(), "it is as it was, in one file");
		open.restore(converted, PERSON, null);
		assertEquals(78, survey().table().xMetres(6));
		assertEquals(List.of(), open.damages());
	}

	@Test
	void removesAllFilesOfASurvey() throws IOException {
		survey().setId("autumn");
		open.save();
		assertEquals(Set.of(), parts());
		assertFalse(Files.exists(root.resolve(LIST)));
		reopen();
		assertEquals(List.of(), open.damages());
		assertEquals(SAMPLES, SampleArchives.survey(open.archive(), "autumn").table().size());
	}

	@Test
	void namesTheLineOfADamagedPartAndShowsAllElse() throws IOException {
		String part = parts().iterator().next();
		List<String> lines = Files.readAllLines(root.resolve(part));
		lines.set(3, lines.get(3).replace("kept", "kelp"));
		Files.write(root.resolve(part), lines);
		reopen();
		assertEquals(part, open.damages().get(0).file());
		assertEquals(4, open.damages().get(0).line());
		assertEquals(Set.of(part), Set.copyOf(open.damages().stream().map(Damage::file).toList()),
				open.damages()::toString);
		assertEquals(SAMPLES - 1, survey().table().size());
	}

	@Test
	void namesAPartThatIsMissingAndOneThatDoesNotBelong() throws IOException {
		String part = parts().iterator().next();
		int samples = Files.readAllLines(root.resolve(part)).size() - 3;
		Files.move(root.resolve(part), root.resolve(PARTS + "0".repeat(16) + ".samples"));
		reopen();
		assertEquals(2, open.damages().size(), open.damages()::toString);
		assertEquals(part, open.damages().get(0).file());
		assertEquals("is missing", open.damages().get(0).reason());
		assertEquals(PARTS + "0".repeat(16) + ".samples", open.damages().get(1).file());
		assertTrue(open.damages().get(1).reason().contains(LIST + " does not name it"), open.damages()::toString);
		assertEquals(SAMPLES - samples, survey().table().size());
		open.restore(first, PERSON, null);
		assertEquals(List.of(), open.damages());
		assertEquals(SAMPLES, survey().table().size());
	}

	@Test
	void showsAllPartsWhereTheirListIsDamaged() throws IOException {
		String list = Files.readString(root.resolve(LIST));
		for (String damaged : List.of(list.substring(0, list.length() / 2), "x" + list,
				list.replaceFirst("\n[0-9a-f]{16}\n", "\n"), "")) {
			Files.writeString(root.resolve(LIST), damaged);
			reopen();
			assertEquals(Set.of(LIST), Set.copyOf(open.damages().stream().map(Damage::file).toList()),
					open.damages()::toString);
			assertEquals(SAMPLES, survey().table().size());
		}
		Files.delete(root.resolve(LIST));
		reopen();
		assertEquals("is missing", open.damages().get(0).reason());
		assertEquals(SAMPLES, survey().table().size());
	}

	@Test
	void tellsOfANewerFormat() throws IOException {
		Files.writeString(root.resolve(LIST), Files.readString(root.resolve(LIST)).replace("samples 2", "samples 3"));
		reopen();
		assertTrue(open.damages().get(0).reason().contains("newer Cairnfield (format 3; this one reads up to 2)"),
				open.damages()::toString);
	}

	@Test
	void noticesASampleThatTwoPartsHave() throws IOException {
		List<String> parts = List.copyOf(parts());
		List<String> one = Files.readAllLines(root.resolve(parts.get(0)));
		List<String> other = Files.readAllLines(root.resolve(parts.get(1)));
		other.add(3, one.get(4));
		Files.write(root.resolve(parts.get(1)), other);
		reopen();
		assertTrue(open.damages().stream().anyMatch(damage -> damage.reason().contains("a second sample with the id")),
				open.damages()::toString);
	}

	@Test
	void keepsOneSmallFileInADraft() throws IOException {
		Path drafts = folder.resolve("drafts");
		move(5, 77);
		assertTrue(open.drafts().write(drafts));
		Draft draft = open.drafts().newest(drafts).orElseThrow();
		assertEquals(1, draft.paths().size(), draft.paths()::toString);
		open.reload();
		open.drafts().apply(draft);
		assertEquals(77, survey().table().xMetres(5));
	}

	@Test
	void takesAPartThatWasEditedAndCommittedWithGit() throws IOException {
		String part = parts().iterator().next();
		Path file = root.resolve(part);
		Files.writeString(file, Files.readString(file).replaceFirst("\t00005e005301:-[0-9]+", "\t00005e005301:-33"));
		reopen();
		assertTrue(open.damages().get(0).reason().contains("does not match its checksum"), open.damages()::toString);
		PlainGit git = new PlainGit(root);
		git.run("commit", "-q", "-a", "-m", "by hand");
		reopen();
		assertEquals(List.of(), open.damages());
		assertTrue(open.notices().get(0).startsWith(part), open.notices()::toString);
		assertEquals(Set.of(part), open.save(), "sealed again");
	}
}
