package org.cairnfield.curation.samples;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.model.values.SampleKey;

/** What the rules find about the samples of a list. */
public final class FindingMarks {

	/** Nothing found. */
	public static final FindingMarks NONE = new FindingMarks(Map.of());

	/**
	 * About one sample.
	 *
	 * @param count how many findings
	 * @param worst the most severe of them
	 * @param rules ids of the rules, with blanks between them
	 */
	public record Mark(int count, Severity worst, String rules) {

		Mark and(Mark other) {
			return new Mark(count + other.count, worst.compareTo(other.worst) <= 0 ? worst : other.worst,
					rules + ' ' + other.rules);
		}
	}

	private final Map<Integer, Mark> marks;

	private FindingMarks(Map<Integer, Mark> marks) {
		this.marks = marks;
	}

	/** Those of the findings that are about samples of the list, or about surveys that they are of. */
	public static FindingMarks of(SampleRows rows, List<Finding> findings) {
		Map<String, Integer> parts = rows.numbers();
		Map<Integer, Mark> marks = new HashMap<>();
		for (Finding finding : findings) {
			Mark mark = new Mark(1, finding.severity(), finding.rule());
			for (Subject.OfSample sample : finding.samples()) {
				mark(marks, index(rows, parts, sample.id()), mark);
			}
			for (Subject.OfSurvey survey : finding.wholeSurveys()) {
				Integer part = parts.get(survey.id());
				for (int row = 0; part != null && row < rows.parts().get(part).table().size(); row++) {
					if (rows.parts().get(part).table().isKept(row)) {
						mark(marks, rows.index(part, row), mark);
					}
				}
			}
		}
		return new FindingMarks(marks);
	}

	private static void mark(Map<Integer, Mark> marks, int index, Mark mark) {
		if (index >= 0) {
			marks.merge(index, mark, Mark::and);
		}
	}

	/** @param name {@code survey/sample} */
	private static int index(SampleRows rows, Map<String, Integer> parts, String name) {
		SampleKey key = SampleKey.parse(name);
		Integer part = parts.get(key.survey());
		int row = part == null ? -1 : rows.parts().get(part).table().row(key.sample());
		return row < 0 ? -1 : rows.index(part, row);
	}

	/** What is found about a sample, if anything. */
	public Optional<Mark> of(int index) {
		return Optional.ofNullable(marks.get(index));
	}
}
