package org.cairnfield.archive.internal.disk;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.core.text.Words;

/**
 * The files of a folder as the last save left them, also where that save is not finished: a file that still waits in the
 * pending folder is read there. Reads only, so it needs no lock.
 */
public final class FolderView implements FileSource {

	private final Path root;
	private final SortedMap<String, Path> files = new TreeMap<>();
	private final List<Damage> damages = new ArrayList<>();
	private final Map<String, String> stamps = new TreeMap<>();

	/** @param wanted the paths that are looked for; folders above them must match too */
	public FolderView(Path root, Predicate<String> wanted) throws IOException {
		this.root = root;
		walk(wanted);
		Journal journal = null;
		try {
			journal = Journal.read(root);
			stamp(Places.JOURNAL, Journal.file(root));
		} catch (Journal.BrokenException e) {
			damages.add(SaveRecovery.broken(e));
		}
		if (journal != null) {
			overlay(journal);
		}
	}

	private void walk(Predicate<String> wanted) throws IOException {
		Files.walkFileTree(root, new SimpleFileVisitor<>() {
			@Override
			public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
				return folder.equals(root) || wanted.test(path(folder)) ? FileVisitResult.CONTINUE
						: FileVisitResult.SKIP_SUBTREE;
			}

			@Override
			public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
				String path = path(file);
				if (!wanted.test(path)) {
					return FileVisitResult.CONTINUE;
				}
				if (attributes.isRegularFile()) {
					files.put(path, file);
					stamps.put(path, stamp(attributes));
				} else {
					damages.add(new Damage(path, 0, Messages.FolderView_noPlainFileAndNot,
							Messages.FolderView_replaceItByWhatIt));
				}
				return FileVisitResult.CONTINUE;
			}

			@Override
			public FileVisitResult visitFileFailed(Path file, IOException e) throws IOException {
				if (file.equals(root)) {
					throw e;
				}
				if (!(e instanceof NoSuchFileException)) { // gone between two looks: the stamps tell
					damages.add(new Damage(path(file), 0,
							Words.bind(Messages.FolderView_canNotBeRead, e.getClass().getSimpleName()),
							Messages.FolderView_askForPermission));
				}
				return FileVisitResult.CONTINUE;
			}
		});
	}

	private String path(Path file) {
		return root.relativize(file).toString().replace(file.getFileSystem().getSeparator(), "/");
	}

	private void overlay(Journal journal) throws IOException {
		for (Journal.Step step : journal.steps()) {
			if (!Places.staysInside(step.path())) {
				continue; // recovery refuses it
			}
			if (step.deletes()) {
				files.remove(step.path());
				continue;
			}
			Path pending = Places.pendingFile(root, step.pending());
			if (Places.isFile(pending)) {
				files.put(step.path(), pending);
			}
		}
	}

	private static String stamp(BasicFileAttributes a) {
		return a.size() + "/" + a.lastModifiedTime().toMillis() + "/" + a.fileKey();
	}

	private void stamp(String path, Path file) throws IOException {
		if (Files.exists(file)) {
			stamps.put(path, stamp(Files.readAttributes(file, BasicFileAttributes.class)));
		}
	}

	/** Whether the other view was taken of the same files, unchanged since. */
	public boolean sameAs(FolderView other) {
		return stamps.equals(other.stamps);
	}

	/** Digest of what {@link #sameAs} goes by; to be kept where the view cannot be. */
	public String stamp() {
		return StateHashes.digest(new TreeMap<>(stamps));
	}

	/**
	 * A file that the other view has otherwise or not at all, or the other way round; null if there is none.
	 *
	 * @param wanted which files count
	 */
	public String firstDifference(FolderView other, Predicate<String> wanted) {
		SortedMap<String, String> all = new TreeMap<>(stamps);
		all.putAll(other.stamps);
		return all.keySet().stream().filter(wanted)
				.filter(path -> !Objects.equals(stamps.get(path), other.stamps.get(path)))
				.findFirst().orElse(null);
	}

	@Override
	public Iterable<String> paths() {
		return new TreeSet<>(files.keySet());
	}

	@Override
	public boolean has(String path) {
		return files.containsKey(path);
	}

	/** Where the files lie, by path: some may wait in the pending folder. */
	public SortedMap<String, Path> files() {
		return Collections.unmodifiableSortedMap(files);
	}

	/** What tells a file of now from one of before; null for a file that waits in the pending folder. */
	String stampInPlace(String path) {
		return root.resolve(path).equals(files.get(path)) ? stamps.get(path) : null;
	}

	@Override
	public InputStream open(String path) throws IOException {
		return Files.newInputStream(file(path));
	}

	private Path file(String path) throws NoSuchFileException {
		Path file = files.get(path);
		if (file == null) {
			throw new NoSuchFileException(path);
		}
		return file;
	}

	/** What was met that is no plain file, and a broken journal. */
	public List<Damage> damages() {
		return List.copyOf(damages);
	}
}
