package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.SortedMap;
import java.util.zip.CRC32C;

import org.cairnfield.archive.internal.disk.Disk;
import org.cairnfield.archive.internal.text.FileKind;
import org.cairnfield.archive.internal.text.Migration;
import org.cairnfield.archive.internal.text.Migrations;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files of an earlier version; there is none yet, so one is invented in which a sample was kept by "yes". */
class MigrationTest {

	private static final Migration FROM_ZERO = new Migration() {
		@Override
		public int from() {
			return 0;
		}

		@Override
		public byte[] migrate(FileKind kind, byte[] file) {
			String text = new String(file, StandardCharsets.UTF_8);
			return kind == FileKind.STRUCTURE ? file
					: sealed(text.replace("samples 0", "samples 1").replace("\tyes\t", "\tkept\t"));
		}
	};

	@TempDir
	Path folder;
	private Path root;
	private Path samples;
	private SortedMap<String, String> files;
	private String digest;

	@BeforeEach
	void makeOldArchive() throws IOException {
		root = folder.resolve("archive");
		samples = root.resolve("surveys/th/survey-0.samples");
		try (OpenArchive open = new ArchiveStore().create(root, "n")) {
			SampleArchives.fill(open.archive(), 1, 1, 20);
			open.save();
			open.reload();
			digest = open.digest();
		}
		files = FolderText.of(root);
		Files.write(samples,
				sealed(Files.readString(samples).replace("samples 1", "samples 0").replace("\tkept\t", "\tyes\t")));
		Path structure = root.resolve("archive.xmi");
		Files.writeString(structure,
				Files.readString(structure).replace("cairnfield archive 1 end", "cairnfield archive 0 end"));
	}

	private static byte[] sealed(String file) {
		String body = file.substring(0, file.lastIndexOf("end\t"));
		CRC32C crc = new CRC32C();
		crc.update(body.getBytes(StandardCharsets.UTF_8));
		String seal = file.substring(file.lastIndexOf("end\t"), file.lastIndexOf('\t') + 1);
		return (body + seal + String.format("%08x\n", crc.getValue())).getBytes(StandardCharsets.UTF_8);
	}

	private ArchiveStore knowing(Migration... migrations) {
		return new ArchiveStore(Disk.REAL, Clock.systemUTC(), new Migrations(List.of(migrations)));
	}

	@Test
	void readsTheOldVersionAndWritesTheNewOne() throws IOException {
		try (OpenArchive open = knowing(FROM_ZERO).open(root, Mode.EDIT)) {
			assertEquals(List.of(), open.damages());
			assertEquals(digest, open.digest());
			assertTrue(open.notices().get(0).contains("format 0"), open.notices()::toString);
			open.save();
			assertEquals(files, FolderText.of(root));
		}
	}

	@Test
	void tellsOfAVersionThatItCannotRead() throws IOException {
		try (OpenArchive open = knowing().open(root, Mode.EDIT)) {
			assertTrue(open.damages().get(0).reason().contains("format 0, which this Cairnfield cannot read"),
					open.damages()::toString);
		}
		Path structure = root.resolve("archive.xmi");
		Files.writeString(structure,
				Files.readString(structure).replace("cairnfield archive 0 end", "cairnfield archive 1 end"));
		try (OpenArchive open = knowing().open(root, Mode.EDIT)) {
			assertTrue(open.damages().get(0).reason().contains("does not begin with"), open.damages()::toString);
		}
		Files.writeString(structure,
				Files.readString(structure).replace("cairnfield archive 1 end", "cairnfield archive 2 end"));
		try (OpenArchive open = knowing().open(root, Mode.EDIT)) {
			assertTrue(open.damages().get(0).reason().contains("newer Cairnfield"), open.damages()::toString);
		}
	}

	@Test
	void noticesThatAnOldFileWasDamaged() throws IOException {
		Files.writeString(samples, Files.readString(samples).replaceFirst(":-[0-9]+ ", ":-1 "));
		try (OpenArchive open = knowing(FROM_ZERO).open(root, Mode.EDIT)) {
			assertTrue(open.damages().get(0).reason().contains("does not match its checksum"),
					open.damages()::toString);
		}
	}
}
