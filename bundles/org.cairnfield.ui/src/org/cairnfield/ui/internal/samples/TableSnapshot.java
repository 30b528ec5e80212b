package org.cairnfield.ui.internal.samples;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.table.ClusterMarks;
import org.cairnfield.curation.table.FindingMarks;
import org.cairnfield.curation.table.SampleContent;
import org.cairnfield.curation.table.SampleRows;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.values.Labels;
import org.cairnfield.ui.scope.ScopeSamples;
import org.cairnfield.ui.session.ArchiveSession;

/**
 * The samples of the scope as they are now: gathered from the model on the user interface thread, made into the content of a
 * table on any.
 */
final class TableSnapshot {

	private record Segment(Survey survey, SampleRows.Part part, int from, int until) {
	}

	private final ScopeSamples samples;
	private final List<Segment> segments = new ArrayList<>();
	private final List<Finding> findings;
	private final Labels labels;
	private final Map<String, String> addresses = new HashMap<>();

	/** To be made on the user interface thread. */
	TableSnapshot(ArchiveSession session) {
		samples = ScopeSamples.of(session.archive(), session.selection().scope());
		for (int from = 0; from < samples.size();) {
			int until = endOfSurvey(from);
			Survey survey = samples.survey(from);
			segments.add(new Segment(survey, new SampleRows.Part(survey.getId(), ModelText.name(survey.getSite()),
					survey.getDevice() == null ? "" : ModelText.name(survey.getDevice()), samples.table(from)), from, until));
			from = until;
		}
		findings = session.findings().open();
		List<Split> splits = session.archive().getSplits();
		Split newest = splits.isEmpty() ? null : splits.get(splits.size() - 1);
		labels = newest == null || newest.getLabels() == null ? Labels.NONE : newest.getLabels();
		for (AccessPoint accessPoint : session.archive().getAccessPoints()) {
			addresses.put(accessPoint.getId(), ModelText.address(accessPoint));
		}
	}

	/** Surveys follow one after the other. */
	private int endOfSurvey(int from) {
		int low = from + 1;
		int high = samples.size();
		while (low < high) {
			int middle = (low + high) >>> 1;
			if (samples.survey(middle) == samples.survey(from)) {
				low = middle + 1;
			} else {
				high = middle;
			}
		}
		return low;
	}

	/** The samples; their indices are those of the content. */
	ScopeSamples samples() {
		return samples;
	}

	/** Whether an index means the same sample in both. Rows outlive edits, but not a survey that is taken away. */
	boolean isOfSameRows(TableSnapshot other) {
		if (samples.size() != other.samples.size() || segments.size() != other.segments.size()) {
			return false;
		}
		for (int s = 0; s < segments.size(); s++) {
			Segment mine = segments.get(s);
			Segment its = other.segments.get(s);
			if (mine.survey() != its.survey() || mine.from() != its.from() || mine.part().table().size() != its.part().table().size()) {
				return false;
			}
		}
		for (int i = 0; i < samples.size(); i++) {
			if (samples.row(i) != other.samples.row(i)) {
				return false;
			}
		}
		return true;
	}

	/** On any thread. */
	SampleContent content() {
		SampleRows.Builder builder = SampleRows.builder();
		for (Segment segment : segments) {
			builder.part(segment.part());
			for (int i = segment.from(); i < segment.until(); i++) {
				builder.row(samples.row(i));
			}
		}
		SampleRows rows = builder.done();
		return new SampleContent(rows, FindingMarks.of(rows, findings), ClusterMarks.of(rows, labels), Map.copyOf(addresses));
	}

	/** Numbers of the surveys in the content. */
	Map<Survey, Integer> surveys() {
		Map<Survey, Integer> numbers = new HashMap<>();
		for (Segment segment : segments) {
			numbers.put(segment.survey(), numbers.size());
		}
		return numbers;
	}
}
