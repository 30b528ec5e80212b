package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.cairnfield.archive.fault.LockedException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An archive is the same by whichever path it is reached. */
class RealPathTest {

	private static final Person PERSON = Person.named("M.Q.");

	private final ArchiveStore store = new ArchiveStore();

	@TempDir
	Path folder;
	private Path root;
	private List<Path> ways;
	private String digest;

	@BeforeEach
	void makeArchive() throws IOException {
		root = folder.toRealPath().resolve("deep/archive");
		try (OpenArchive open = store.create(root, "n")) {
			SampleArchives.fill(open.archive(), 1, 2, 5);
			open.savePoint(PERSON, null);
			digest = open.digest();
		}
		Path link = Files.createSymbolicLink(folder.resolve("link"), root);
		Path above = Files.createSymbolicLink(folder.resolve("above"), root.getParent());
		Path chain = Files.createSymbolicLink(folder.resolve("chain"), Path.of("link"));
		ways = List.of(root, link, chain, above.resolve("archive"), Path.of(link + "/"), link.resolve("."),
				link.resolve("../archive"),
				root.resolve("surveys/.."), Path.of("").toAbsolutePath().relativize(root));
	}

	@Test
	void isReadByEveryPath() throws IOException {
		for (Path way : ways) {
			try (OpenArchive open = store.open(way, Mode.READ); History history = History.of(way)) {
				assertEquals(List.of(), open.damages(), way::toString);
				assertEquals(digest, open.digest(), way::toString);
				assertEquals(root, open.folder());
				assertEquals(root, ArchiveStore.realFolder(way));
				assertTrue(history.compareWithSaved(history.last()).isEmpty(), way::toString);
				assertEquals(List.of(), history.differences(history.last()), way::toString);
			}
		}
	}

	@Test
	void isLockedByEveryPath() throws IOException {
		for (Path one : ways) {
			try (OpenArchive open = store.open(one, Mode.EDIT)) {
				assertEquals(Optional.empty(), open.readOnlyReason());
				for (Path other : ways) {
					assertThrows(LockedException.class, () -> store.open(other, Mode.EDIT));
					assertThrows(LockedException.class, () -> store.releaseLock(other));
					assertEquals(ProcessHandle.current().pid(), store.lockOwner(other).pid());
				}
			}
		}
	}

	@Test
	void isSavedAndRecordedByEveryPath() throws IOException {
		for (Path way : ways) {
			try (OpenArchive open = store.open(way, Mode.EDIT)) {
				open.archive().setName("by " + way);
				assertTrue(open.savePoint(PERSON, null).isPresent(), way::toString);
			}
		}
		try (OpenArchive open = store.open(root, Mode.EDIT); History history = open.history()) {
			assertEquals(ways.size() + 1, history.list(100).size());
		}
	}

	@Test
	void findsADraftAgainByAnotherPath() throws IOException {
		Path drafts = folder.resolve("drafts");
		try (OpenArchive open = store.open(ways.get(1), Mode.EDIT)) {
			open.archive().setName("not saved");
			assertTrue(open.drafts().write(drafts));
		}
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			open.drafts().apply(open.drafts().newest(drafts).orElseThrow());
			assertEquals("not saved", open.archive().getName());
		}
	}

	@Test
	void isMadeWhereALinkLeads() throws IOException {
		Path place = Files.createDirectory(folder.resolve("place"));
		Path link = Files.createSymbolicLink(folder.resolve("to-place"), place);
		try (OpenArchive open = store.create(link, "n")) {
			assertEquals(place.toRealPath(), open.folder());
		}
		assertTrue(Files.isSymbolicLink(link));
		assertFalse(FolderText.of(place).isEmpty());
	}
}
