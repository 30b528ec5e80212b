package org.cairnfield.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.fault.LockOwner;
import org.cairnfield.archive.fault.LockedException;
import org.cairnfield.archive.internal.disk.Disk;
import org.cairnfield.archive.internal.disk.DiskFaults;
import org.cairnfield.archive.internal.disk.FolderLock;
import org.cairnfield.archive.internal.disk.GitEnclosure;
import org.cairnfield.archive.internal.disk.GitTraces;
import org.cairnfield.archive.internal.disk.Places;
import org.cairnfield.archive.internal.disk.SaveRecovery;
import org.cairnfield.archive.internal.disk.Save;
import org.cairnfield.archive.internal.git.GitFolder;
import org.cairnfield.archive.internal.resource.ArchiveFiles;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.archive.internal.text.Migrations;
import org.cairnfield.archive.remote.RemoteUrl;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.cairnfield.model.ModelFactory;

/**
 * Archives on disk. An archive is a folder: text files that a person can read, and a Git repository with their history.
 *
 * <pre>
 * try (OpenArchive open = store.open(folder, Mode.EDIT)) {
 * 	open.archive().getSites()…
 * 	open.savePoint(Person.named("M.Q."), "spring survey cleaned");
 * }
 * </pre>
 */
public final class ArchiveStore {

	private static final String ATTRIBUTES = """
			# What Cairnfield writes is compared byte by byte.
			* -text -filter -ident -working-tree-encoding
			""";

	private final Disk disk;
	private final Clock clock;
	private final Migrations migrations;

	/** With the clock of this machine. */
	public ArchiveStore() {
		this(Clock.systemUTC());
	}

	/** @param clock tells the time of save points and, for people to read, of locks */
	public ArchiveStore(Clock clock) {
		this(Disk.REAL, clock, Migrations.NONE);
	}

	ArchiveStore(Disk disk, Clock clock, Migrations migrations) {
		this.disk = disk;
		this.clock = clock;
		this.migrations = migrations;
	}

	/**
	 * Makes a new archive and opens it for editing. Its first state is saved, but no save point yet.
	 *
	 * @param folder does not exist yet, or is empty; made with all above it
	 * @param name   what people call the archive
	 * @throws ArchiveException where the folder is in use or can not be written
	 */
	public OpenArchive create(Path folder, String name) throws IOException {
		Path root = Places.real(folder);
		try {
			if (Files.exists(root) && !isEmptyFolder(root)) {
				throw new ArchiveException(Words.bind(Messages.ArchiveStore_noArchiveWasMadeIs, root),
						Messages.ArchiveStore_nameAnotherFolder);
			}
			if (root.getParent() != null) {
				Files.createDirectories(root.getParent());
			}
			disk.createFolder(root);
			Path made = Places.real(root);
			SaveRecovery.prepare(disk, made);
			FolderLock lock = FolderLock.take(disk, made, clock.instant());
			return opened(lock, () -> {
				begin(made, name);
				return new OpenArchive(made, this, lock, null, List.of());
			});
		} catch (IOException e) {
			throw DiskFaults.explain(Messages.ArchiveStore_noArchiveWasMade, root, e);
		}
	}

	private void begin(Path root, String name) throws IOException {
		if (!GitTraces.isRepository(root)) {
			GitFolder.init(root).close();
		}
		Archive archive = ModelFactory.eINSTANCE.createArchive();
		archive.setName(name);
		try (Save save = Save.begin(disk, root)) {
			save.put(ArchiveLayout.ATTRIBUTES, out -> out.write(ATTRIBUTES.getBytes(StandardCharsets.UTF_8)));
			save.put(ArchiveLayout.STRUCTURE, out -> ArchiveFiles.writeStructure(archive, out));
			save.commit();
		}
	}

	private static boolean isEmptyFolder(Path folder) throws IOException {
		if (!Files.isDirectory(folder)) {
			return false;
		}
		try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
			return !files.iterator().hasNext();
		}
	}

	/**
	 * Opens an archive. For editing it takes the lock and finishes what an interrupted save has left. Where the archive is
	 * damaged, or its folder can not be written, it opens read-only and tells why.
	 *
	 * @throws LockedException  where somebody else has it open for editing
	 * @throws ArchiveException where there is no archive
	 */
	public OpenArchive open(Path folder, Mode mode) throws IOException {
		Path root = Places.real(folder);
		try {
			return openReal(root, mode);
		} catch (IOException e) {
			throw DiskFaults.explain(Words.bind(Messages.ArchiveStore_isNotOpened, root), root, e);
		}
	}

	private OpenArchive openReal(Path root, Mode mode) throws IOException {
		if (!Files.isDirectory(root)) {
			throw new ArchiveException(Words.bind(Messages.ArchiveStore_thereIsNoFolder, root),
					Messages.ArchiveStore_lookWhereTheArchiveIs);
		}
		if (!Files.exists(root.resolve(ArchiveLayout.STRUCTURE), LinkOption.NOFOLLOW_LINKS)
				&& !Files.exists(root.resolve("surveys"))
				&& !Places.hasPrivateFolder(root)) {
			throw new ArchiveException(Words.bind(Messages.ArchiveStore_holdsNoArchive, root),
					Messages.ArchiveStore_lookWhereTheArchiveIs);
		}
		if (GitTraces.isRepository(root)) {
			GitEnclosure.require(root);
			if (!GitEnclosure.hasPlainConfig(root)) {
				GitFolder.requireEnclosed(root);
			}
		}
		if (mode == Mode.READ) {
			return new OpenArchive(root, this, null, Messages.ArchiveStore_itWasOpenedForReading, List.of());
		}
		FolderLock lock;
		try {
			SaveRecovery.prepare(disk, root);
			lock = FolderLock.take(disk, root, clock.instant());
		} catch (LockedException e) {
			throw e;
		} catch (IOException e) {
			return new OpenArchive(root, this, null,
					DiskFaults.explain(Messages.ArchiveStore_itCanNotBeLocked, root, e).getMessage(),
					List.of());
		}
		return opened(lock, () -> {
			List<Damage> obstacles = SaveRecovery.run(disk, root);
			if (GitTraces.isRepository(root) && Files.exists(GitTraces.committingNote(root))) {
				try (GitFolder git = GitFolder.open(root)) {
					git.recover();
				}
			}
			return new OpenArchive(root, this, lock, null, obstacles);
		});
	}

	private interface Opening {
		OpenArchive open() throws IOException;
	}

	/** Gives the lock back unless the archive opens. */
	private static OpenArchive opened(FolderLock lock, Opening opening) throws IOException {
		OpenArchive open = null;
		try {
			open = opening.open();
			return open;
		} finally {
			if (open == null) {
				lock.close();
			}
		}
	}

	/**
	 * Copies the archive of a remote into a folder, connected with it. The folder appears when the copy is complete.
	 *
	 * @param folder does not exist yet, or is empty
	 * @return its real path
	 * @throws org.cairnfield.archive.fault.UnreachableException where the remote cannot be reached
	 * @throws ArchiveException where there is no archive, or the folder is in use
	 */
	public Path copy(RemoteUrl url, Path folder, Progress progress) throws IOException {
		Path root = Places.real(folder);
		if (Files.exists(root) && !isEmptyFolder(root)) {
			throw new ArchiveException(Words.bind(Messages.ArchiveStore_nothingWasCopiedIsThere, root),
					Messages.ArchiveStore_nameAnotherFolder);
		}
		try {
			return Copying.of(url, root, disk, progress);
		} catch (IOException e) {
			throw DiskFaults.explain(Messages.ArchiveStore_nothingWasCopied, root, e);
		}
	}

	/**
	 * The real path of the folder of an archive, the same by whichever link or relative path it is reached; that of
	 * {@link OpenArchive#folder}. Where there is no such folder, the path made absolute.
	 */
	public static Path realFolder(Path folder) throws IOException {
		return Places.real(folder);
	}

	/** Who has the archive open for editing, or left its lock behind; null if nobody. */
	public LockOwner lockOwner(Path folder) throws IOException {
		return FolderLock.ownerOf(Places.real(folder));
	}

	/**
	 * Removes the lock of somebody who works there no more, for instance on a machine that is gone.
	 *
	 * @throws LockedException where a process of this machine still holds it
	 */
	public void releaseLock(Path folder) throws IOException {
		FolderLock.release(disk, Places.real(folder));
	}

	Disk disk() {
		return disk;
	}

	Clock clock() {
		return clock;
	}

	Migrations migrations() {
		return migrations;
	}
}
