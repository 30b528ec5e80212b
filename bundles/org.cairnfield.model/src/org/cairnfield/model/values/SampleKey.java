package org.cairnfield.model.values;

/**
 * Names a sample within an archive, in files and findings. Text form: {@code survey/sample}; it is written and read here only.
 *
 * @param survey id of the survey
 * @param sample id of the sample in it
 */
public record SampleKey(String survey, String sample) implements Comparable<SampleKey> {

	/** No id of a survey has it. */
	private static final char SEPARATOR = '/';

	/** @throws IllegalArgumentException for an id that is none */
	public SampleKey {
		if (!Ids.isUsable(survey)) {
			throw new IllegalArgumentException("no id of a survey: '" + survey + "'");
		}
		SampleChecks.id(sample);
	}

	/** @throws IllegalArgumentException for a text that is no key */
	public static SampleKey parse(String text) {
		int slash = text.indexOf(SEPARATOR);
		if (slash < 0) {
			throw new IllegalArgumentException("a sample is named survey/sample: '" + text + "'");
		}
		return new SampleKey(text.substring(0, slash), text.substring(slash + 1));
	}

	/** The text form of a key whose ids are known to be ids, without making it: for tables of a million samples. */
	public static String text(String survey, String sample) {
		return survey + SEPARATOR + sample;
	}

	/** By survey, then by sample. */
	@Override
	public int compareTo(SampleKey other) {
		int order = survey.compareTo(other.survey);
		return order != 0 ? order : sample.compareTo(other.sample);
	}

	/** The text form. */
	@Override
	public String toString() {
		return text(survey, sample);
	}
}
