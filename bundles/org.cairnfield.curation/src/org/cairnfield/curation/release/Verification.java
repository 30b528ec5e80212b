package org.cairnfield.curation.release;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.PastState;
import org.cairnfield.archive.history.ReleaseTag;
import org.cairnfield.exchange.export.Checksums;

/**
 * Whether a release still is what it was.
 *
 * @param what     release or files
 * @param checks   what was looked at, in words, each with what is wrong, empty where nothing is
 */
public record Verification(String what, List<Check> checks) {

	/**
	 * One thing that was looked at.
	 *
	 * @param problem empty where it is sound
	 */
	public record Check(String what, String problem) {

		/** Whether nothing is wrong. */
		public boolean isSound() {
			return problem.isEmpty();
		}
	}

	/** Whether nothing is wrong. */
	public boolean isSound() {
		return checks.stream().allMatch(Check::isSound);
	}

	/**
	 * Looks at a release: Git's objects, the manifest, the content's digest, files beside the model, and the copy of the
	 * manifest that lies in the folder.
	 */
	public static Verification ofRelease(Path folder, History history, ReleaseTag tag) {
		List<Check> checks = new ArrayList<>();
		checks.add(check("Git's objects of the release", () -> String.join("; ", history.check().problemsOf(tag))));
		ReleaseManifest[] manifest = new ReleaseManifest[1];
		byte[][] bytes = new byte[1][];
		checks.add(check("the manifest", () -> {
			bytes[0] = history.file(tag.savePoint(), ReleaseBook.path(tag.version())).orElseThrow(() -> new IOException("it is missing"));
			manifest[0] = ManifestJson.read(new String(bytes[0], StandardCharsets.UTF_8));
			return !manifest[0].version().equals(tag.version()) ? "it is that of " + manifest[0].version()
					: manifest[0].isSigned() ? "" : "nobody has signed it";
		}));
		if (manifest[0] != null) {
			checks.add(check("the content", () -> {
				PastState state = history.open(tag.savePoint());
				return !state.damages().isEmpty() ? "damaged: " + state.damages().get(0)
						: state.digest().equals(manifest[0].digest()) ? "" : "its digest is not that of the manifest";
			}));
			checks.add(check("files beside it", () -> files(history, tag, manifest[0].files())));
			checks.add(check("the manifest's copy in the folder", () -> {
				Path copy = folder.resolve(ReleaseBook.path(tag.version()));
				return !Files.isRegularFile(copy) ? "it is missing"
						: java.util.Arrays.equals(Files.readAllBytes(copy), bytes[0]) ? "" : "it is not as it was released";
			}));
		}
		return new Verification("release " + tag.version(), List.copyOf(checks));
	}

	/** Whether the files in the folder are those of a release, byte by byte; files about releases apart. */
	public static Verification ofFolder(History history, ReleaseTag tag) {
		return new Verification("the folder, as release " + tag.version(), List.of(check("files in the folder", () -> {
			List<String> differing = history.differences(tag.savePoint());
			return differing.isEmpty() ? "" : "other than released: " + String.join(", ", differing.subList(0, Math.min(5, differing.size())))
					+ (differing.size() > 5 ? " and " + (differing.size() - 5) + " more" : "");
		})));
	}

	/** Whether exported files are as they were written, by the list of checksums beside them. A folder stands for all its files. */
	public static Verification ofExport(Path fileOrFolder) {
		List<Check> checks = new ArrayList<>();
		try {
			if (Files.isDirectory(fileOrFolder)) {
				Checksums.verify(fileOrFolder).forEach(r -> checks.add(new Check(r.file(), r.problem())));
			} else {
				Checksums.Result r = Checksums.verifyFile(fileOrFolder);
				checks.add(new Check(r.file(), r.problem()));
			}
		} catch (IOException e) {
			checks.add(new Check(fileOrFolder.toString(), "cannot be read: " + e.getMessage()));
		}
		return new Verification(fileOrFolder.toString(), List.copyOf(checks));
	}

	private static String files(History history, ReleaseTag tag, Map<String, String> expected) throws IOException {
		Map<String, String> found = ReleaseBook.otherFiles(history, tag.savePoint());
		for (Map.Entry<String, String> file : expected.entrySet()) {
			if (!file.getValue().equals(found.get(file.getKey()))) {
				return file.getKey() + " is not as the manifest says";
			}
		}
		Optional<String> more = found.keySet().stream().filter(path -> !expected.containsKey(path)).findFirst();
		return more.map(path -> "the manifest does not name " + path).orElse("");
	}

	private interface Looking {
		String problem() throws IOException;
	}

	/** Whatever goes wrong while looking is what is wrong. */
	private static Check check(String what, Looking looking) {
		try {
			return new Check(what, looking.problem());
		} catch (IOException | RuntimeException e) {
			return new Check(what, "cannot be checked: " + e.getMessage());
		}
	}
}
