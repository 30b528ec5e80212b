package org.cairnfield.spark;

import java.io.Serializable;
import java.util.List;
import org.cairnfield.core.map.RadioMap;

/**
 * A survey as one task has read it.
 *
 * @param index       its place among the surveys
 * @param file        that it is from, for a person
 * @param name        what a survey of it is called
 * @param map         samples taken in, in the order of the file
 * @param ids         their names
 * @param quarantined rows that were not taken in
 * @param problem     why nothing was taken in; null where it was
 */
record SurveyPart(int index, String file, String name, RadioMap map, List<String> ids, List<BadRow> quarantined,
		long omitted, String problem)
		implements Serializable {

	/** A row that was not taken in. */
	record BadRow(long line, String reason, String record) implements Serializable {
	}

	/** Whether samples are only numbered, as intake does where a file has no usable names for them. */
	boolean isNumbered() {
		for (int i = 0; i < ids.size(); i++) {
			if (!ids.get(i).equals(Integer.toString(i + 1))) {
				return false;
			}
		}
		return true;
	}
}
