package org.cairnfield.archive.torture;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import java.util.zip.CRC32C;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.SampleArchives;

/**
 * Damages files of an archive in many ways, and opens it. Half of the files get a seal that matches again, as if somebody
 * had meant the change: then anything may be in them, but nothing may hang or crash.
 */
public final class Mutations {

	/**
	 * What became of the archives that were opened.
	 *
	 * @param reported   with damage told
	 * @param unchanged  the same content as before, although bytes differ
	 * @param accepted   other content, under a seal that matches
	 * @param slowest    the longest time that one took to open, in milliseconds
	 */
	public record Report(int mutations, int reported, int unchanged, int accepted, long slowest) {
	}

	private static final String[] TOKENS = { "\t", "\n", "\r\n", "\0", " ", "-", "end", "..", "../../x",
			"99999999999999999999",
			"-9223372036854775808", "1e999", "NaN", "0x10", "\\u12", "\\", ":", "<", ">", "&", "&#0;", "&x;",
			"<!DOCTYPE a [",
			"<!ENTITY x SYSTEM \"file:///etc/hostname\">", "]]>", "<!--", "xsi:type=\"cairnfield:Ledger\"",
			"href=\"http://192.0.2.1/x#/\"",
			"\"", "id=\"th\"", "\u00ff", "é", "\ud83d\ude00", "kept", "aside: ", "core", "noise",
			"parameter\tid\tx\n" };

	private final Path root;
	private final Random random;
	private final List<Path> files = new ArrayList<>();
	private final String digest;
	private int reported;
	private int unchanged;
	private int accepted;
	private long slowestNanos;

	private Mutations(Path root, long seed) throws IOException {
		this.root = root;
		this.random = new Random(seed);
		try (OpenArchive open = new ArchiveStore().create(root, "Marrow Quay")) {
			SampleArchives.fill(open.archive(), seed, 2, 25);
			open.save();
			open.reload();
			digest = open.digest();
		}
		// without a history nothing vouches for a changed file
		Files.move(root.resolve(".git"), root.resolve("git"));
		try (Stream<Path> all = Files.walk(root)) {
			all.filter(file -> file.toString().matches(".*\\.(xmi|samples|split|ledger)")).sorted().forEach(files::add);
		}
	}

	/**
	 * @param root        where the archive is made; does not exist yet
	 * @param slowestMillis the longest time that opening may take
	 * @throws IllegalStateException telling the first mutation that was not borne
	 */
	public static Report run(Path root, int mutations, long seed, long slowestMillis) throws IOException {
		Mutations run = new Mutations(root, seed);
		for (int i = 0; i < mutations; i++) {
			run.mutateOne(i, slowestMillis);
		}
		return new Report(mutations, run.reported, run.unchanged, run.accepted, run.slowestNanos / 1_000_000);
	}

	private void mutateOne(int number, long slowestMillis) throws IOException {
		Path file = files.get(random.nextInt(files.size()));
		byte[] sound = Files.readAllBytes(file);
		byte[] mutated = sound;
		for (int times = 1 + random.nextInt(3); times > 0; times--) {
			mutated = mutate(mutated);
		}
		boolean sealed = random.nextBoolean();
		mutated = sealed ? sealed(mutated) : mutated;
		Files.write(file, mutated);
		long start = System.nanoTime();
		try {
			look(sealed, Arrays.equals(sound, mutated));
		} catch (IOException | RuntimeException | Error e) {
			Path kept = root.resolveSibling("mutation-" + number);
			Files.write(kept, mutated);
			throw new IllegalStateException("mutation " + number + " of " + file + " (kept as " + kept + "): " + e, e);
		}
		long nanos = System.nanoTime() - start;
		slowestNanos = Math.max(slowestNanos, nanos);
		if (nanos / 1_000_000 > slowestMillis) {
			throw new IllegalStateException(
					"mutation " + number + " of " + file + " took " + nanos / 1_000_000 + " ms");
		}
		Files.write(file, sound);
	}

	private void look(boolean sealed, boolean same) throws IOException {
		try (OpenArchive open = new ArchiveStore().open(root, Mode.READ)) {
			if (!open.damages().isEmpty()) {
				if (same) {
					throw new IllegalStateException("damage told of a sound archive: " + open.damages());
				}
				reported++;
			} else if (open.digest().equals(digest)) {
				unchanged++;
			} else if (sealed) {
				accepted++;
			} else {
				throw new IllegalStateException("other content, and no word of it");
			}
		}
	}

	private byte[] mutate(byte[] bytes) {
		int n = bytes.length;
		int at = n == 0 ? 0 : random.nextInt(n);
		int length = Math.min(n - at, 1 + random.nextInt(1 + random.nextInt(200)));
		byte[] changed = bytes.clone();
		switch (random.nextInt(10)) {
		case 0 -> flip(changed, at);
		case 1 -> {
			if (n > 0) {
				changed[at] = (byte) random.nextInt(256);
			}
		}
		case 2 -> Arrays.fill(changed, at, at + length, (byte) 0);
		case 3 -> changed = spliced(bytes, at, at + length, new byte[0]);
		case 4 -> changed = spliced(bytes, at, at, Arrays.copyOfRange(bytes, at, at + length));
		case 5 -> changed = Arrays.copyOf(bytes, at);
		case 6 -> changed = spliced(bytes, at, at, token());
		case 7 -> changed = spliced(bytes, at, at + length, token());
		case 8 -> changed = withoutLine(bytes, at);
		default -> changed = withLineTwice(bytes, at);
		}
		return changed;
	}

	private void flip(byte[] bytes, int at) {
		if (bytes.length > 0) {
			bytes[at] ^= (byte) (1 << random.nextInt(8));
		}
	}

	private byte[] token() {
		if (random.nextInt(60) == 0) {
			byte[] long_ = new byte[1 << 10 + random.nextInt(12)];
			Arrays.fill(long_, (byte) "0x\t :<".charAt(random.nextInt(6)));
			return long_;
		}
		return TOKENS[random.nextInt(TOKENS.length)].getBytes(StandardCharsets.UTF_8);
	}

	private static int lineStart(byte[] bytes, int at) {
		int start = Math.min(at, bytes.length);
		while (start > 0 && bytes[start - 1] != '\n') {
			start--;
		}
		return start;
	}

	private static int lineEnd(byte[] bytes, int at) {
		int end = at;
		while (end < bytes.length && bytes[end] != '\n') {
			end++;
		}
		return Math.min(bytes.length, end + 1);
	}

	private static byte[] withoutLine(byte[] bytes, int at) {
		return spliced(bytes, lineStart(bytes, at), lineEnd(bytes, at), new byte[0]);
	}

	private byte[] withLineTwice(byte[] bytes, int at) {
		int start = lineStart(bytes, at);
		int to = lineStart(bytes, bytes.length == 0 ? 0 : random.nextInt(bytes.length));
		return spliced(bytes, to, to, Arrays.copyOfRange(bytes, start, lineEnd(bytes, at)));
	}

	private static byte[] spliced(byte[] bytes, int from, int to, byte[] between) {
		byte[] result = new byte[bytes.length - (to - from) + between.length];
		System.arraycopy(bytes, 0, result, 0, from);
		System.arraycopy(between, 0, result, from, between.length);
		System.arraycopy(bytes, to, result, from + between.length, bytes.length - to);
		return result;
	}

	/** The same with a seal that matches, where the last line looks like one. */
	private static byte[] sealed(byte[] bytes) {
		int end = bytes.length > 0 && bytes[bytes.length - 1] == '\n' ? bytes.length - 1 : bytes.length;
		int start = lineStart(bytes, end);
		String seal = new String(bytes, start, end - start, StandardCharsets.ISO_8859_1);
		CRC32C crc = new CRC32C();
		crc.update(bytes, 0, start);
		String hex = String.format("%08x", crc.getValue());
		if (seal.startsWith("<!-- ") && seal.endsWith(" -->") && seal.length() > 20) {
			seal = seal.substring(0, seal.length() - 12) + hex + " -->";
		} else if (seal.startsWith("end\t") && seal.lastIndexOf('\t') > 3) {
			// records are the lines with the fields of records; whoever counts differently is told
			long lines = new String(bytes, 0, start, StandardCharsets.ISO_8859_1).chars().filter(c -> c == '\n')
					.count();
			String text = new String(bytes, 0, start, StandardCharsets.ISO_8859_1);
			long head = text.lines().takeWhile(line -> !line.matches("(id\tfloor|sample\tcluster|id\tsplit).*")).count()
					+ 1;
			seal = "end\t" + Math.max(0, lines - head) + '\t' + hex;
		}
		return spliced(bytes, start, bytes.length, (seal + "\n").getBytes(StandardCharsets.ISO_8859_1));
	}
}
