package org.cairnfield.curation.release;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.HistoryCheck;
import org.cairnfield.archive.history.PastManifest;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.ReleaseTag;
import org.cairnfield.core.text.Words;

/**
 * A release that somebody has signed and whose tag is not here: it was not fetched, was deleted, or was never made, since
 * releasing was interrupted. Its version is taken, and its manifest is never written over.
 *
 * @param past     the manifest as it last came into the history
 * @param manifest empty where it cannot be read
 */
record UntaggedRelease(PastManifest past, Optional<ReleaseManifest> manifest) {

	private static final String NOTHING = Messages.UntaggedRelease_nothingWasReleased;

	/** All of a history, by version, the lowest first. */
	static List<UntaggedRelease> in(HistoryCheck check, List<ReleaseTag> tags) throws IOException {
		TreeMap<SemanticVersion, UntaggedRelease> found = new TreeMap<>(Comparator.naturalOrder());
		for (PastManifest past : check.manifests()) {
			if (SemanticVersion.is(past.version())
					&& tags.stream().noneMatch(tag -> tag.version().equals(past.version()))) {
				UntaggedRelease release = of(past);
				if (release.manifest.isEmpty() || release.manifest.get().isSigned()) {
					found.put(SemanticVersion.parse(past.version()), release);
				}
			}
		}
		return new ArrayList<>(found.values());
	}

	/** The one of a version in an archive. */
	static Optional<UntaggedRelease> of(OpenArchive open, String version) throws IOException {
		if (!open.hasHistory()) {
			return Optional.empty();
		}
		try (History history = History.of(open.folder())) {
			return in(history.check(), history.releases()).stream()
					.filter(release -> release.past.version().equals(version)).findFirst();
		}
	}

	private static UntaggedRelease of(PastManifest past) {
		try {
			return new UntaggedRelease(past,
					Optional.of(ManifestJson.read(new String(past.content(), StandardCharsets.UTF_8))));
		} catch (IllegalArgumentException e) {
			return new UntaggedRelease(past, Optional.empty());
		}
	}

	/**
	 * Passes a version above all that were signed.
	 *
	 * @throws ArchiveException otherwise
	 */
	static void requireHigher(History history, SemanticVersion chosen) throws IOException {
		List<UntaggedRelease> all = in(history.check(), history.releases());
		UntaggedRelease last = all.isEmpty() ? null : all.get(all.size() - 1);
		if (last != null && chosen.compareTo(SemanticVersion.parse(last.past.version())) <= 0) {
			throw new ArchiveException(
					Words.bind(Messages.UntaggedRelease_andIsNotHigher, NOTHING, last.what(), chosen),
					Words.bind(Messages.UntaggedRelease_orChooseAHigherVersion, last.remedy()));
		}
	}

	private String signer() {
		return manifest.map(ReleaseManifest::signedBy).orElse(Messages.UntaggedRelease_somebodyItsManifestCannotBe);
	}

	private String what() {
		return Words.bind(Messages.UntaggedRelease_releaseSignedByHasNo, past.version(), signer());
	}

	private String remedy() {
		return Words.bind(Messages.UntaggedRelease_fetchTheTagsWithGit, manifest.isEmpty() ? ""
				: Words.bind(Messages.UntaggedRelease_ifReleasingWasInterruptedFinishes, signer(), past.version()));
	}

	/** Says that it stays. @param nothing what was not done, with a colon */
	ArchiveException refuse(String nothing) {
		return new ArchiveException(nothing + what(), remedy());
	}

	/** What is wrong, and what to do. */
	@Override
	public String toString() {
		return what() + ": " + remedy();
	}

	/**
	 * Makes the tag that an interrupted release did not come to, on the save point that has the manifest.
	 *
	 * @throws ArchiveException for another person, and where the release is known here, so that there is a tag elsewhere
	 */
	ReleaseTag finish(OpenArchive open, Person person, KnownReleases known) throws IOException {
		if (manifest.isEmpty() || !person.name().equalsIgnoreCase(signer()) || isKnown(open, known)) {
			throw refuse(NOTHING);
		}
		return open.release(past.version(), new String(past.content(), StandardCharsets.UTF_8), manifest.get().digest(),
				manifest.get().message(), person);
	}

	private boolean isKnown(OpenArchive open, KnownReleases known) throws IOException {
		try (History history = History.of(open.folder())) {
			Optional<String> archive = history.check().beginning();
			return archive.isPresent() && known.has(archive.get(), past.version());
		}
	}
}
