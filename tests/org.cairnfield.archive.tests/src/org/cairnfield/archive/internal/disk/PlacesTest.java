package org.cairnfield.archive.internal.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.cairnfield.archive.fault.ArchiveException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlacesTest {

	@TempDir
	Path folder;

	@ParameterizedTest
	@ValueSource(strings = { "", "/etc/passwd", "../x", "a/../../x", "a/./b", "a//b", "a/", "..", "C:/x", "C:x",
			"a\\..\\b",
			"file:///x", "a\0b", "\\\\host\\x" })
	void refusesWhatLeadsOut(String path) {
		assertFalse(Places.staysInside(path));
		ArchiveException refused = assertThrows(ArchiveException.class, () -> Places.inside(folder, path));
		assertFalse(refused.remedy().isBlank());
	}

	@ParameterizedTest
	@ValueSource(strings = { "archive.xmi", "surveys/th/spring.samples", "plans/Tide House, level 0.png",
			"a/..b/...c" })
	void followsWhatStaysInside(String path) throws IOException {
		assertTrue(Places.staysInside(path));
		assertEquals(folder.resolve(path), Places.inside(folder, path));
	}

	@Test
	void refusesLinksInAnyStep() throws IOException {
		Path outside = Files.createDirectories(folder.resolve("outside"));
		Path root = Files.createDirectories(folder.resolve("archive"));
		Files.createSymbolicLink(root.resolve("surveys"), outside);
		assertThrows(ArchiveException.class, () -> Places.inside(root, "surveys/th/spring.samples"));
		Files.createSymbolicLink(root.resolve("archive.xmi"), outside.resolve("x"));
		assertThrows(ArchiveException.class, () -> Places.inside(root, "archive.xmi"));
	}
}
