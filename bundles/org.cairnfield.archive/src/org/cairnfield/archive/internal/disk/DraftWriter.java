package org.cairnfield.archive.internal.disk;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Collection;

import org.cairnfield.archive.fault.LockOwner;
import org.cairnfield.model.values.Sha256;

/** Writes a {@link DraftFile} beside, and puts it in place in one step: the draft before it is there until then. */
public final class DraftWriter implements FileChanges, AutoCloseable {

	private static final int BUFFER_BYTES = 1 << 16;

	private final Disk disk;
	private final Path file;
	private final Path part;
	private final Disk.Sink sink;
	private final CountedOutput all;
	private final StringBuilder entries = new StringBuilder();

	private DraftWriter(Disk disk, Path file, Path part) throws IOException {
		this.disk = disk;
		this.file = file;
		this.part = part;
		this.sink = disk.write(part);
		this.all = new CountedOutput(sink);
	}

	/** @param file in a folder that is there */
	public static DraftWriter begin(Disk disk, Path file) throws IOException {
		DraftWriter writer = new DraftWriter(disk, file, file.resolveSibling(file.getFileName() + ".part"));
		try {
			writer.all.write(DraftFile.HEADER.getBytes(StandardCharsets.US_ASCII));
			return writer;
		} catch (IOException e) {
			writer.close();
			throw e;
		}
	}

	@Override
	public boolean put(String path, Content content) throws IOException {
		CountedOutput one = new CountedOutput(all);
		OutputStream out = new BufferedOutputStream(one, BUFFER_BYTES);
		content.writeTo(out);
		out.flush();
		entries.append("put\t").append(one.size).append('\t').append(Sha256.hex(one.digest)).append('\t')
				.append(Journal.escaped(path))
				.append('\n');
		return true;
	}

	@Override
	public boolean delete(String path) {
		entries.append("gone\t").append(Journal.escaped(path)).append('\n');
		return true;
	}

	/** What the draft so far comes to; two of the same bring the same. */
	public String summary() {
		MessageDigest digest = Sha256.begin();
		digest.update(entries.toString().getBytes(StandardCharsets.UTF_8));
		return Sha256.hex(digest);
	}

	/**
	 * Puts the draft in place; afterwards it survives a loss of power.
	 *
	 * @param person   who made the changes; may be empty
	 * @param replaces names of draft files whose changes are in this one
	 * @param base digest of the state that it was based on; null: not known any more
	 */
	public void finish(Path archive, LockOwner by, String person, Collection<String> replaces, String base)
			throws IOException {
		long manifest = all.size;
		StringBuilder others = new StringBuilder();
		replaces.forEach(name -> others.append("replaces\t").append(Journal.escaped(name)).append('\n'));
		all.write(("archive\t" + Journal.escaped(archive.toString()) + "\nby\t" + Journal.escaped(by.user()) + '\t'
				+ Journal.escaped(by.host()) + '\t' + by.pid() + '\t' + by.since() + "\nperson\t"
				+ Journal.escaped(person) + '\n' + others + "base\t"
				+ (base == null ? DraftFile.NO_BASE : base) + '\n' + entries).getBytes(StandardCharsets.UTF_8));
		all.flush();
		sink.write(DraftFile.end(manifest, all.digest).getBytes(StandardCharsets.US_ASCII));
		sink.sync();
		sink.close();
		disk.move(part, file);
		disk.syncFolder(file.getParent());
	}

	/** Removes what was not put in place. */
	@Override
	public void close() throws IOException {
		sink.close();
		if (Files.exists(part)) {
			disk.delete(part);
		}
	}
}
