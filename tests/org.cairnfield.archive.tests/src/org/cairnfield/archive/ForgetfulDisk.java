package org.cairnfield.archive;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.cairnfield.archive.internal.disk.Disk;

/**
 * A disk that works, and remembers what a loss of power could have left of it: bytes that were not synced may be missing, in
 * part or zeros; entries of a folder that was not synced may be as before. Of those, the earlier ones survive before the
 * later, as journaling file systems have it.
 */
final class ForgetfulDisk implements Disk {

	/** Content of one file, by whatever name. */
	private static final class Inode {
		byte[] now = {};
		byte[] lasting;
	}

	/** A change of one entry; null: the entry goes. */
	private record Entry(Path path, Inode inode) {
	}

	/** Stops the program after so many steps, as if the power had gone. */
	static final class PowerLossError extends Error {
		private static final long serialVersionUID = 1;
	}

	private final Path root;
	private final Map<Path, Inode> now = new TreeMap<>();
	private final Map<Path, Inode> lasting = new TreeMap<>();
	private final List<Entry> unsynced = new ArrayList<>();
	private final long stopAfter;
	private long steps;

	/** @param root what is in it already lasts */
	ForgetfulDisk(Path root, long stopAfter) throws IOException {
		this.root = root;
		this.stopAfter = stopAfter;
		try (Stream<Path> files = Files.walk(root)) {
			for (Path file : (Iterable<Path>) files::iterator) {
				if (Files.isRegularFile(file)) {
					Inode inode = new Inode();
					inode.now = Files.readAllBytes(file);
					inode.lasting = inode.now;
					now.put(file, inode);
					lasting.put(file, inode);
				}
			}
		}
	}

	long steps() {
		return steps;
	}

	private void step() {
		if (steps++ >= stopAfter) {
			throw new PowerLossError();
		}
	}

	@Override
	public Sink write(Path file) throws IOException {
		step();
		Sink real = Disk.super.write(file);
		Inode inode = new Inode();
		if (now.containsKey(file)) {
			inode = now.get(file);
		} else {
			now.put(file, inode);
			unsynced.add(new Entry(file, inode));
		}
		inode.now = new byte[0];
		Inode written = inode;
		return new Sink() {
			private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

			@Override
			public void write(int b) throws IOException {
				write(new byte[] { (byte) b }, 0, 1);
			}

			@Override
			public void write(byte[] b, int from, int length) throws IOException {
				step();
				real.write(b, from, length);
				bytes.write(b, from, length);
				written.now = bytes.toByteArray();
			}

			@Override
			public void sync() throws IOException {
				step();
				written.lasting = written.now;
			}

			@Override
			public void close() throws IOException {
				real.close();
			}
		};
	}

	@Override
	public void move(Path from, Path to) throws IOException {
		step();
		Disk.super.move(from, to);
		Inode inode = now.remove(from);
		now.put(to, inode);
		unsynced.add(new Entry(to, inode));
		unsynced.add(new Entry(from, null));
	}

	@Override
	public void delete(Path file) throws IOException {
		step();
		Disk.super.delete(file);
		if (now.remove(file) != null) {
			unsynced.add(new Entry(file, null));
		}
	}

	@Override
	public void createFolder(Path folder) throws IOException {
		step();
		Disk.super.createFolder(folder);
	}

	@Override
	public void syncFolder(Path folder) throws IOException {
		step();
		for (Entry entry : List.copyOf(unsynced)) {
			if (entry.path().getParent().equals(folder)) {
				apply(entry, lasting);
				unsynced.remove(entry);
			}
		}
	}

	private static void apply(Entry entry, Map<Path, Inode> entries) {
		if (entry.inode() == null) {
			entries.remove(entry.path());
		} else {
			entries.put(entry.path(), entry.inode());
		}
	}

	/** One of the states in which the power could come back, as a folder of its own. */
	void restart(Path target, Random random) throws IOException {
		Map<Path, Inode> entries = new TreeMap<>(lasting);
		int survivors = random.nextInt(unsynced.size() + 1);
		unsynced.subList(0, survivors).forEach(entry -> apply(entry, entries));
		for (Map.Entry<Path, Inode> entry : entries.entrySet()) {
			Path file = target.resolve(root.relativize(entry.getKey()).toString());
			Files.createDirectories(file.getParent());
			Files.write(file, left(entry.getValue(), random));
		}
	}

	private static byte[] left(Inode inode, Random random) {
		if (inode.lasting == inode.now) {
			return inode.now;
		}
		return switch (random.nextInt(4)) {
		case 0 -> inode.lasting == null ? new byte[0] : inode.lasting;
		case 1 -> inode.now;
		case 2 -> Arrays.copyOf(inode.now, random.nextInt(inode.now.length + 1));
		default -> new byte[inode.now.length];
		};
	}
}
