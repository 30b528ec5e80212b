package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** Bits that are flipped in Git's files of a released archive: each is reported, or the object is shown to be the same. */
@Isolated
class GitFlipsTest {

	/** One in three of the flips; all of them where the environment has CAIRNFIELD_EVERY_BYTE. */
	private static final int SHARE = System.getenv("CAIRNFIELD_EVERY_BYTE") == null ? 3 : 1;

	@TempDir
	Path folder;
	private Path archive;
	private final Random random = new Random(1795602684);
	private final TreeMap<String, Integer> counts = new TreeMap<>();
	private int flips;

	@Test
	void reportsEveryByteOfHeadReferencesIndexAndObjects(TestReporter reporter) throws IOException {
		archive = ReleasedArchive.make(folder);
		flip("HEAD", 12);
		flip("refs/heads/main", 14);
		flip("refs/tags/1.0.0", 14);
		flip("index", 25);
		flip(loose("1.0.0"), 25);
		flip(loose("main"), 20);
		flip(loose("main~1"), 12);
		flip(loose("main~2"), 12);
		flip(loose("main^{tree}"), 12);
		flip(loose("main~2^{tree}"), 12);
		flip(loose("main:ledger"), 10);
		for (String file : List.of("archive.xmi", "ledger/r-reviewer.ledger", "releases/1.0.0.json")) {
			flip(loose("main:" + file), 8);
		}
		assertTrue(flips >= 190 / SHARE, "only " + flips);
		reporter.publishEntry(counts.toString());
	}

	@Test
	void reportsEveryByteOfPacksAndPackedReferences(TestReporter reporter) throws IOException {
		archive = ReleasedArchive.make(folder);
		ReleasedArchive.git(archive, "gc", "-q");
		Cli.ok("verify", "--archive", archive);
		flip("packed-refs", 40);
		try (Stream<Path> packs = Files.list(archive.resolve(".git/objects/pack"))) {
			for (Path pack : packs.sorted().toList()) {
				flip("objects/pack/" + pack.getFileName(), 25);
			}
		}
		assertTrue(flips >= 90 / SHARE, "only " + flips);
		reporter.publishEntry(counts.toString());
	}

	private String loose(String name) {
		String id = ReleasedArchive.git(archive, "rev-parse", name);
		return "objects/" + id.substring(0, 2) + '/' + id.substring(2);
	}

	private void flip(String name, int times) throws IOException {
		Path file = archive.resolve(".git").resolve(name);
		byte[] sound = Files.readAllBytes(file);
		file.toFile().setWritable(true);
		List<Integer> places = new ArrayList<>();
		for (int at = 0; at < sound.length; at++) {
			places.add(at);
		}
		java.util.Collections.shuffle(places, random);
		for (int at : places.subList(0, Math.min((times + SHARE - 1) / SHARE, places.size()))) {
			byte[] flipped = sound.clone();
			int bit = random.nextInt(8);
			flipped[at] ^= (byte) (1 << bit);
			Files.write(file, flipped);
			String where = name + " byte " + at + " of " + sound.length + " bit " + bit;
			Cli verified = Cli.run("verify", "--archive", archive);
			if (verified.code() == ExitCode.OK) {
				Cli listed = Cli.run("history", "--archive", archive);
				if (listed.code() == ExitCode.OK) {
					assertTrue(name.startsWith("objects/") && !name.startsWith("objects/pack"),
							where + " was not reported");
					assertEquals(id(sound), id(flipped), where + " was not reported");
					counts.merge("the same object", 1, Integer::sum);
				} else {
					assertEquals(ExitCode.DAMAGED, listed.code(), where + ": " + listed);
					counts.merge("history " + listed.code(), 1, Integer::sum);
				}
			} else {
				assertTrue(verified.code() == ExitCode.NOT_SOUND || verified.code() == ExitCode.DAMAGED,
						where + ": " + verified);
				counts.merge("verify " + verified.code(), 1, Integer::sum);
				int listed = Cli.run("history", "--archive", archive).code();
				assertTrue(listed == ExitCode.OK || listed == ExitCode.DAMAGED,
						where + ": history ended with " + listed);
			}
			flips++;
		}
		Files.write(file, sound);
		assertEquals(ExitCode.OK, Cli.run("verify", "--archive", archive).code(), name + " was not put back");
	}

	/** What Git calls the object in a loose file, whatever fills its last byte. */
	private static String id(byte[] file) {
		Inflater inflater = new Inflater();
		try {
			inflater.setInput(file);
			ByteArrayOutputStream out = new ByteArrayOutputStream();
			byte[] buffer = new byte[4096];
			while (!inflater.finished()) {
				int n = inflater.inflate(buffer);
				assertTrue(n > 0 || inflater.finished(), "a cut stream");
				out.write(buffer, 0, n);
			}
			return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-1").digest(out.toByteArray()));
		} catch (DataFormatException | NoSuchAlgorithmException e) {
			throw new AssertionError(e);
		} finally {
			inflater.end();
		}
	}
}
