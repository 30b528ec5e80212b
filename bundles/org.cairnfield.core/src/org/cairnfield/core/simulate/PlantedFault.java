package org.cairnfield.core.simulate;

import java.util.List;
import java.util.Objects;

/**
 * One row of the ground truth: something planted on purpose. A fault of many samples has a row for each.
 *
 * @param survey      name of the survey it is in
 * @param sample      id of the sample, or empty where no single one is meant
 * @param accessPoint address, or empty where none is meant
 * @param detail      what is true instead, in words and numbers with units
 */
public record PlantedFault(FaultKind kind, String survey, String sample, String accessPoint, String detail) {

	/** Names of the columns of a table of faults. */
	public static final List<String> COLUMNS = List.of("kind", "survey", "sample", "access_point", "detail");

	public PlantedFault {
		Objects.requireNonNull(kind);
		Objects.requireNonNull(survey);
		Objects.requireNonNull(sample);
		Objects.requireNonNull(accessPoint);
		Objects.requireNonNull(detail);
	}

	/** The row, a text for each of {@link #COLUMNS}. */
	public List<String> fields() {
		return List.of(kind.code(), survey, sample, accessPoint, detail);
	}
}
