package org.cairnfield.archive.internal.disk;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.List;
import org.cairnfield.model.values.Sha256;

/**
 * What a save of several files is about to do. Once the record is on disk the save has happened: whoever opens the archive
 * next finishes it. Before that it has not: what lies in the pending folder is thrown away.
 *
 * <pre>
 * cairnfield journal 1
 * put     sha256-of-new size sha256-of-old pending-name path
 * delete  sha256-of-old path
 * end     count sha256-of-the-lines-above
 * </pre>
 */
record Journal(List<Step> steps) {

	/** In place of the digest of a file that is not there. */
	static final String ABSENT = "-";

	/** Name of the record in the pending folder, until it is complete. */
	static final String PART = "journal";

	private static final String HEADER = "cairnfield journal 1";
	private static final int LARGEST_BYTES = 16 << 20;

	/**
	 * One file to be put or deleted.
	 *
	 * @param pending name in the pending folder; null: the file is deleted
	 * @param digest  SHA-256 of the new content
	 * @param before  SHA-256 of what it replaces, or {@link #ABSENT}
	 */
	record Step(String path, String pending, String digest, long size, String before) {

		boolean deletes() {
			return pending == null;
		}
	}

	/** The record is there, but is not as it was written. */
	static final class BrokenException extends IOException {
		private static final long serialVersionUID = 1;

		BrokenException(String message) {
			super(message);
		}
	}

	static Path file(Path root) throws IOException {
		return Places.privateFile(root, "journal");
	}

	/** The record on disk, null if there is none. */
	static Journal read(Path root) throws IOException {
		Path file = file(root);
		if (!Places.isFile(file)) {
			return null;
		}
		if (Files.size(file) > LARGEST_BYTES) {
			throw new BrokenException(Messages.Journal_theJournalIsLargerThan);
		}
		return parse(Files.readAllBytes(file));
	}

	/** Puts the record on disk; on return the save has happened. */
	void write(Disk disk, Path root) throws IOException {
		Path part = Places.pendingFile(root, PART);
		try (Disk.Sink out = disk.write(part)) {
			writeTo(out);
			out.sync();
		}
		disk.move(part, file(root));
		disk.syncFolder(Places.privateFolder(root));
	}

	private void writeTo(OutputStream out) throws IOException {
		StringBuilder text = new StringBuilder(HEADER).append('\n');
		for (Step step : steps) {
			if (step.deletes()) {
				text.append("delete\t").append(step.before()).append('\t').append(escaped(step.path())).append('\n');
			} else {
				text.append("put\t").append(step.digest()).append('\t').append(step.size()).append('\t')
						.append(step.before())
						.append('\t').append(step.pending()).append('\t').append(escaped(step.path())).append('\n');
			}
		}
		byte[] body = text.toString().getBytes(StandardCharsets.UTF_8);
		MessageDigest digest = Sha256.begin();
		digest.update(body);
		out.write(body);
		out.write(("end\t" + steps.size() + '\t' + Sha256.hex(digest) + '\n').getBytes(StandardCharsets.UTF_8));
	}

	/** A file name may hold what ends a field or a line. */
	static String escaped(String path) {
		return path.replace("%", "%25").replace("\t", "%09").replace("\n", "%0a");
	}

	static String unescaped(String path) {
		return path.replace("%0a", "\n").replace("%09", "\t").replace("%25", "%");
	}

	static Journal parse(byte[] bytes) throws BrokenException {
		String text;
		try {
			text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
		} catch (CharacterCodingException e) {
			throw new BrokenException(Messages.Journal_theJournalIsNotText);
		}
		int seal = text.lastIndexOf("end\t");
		if (!text.startsWith(HEADER + '\n') || seal < 0 || !text.endsWith("\n")) {
			throw new BrokenException(Messages.Journal_theJournalHasNoBeginning);
		}
		MessageDigest digest = Sha256.begin();
		digest.update(text.substring(0, seal).getBytes(StandardCharsets.UTF_8));
		List<Step> steps = new ArrayList<>();
		String[] lines = text.substring(0, seal).split("\n");
		try {
			for (int i = 1; i < lines.length; i++) {
				steps.add(step(lines[i].split("\t", -1)));
			}
		} catch (IllegalArgumentException e) {
			throw new BrokenException(Messages.Journal_theJournalHasALine);
		}
		if (!text.substring(seal).equals("end\t" + steps.size() + '\t' + Sha256.hex(digest) + '\n')) {
			throw new BrokenException(Messages.Journal_theJournalDoesNotMatch);
		}
		return new Journal(List.copyOf(steps));
	}

	private static Step step(String[] field) {
		if (field[0].equals("put") && field.length == 6 && field[4].matches("[0-9]+")) {
			return new Step(unescaped(field[5]), field[4], field[1], Long.parseLong(field[2]), field[3]);
		}
		if (field[0].equals("delete") && field.length == 3) {
			return new Step(unescaped(field[2]), null, null, 0, field[1]);
		}
		throw new IllegalArgumentException(field[0]);
	}
}
