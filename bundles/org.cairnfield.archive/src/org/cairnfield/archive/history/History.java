package org.cairnfield.archive.history;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.archive.internal.disk.ChangedFiles;
import org.cairnfield.archive.internal.disk.FileSource;
import org.cairnfield.archive.internal.disk.FolderView;
import org.cairnfield.archive.internal.disk.GitTraces;
import org.cairnfield.archive.internal.disk.Places;
import org.cairnfield.archive.internal.git.Commit;
import org.cairnfield.archive.internal.git.GitFolder;
import org.cairnfield.archive.internal.git.Log;
import org.cairnfield.archive.internal.git.TreeFiles;
import org.cairnfield.archive.internal.resource.ArchiveReader;
import org.cairnfield.archive.internal.resource.Loaded;
import org.cairnfield.archive.internal.resource.WholeSurveys;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.archive.internal.text.Migrations;
import org.cairnfield.core.text.Words;

/**
 * The save points of an archive, from the present one back. Reads only, and needs no lock. Commits that somebody made with
 * plain Git are save points like others.
 */
public final class History implements AutoCloseable {

	private final Path folder;
	private final GitFolder git;
	private final Migrations migrations;

	private History(Path folder, GitFolder git, Migrations migrations) {
		this.folder = folder;
		this.git = git;
		this.migrations = migrations;
	}

	/**
	 * The history of the archive in a folder.
	 *
	 * @throws ArchiveException where there is none
	 */
	public static History of(Path folder) throws IOException {
		Path root = Places.real(folder);
		if (!GitTraces.isRepository(root)) {
			throw new ArchiveException(Words.bind(Messages.History_hasNoHistory, folder),
					Messages.History_makeASavePointWhich);
		}
		return new History(root, GitFolder.open(root), Migrations.NONE);
	}

	/**
	 * Save points, each before those that it came from.
	 *
	 * @param most how many at most
	 * @throws DamagedException where not all of the history can be read; {@link #savePoints} has the rest
	 */
	public List<SavePoint> list(int most) throws IOException {
		SavePoints found = savePoints(most);
		if (!found.damages().isEmpty()) {
			Damage first = found.damages().get(0);
			throw new DamagedException(
					Words.bind(Messages.History_theHistoryOfIsDamaged, folder, first.file(), first.reason()),
					first.remedy(), found.damages());
		}
		return found.points();
	}

	/**
	 * Save points as far as they can be read, and what cannot.
	 *
	 * @param most how many at most
	 * @throws DamagedException where there is no telling which is the last one
	 */
	public SavePoints savePoints(int most) throws IOException {
		Log log = git.log(most);
		return new SavePoints(log.commits().stream().map(SavePoint::of).toList(), log.damages());
	}

	/** The save point that the files in the folder were last in step with; null before the first. */
	public SavePoint last() throws IOException {
		Commit head = git.head();
		return head == null ? null : SavePoint.of(head);
	}

	/** The branch of Git that save points go to; empty where they go to none, and could be lost when another is checked out. */
	public Optional<String> branch() throws IOException {
		return Optional.ofNullable(git.branch());
	}

	/**
	 * The save point that a text names: an id or the beginning of one, or what Git understands, such as a tag or
	 * {@code HEAD~2}.
	 *
	 * @throws ArchiveException if it names none, or several
	 */
	public SavePoint find(String name) throws IOException {
		return SavePoint.of(git.find(name));
	}

	/**
	 * States that were released, in the order of the names of their tags. Tags that are not annotated or cannot be read are
	 * none; {@link HistoryCheck#tagTroubles} has them.
	 */
	public List<ReleaseTag> releases() {
		return git.tags().stream().map(ReleaseTag::of).toList();
	}

	/** For a look through all of it, which believes as little of it as can be. */
	public HistoryCheck check() {
		return new HistoryCheck(folder, git);
	}

	/** Paths of the files of a state that are not of the model: plans, releases. */
	public List<String> otherFiles(SavePoint point) throws IOException {
		List<String> paths = new ArrayList<>();
		for (String path : git.files(commit(point), p -> ArchiveLayout.isPart(p) && ArchiveLayout.kind(p) == null)
				.paths()) {
			paths.add(path);
		}
		return paths;
	}

	/** The bytes of a file of a state; empty where it has none of that path. */
	public Optional<byte[]> file(SavePoint point, String path) throws IOException {
		TreeFiles files = git.files(commit(point), path::equals);
		if (!files.has(path)) {
			return Optional.empty();
		}
		try (InputStream in = files.open(path)) {
			return Optional.of(in.readAllBytes());
		}
	}

	/**
	 * Paths of files in the folder that differ from those of a state, are missing or are new; files about releases and people left out.
	 * Whether the samples of a survey lie in parts makes no difference.
	 */
	public List<String> differences(SavePoint point) throws IOException {
		FolderView view = new FolderView(folder, ArchiveLayout::isPart);
		TreeFiles files = git.files(commit(point), ArchiveLayout::isPart);
		SortedSet<String> paths = new TreeSet<>(view.files().keySet());
		files.paths().forEach(paths::add);
		paths.removeIf(ArchiveLayout::outlivesRestoring);
		List<String> differing = new ArrayList<>();
		for (String path : paths) {
			if (!sameBytes(files, view, path)) {
				differing.add(path);
			}
		}
		Set<String> partsThen = WholeSurveys.parts(files).keySet();
		Set<String> partsNow = WholeSurveys.parts(view).keySet();
		for (String survey : differing.stream().filter(path -> partsThen.contains(path) != partsNow.contains(path))
				.toList()) {
			if (sameSamples(files, view, survey)) {
				differing.removeIf(path -> ArchiveLayout.whole(path).equals(survey));
			}
		}
		return differing;
	}

	private static boolean sameSamples(FileSource one, FileSource other, String survey) throws IOException {
		try {
			return sameBytes(new WholeSurveys(one), new WholeSurveys(other), survey);
		} catch (ArchiveException e) { // one of them is damaged
			return false;
		}
	}

	/** Reads both: the times and sizes that Git goes by would not show a file that was tampered with. */
	private static boolean sameBytes(FileSource one, FileSource other, String path) throws IOException {
		if (!one.has(path) || !other.has(path)) {
			return false;
		}
		try (InputStream a = one.open(path); InputStream b = other.open(path)) {
			return Arrays.equals(a.readAllBytes(), b.readAllBytes());
		}
	}

	/** The archive as it was, read from Git's objects; the folder is not touched. */
	public PastState open(SavePoint point) throws IOException {
		Loaded loaded = ArchiveReader.read(git.files(commit(point), ArchiveLayout::isPart), migrations,
				ArchiveReader.VOUCHED);
		List<String> releases = releases().stream().filter(release -> release.savePoint().id().equals(point.id()))
				.map(ReleaseTag::version).toList();
		return new PastState(point, releases, loaded.archive(), loaded.damages());
	}

	/** What was changed between two save points, whichever is older. */
	public ArchiveDiff compare(SavePoint before, SavePoint after) throws IOException {
		return StateComparison.of(files(before), files(after), migrations);
	}

	/** What one save point changed, compared with the first of those that it came from. */
	public ArchiveDiff changesOf(SavePoint point) throws IOException {
		SavePoint parent = point.parents().isEmpty() ? null : find(point.parents().get(0));
		return StateComparison.of(files(parent), files(point), migrations);
	}

	/** What was saved since a save point; since the beginning, for null. */
	public ArchiveDiff compareWithSaved(SavePoint before) throws IOException {
		FolderView view = new FolderView(folder, ArchiveLayout::isPart);
		return StateComparison.of(files(before), new StateFiles(view, git.blobs(view.files())), migrations);
	}

	/**
	 * What other files would change.
	 *
	 * @param files   of a state
	 * @param changes by path; null for a file that would be gone
	 */
	public static ArchiveDiff difference(FileSource files, SortedMap<String, byte[]> changes) throws IOException {
		FileSource changed = new ChangedFiles(files, changes);
		SortedMap<String, String> before = new TreeMap<>();
		SortedMap<String, String> after = new TreeMap<>();
		files.paths().forEach(path -> before.put(path, "before"));
		changed.paths().forEach(path -> after.put(path, changes.containsKey(path) ? "after" : "before"));
		return StateComparison.of(new StateFiles(files, before), new StateFiles(changed, after), Migrations.NONE);
	}

	/**
	 * The message for a save point.
	 *
	 * @param opening a first line in place of the counts, or empty
	 * @param diff    what it changes
	 * @param note    in the person's words, or null
	 */
	public static String message(String opening, ArchiveDiff diff, Person person, String note) {
		return SavePointMessage.of(opening, diff, person, note);
	}

	private StateFiles files(SavePoint point) throws IOException {
		return StateFiles.of(git.files(point == null ? null : commit(point), ArchiveLayout::isPart));
	}

	private Commit commit(SavePoint point) throws IOException {
		return git.find(point.id());
	}

	@Override
	public void close() {
		git.close();
	}
}
