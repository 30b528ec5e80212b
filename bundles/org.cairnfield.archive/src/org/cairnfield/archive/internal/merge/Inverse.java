package org.cairnfield.archive.internal.merge;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.internal.disk.FileSource;
import org.cairnfield.archive.internal.git.LineMerge;
import org.cairnfield.archive.internal.git.TreeFiles;
import org.cairnfield.archive.internal.resource.WholeSurveys;
import org.cairnfield.archive.internal.text.FileKind;
import org.cairnfield.archive.internal.text.PartReport;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.archive.internal.text.Migrations;
import org.cairnfield.archive.internal.text.RawRecords;
import org.cairnfield.archive.internal.text.XmlSeal;
import org.cairnfield.core.text.Words;

/**
 * What the files have to become for one change to be taken back: for each record, sample or other, that the change touched
 * and that nobody touched since, what it was before. Ledgers and comments are left alone, as they only grow; the structure comes
 * without them.
 */
public final class Inverse {

	private static final byte[] GONE = null;
	private static final Pattern GROWING = Pattern.compile("^ *<(?:ledgers|comments) [^\n]*/>\n", Pattern.MULTILINE);

	private final FileSource changed;
	private final FileSource before;
	private final FileSource now;

	private Inverse(TreeFiles changed, TreeFiles before, FileSource now) {
		this.changed = new WholeSurveys(changed);
		this.before = new WholeSurveys(before);
		this.now = new WholeSurveys(now);
	}

	/**
	 * @param before  files before the change
	 * @param changed files after it
	 * @param now     files as they are
	 * @return by path, the new content of each file that is to differ from now, the samples of a survey in one; null: the file goes
	 * @throws ArchiveException where a record that the change touched was touched again
	 */
	public static SortedMap<String, byte[]> of(TreeFiles before, TreeFiles changed, FileSource now) throws IOException {
		TreeSet<String> paths = new TreeSet<>();
		before.paths().forEach(paths::add);
		changed.paths().forEach(paths::add);
		paths.removeIf(path -> Objects.equals(before.blob(path), changed.blob(path))
				|| ArchiveLayout.kind(path) == FileKind.LEDGER);
		return new Inverse(changed, before, now).run(paths.stream().map(ArchiveLayout::whole).distinct().toList());
	}

	/** @param paths of what differs before and after the change */
	private SortedMap<String, byte[]> run(List<String> paths) throws IOException {
		SortedMap<String, byte[]> result = new TreeMap<>();
		for (String path : paths) {
			byte[] old = read(before, path);
			byte[] then = read(changed, path);
			byte[] current = read(now, path);
			if (ArchiveLayout.kind(path) == FileKind.STRUCTURE && old != GONE && then != GONE && current != GONE) {
				mergeStructure(path, document(old), document(then), document(current))
						.ifPresent(file -> result.put(path, file));
			} else if (!Arrays.equals(old, current)) {
				result.put(path, Arrays.equals(then, current) ? old : merge(path, old, then, current));
			}
		}
		return result;
	}

	private static byte[] read(FileSource files, String path) throws IOException {
		if (!files.has(path)) {
			return GONE;
		}
		try (InputStream in = files.open(path)) {
			return in.readAllBytes();
		}
	}

	private static byte[] merge(String path, byte[] old, byte[] then, byte[] current) throws IOException {
		FileKind kind = ArchiveLayout.kind(path);
		if (kind == null || old == GONE || then == GONE || current == GONE) {
			throw conflict(path, Messages.Inverse_asAWhole);
		}
		RawRecords base = RawRecords.of(kind, then);
		RawRecords ours = RawRecords.of(kind, current);
		RawRecords theirs = RawRecords.of(kind, old);
		return new RawRecords(kind, merge(path, base.head(), ours.head(), theirs.head()),
				merge(path, base.records(), ours.records(), theirs.records())).toBytes();
	}

	/** Empty where the change did not touch it, or is taken back already. */
	private static Optional<byte[]> mergeStructure(String path, byte[] old, byte[] then, byte[] current)
			throws IOException {
		if (Arrays.equals(old, then) || Arrays.equals(old, current)) {
			return Optional.empty();
		}
		byte[] merged = Arrays.equals(then, current) ? old : LineMerge.merge(then, current, old);
		if (merged == null) {
			throw conflict(path, Messages.Inverse_inTheSameLines);
		}
		return Optional.of(XmlSeal.sealed(merged));
	}

	/** Without comments and references to ledgers. */
	private static byte[] document(byte[] file) throws IOException {
		byte[] document = XmlSeal.open(file, Migrations.NONE, new PartReport(ArchiveLayout.STRUCTURE));
		if (document == null) {
			throw new ArchiveException(
					Words.bind(Messages.Inverse_theChangeCanNotBe, ArchiveLayout.STRUCTURE),
					Messages.Inverse_restoreAWholeStateIn);
		}
		return GROWING.matcher(new String(document, StandardCharsets.UTF_8)).replaceAll("")
				.getBytes(StandardCharsets.UTF_8);
	}

	private static Map<String, String> merge(String path, Map<String, String> base, Map<String, String> ours,
			Map<String, String> theirs) throws ArchiveException {
		Map<String, String> merged = new LinkedHashMap<>(ours);
		TreeSet<String> keys = new TreeSet<>(base.keySet());
		keys.addAll(theirs.keySet());
		for (String key : keys) {
			String then = base.get(key);
			String old = theirs.get(key);
			String current = ours.get(key);
			if (Objects.equals(then, old) || Objects.equals(current, old)) {
				continue;
			}
			if (!Objects.equals(then, current)) {
				throw conflict(path, Words.bind(Messages.Inverse_in, key.replace('\t', ' ')));
			}
			if (old == null) {
				merged.remove(key);
			} else {
				merged.put(key, old);
			}
		}
		return merged;
	}

	private static ArchiveException conflict(String path, String where) {
		return new ArchiveException(Words.bind(Messages.Inverse_theChangeCanNotBe2, path, where),
				Messages.Inverse_takeBackTheLaterChange);
	}
}
