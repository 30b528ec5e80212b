package org.cairnfield.archive.history;

import java.util.List;
import java.util.function.Predicate;

/**
 * What differs in the samples of one survey.
 *
 * @param readingsAdded   in samples that both states have
 * @param readingsRemoved likewise
 * @param readingsChanged likewise: heard in both, at another level
 */
public record SurveyDiff(String survey, List<SampleChange> samples, long readingsAdded, long readingsRemoved,
		long readingsChanged) {

	public SurveyDiff {
		samples = List.copyOf(samples);
	}

	/** How many samples changed in a way. */
	public int count(Predicate<SampleChange> way) {
		return (int) samples.stream().filter(way).count();
	}
}
