package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Claim;
import org.cairnfield.model.Conflict;
import org.cairnfield.model.Floor;
import org.cairnfield.model.conflict.DecidedLater;
import org.cairnfield.model.conflict.Unit;
import org.cairnfield.model.conflict.Units;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What three people have set in files that are no part of the model, through a bare repository. */
class FileConflictTest {

	private static final List<String> PEOPLE = List.of("A. Steward", "B. Reviewer", "C. Lead");
	private static final String PLAN = "plans/house.png";

	@TempDir
	Path folder;
	private Clones clones;

	@BeforeEach
	void meet() throws IOException {
		clones = new Clones(folder, archive -> {
			SampleArchives.fill(archive, 7, 2, 12);
			archive.getSites().get(0).getFloors().get(0).setPlanImage(PLAN);
		}, PEOPLE.get(0), PEOPLE.get(1), PEOPLE.get(2));
		write(PEOPLE.get(0), PLAN, "before");
		write(PEOPLE.get(0), ArchiveLayout.GATES, "mean at most 1.2\n");
		PEOPLE.forEach(this::exchange);
	}

	@AfterEach
	void part() throws IOException {
		clones.close();
	}

	private void exchange(String person) {
		try {
			clones.exchange(person);
		} catch (IOException e) {
			throw new AssertionError(person, e);
		}
	}

	private void write(String person, String path, String text) throws IOException {
		Path file = clones.folder(person).resolve(path);
		Files.createDirectories(file.getParent());
		Files.writeString(file, text);
	}

	private String read(String person, String path) throws IOException {
		return Files.readString(clones.folder(person).resolve(path));
	}

	private static Floor floor(Archive archive) {
		return archive.getSites().stream().flatMap(site -> site.getFloors().stream())
				.filter(floor -> floor.getPlanImage().startsWith("plans/house")).findFirst().orElseThrow();
	}

	private void assertAllAlike() throws IOException {
		String head = new PlainGit(clones.remote()).run("rev-parse", "main^{tree}");
		for (String person : PEOPLE) {
			assertEquals(head, new PlainGit(clones.folder(person)).run("rev-parse", "HEAD^{tree}"), person);
			assertEquals("", new PlainGit(clones.folder(person)).run("status", "--porcelain"), person);
		}
	}

	@Test
	void aGateStaysAsBeforeUntilADecisionIsSavedAndReachesAll() throws IOException {
		for (int i = 0; i < 3; i++) {
			write(PEOPLE.get(i), ArchiveLayout.GATES, "mean at most 1." + (3 + i) + "\n");
			exchange(PEOPLE.get(i));
		}
		PEOPLE.forEach(this::exchange);
		assertAllAlike();
		OpenArchive open = clones.of(PEOPLE.get(1));
		assertEquals("mean at most 1.2\n", read(PEOPLE.get(1), ArchiveLayout.GATES));
		Conflict conflict = open.archive().getConflicts().get(0);
		assertEquals(List.of("at most 1.3 A. Steward", "at most 1.4 B. Reviewer", "at most 1.5 C. Lead"),
				conflict.getClaims().stream().map(claim -> claim.getValue() + ' ' + claim.getPerson()).toList());
		Runnable undo = DecidedLater.decide(conflict, "at most 1.4");
		assertEquals("mean at most 1.2\n", read(PEOPLE.get(1), ArchiveLayout.GATES), "not saved yet");
		open.save(Person.named(PEOPLE.get(1)));
		assertEquals("mean at most 1.4\n", read(PEOPLE.get(1), ArchiveLayout.GATES));
		assertEquals(0, open.archive().getConflicts().size());
		try (OpenArchive onDisk = new ArchiveStore().open(open.folder(), Mode.READ)) {
			assertEquals(open.digest(), onDisk.digest());
		}
		undo.run();
		open.archive().getConflicts().add(conflict);
		open.save(Person.named(PEOPLE.get(1)));
		assertEquals("mean at most 1.2\n", read(PEOPLE.get(1), ArchiveLayout.GATES), "undone");
		DecidedLater.decide(conflict, "at most 1.5");
		exchange(PEOPLE.get(1));
		PEOPLE.forEach(this::exchange);
		for (String person : PEOPLE) {
			assertEquals("mean at most 1.5\n", read(person, ArchiveLayout.GATES));
			assertEquals(List.of(), clones.archive(person).getConflicts());
		}
		assertAllAlike();
	}

	@Test
	void imagesOfOneNameAreKeptSideBySideForTheFloorToHaveOne() throws IOException {
		for (String person : PEOPLE) {
			write(person, PLAN, "by " + person);
			exchange(person);
		}
		PEOPLE.forEach(this::exchange);
		assertAllAlike();
		for (String person : PEOPLE) {
			assertEquals("before", read(person, PLAN));
			assertEquals(PLAN, floor(clones.archive(person)).getPlanImage());
		}
		Conflict conflict = clones.archive(PEOPLE.get(2)).getConflicts().get(0);
		assertEquals(List.of("planImage", PLAN), List.of(conflict.getUnit(), conflict.getBase()));
		List<String> images = conflict.getClaims().stream().map(Claim::getValue).toList();
		for (Claim claim : conflict.getClaims()) {
			assertTrue(claim.getValue().matches("plans/house-[0-9a-f]{10}\\.png"), claim::getValue);
			assertEquals("by " + claim.getPerson(), read(PEOPLE.get(0), claim.getValue()));
		}
		assertEquals(PEOPLE, conflict.getClaims().stream().map(Claim::getPerson).sorted().toList());
		clones.edit(PEOPLE.get(2), archive -> {
			Units.set(archive, Unit.of(conflict), images.get(0));
			archive.getConflicts().clear();
		});
		exchange(PEOPLE.get(2));
		PEOPLE.forEach(this::exchange);
		for (String person : PEOPLE) {
			assertEquals(images.get(0), floor(clones.archive(person)).getPlanImage());
			assertEquals(List.of(), clones.archive(person).getConflicts());
		}
		assertAllAlike();
	}
}
