package org.cairnfield.exchange.export;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.exchange.Intake;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.IntakeOptions;
import org.cairnfield.exchange.SurveyIntake;
import org.cairnfield.exchange.pack.DevicePack;
import org.cairnfield.exchange.pack.PackSettings;
import org.cairnfield.model.values.Sha256;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExportFolderTest {

	private static final Instant WRITTEN = Instant.parse("2031-05-01T10:00:00Z");

	@TempDir
	Path folder;

	private static byte[] pack() {
		Signals signals = Signals.of(Exports.map());
		SplitMap split = Search.PUBLISHED.map(signals, new Clustering(new int[] { 0, 0, 1, 0 }, null), 1,
				Workers.inline());
		return DevicePack.of(split, new PackSettings(1, Search.PUBLISHED)).bytes(null, "");
	}

	private List<Path> write(Set<ExportFormat> formats) throws IntakeException {
		return ExportFolder.write(folder.resolve("out"), "quay", formats, Exports.export(Exports.map()), pack(),
				"mind this\n", WRITTEN);
	}

	/** FIPS 180-4; the vectors are those of FIPS 180-2 appendices B.1 and B.2, and of no message. */
	@Test
	void sumsAsFips180Says() {
		assertEquals("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855", Sha256.of(new byte[0]));
		assertEquals("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
				Sha256.of("abc".getBytes(StandardCharsets.US_ASCII)));
		assertEquals("248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
				Sha256.of("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"
						.getBytes(StandardCharsets.US_ASCII)));
	}

	/** The value for a million "a" is that of FIPS 180-2 appendix B.3, from memory. */
	@Test
	void sumsAMillionBytesAsAStream() throws IOException {
		Path file = Files.writeString(folder.resolve("a"), "a".repeat(1_000_000));
		assertEquals("cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0", Sha256.of(file));
	}

	@Test
	void writesEveryFormatWithCautionsAndChecksums() throws IntakeException, IOException {
		List<Path> files = write(EnumSet.allOf(ExportFormat.class));
		assertEquals(
				List.of("quay-wide.csv", "quay-long.csv", "quay.geojson", "quay.gpkg", "quay.cfpk", "CAUTION.txt",
						"SHA256SUMS"),
				files.stream().map(f -> f.getFileName().toString()).toList());
		List<Checksums.Result> results = Checksums.verify(folder.resolve("out"));
		assertEquals(7, results.size());
		assertTrue(results.stream().allMatch(Checksums.Result::isSound), results::toString);
		try (var left = Files.list(folder.resolve("out"))) {
			assertEquals(7, left.count());
		}
	}

	@Test
	void givesTheSameBytesAgain() throws IntakeException, IOException {
		write(EnumSet.allOf(ExportFormat.class));
		byte[] before = Files.readAllBytes(folder.resolve("out/SHA256SUMS"));
		write(EnumSet.allOf(ExportFormat.class));
		assertArrayEquals(before, Files.readAllBytes(folder.resolve("out/SHA256SUMS")));
	}

	@Test
	void isCheckedByOrdinaryPrograms() throws Exception {
		assumeTrue(Files.isExecutable(Path.of("/usr/bin/sha256sum")), "skipped: sha256sum is not there");
		write(EnumSet.of(ExportFormat.WIDE));
		Process process = new ProcessBuilder("/usr/bin/sha256sum", "-c", "--strict", "SHA256SUMS")
				.directory(folder.resolve("out").toFile())
				.redirectErrorStream(true).start();
		String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
		assertEquals(0, process.waitFor(), said);
		assertTrue(said.contains("quay-wide.csv: OK"), said);
	}

	@Test
	void catchesEveryByteOfASmallExportThatIsChanged() throws IntakeException, IOException {
		List<Path> files = write(EnumSet.of(ExportFormat.LONG, ExportFormat.PACK));
		for (Path file : files) {
			byte[] bytes = Files.readAllBytes(file);
			for (int at = 0; at < bytes.length; at++) {
				bytes[at] ^= (byte) (1 << at % 8);
				Files.write(file, bytes);
				assertFalse(Checksums.verify(folder.resolve("out")).stream().allMatch(Checksums.Result::isSound),
						file + " byte " + at);
				assertFalse(Checksums.verifyFile(file).isSound() && !file.endsWith(Checksums.NAME),
						file + " byte " + at);
				bytes[at] ^= (byte) (1 << at % 8);
			}
			Files.write(file, bytes);
			assertTrue(Checksums.verify(folder.resolve("out")).stream().allMatch(Checksums.Result::isSound));
		}
	}

	@Test
	void noticesAFileThatIsGoneAndAListThatIs() throws IntakeException, IOException {
		write(EnumSet.of(ExportFormat.WIDE));
		Path wide = folder.resolve("out/quay-wide.csv");
		assertTrue(Checksums.verifyFile(wide).isSound());
		Files.delete(wide);
		assertTrue(Checksums.verifyFile(wide).problem().contains("missing"));
		Files.delete(folder.resolve("out/SHA256SUMS"));
		assertTrue(Checksums.verify(folder.resolve("out")).get(0).problem().contains("missing"));
		Files.writeString(folder.resolve("out/other.csv"), "x");
		assertFalse(Checksums.verifyFile(folder.resolve("out/other.csv")).isSound());
	}

	@Test
	void tablesReadBackAsTheSameMap() throws IntakeException {
		write(EnumSet.of(ExportFormat.WIDE, ExportFormat.LONG));
		RadioMap map = Exports.map();
		for (String name : List.of("quay-wide.csv", "quay-long.csv")) {
			Intake in = SurveyIntake.read(List.of(folder.resolve("out").resolve(name)), IntakeOptions.GUESS,
					Workers.inline());
			assertEquals(Exports.export(map).ids(), in.sampleIds(), name);
			for (int s = 0; s < map.size(); s++) {
				assertEquals(map.sites().get(map.site(s)), in.map().sites().get(in.map().site(s)), name);
				assertEquals(map.x(s), in.map().x(s), name);
				assertEquals(map.y(s), in.map().y(s), name);
				assertEquals(map.floor(s), in.map().floor(s), name);
				assertEquals(map.timeMillis(s), in.map().timeMillis(s), name);
				assertEquals(map.heard(s), in.map().heard(s), name);
				assertEquals(map.rssiDbm(map.firstReading(s)), in.map().rssiDbm(in.map().firstReading(s)), name);
				assertEquals(map.accessPoints().get(map.accessPoint(map.firstReading(s))),
						in.map().accessPoints().get(in.map().accessPoint(in.map().firstReading(s))), name);
			}
		}
	}

	/** CWE-1236: texts that a spreadsheet would run are made harmless, levels stay numbers; RFC 4180 section 2: CR LF. */
	@Test
	void guardsTheLongTableAgainstFormulas() throws IntakeException, IOException {
		write(EnumSet.of(ExportFormat.LONG));
		String text = Files.readString(folder.resolve("out/quay-long.csv"));
		assertTrue(text.startsWith("id,bssid,rssi,time,device,building,floor,x,y\r\n"), text);
		assertTrue(text.contains("\"ls/é\"\"1\",'=cmd,-90,,,Lantern Store,-1,-3.5,100\r\n"), text);
	}

	@Test
	void refusesAMapOfTheEarthWhereNoSiteHasAPlace() {
		MapExport nowhere = new MapExport("x", Exports.map(), List.of("1", "2", "3", "4"), List.of());
		IntakeException refused = assertThrows(IntakeException.class,
				() -> ExportFolder.write(folder.resolve("out"), "x",
						EnumSet.of(ExportFormat.GEOJSON), nowhere, null, "", WRITTEN));
		assertTrue(refused.getMessage().contains("georeference"), refused.getMessage());
		assertFalse(Files.exists(folder.resolve("out/SHA256SUMS")));
	}

	@Test
	void leavesOutTheEarthWhereOtherFormatsAreAskedForToo() throws IntakeException, IOException {
		MapExport nowhere = new MapExport("x", Exports.map(), List.of("1", "2", "3", "4"), List.of());
		List<Path> files = ExportFolder.write(folder.resolve("out"), "x",
				EnumSet.of(ExportFormat.WIDE, ExportFormat.GEOJSON, ExportFormat.GEOPACKAGE),
				nowhere, null, "", WRITTEN);
		assertEquals(List.of("x-wide.csv", "CAUTION.txt", "SHA256SUMS"),
				files.stream().map(file -> file.getFileName().toString()).toList());
		assertTrue(Checksums.verify(folder.resolve("out")).stream().allMatch(Checksums.Result::isSound));
		assertEquals(List.of("No geojson was written: no site of the map has a place on Earth",
				"No geopackage was written: no site of the map has a place on Earth"),
				nowhere.leftOut(EnumSet.of(ExportFormat.WIDE, ExportFormat.GEOJSON, ExportFormat.GEOPACKAGE)));
		assertEquals(List.of("Not in the GeoJSON, since they have no place on Earth: Sailmakers' Hall"),
				Exports.export(Exports.map()).leftOut(EnumSet.of(ExportFormat.GEOJSON)));
	}

	private static Set<String> names(Path folder) throws IOException {
		try (var files = Files.list(folder)) {
			return files.map(file -> file.getFileName().toString()).collect(java.util.stream.Collectors.toSet());
		}
	}

	/** A pack that is missing stands for any format that fails half-way: wide is written before. */
	@Test
	void leavesTheEarlierExportAsItWasWhereAFormatFails() throws IntakeException, IOException {
		Path out = folder.resolve("out");
		write(EnumSet.of(ExportFormat.WIDE));
		byte[] wide = Files.readAllBytes(out.resolve("quay-wide.csv"));
		Set<String> before = names(out);
		MapExport other = new MapExport("quay", Exports.map(), List.of("1", "2", "3", "4"), List.of());
		assertThrows(RuntimeException.class,
				() -> ExportFolder.write(out, "quay", EnumSet.of(ExportFormat.WIDE, ExportFormat.PACK), other, null,
						"", WRITTEN));
		assertEquals(before, names(out));
		assertEquals(new String(wide, StandardCharsets.UTF_8), Files.readString(out.resolve("quay-wide.csv")));
		assertTrue(Checksums.verify(out).stream().allMatch(Checksums.Result::isSound));
		assertThrows(RuntimeException.class,
				() -> ExportFolder.write(folder.resolve("fresh"), "quay",
						EnumSet.of(ExportFormat.WIDE, ExportFormat.PACK),
						other, null, "", WRITTEN));
		assertEquals(Set.of("out"), names(folder));
	}
}
