package org.cairnfield.archive.history;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;

import org.cairnfield.archive.internal.resource.ArchiveReader;
import org.cairnfield.archive.internal.text.FileKind;
import org.cairnfield.archive.internal.text.PartReport;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.archive.internal.text.LedgerText;
import org.cairnfield.archive.internal.text.Migrations;
import org.cairnfield.archive.internal.text.SampleParts;
import org.cairnfield.archive.internal.text.SamplesText;
import org.cairnfield.archive.internal.text.SplitText;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.SampleTable;

/** Compares two states file by file. Files of the same bytes are not opened, and one survey is in memory at a time. */
final class StateComparison {

	private final StateFiles before;
	private final StateFiles after;
	private final Migrations migrations;
	private final List<SurveyDiff> surveys = new ArrayList<>();
	private final List<ObjectChange> objects = new ArrayList<>();
	private final List<String> notes = new ArrayList<>();

	private StateComparison(StateFiles before, StateFiles after, Migrations migrations) {
		this.before = before;
		this.after = after;
		this.migrations = migrations;
	}

	static ArchiveDiff of(StateFiles before, StateFiles after, Migrations migrations) throws IOException {
		StateComparison comparison = new StateComparison(before, after, migrations);
		comparison.compareStructure();
		comparison.compareSurveys();
		comparison.compareOthers();
		return new ArchiveDiff(comparison.surveys, comparison.objects, comparison.notes);
	}

	private boolean isSame(String path) {
		return Objects.equals(before.blobs().get(path), after.blobs().get(path));
	}

	private void compareStructure() throws IOException {
		if (!isSame(ArchiveLayout.STRUCTURE)) {
			objects.addAll(ObjectComparison.of(ArchiveReader.structure(before.source(), migrations, notes),
					ArchiveReader.structure(after.source(), migrations, notes)));
		}
	}

	private void compareSurveys() throws IOException {
		Map<String, SortedMap<String, String>> old = surveys(before);
		Map<String, SortedMap<String, String>> now = surveys(after);
		TreeSet<String> all = new TreeSet<>(old.keySet());
		all.addAll(now.keySet());
		for (String survey : all) {
			SortedMap<String, String> one = old.getOrDefault(survey, new TreeMap<>());
			SortedMap<String, String> other = now.getOrDefault(survey, new TreeMap<>());
			// a part that both have holds the same samples in both
			Predicate<String> same = name -> one.containsKey(name) && other.containsKey(name)
					&& before.blobs().get(one.get(name)).equals(after.blobs().get(other.get(name)));
			SurveyDiff diff = SampleComparison.of(survey, samples(before, one, same.negate()),
					samples(after, other, same.negate()));
			if (!diff.samples().isEmpty()) {
				surveys.add(diff);
			}
		}
	}

	/**
	 * Paths of the files of each survey, by what tells them apart within it. By id of the survey, since a survey keeps its id when
	 * it moves to another site.
	 */
	private static Map<String, SortedMap<String, String>> surveys(StateFiles state) {
		Map<String, SortedMap<String, String>> surveys = new TreeMap<>();
		for (String path : state.blobs().keySet()) {
			if (ArchiveLayout.kind(path) == FileKind.SAMPLES) {
				String whole = ArchiveLayout.whole(path);
				String id = whole.substring(whole.lastIndexOf('/') + 1, whole.lastIndexOf('.'));
				String name = path.equals(whole) ? "" : path.substring(path.lastIndexOf('/') + 1);
				surveys.computeIfAbsent(id, i -> new TreeMap<>()).put(name, path);
			}
		}
		return surveys;
	}

	private SampleTable samples(StateFiles state, SortedMap<String, String> files, Predicate<String> wanted)
			throws IOException {
		SamplesText.Reading reading = new SamplesText.Reading();
		PartReport last = null;
		for (Map.Entry<String, String> file : files.entrySet()) {
			if (wanted.test(file.getKey())) {
				last = new PartReport(file.getValue());
				try (InputStream in = new BufferedInputStream(state.source().open(file.getValue()))) {
					if (SampleParts.isList(in)) {
						SampleParts.list(in, last);
					} else {
						reading.add(in, migrations, last);
					}
				}
				note(last);
			}
		}
		if (last == null) {
			return SampleTable.EMPTY;
		}
		PartReport together = new PartReport(ArchiveLayout.whole(last.file()));
		SampleTable table = reading.table(together);
		note(together);
		return table;
	}

	private void note(PartReport report) {
		if (report.isDamaged()) {
			notes.add(Words.bind(Messages.StateComparison_isDamagedInOneOf, report.damages().get(0).file(),
					report.damages().get(0).reason()));
		}
	}

	private void compareOthers() throws IOException {
		TreeSet<String> paths = new TreeSet<>(before.blobs().keySet());
		paths.addAll(after.blobs().keySet());
		for (String path : paths) {
			FileKind kind = ArchiveLayout.kind(path);
			if (isSame(path) || kind == FileKind.STRUCTURE || kind == FileKind.SAMPLES
					|| path.equals(ArchiveLayout.ATTRIBUTES)) {
				continue;
			}
			if (kind == FileKind.SPLIT) {
				objects.addAll(SplitComparison.of(split(before, path), split(after, path)));
			} else if (kind == FileKind.LEDGER) {
				objects.addAll(ObjectComparison.of(ledger(before, path), ledger(after, path)));
			} else if (!ArchiveLayout.isManifest(path)) { // tells of a state, and is no part of the map
				String how = before.blobs().get(path) == null ? "added"
						: after.blobs().get(path) == null ? "removed" : "changed";
				notes.add(path + ' ' + how);
			}
		}
	}

	private Split split(StateFiles state, String path) throws IOException {
		if (!state.source().has(path)) {
			return null;
		}
		PartReport report = new PartReport(path);
		try (InputStream in = state.source().open(path)) {
			Split split = SplitText.read(in, migrations, report);
			note(report);
			return split;
		}
	}

	private Ledger ledger(StateFiles state, String path) throws IOException {
		if (!state.source().has(path)) {
			return null;
		}
		PartReport report = new PartReport(path);
		try (InputStream in = state.source().open(path)) {
			Ledger ledger = LedgerText.read(in, migrations, report);
			note(report);
			return ledger;
		}
	}
}
