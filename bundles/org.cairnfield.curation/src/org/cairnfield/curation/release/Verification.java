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
import org.cairnfield.core.text.Words;
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
		checks.add(check(Messages.Verification_gitSObjectsOfThe, () -> String.join("; ", look.problemsOf(tag))));
		ReleaseManifest[] manifest = new ReleaseManifest[1];
		byte[][] bytes = new byte[1][];
		checks.add(check(Messages.Verification_theManifest, () -> {
			bytes[0] = history.file(tag.savePoint(), ReleaseBook.path(tag.version()))
					.orElseThrow(() -> new IOException(Messages.Verification_itIsMissing));
			manifest[0] = ManifestJson.read(new String(bytes[0], StandardCharsets.UTF_8));
			return !manifest[0].version().equals(tag.version())
					? Words.bind(Messages.Verification_itIsThatOf, manifest[0].version())
					: manifest[0].isSigned() ? "" : Messages.Verification_nobodyHasSignedIt;
		}));
		if (manifest[0] != null) {
			checks.add(check(Messages.Verification_theContent, () -> {
				PastState state = history.open(tag.savePoint());
				return !state.damages().isEmpty() ? Words.bind(Messages.Verification_damaged, state.damages().get(0))
						: state.digest().equals(manifest[0].digest()) ? "" : Messages.Verification_itsDigestIsNotThat;
			}));
			checks.add(check(Messages.Verification_filesBesideIt, () -> files(history, tag, manifest[0].files())));
			checks.add(check(Messages.Verification_theManifestSCopyIn, () -> {
				Path copy = folder.resolve(ReleaseBook.path(tag.version()));
				return !Files.isRegularFile(copy) ? Messages.Verification_itIsMissing
						: java.util.Arrays.equals(Files.readAllBytes(copy), bytes[0]) ? ""
								: Messages.Verification_itIsNotAsIt;
			}));
			checks.add(check(Messages.Verification_theTag, () -> tag(look, tag, manifest[0], bytes[0])));
			checks.add(check(Messages.Verification_theReleaseBefore, () -> manifest[0].previous().isEmpty()
					|| history.releases().stream().anyMatch(t -> t.version().equals(manifest[0].previous())) ? ""
							: Words.bind(Messages.Verification_thereIsNoReleaseWhich, manifest[0].previous())));
		}
		Signature[] signature = new Signature[1];
		checks.add(check(Messages.Verification_theSignature, () -> {
			signature[0] = look.signature(tag);
			return signature[0].state() == Signature.State.BAD ? signature[0].toString() : "";
		}));
		return new Verification(Words.bind(Messages.Verification_release, tag.version()), List.copyOf(checks),
				signature[0], List.of());
	}

	/** The same, where only a good signature will do. */
	public Verification signed() {
		if (signature == null || signature.state() == Signature.State.GOOD
				|| signature.state() == Signature.State.BAD) {
			return this;
		}
		List<Check> more = new ArrayList<>(checks);
		more.add(new Check(Messages.Verification_aGoodSignature,
				Words.bind(Messages.Verification_itIsWantedAndThere, signature)));
		return new Verification(what, List.copyOf(more), signature, notes);
	}

	/** A tag was put on the save point that brought the manifest, in the words of the manifest, and by who signed it. */
	private static String tag(HistoryCheck look, ReleaseTag tag, ReleaseManifest manifest, byte[] bytes)
			throws IOException {
		if (!look.isOnBranch(tag.savePoint())) {
			return Words.bind(Messages.Verification_theStateThatItNames, tag.savePoint().shortId());
		}
		if (look.manifests().stream()
				.noneMatch(past -> past.version().equals(tag.version())
						&& past.savePoint().id().equals(tag.savePoint().id())
						&& java.util.Arrays.equals(past.content(), bytes))) {
			return Words.bind(Messages.Verification_itNamesWhichIsNot, tag.savePoint().shortId());
		}
		if (!letters(tag.person()).equals(letters(manifest.signedBy()))) {
			return Words.bind(Messages.Verification_itWasMadeByAnd, tag.person(), manifest.signedBy());
		}
		return tag.message().strip().equals(manifest.message().strip()) ? ""
				: Messages.Verification_itsMessageIsNotThat;
	}

	/** Git leaves some signs out of names. */
	private static String letters(String name) {
		return name.replaceAll("[^\\p{L}\\p{N}]", "");
	}

	/** Whether the files in the folder are those of a release, byte by byte; files about releases apart. */
	public static Verification ofFolder(History history, ReleaseTag tag) {
		return new Verification(Words.bind(Messages.Verification_theFolderAsRelease, tag.version()),
				List.of(check(Messages.Verification_filesInTheFolder, () -> {
					List<String> differing = history.differences(tag.savePoint());
					return differing.isEmpty() ? ""
							: Words.bind(Messages.Verification_otherThanReleased,
									String.join(", ", differing.subList(0, Math.min(5, differing.size()))),
									differing.size() > 5
											? Words.bind(Messages.Verification_andMore, differing.size() - 5)
											: "");
				})));
	}

	/**
	 * Whether a release is the one whose digest was kept elsewhere.
	 *
	 * @param digest of the content, 64 hexadecimal digits, or the id of the tag, 40
	 */
	public static Verification ofDigest(History history, ReleaseTag tag, String digest) {
		boolean content = digest.length() == 64;
		return new Verification(Words.bind(Messages.Verification_releaseByTheDigestGiven, tag.version()),
				List.of(check(content ? Messages.Verification_theContent : Messages.Verification_theTag, () -> {
					String found = content ? history.open(tag.savePoint()).digest() : tag.id();
					return found.equalsIgnoreCase(digest) ? "" : Words.bind(Messages.Verification_itIs, found);
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
			checks.add(new Check(fileOrFolder.toString(),
					Words.bind(Messages.Verification_cannotBeRead, e.getMessage())));
		}
		return new Verification(fileOrFolder.toString(), List.copyOf(checks));
	}

	private static String files(History history, ReleaseTag tag, Map<String, String> expected) throws IOException {
		Map<String, String> found = ReleaseBook.otherFiles(history, tag.savePoint());
		for (Map.Entry<String, String> file : expected.entrySet()) {
			if (!file.getValue().equals(found.get(file.getKey()))) {
				return Words.bind(Messages.Verification_isNotAsTheManifest, file.getKey());
			}
		}
		Optional<String> more = found.keySet().stream().filter(path -> !expected.containsKey(path)).findFirst();
		return more.map(path -> Words.bind(Messages.Verification_theManifestDoesNotName, path)).orElse("");
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
			return new Check(what, Words.bind(Messages.Verification_cannotBeChecked, e.getMessage()));
		}
	}
}
