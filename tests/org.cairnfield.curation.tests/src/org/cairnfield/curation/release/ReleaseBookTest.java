package org.cairnfield.curation.release;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.EnumMap;
import java.util.List;
import java.util.ArrayList;
import java.util.TreeSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.history.ReleaseTag;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.decide.RecordedVerdicts;
import org.cairnfield.curation.decide.Review;
import org.cairnfield.curation.measure.PackRequest;
import org.cairnfield.model.Survey;
import org.cairnfield.testkit.SmallArchive;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;

class ReleaseBookTest {

	private static final Person STEWARD = Person.named("A. Steward");
	private static final Person LEAD = Person.named("L. Lead");
	private static final Clock CLOCK = Clock.fixed(Instant.parse("2031-05-01T10:00:00Z"), ZoneOffset.UTC);

	@TempDir
	Path folder;
	private OpenArchive open;
	private ReleaseBook book;

	@BeforeEach
	void create() throws Exception {
		open = SmallArchive.create(new ArchiveStore(CLOCK), folder.resolve("quay"));
		open.savePoint(STEWARD, "as surveyed");
		book = new ReleaseBook(open, CLOCK, new KnownReleases(folder.resolve("state/known-releases")));
	}

	@AfterEach
	void close() throws IOException {
		open.close();
	}

	private GateCheck ask() throws IOException {
		return book.ask(PackRequest.USUAL, Workers.inline());
	}

	/** Lets everything pass that does not. */
	private GateCheck passed() throws IOException {
		GateCheck check = ask();
		Map<Gate, GateResult.Overrule> by = new EnumMap<>(Gate.class);
		check.holding().forEach(r -> by.put(r.gate(), new GateResult.Overrule("L. Lead", "a test corridor")));
		return check.overruled(by);
	}

	private ReleaseTag release(String notes) throws IOException {
		ReleaseManifest prepared = book.prepare(null, passed(), STEWARD, notes);
		return book.sign(prepared.version(), LEAD, null);
	}

	private void edit() {
		Survey survey = open.archive().getSites().get(0).getSurveys().get(0);
		survey.getSamples().setTable(survey.table().edit().reason(3, "on a ladder").done());
	}

	private void approve(String person) throws IOException {
		new Review(open.archive(), SmallArchive.splitOf(open), person, book.gates().policy(open.archive()),
				new RecordedVerdicts(), CLOCK)
				.approve(SmallArchive.noise(), null, null).execute();
	}

	@Test
	void releasesEditsComparesRestoresAndReleasesTheSameContentAgain() throws IOException {
		String first = open.digest();
		ReleaseTag one = release("First map of the corridor");
		assertEquals("1.0.0", one.version());
		edit();
		assertNotEquals(first, open.digest());
		open.save();
		ReleaseTag two = release(null);
		assertEquals("1.1.0", two.version());
		List<ReleasedState> all = book.list();
		assertEquals(List.of("1.1.0", "1.0.0"), all.stream().map(r -> r.tag().version()).toList());
		assertTrue(all.get(0).manifest().changes().contains("1 sample set aside"),
				all.get(0).manifest().changes()::toString);
		assertEquals("1.0.0", all.get(0).manifest().previous());
		assertEquals(first, book.openReadOnly("1.0.0").digest());
		try (History history = open.history()) {
			assertEquals(List.of("1 sample set aside"),
					history.compare(history.find("1.0.0"), history.find("1.1.0")).summary());
		}
		assertTrue(book.restore("1.0.0", LEAD, "the ladder was right").isPresent());
		assertEquals(first, open.digest());
		assertTrue(Files.exists(open.folder().resolve("releases/1.1.0.json")), "restoring has taken a release away");
		ReleaseTag three = release(null);
		assertEquals("1.2.0", three.version());
		assertEquals(first, book.find("1.2.0").manifest().digest());
		assertEquals(book.find("1.0.0").manifest().digest(), book.find("1.2.0").manifest().digest());
		assertTrue(book.verify().stream().allMatch(Verification::isSound), () -> {
			try {
				return book.verify().toString();
			} catch (IOException e) {
				return e.toString();
			}
		});
		assertEquals(List.of("release 1.2.0", "release 1.1.0", "release 1.0.0", "the history"),
				book.verify().stream().map(Verification::what).toList());
	}

	@Test
	void keepsFiguresEvidenceAndOverridesInManifestAndTagForEver() throws IOException {
		ReleaseTag tag = release("notes of mine");
		ReleaseManifest manifest = book.find("1.0.0").manifest();
		ReleaseManifest.AskedGate proposals = manifest.gates().stream().filter(g -> g.gate().equals("proposals-open"))
				.findFirst().orElseThrow();
		assertEquals("1", proposals.figure());
		assertEquals("at most 0", proposals.bound());
		assertFalse(proposals.met());
		assertTrue(proposals.evidence().contains("1 undecided"), proposals.evidence());
		assertEquals("L. Lead", proposals.overruledBy());
		assertEquals("a test corridor", proposals.reason());
		assertTrue(tag.message().contains("proposals-open")
				&& tag.message().contains("overridden by L. Lead: a test corridor"), tag.message());
		assertTrue(tag.message().contains("notes of mine") && tag.message().contains(manifest.digest()), tag.message());
		assertEquals("A. Steward", manifest.preparedBy());
		assertEquals("L. Lead", manifest.signedBy());
		assertEquals("2031-05-01T10:00:00Z", manifest.signedAt());
		assertEquals("L. Lead", tag.person());
		assertEquals(23L, manifest.counts().get("samples in the map") - 1);
		assertEquals(List.of("all"), manifest.splits());
		assertEquals(manifest, ManifestJson.read(ManifestJson.write(manifest)));
		assertTrue(manifest.measures().stream()
				.anyMatch(m -> m.name().equals("released") && m.n() == 6 && m.meanMetres() < 10));
	}

	@Test
	void refusesWhileAGateIsNotMetAndLetsItPassOnceItIs() throws IOException {
		book.keep(new GateSet(Map.of(Gate.PROPOSALS, 0.0, Gate.REGRESSION, 1.0), Set.of(), false), LEAD);
		GateCheck before = ask();
		assertEquals(List.of(Gate.PROPOSALS), before.holding().stream().map(GateResult::gate).toList());
		ArchiveException refused = assertThrows(ArchiveException.class,
				() -> book.prepare(null, before, STEWARD, null));
		assertTrue(refused.getMessage().contains("proposals"), refused.getMessage());
		assertTrue(book.list().isEmpty());
		approve("R. Reviewer");
		open.save();
		GateCheck after = ask();
		assertTrue(after.holding().isEmpty(), after.results()::toString);
		assertEquals(24, java.util.Arrays.stream(after.released().labels()).filter(l -> l >= 0).count());
		assertEquals(23, java.util.Arrays.stream(before.released().labels()).filter(l -> l >= 0).count());
	}

	@Test
	void wantsASecondReviewerWhereTheArchiveNamesTheBand() throws IOException {
		book.keep(new GateSet(Map.of(Gate.SECOND_REVIEW, 0.0), Set.of("close"), false), LEAD);
		approve("R. Reviewer");
		assertEquals(1, ask().holding().size());
		new Review(open.archive(), SmallArchive.splitOf(open), "S. Second", book.gates().policy(open.archive()),
				new RecordedVerdicts(), CLOCK)
				.approve(SmallArchive.noise(), null, null).execute();
		assertTrue(ask().holding().isEmpty(), ask().results()::toString);
	}

	@Test
	void noticesAMapThatPositionsWorseThanTheLastRelease() throws IOException {
		book.keep(new GateSet(Map.of(Gate.REGRESSION, 1.0), Set.of(), false), LEAD);
		release(null);
		assertTrue(ask().holding().isEmpty());
		Survey survey = open.archive().getSites().get(0).getSurveys().get(0);
		var edit = survey.table().edit();
		for (int s = 0; s < 24; s++) {
			edit.position(s, survey.table().xMetres(s) + 30, 5);
		}
		survey.getSamples().setTable(edit.done());
		open.save();
		GateResult worse = ask().holding().get(0);
		assertEquals(Gate.REGRESSION, worse.gate());
		assertTrue(worse.figure() > 1.5 && worse.evidence().contains("1.0.0"), worse.toString());
	}

	@Test
	void letsOnlyAnotherPersonSignWhereTheArchiveSaysSo() throws IOException {
		book.keep(new GateSet(Map.of(), Set.of(), true), LEAD);
		book.prepare(null, ask(), STEWARD, null);
		assertThrows(ArchiveException.class, () -> book.sign("1.0.0", Person.named("a. steward"), null));
		assertTrue(book.list().isEmpty());
		assertEquals("1.0.0", book.sign("1.0.0", LEAD, null).version());
	}

	@Test
	void theHistoryNamesWhoPreparedAndWhoSigned() throws IOException {
		book.prepare(null, passed(), STEWARD, null);
		book.sign("1.0.0", LEAD, null);
		try (History history = History.of(open.folder())) {
			List<SavePoint> points = history.list(2);
			assertEquals(List.of("L. Lead", "A. Steward"), points.stream().map(SavePoint::person).toList());
			assertTrue(history.file(points.get(1), "releases/1.0.0.json").isPresent(),
					"the manifest came with the work of who prepared it");
		}
		assertEquals(Optional.empty(), open.savedBy());
	}

	@Test
	void signsOnlyWhatWasPreparedUnchanged() throws IOException {
		assertThrows(ArchiveException.class, () -> book.sign("1.0.0", LEAD, null));
		book.prepare(null, passed(), STEWARD, null);
		edit();
		assertThrows(ArchiveException.class, () -> book.sign("1.0.0", LEAD, null));
		open.save();
		ArchiveException changed = assertThrows(ArchiveException.class, () -> book.sign("1.0.0", LEAD, null));
		assertTrue(changed.getMessage().contains("not what A. Steward prepared"), changed.getMessage());
		book.prepare(null, passed(), STEWARD, null);
		book.keep(new GateSet(Map.of(), Set.of(), false), LEAD);
		assertTrue(assertThrows(ArchiveException.class, () -> book.sign("1.0.0", LEAD, null)).getMessage()
				.contains("gates were changed"));
		assertTrue(book.list().isEmpty());
	}

	@Test
	void throwsAwayWhatWasPreparedByMistake() throws IOException {
		assertTrue(assertThrows(ArchiveException.class, () -> book.discard("1.0.0", LEAD)).getMessage()
				.contains("1.0.0 was not prepared"));
		book.prepare(null, passed(), STEWARD, "by mistake");
		open.savePoint(STEWARD, null);
		book.discard("1.0.0", LEAD);
		assertEquals(List.of(), book.prepared());
		assertThrows(ArchiveException.class, () -> book.sign("1.0.0", LEAD, null));
		open.savePoint(LEAD, null);
		assertEquals(List.of(), book.gaps());
		release(null);
		assertEquals("1.0.0", book.list().get(0).version().toString());
	}

	@Test
	void discardsNoManifestOfWhatSomebodyHasSigned() throws IOException {
		byte[] manifest = loseTheTag();
		assertTrue(assertThrows(ArchiveException.class, () -> book.discard("1.0.0", LEAD)).getMessage()
				.contains("has no tag"));
		assertArrayEquals(manifest, Files.readAllBytes(open.folder().resolve(ReleaseBook.path("1.0.0"))));
	}

	@Test
	void neverChangesWhatIsReleased() throws IOException {
		release(null);
		assertThrows(ArchiveException.class, () -> book.discard("1.0.0", LEAD));
		assertThrows(ArchiveException.class, () -> open.deleteAboutReleases("1.0.0.json", LEAD));
		assertThrows(ArchiveException.class, () -> open.putAboutReleases("1.0.0.json", "{}", LEAD));
		assertThrows(ArchiveException.class, () -> open.release("1.0.0", "{}", open.digest(), "x", LEAD));
		assertThrows(ArchiveException.class, () -> book.sign("1.0.0", LEAD, null));
		assertThrows(ArchiveException.class,
				() -> book.prepare(SemanticVersion.parse("1.0.0"), passed(), STEWARD, null));
		assertThrows(ArchiveException.class,
				() -> book.prepare(SemanticVersion.parse("0.9.0"), passed(), STEWARD, null));
		assertEquals("1.0.1", book.propose().version().toString());
		assertTrue(book.verify().get(0).isSound());
	}

	/** As a clone without tags has it, or an archive whose release was interrupted before its tag was made. */
	private byte[] loseTheTag() throws IOException {
		release("first");
		Files.delete(open.folder().resolve(".git/refs/tags/1.0.0"));
		return Files.readAllBytes(open.folder().resolve(ReleaseBook.path("1.0.0")));
	}

	@Test
	void neverWritesOverASignedManifestWhoseTagIsNotHere() throws IOException {
		byte[] signed = loseTheTag();
		for (String version : List.of("1.0.0", "0.9.0")) {
			ArchiveException refused = assertThrows(ArchiveException.class,
					() -> book.prepare(SemanticVersion.parse(version), passed(), STEWARD, null));
			assertTrue(
					refused.getMessage().contains("release 1.0.0, signed by L. Lead, has no tag")
							&& refused.getMessage().contains("fetch the tags"),
					refused::getMessage);
		}
		assertThrows(ArchiveException.class, () -> book.prepare(null, passed(), STEWARD, null));
		ReleaseBook elsewhere = new ReleaseBook(open, CLOCK,
				new KnownReleases(folder.resolve("elsewhere/known-releases")));
		for (ReleaseBook each : List.of(book, elsewhere)) {
			assertTrue(assertThrows(ArchiveException.class, () -> each.sign("1.0.0", STEWARD, null)).getMessage()
					.contains("has no tag"));
		}
		ArchiveException known = assertThrows(ArchiveException.class, () -> book.sign("1.0.0", LEAD, null));
		assertTrue(known.getMessage().contains("has no tag"), "it was seen on this computer, so its tag is elsewhere");
		assertTrue(
				java.util.Arrays.equals(signed, Files.readAllBytes(open.folder().resolve(ReleaseBook.path("1.0.0")))));
		assertEquals("1.0.1", book.prepare(SemanticVersion.parse("1.0.1"), passed(), STEWARD, null).version());
	}

	@Test
	void finishesAReleaseThatWasInterruptedAsItWasSigned() throws IOException {
		byte[] signed = loseTheTag();
		String brought;
		try (History history = open.history()) {
			brought = history.last().id();
		}
		edit();
		open.savePoint(STEWARD, "work went on");
		ReleaseBook interrupted = new ReleaseBook(open, CLOCK,
				new KnownReleases(folder.resolve("none/known-releases")));
		ReleaseTag tag = interrupted.sign("1.0.0", LEAD, null);
		assertEquals(brought, tag.savePoint().id());
		assertTrue(
				java.util.Arrays.equals(signed, Files.readAllBytes(open.folder().resolve(ReleaseBook.path("1.0.0")))));
		Verification verified = interrupted.verify().get(0);
		assertTrue(verified.isSound(), verified::toString);
		assertEquals(List.of(), interrupted.gaps());
	}

	@Test
	void signsNothingWithAKeyUnlessGitIsToldTo() throws IOException {
		assertFalse(release(null).signed());
	}

	/** Every thirteenth byte; every one where the environment has CAIRNFIELD_EVERY_BYTE. */
	@Test
	void catchesEveryByteOfAReleaseThatIsChangedInTheFolder() throws IOException {
		release(null);
		open.close();
		int flipped = 0;
		int step = System.getenv("CAIRNFIELD_EVERY_BYTE") == null ? 13 : 1;
		try (History history = History.of(folder.resolve("quay"))) {
			ReleaseTag tag = history.releases().get(0);
			List<Path> files;
			try (Stream<Path> walk = Files.walk(folder.resolve("quay"))) {
				files = walk.filter(Files::isRegularFile)
						.filter(f -> !f.toString().contains(".git/") && !f.toString().contains(".cairnfield/"))
						.sorted().toList();
			}
			assertTrue(Verification.ofFolder(history, tag).isSound()
					&& Verification.ofRelease(folder.resolve("quay"), history, tag).isSound());
			assertTrue(files.size() >= 6, files::toString);
			for (Path file : files) {
				byte[] bytes = Files.readAllBytes(file);
				for (int at = 0; at < bytes.length; at += step) {
					bytes[at] ^= (byte) (1 << at % 8);
					Files.write(file, bytes);
					boolean caught = file.toString().contains("releases/")
							? !Verification.ofRelease(folder.resolve("quay"), history, tag).checks().get(4).isSound()
							: !Verification.ofFolder(history, tag).isSound();
					assertTrue(caught, file + " byte " + at);
					bytes[at] ^= (byte) (1 << at % 8);
					flipped++;
				}
				Files.write(file, bytes);
			}
		}
		assertTrue(flipped > 5000 / step, "only " + flipped);
	}

	/**
	 * But for what means nothing: the bits that fill up the last byte of a compressed stream, up to seven an object. Looks at
	 * forty bytes an object; at all of them where the environment has CAIRNFIELD_EVERY_BYTE.
	 */
	@Test
	void catchesEveryByteOfGitsObjectsOfAReleaseThatIsChanged(TestReporter reporter) throws IOException {
		release(null);
		open.close();
		Path quay = folder.resolve("quay");
		Set<Path> objects = reachable(quay);
		boolean all = System.getenv("CAIRNFIELD_EVERY_BYTE") != null;
		int flipped = 0;
		for (Path file : objects) {
			byte[] bytes = Files.readAllBytes(file);
			file.toFile().setWritable(true);
			int step = all ? 1 : Math.max(1, bytes.length / 40);
			for (int at = 0; at < bytes.length; at += at < 3 ? 1 : step) {
				bytes[at] ^= (byte) (1 << at % 8);
				Files.write(file, bytes);
				boolean fill = !file.endsWith("1.0.0") && at == bytes.length - 5;
				assertTrue(fill || !soundness(quay), file + " byte " + at + " of " + bytes.length);
				flipped++;
				bytes[at] ^= (byte) (1 << at % 8);
			}
			Files.write(file, bytes);
		}
		assertTrue(soundness(quay));
		reporter.publishEntry("bytes flipped", Integer.toString(flipped));
	}

	private static boolean soundness(Path quay) {
		try (History history = History.of(quay)) {
			List<ReleaseTag> tags = history.releases();
			return tags.size() == 1 && Verification.ofRelease(quay, history, tags.get(0)).isSound();
		} catch (IOException | RuntimeException e) {
			return false;
		}
	}

	/** The tag's reference and the loose objects that the release is made of. */
	private static Set<Path> reachable(Path quay) throws IOException {
		Path git = quay.resolve(".git");
		Set<Path> found = new TreeSet<>(Set.of(git.resolve("refs/tags/1.0.0")));
		for (String name : git(quay, "rev-parse", "refs/tags/1.0.0", "1.0.0^{commit}", "1.0.0^{tree}")) {
			found.add(loose(git, name));
		}
		for (String line : git(quay, "ls-tree", "-r", "-t", "1.0.0")) { // mode type name path
			found.add(loose(git, line.split("\\s+")[2]));
		}
		return found;
	}

	/** The lines that plain Git says. */
	private static List<String> git(Path quay, String... arguments) throws IOException {
		List<String> command = new ArrayList<>(List.of("git", "-c", "safe.directory=*", "-C", quay.toString()));
		command.addAll(List.of(arguments));
		Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
		return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).lines().toList();
	}

	private static Path loose(Path git, String name) {
		return git.resolve("objects").resolve(name.substring(0, 2)).resolve(name.substring(2));
	}
}
