package org.cairnfield.archive.internal.disk;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;

import org.cairnfield.archive.fault.LockOwner;
import org.cairnfield.model.values.Sha256;

/**
 * A draft on disk: the files that a save would have written, one after the other, then what they are. The last line seals
 * all bytes before it.
 *
 * <pre>
 * cairnfield draft 2
 * … bytes of the files …
 * archive  folder
 * by       user host process moment
 * person   name, or empty
 * replaces name of another draft file, whose changes are in this one; any number of such lines
 * base     digest of the state that the draft was based on, or -
 * put      size sha256 path
 * gone     path
 * end      offset-of-the-line-"archive" sha256-of-all-above
 * </pre>
 *
 * @param archive the folder that it was written for
 * @param by      the process that wrote it and, in place of the beginning of a lock, when
 * @param person  who made the changes; empty where that is not known, as in drafts of format 1
 * @param replaces names of draft files whose changes are in this one
 * @param base    null: not known any more
 * @param entries by path
 */
public record DraftFile(Path file, String archive, LockOwner by, String person, List<String> replaces, String base,
		SortedMap<String, Entry> entries) {

	static final String HEADER = "cairnfield draft 2\n";
	/** Without person and replaces, which are optional. */
	private static final String FORMER_HEADER = "cairnfield draft 1\n";
	static final String NO_BASE = "-";
	private static final int END_BYTES = "end\t".length() + 20 + 1 + 64 + 1;
	private static final long LONGEST_MANIFEST_BYTES = 64 << 20;

	/**
	 * A file in a draft.
	 *
	 * @param hash null: the file is gone
	 */
	public record Entry(long offset, long size, String hash) {

		/** Whether the draft is without the file. */
		public boolean isGone() {
			return hash == null;
		}
	}

	/** The draft is not as it was written. */
	public static final class BrokenException extends IOException {
		private static final long serialVersionUID = 1;

		BrokenException(String message) {
			super(message);
		}
	}

	public DraftFile {
		replaces = List.copyOf(replaces);
		entries = Collections.unmodifiableSortedMap(new TreeMap<>(entries));
	}

	static String end(long manifest, MessageDigest before) {
		return String.format(Locale.ROOT, "end\t%020d\t%s\n", manifest, Sha256.hex(before));
	}

	/**
	 * Reads what a draft says of itself, and all its bytes once, to see that they are those that were written.
	 *
	 * @throws BrokenException where they are not
	 */
	public static DraftFile read(Path file) throws IOException {
		long size = Files.size(file);
		long end = size - END_BYTES;
		if (end < HEADER.length()) {
			throw new BrokenException(Messages.DraftFile_itWasCutOffOr);
		}
		MessageDigest digest = Sha256.begin();
		try (InputStream in = new BufferedInputStream(Files.newInputStream(file), 1 << 16)) {
			String header = new String(in.readNBytes(HEADER.length()), StandardCharsets.ISO_8859_1);
			if (!header.equals(HEADER) && !header.equals(FORMER_HEADER)) {
				throw new BrokenException(header.startsWith("cairnfield draft ")
						? Messages.DraftFile_itWasWrittenByAnother
						: Messages.DraftFile_itDoesNotBeginAs);
			}
			digest.update(header.getBytes(StandardCharsets.ISO_8859_1));
			byte[] buffer = new byte[1 << 16];
			for (long left = end - HEADER.length(); left > 0;) {
				int n = in.read(buffer, 0, (int) Math.min(buffer.length, left));
				if (n < 0) {
					throw new BrokenException(Messages.DraftFile_itWasCutOff);
				}
				digest.update(buffer, 0, n);
				left -= n;
			}
			String last = new String(in.readNBytes(END_BYTES + 1), StandardCharsets.ISO_8859_1);
			if (!last.matches("end\t[0-9]{20}\t[0-9a-f]{64}\n")) {
				throw new BrokenException(Messages.DraftFile_itWasCutOffOr2);
			}
			long manifest = offset(last.substring(4, 24));
			if (!last.equals(end(manifest, digest)) || manifest < HEADER.length() || manifest > end
					|| end - manifest > LONGEST_MANIFEST_BYTES) {
				throw new BrokenException(Messages.DraftFile_itDoesNotMatchIts);
			}
			return parse(file, manifest, end);
		}
	}

	private static long offset(String digits) throws BrokenException {
		try {
			return Long.parseLong(digits);
		} catch (NumberFormatException e) {
			throw new BrokenException(Messages.DraftFile_itDoesNotMatchIts);
		}
	}

	private static DraftFile parse(Path file, long from, long to) throws IOException {
		byte[] text;
		try (InputStream in = Files.newInputStream(file)) {
			in.skipNBytes(from);
			text = in.readNBytes((int) (to - from));
		}
		String archive = null;
		String base = null;
		String person = "";
		List<String> replaces = new ArrayList<>();
		LockOwner by = null;
		SortedMap<String, Entry> entries = new TreeMap<>();
		long offset = HEADER.length();
		try {
			for (String line : new String(text, StandardCharsets.UTF_8).split("\n")) {
				String[] field = line.split("\t", -1);
				switch (field[0]) {
				case "archive" -> archive = Journal.unescaped(field[1]);
				case "by" -> by = new LockOwner(Journal.unescaped(field[1]), Journal.unescaped(field[2]),
						Long.parseLong(field[3]),
						Instant.parse(field[4]));
				case "person" -> person = Journal.unescaped(field[1]);
				case "replaces" -> replaces.add(Journal.unescaped(field[1]));
				case "base" -> base = field[1];
				case "put" -> {
					long size = Long.parseLong(field[1]);
					entries.put(Journal.unescaped(field[3]), new Entry(offset, size, field[2]));
					offset += size;
				}
				case "gone" -> entries.put(Journal.unescaped(field[1]), new Entry(0, 0, null));
				default -> throw new BrokenException(Messages.DraftFile_itHasALineThat);
				}
			}
		} catch (IllegalArgumentException | ArrayIndexOutOfBoundsException | DateTimeException e) {
			throw new BrokenException(Messages.DraftFile_itHasALineThat);
		}
		if (archive == null || by == null || base == null || offset != from
				|| !entries.keySet().stream().allMatch(Places::staysInside)) {
			throw new BrokenException(Messages.DraftFile_itDoesNotTellWhat);
		}
		return new DraftFile(file, archive, by, person, replaces, base.equals(NO_BASE) ? null : base, entries);
	}

	/**
	 * The content of a file.
	 *
	 * @throws BrokenException where it is no longer what was written
	 */
	public byte[] content(String path) throws IOException {
		Entry entry = entries.get(path);
		byte[] bytes = new byte[Math.toIntExact(entry.size)];
		try (RandomAccessFile in = new RandomAccessFile(file.toFile(), "r")) {
			in.seek(entry.offset);
			in.readFully(bytes);
		}
		MessageDigest digest = Sha256.begin();
		digest.update(bytes);
		if (!Sha256.hex(digest).equals(entry.hash)) {
			throw new BrokenException(Messages.DraftFile_itWasChangedWhileIt);
		}
		return bytes;
	}

	/** Whether files of these hashes are what the draft would make of them: it was saved. */
	public boolean isIn(SortedMap<String, String> hashes) {
		return entries.entrySet().stream().allMatch(e -> e.getValue().isGone() ? !hashes.containsKey(e.getKey())
				: e.getValue().hash.equals(hashes.get(e.getKey())));
	}
}
