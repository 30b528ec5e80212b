package org.cairnfield.exchange.export;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.AtomicFile;
import org.cairnfield.model.values.Sha256;

/**
 * The file {@value #NAME} beside exported files: a line a file, its SHA-256 (FIPS 180-4) in lower-case hexadecimal digits, two
 * blanks, its name; sorted by name. Programs such as {@code sha256sum -c} read it. The last line seals the lines before it.
 */
public final class Checksums {

	/** Name of the file. */
	public static final String NAME = "SHA256SUMS";

	private static final Pattern LINE = Pattern.compile("([0-9a-f]{64})  ([^/\\\\\\x00-\\x1f]+)");
	private static final String NOT_NAMED = Words.bind(Messages.Checksums_isNotNamedIn, NAME);
	private static final String SEAL = "# sealed ";

	private Checksums() {
	}

	/**
	 * What was found of one file.
	 *
	 * @param problem empty where it is as it was written
	 */
	public record Result(String file, String problem) {

		/** Whether it is as it was written. */
		public boolean isSound() {
			return problem.isEmpty();
		}
	}

	/** Writes the sums of files of one folder, over an older list. */
	public static void write(Path folder, List<String> names) throws IOException {
		SortedMap<String, String> sums = new TreeMap<>();
		for (String name : names) {
			if (!LINE.matcher("0".repeat(64) + "  " + name).matches()) {
				throw new IllegalArgumentException("a list of checksums cannot hold this name: " + name);
			}
			sums.put(name, Sha256.of(folder.resolve(name)));
		}
		StringBuilder text = new StringBuilder();
		sums.forEach((name, sum) -> text.append(sum).append("  ").append(name).append('\n'));
		String seal = of(text.toString().getBytes(StandardCharsets.UTF_8));
		AtomicFile.write(folder.resolve(NAME), out -> out.append(text).append(SEAL).append(seal).append('\n'));
	}

	/** Whether every file of a folder's list, and the list itself, is as it was written; the list first, unlisted files last. */
	public static List<Result> verify(Path folder) throws IOException {
		Path list = folder.resolve(NAME);
		if (!Files.isRegularFile(list)) {
			return List.of(new Result(NAME, Messages.Checksums_isMissingNothingTellsWhat));
		}
		byte[] bytes = Files.readAllBytes(list);
		String text = new String(bytes, StandardCharsets.UTF_8);
		int seal = text.lastIndexOf(SEAL);
		if (seal < 0
				|| !text.equals(text.substring(0, seal) + SEAL
						+ of(text.substring(0, seal).getBytes(StandardCharsets.UTF_8)) + '\n')
				|| bytes.length != text.getBytes(StandardCharsets.UTF_8).length) {
			return List.of(new Result(NAME, Messages.Checksums_isNotAsItWas));
		}
		List<Result> results = new ArrayList<>(List.of(new Result(NAME, "")));
		for (String line : text.substring(0, seal).lines().toList()) {
			Matcher entry = LINE.matcher(line);
			if (!entry.matches()) {
				return List.of(new Result(NAME, Messages.Checksums_isNotAsItWas));
			}
			Path file = folder.resolve(entry.group(2));
			String problem = !Files.isRegularFile(file) ? Messages.Checksums_isMissing
					: Sha256.of(file).equals(entry.group(1)) ? "" : Messages.Checksums_isNotAsItWas;
			results.add(new Result(entry.group(2), problem));
		}
		results.addAll(unlisted(folder, results));
		return results;
	}

	/** Whatever else lies in the folder: whoever takes the folder for the export takes it too. */
	private static List<Result> unlisted(Path folder, List<Result> listed) throws IOException {
		Set<String> names = listed.stream().map(Result::file).collect(Collectors.toSet());
		try (Stream<Path> files = Files.list(folder)) {
			return files.map(file -> file.getFileName().toString()).filter(name -> !names.contains(name)).sorted()
					.map(name -> new Result(name, NOT_NAMED)).toList();
		}
	}

	/** Whether one exported file is as it was written, by the list beside it. */
	public static Result verifyFile(Path file) throws IOException {
		Path folder = file.toAbsolutePath().getParent();
		String name = file.getFileName().toString();
		List<Result> all = verify(folder);
		if (!all.get(0).isSound()) {
			return new Result(name, Words.bind(Messages.Checksums_cannotBeJudged, NAME, all.get(0).problem()));
		}
		return all.stream().filter(r -> r.file().equals(name)).findFirst()
				.orElseGet(() -> new Result(name, NOT_NAMED));
	}

	/** SHA-256 of bytes, in lower-case hexadecimal digits. */
	public static String of(byte[] bytes) {
		return Sha256.of(bytes);
	}
}
