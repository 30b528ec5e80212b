package org.cairnfield.curation.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.testkit.SmallTables;
import org.junit.jupiter.api.Test;

class FindingMarksTest {

	private static final Subject SPRING = new Subject.OfSurvey("sh-spring");

	private final SampleRows rows = SmallTables.five().rows();

	private static Finding about(List<Subject> subjects, List<Subject> related) {
		return new Finding("repeated-scan", Severity.WARNING, "…", subjects, related, List.of(), Optional.empty());
	}

	private String marked(Finding finding) {
		FindingMarks marks = FindingMarks.of(rows, List.of(finding));
		return IntStream.range(0, rows.size()).filter(i -> marks.of(i).isPresent())
				.mapToObj(i -> rows.table(i).id(rows.row(i)))
				.collect(Collectors.joining(" "));
	}

	@Test
	void marksTheSamplesThatAFindingAboutASurveyRestsOn() {
		assertEquals("SH-A3", marked(about(List.of(SPRING), List.of(new Subject.OfSample("sh-spring/SH-A3", 1, 1)))));
	}

	@Test
	void marksAllThatAreKeptWhereAFindingIsAboutAWholeSurvey() {
		assertEquals("SH-A1 SH-A3", marked(about(List.of(SPRING), List.of())), "SH-A2 is set aside");
	}

	@Test
	void doesNotMarkWhatASampleWasComparedWith() {
		assertEquals("SH-A1", marked(about(List.of(SPRING, new Subject.OfSample("sh-spring/SH-A1", 1, 1)),
				List.of(new Subject.OfSample("sh-spring/SH-A3", 2, 2)))));
	}
}
