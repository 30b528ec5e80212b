package org.cairnfield.archive.internal.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.values.SampleTable;

/**
 * The samples of a large survey lie in several files, so that a sample that changes has a small one written. Each part holds
 * samples that follow each other by id, in the form of {@link SamplesText}. Where a part begins depends on the ids alone: the
 * same samples give the same parts however they came about, and a sample more or less moves no more than a few cuts after it.
 * The file of the survey lists the names of the parts in order:
 *
 * <pre>
 * cairnfield samples 2
 * part
 * 0c1b5ae2f00d9a73
 * end  1  8c736521
 * </pre>
 */
public final class SampleParts {

	/** A survey of no more samples is one file. */
	public static final int LARGEST_WHOLE = 2_000;

	static final int VERSION = 2;

	private static final String COLUMN = "part";
	private static final int SHORTEST = 64;
	private static final int LONGEST = 256;
	/** One id in so many begins a part, unless it comes too early. */
	private static final int ONE_IN = 64;
	private static final int HEADER_BYTES = 64;
	/** More would be some ten million samples; what lists them was not written here, and is not to fill the memory. */
	private static final int MOST = 100_000;

	/**
	 * Some rows of a table.
	 *
	 * @param name of the file, without its end; follows from the first id
	 * @param to   the row after the last
	 */
	public record Part(String name, int from, int to) {

		/** Writes the file. */
		public void write(SampleTable table, OutputStream out) throws IOException {
			SamplesText.write(table, from, to, out);
		}
	}

	private SampleParts() {
	}

	/** The parts in order; none where the samples are to be in one file. */
	public static List<Part> of(SampleTable table) {
		if (table.size() <= LARGEST_WHOLE) {
			return List.of();
		}
		List<Part> parts = new ArrayList<>();
		int from = 0;
		String name = name(hash(table.id(0)));
		Set<String> names = new HashSet<>(Set.of(name));
		for (int row = 1; row < table.size(); row++) {
			long hash = hash(table.id(row));
			boolean cut = row - from >= LONGEST || row - from >= SHORTEST && hash % ONE_IN == 0;
			if (cut && names.add(name(hash))) { // where two hashes agree the part goes on
				parts.add(new Part(name, from, row));
				from = row;
				name = name(hash);
			}
		}
		parts.add(new Part(name, from, table.size()));
		return parts;
	}

	private static String name(long hash) {
		return String.format("%016x", hash);
	}

	/** Spreads ids evenly, also those that differ in the last digit only. Must never change: files are named by it. */
	private static long hash(String id) {
		long hash = 0x6a09e667f3bcc909L;
		for (int i = 0; i < id.length(); i++) {
			hash = (hash ^ id.charAt(i)) * 0x9e3779b97f4a7c15L;
			hash ^= hash >>> 29;
		}
		hash *= 0xbf58476d1ce4e5b9L;
		return hash ^ hash >>> 32;
	}

	/** Writes the list. */
	public static void writeList(List<Part> parts, OutputStream out) throws IOException {
		LineWriter line = new LineWriter(out, FileKind.SAMPLES, VERSION);
		line.text(COLUMN).finishLine();
		for (Part part : parts) {
			line.text(part.name()).end();
		}
		line.seal();
	}

	/** Whether a file of samples is such a list. @param in at its beginning, where it is afterwards too; supports marks */
	public static boolean isList(InputStream in) throws IOException {
		return version(in) == VERSION;
	}

	/** Whether a file of samples holds all of them itself; otherwise as {@link #isList}. */
	public static boolean isWhole(InputStream in) throws IOException {
		return version(in) == FileKind.VERSION;
	}

	private static int version(InputStream in) throws IOException {
		in.mark(HEADER_BYTES);
		String start = new String(in.readNBytes(HEADER_BYTES), StandardCharsets.UTF_8);
		in.reset();
		int end = start.indexOf('\n');
		return end < 0 ? -1 : FileKind.SAMPLES.versionIn(start.substring(0, end).strip());
	}

	/** The names in a list; what can not be read is reported and left out. */
	public static List<String> list(InputStream in, PartReport report) throws IOException {
		Set<String> names = new LinkedHashSet<>();
		boolean[] begun = { false };
		new RecordReader(FileKind.SAMPLES, VERSION, report).read(in, line -> {
			String text = line.whole();
			if (!begun[0]) {
				begun[0] = true;
				if (!text.equals(COLUMN)) {
					throw new Unreadable(Words.bind(Messages.SampleParts_doesNotNameTheColumn, COLUMN));
				}
				return false;
			}
			if (!text.matches("[0-9a-f]{16}")) {
				throw new Unreadable(Words.bind(Messages.SampleParts_noNameOfAPart, line.shown(0)));
			}
			if (names.size() == MOST) {
				throw new Unreadable(Messages.SampleParts_morePartsThanAnySurvey);
			}
			if (!names.add(text)) {
				throw new Unreadable(Words.bind(Messages.SampleParts_namesThePartTwice, text));
			}
			return true;
		});
		return List.copyOf(names);
	}
}
