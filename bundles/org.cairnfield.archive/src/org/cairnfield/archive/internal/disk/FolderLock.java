package org.cairnfield.archive.internal.disk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

import org.cairnfield.archive.fault.LockOwner;
import org.cairnfield.archive.fault.LockedException;

/**
 * Keeps a second writer out of a folder. Two files in the private folder: {@code lock} tells in words who holds it;
 * {@code lock.hold} carries a lock of the operating system, which falls with its process however that ends. They are two
 * because on many systems closing any handle on a file drops the process's locks on it, so the one that is read must not be
 * the one that is locked.
 *
 * <p>Nothing is decided by a clock.
 */
public final class FolderLock implements AutoCloseable {

	private static final String NOTE = "lock";
	private static final String HOLD = "lock.hold";
	private static final String FREE_IT = Messages.FolderLock_openItForReadingOnly;

	/** Folders held by this process: the operating system does not keep a process out of its own lock. */
	private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

	private final Disk disk;
	private final Path root;
	private final Path key;
	private final LockNote note;
	private final FileChannel channel;
	private final LockOwner stale;
	private boolean released;

	private FolderLock(Disk disk, Path root, Path key, LockNote note, FileChannel channel, LockOwner stale) {
		this.disk = disk;
		this.root = root;
		this.key = key;
		this.note = note;
		this.channel = channel;
		this.stale = stale;
	}

	/**
	 * Takes the lock. One that was left by a process of this machine that is gone is taken over.
	 *
	 * @param now only written down, for people to read
	 * @throws LockedException telling who holds it
	 * @throws IOException     where the folder can not be written
	 */
	public static FolderLock take(Disk disk, Path root, Instant now) throws IOException {
		return take(disk, root, now, LockNote.ofThisProcess(now));
	}

	static FolderLock take(Disk disk, Path root, Instant now, LockNote mine) throws IOException {
		Path key = root.toRealPath();
		if (!HELD.add(key)) {
			throw new LockedException(root.toString(), ownerOf(root), FREE_IT);
		}
		FileChannel channel = null;
		boolean taken = false;
		try {
			channel = holdFile(root);
			boolean held = hold(channel);
			LockNote found = LockNote.read(note(root));
			if (!held || found != null && found.mayBeAlive()) {
				throw new LockedException(root.toString(), found == null ? null : found.owner(), FREE_IT);
			}
			mine.write(disk, note(root), Places.privateFile(root, "lock.part"));
			taken = true;
			return new FolderLock(disk, root, key, mine, channel, found == null ? null : found.owner());
		} finally {
			if (!taken) {
				if (channel != null) {
					channel.close();
				}
				HELD.remove(key);
			}
		}
	}

	private static Path note(Path root) throws IOException {
		return Places.privateFile(root, NOTE);
	}

	/** It carries a lock and is never written. */
	private static FileChannel holdFile(Path root) throws IOException {
		return FileChannel.open(Places.privateFile(root, HOLD), StandardOpenOption.CREATE, StandardOpenOption.WRITE,
				LinkOption.NOFOLLOW_LINKS);
	}

	/** Whether the operating system grants it; a file system without locks leaves the note to decide. */
	private static boolean hold(FileChannel channel) {
		try {
			FileLock lock = channel.tryLock();
			return lock != null;
		} catch (OverlappingFileLockException e) {
			return false;
		} catch (IOException e) {
			return true;
		}
	}

	/** Who holds the lock of a folder or left it behind; null if nobody. */
	public static LockOwner ownerOf(Path root) throws IOException {
		LockNote note = LockNote.read(note(root));
		return note == null ? null : note.owner();
	}

	/**
	 * Removes the note of somebody who, as the caller knows, works there no more.
	 *
	 * @throws LockedException where a process of this machine certainly holds it
	 */
	public static void release(Disk disk, Path root) throws IOException {
		Path key = root.toRealPath();
		if (HELD.contains(key)) {
			throw new LockedException(root.toString(), ownerOf(root), Messages.FolderLock_closeItThereFirst);
		}
		try (FileChannel channel = holdFile(root)) {
			if (!hold(channel)) {
				throw new LockedException(root.toString(), ownerOf(root), Messages.FolderLock_closeItThereFirstOr);
			}
			disk.delete(note(root));
		}
	}

	/** Whose lock was taken over because its process was gone; null if it was free. */
	public LockOwner tookOverFrom() {
		return stale;
	}

	/** This process, as the lock names it. */
	public LockOwner owner() {
		return note.owner();
	}

	/**
	 * Makes sure that nobody has taken the lock away in the meantime.
	 *
	 * @throws LockedException if somebody has
	 */
	public void check() throws IOException {
		LockNote found = LockNote.read(note(root));
		if (released || !note.equals(found)) {
			throw new LockedException(root.toString(), found == null ? null : found.owner(),
					Messages.FolderLock_theLockOfThisProgram);
		}
	}

	/** Gives the lock back. */
	@Override
	public void close() throws IOException {
		if (released) {
			return;
		}
		released = true;
		try (channel) {
			if (note.equals(LockNote.read(note(root)))) {
				disk.delete(note(root));
			}
		} finally {
			HELD.remove(key);
		}
	}

	/** This process, as it would note itself down. */
	public static LockOwner thisProcess(Instant now) {
		return LockNote.ofThisProcess(now).owner();
	}
}
