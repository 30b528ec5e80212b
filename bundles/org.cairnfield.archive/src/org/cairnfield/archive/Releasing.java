package org.cairnfield.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.HistoryCheck;
import org.cairnfield.archive.history.PastManifest;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.ReleaseTag;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.internal.disk.DiskFaults;
import org.cairnfield.archive.internal.disk.GitTraces;
import org.cairnfield.archive.internal.disk.Places;
import org.cairnfield.archive.internal.disk.Save;
import org.cairnfield.archive.internal.git.Commit;
import org.cairnfield.archive.internal.git.GitFolder;
import org.cairnfield.archive.internal.git.Tag;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.core.text.Words;

/**
 * Makes releases of what is on disk. A release exists from the moment its tag does, which is the last thing that happens; a
 * manifest without a tag is a draft, whoever left it.
 */
final class Releasing {

	private final Path root;
	private final ArchiveStore store;

	Releasing(Path root, ArchiveStore store) {
		this.root = root;
		this.store = store;
	}

	/** Puts a text into a file about releases. */
	void put(String path, String text) throws IOException {
		requireAboutReleases(path);
		try (Save save = Save.begin(store.disk(), root)) {
			save.put(path, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
			save.commit();
		}
	}

	private static void requireAboutReleases(String path) {
		if (!ArchiveLayout.isRelease(path)) {
			throw new IllegalArgumentException("not a file about releases: " + path);
		}
	}

	/** The same, but refuses the manifest of a version that was released. */
	void putFree(String path, String text) throws IOException {
		requireFreeFile(path);
		put(path, text);
	}

	/** Deletes a file about releases, but for the manifest of a version that was released. */
	void deleteFree(String path) throws IOException {
		requireFreeFile(path);
		requireAboutReleases(path);
		try (Save save = Save.begin(store.disk(), root)) {
			save.delete(path);
			save.commit();
		}
	}

	private void requireFreeFile(String path) throws IOException {
		Places.inside(root, path);
		if (ArchiveLayout.isManifest(path) && GitTraces.isRepository(root)) {
			requireFree(path.substring(path.indexOf('/') + 1, path.length() - ".json".length()));
		}
	}

	private void requireFree(String version) throws IOException {
		try (GitFolder git = GitFolder.open(root)) {
			if (git.hasTag(version)) {
				throw new ArchiveException(Words.bind(Messages.Releasing_isReleasedAlreadyAndWhat, version),
						Messages.Releasing_chooseAHigherVersion);
			}
		}
	}

	/**
	 * Where the history has this very manifest already, since releasing was interrupted, the save point that brought it gets the
	 * tag.
	 *
	 * @param digest what the content must be
	 * @return the release
	 */
	ReleaseTag release(String version, String manifest, String digest, String message, Person person)
			throws IOException {
		requireFree(version);
		Optional<SavePoint> begun = begun(version, manifest);
		Optional<SavePoint> made = begun;
		if (begun.isEmpty()) {
			put(ArchiveLayout.release(version), manifest);
			made = new Recording(root, store, Words.bind(Messages.Releasing_release, version), person, null)
					.record();
		}
		try (GitFolder git = GitFolder.open(root); History history = History.of(root)) {
			SavePoint point = made.isPresent() ? made.get() : history.last();
			if (!history.open(point).digest().equals(digest)) {
				throw new ArchiveException(Words.bind(Messages.Releasing_wasNotReleasedTheContent, version),
						begun.isPresent() ? Messages.Releasing_chooseAHigherVersion
								: Messages.Releasing_lookAtTheHistoryMeasure);
			}
			Commit commit = git.find(point.id());
			Tag tag = git.tag(version, commit, message, person.name(), person.email(), store.clock().instant());
			return history.releases().stream().filter(r -> r.version().equals(tag.name())).findFirst().orElseThrow();
		} catch (IOException e) {
			throw DiskFaults.explain(Words.bind(Messages.Releasing_wasNotReleasedTheSave, version), root, e);
		}
	}

	private Optional<SavePoint> begun(String version, String manifest) throws IOException {
		byte[] bytes = manifest.getBytes(StandardCharsets.UTF_8);
		try (History history = History.of(root)) {
			HistoryCheck check = history.check();
			Optional<SavePoint> found = Optional.empty();
			for (PastManifest past : check.manifests()) {
				if (past.version().equals(version) && Arrays.equals(past.content(), bytes)
						&& check.isOnBranch(past.savePoint())) {
					found = Optional.of(past.savePoint());
				}
			}
			return found;
		}
	}
}
