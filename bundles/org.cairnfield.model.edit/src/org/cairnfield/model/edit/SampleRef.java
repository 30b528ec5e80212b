package org.cairnfield.model.edit;

import java.util.Objects;

import org.cairnfield.model.Survey;
import org.cairnfield.model.values.Sample;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.SampleTable;

/**
 * A sample as selections and commands name it. Edits leave rows as they are, so it stays valid until the survey gets a
 * table with other samples; to outlive that, or a file, take the {@link #key}.
 *
 * @param row in the survey's table
 */
public record SampleRef(Survey survey, int row) {

	public SampleRef {
		Objects.requireNonNull(survey);
	}

	/** By key, or null where the survey has no such sample. */
	public static SampleRef of(Survey survey, String sampleId) {
		int row = survey.table().row(sampleId);
		return row < 0 ? null : new SampleRef(survey, row);
	}

	/** Its name across restarts. */
	public SampleKey key() {
		return new SampleKey(survey.getId(), table().id(row));
	}

	/** Its present values. */
	public Sample sample() {
		return table().sample(row);
	}

	private SampleTable table() {
		return survey.table();
	}
}
