package org.cairnfield.archive.internal.disk;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.Damage;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.values.Sha256;

/**
 * A change of several files of a folder, of which all happens or nothing. Needs the lock of the folder, and a
 * {@link SaveRecovery} before. If anything fails before {@link #commit} has decided, {@link #close} leaves the folder as it was.
 */
public final class Save implements FileChanges, AutoCloseable {

	private static final int BUFFER_BYTES = 1 << 16;

	private final Disk disk;
	private final Path root;
	private final List<Journal.Step> steps = new ArrayList<>();
	private boolean decided;

	private Save(Disk disk, Path root) {
		this.disk = disk;
		this.root = root;
	}

	/**
	 * Begins a save, after finishing or throwing away what an earlier one has left.
	 *
	 * @param root the folder, with the private folder in it, see {@link SaveRecovery#prepare}
	 */
	public static Save begin(Disk disk, Path root) throws ArchiveException {
		Save save = new Save(disk, root);
		try {
			List<Damage> obstacles = SaveRecovery.run(disk, root);
			if (!obstacles.isEmpty()) {
				throw new ArchiveException(Words.bind(Messages.Save_nothingWasSavedWas, obstacles.get(0).file(),
						obstacles.get(0).reason()), obstacles.get(0).remedy());
			}
		} catch (IOException e) {
			throw save.notSaved(e);
		}
		return save;
	}

	/**
	 * Writes a file beside, to be put in place by {@link #commit}. A file that has this content already is left alone.
	 *
	 * @param path below the folder, with / between its steps; each path once
	 * @return whether the file changes
	 */
	@Override
	public boolean put(String path, Content content) throws ArchiveException {
		try {
			Path target = Places.inside(root, path);
			String name = Integer.toString(steps.size());
			Path part = Places.pendingFile(root, name);
			CountedOutput counted;
			try (Disk.Sink sink = disk.write(part)) {
				counted = new CountedOutput(sink);
				OutputStream out = new BufferedOutputStream(counted, BUFFER_BYTES);
				content.writeTo(out);
				out.flush();
				sink.sync();
			}
			String digest = Sha256.hex(counted.digest);
			String before = before(target);
			if (before.equals(digest)) {
				disk.delete(part);
				return false;
			}
			steps.add(new Journal.Step(path, name, digest, counted.size, before));
			return true;
		} catch (IOException e) {
			throw notSaved(e);
		}
	}

	/** Deletes a file on {@link #commit}; nothing happens where it is not there. */
	@Override
	public boolean delete(String path) throws ArchiveException {
		try {
			Path target = Places.inside(root, path);
			if (!Places.isFile(target)) {
				return false;
			}
			steps.add(new Journal.Step(path, null, null, 0, before(target)));
			return true;
		} catch (IOException e) {
			throw notSaved(e);
		}
	}

	/**
	 * Makes the changes, and makes sure that they last.
	 *
	 * @return whether there were any
	 * @throws ArchiveException whose message tells whether the changes count as made
	 */
	public boolean commit() throws ArchiveException {
		if (steps.isEmpty()) {
			return false;
		}
		try {
			checkWritable();
			disk.syncFolder(Places.privateFolder(root, Places.PENDING));
			if (steps.size() > 1) {
				new Journal(steps).write(disk, root);
				decided = true;
			}
		} catch (IOException e) {
			// a journal that is in place counts, even if the disk then refused to promise it
			decided = Files.exists(root.resolve(Places.JOURNAL), LinkOption.NOFOLLOW_LINKS);
			throw decided ? notFinished(e) : notSaved(e);
		}
		try {
			Applying applying = new Applying(disk, root);
			applying.apply(new Journal(steps));
			if (decided) {
				applying.forget();
			}
			decided = true;
			return true;
		} catch (IOException e) {
			decided = decided || isInPlace(steps.get(0));
			throw decided ? notFinished(e) : notSaved(e);
		}
	}

	/** A single file needs no journal; once it is in place the save counts. */
	private boolean isInPlace(Journal.Step step) {
		try {
			return !Files.exists(step.deletes() ? root.resolve(step.path()) : Places.pendingFile(root, step.pending()));
		} catch (IOException e) {
			return false; // somebody has put something else in its place
		}
	}

	/** Removes what was written beside and not put in place. */
	@Override
	public void close() {
		if (!decided) {
			for (int i = 0; i <= steps.size(); i++) {
				discard(Integer.toString(i));
			}
			discard(Journal.PART);
		}
	}

	private void discard(String name) {
		try {
			disk.delete(Places.pendingFile(root, name));
		} catch (IOException e) {
			// the next recovery removes it
		}
	}

	/** Refusing now is better than half way through: all targets lie in folders that can be written, as far as one sees. */
	private void checkWritable() throws ArchiveException {
		for (Journal.Step step : steps) {
			Path folder = root.resolve(step.path()).getParent();
			while (!Files.exists(folder)) {
				folder = folder.getParent();
			}
			if (!Files.isDirectory(folder) || !Files.isWritable(folder)) {
				throw new ArchiveException(Words.bind(Messages.Save_nothingWasSavedCanNot, step.path(), folder),
						Messages.Save_askForPermissionOrCopy);
			}
		}
	}

	private static String before(Path target) throws IOException {
		return Places.isFile(target) ? Sha256.of(target) : Journal.ABSENT;
	}

	private ArchiveException notSaved(IOException cause) {
		return DiskFaults.explain(Messages.Save_nothingWasSaved, root, cause);
	}

	private ArchiveException notFinished(IOException cause) {
		return new UnfinishedSaveException(DiskFaults.explain(
				Messages.Save_theSaveCountsButIs,
				root, cause));
	}
}
