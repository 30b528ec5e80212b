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
import org.cairnfield.archive.history.HistoryCheck;
import org.cairnfield.archive.history.PastState;
import org.cairnfield.archive.history.ReleaseTag;
import org.cairnfield.archive.signature.Signature;
import org.cairnfield.exchange.export.Checksums;

/**
 * Whether something that was released or exported still is what it was.
 *
 * @param what      release, history or files
 * @param checks    what was looked at, in words, each with what is wrong, empty where nothing is
 * @param signature of a release's tag; null for what has none
 * @param notes     what a person should know although nothing is wrong
 */
public record Verification(String what, List<Check> checks, Signature signature, List<String> notes) {

	/** Without a signature and notes. */
	public Verification(String what, List<Check> checks) {
		this(what, checks, null, List.of());
	}

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

	/** Looks at a release alone. */
	public static Verification ofRelease(Path folder, History history, ReleaseTag tag) {
		return ofRelease(folder, history, history.check(), tag);
	}

	/**
	 * Looks at a release: Git's objects, the manifest, the content's digest, files beside the model, the copy of the manifest
	 * that lies in the folder, the tag, its signature, and the release before.
	 */
	static Verification ofRelease(Path folder, History history, HistoryCheck look, ReleaseTag tag) {
		List<Check> checks = new ArrayList<>();
		checks.add(check("Git's objects of the release", () -> String.join("; ", look.problemsOf(tag))));
		ReleaseManifest[] manifest = new ReleaseManifest[1];
		byte[][] bytes = new byte[1][];
		checks.add(check("the manifest", () -> {
			bytes[0] = history.file(tag.savePoint(), ReleaseBook.path(tag.version()))
					.orElseThrow(() -> new IOException("it is missing"));
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
						: java.util.Arrays.equals(Files.readAllBytes(copy), bytes[0]) ? ""
								: "it is not as it was released";
			}));
			checks.add(check("the tag", () -> tag(look, tag, manifest[0], bytes[0])));
			checks.add(check("the release before", () -> manifest[0].previous().isEmpty()
					|| history.releases().stream().anyMatch(t -> t.version().equals(manifest[0].previous())) ? ""
							: "there is no release " + manifest[0].previous() + ", which the manifest names"));
		}
		Signature[] signature = new Signature[1];
		checks.add(check("the signature", () -> {
			signature[0] = look.signature(tag);
			return signature[0].state() == Signature.State.BAD ? signature[0].toString() : "";
		}));
		return new Verification("release " + tag.version(), List.copyOf(checks), signature[0], List.of());
	}

	/** The same, where only a good signature will do. */
	public Verification signed() {
		if (signature == null || signature.state() == Signature.State.GOOD
				|| signature.state() == Signature.State.BAD) {
			return this;
		}
		List<Check> more = new ArrayList<>(checks);
		more.add(new Check("a good signature", "it is wanted, and there is none: " + signature));
		return new Verification(what, List.copyOf(more), signature, notes);
	}

	/** A tag was put on the save point that brought the manifest, in the words of the manifest, and by who signed it. */
	private static String tag(HistoryCheck look, ReleaseTag tag, ReleaseManifest manifest, byte[] bytes)
			throws IOException {
		if (!look.isOnBranch(tag.savePoint())) {
			return "the state that it names, " + tag.savePoint().shortId() + ", is on no branch";
		}
		if (look.manifests().stream()
				.noneMatch(past -> past.version().equals(tag.version())
						&& past.savePoint().id().equals(tag.savePoint().id())
						&& java.util.Arrays.equals(past.content(), bytes))) {
			return "it names " + tag.savePoint().shortId() + ", which is not the save point that brought the manifest";
		}
		if (!letters(tag.person()).equals(letters(manifest.signedBy()))) {
			return "it was made by " + tag.person() + ", and the manifest was signed by " + manifest.signedBy();
		}
		return tag.message().strip().equals(manifest.message().strip()) ? ""
				: "its message is not that of the manifest";
	}

	/** Git leaves some signs out of names. */
	private static String letters(String name) {
		return name.replaceAll("[^\\p{L}\\p{N}]", "");
	}

	/** Whether the files in the folder are those of a release, byte by byte; files about releases apart. */
	public static Verification ofFolder(History history, ReleaseTag tag) {
		return new Verification("the folder, as release " + tag.version(), List.of(check("files in the folder", () -> {
			List<String> differing = history.differences(tag.savePoint());
			return differing.isEmpty() ? ""
					: "other than released: " + String.join(", ", differing.subList(0, Math.min(5, differing.size())))
							+ (differing.size() > 5 ? " and " + (differing.size() - 5) + " more" : "");
		})));
	}

	/**
	 * Whether a release is the one whose digest was kept elsewhere.
	 *
	 * @param digest of the content, 64 hexadecimal digits, or the id of the tag, 40
	 */
	public static Verification ofDigest(History history, ReleaseTag tag, String digest) {
		boolean content = digest.length() == 64;
		return new Verification("release " + tag.version() + ", by the digest given",
				List.of(check(content ? "the content" : "the tag", () -> {
					String found = content ? history.open(tag.savePoint()).digest() : tag.id();
					return found.equalsIgnoreCase(digest) ? "" : "it is " + found;
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

	/** Looks at one thing, and says what is wrong with it. */
	interface Looking {
		String problem() throws IOException;
	}

	/** Whatever goes wrong while looking is what is wrong. */
	static Check check(String what, Looking looking) {
		try {
			return new Check(what, looking.problem());
		} catch (IOException | RuntimeException e) {
			return new Check(what, "cannot be checked: " + e.getMessage());
		}
	}
}
