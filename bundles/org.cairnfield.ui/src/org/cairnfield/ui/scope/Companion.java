package org.cairnfield.ui.scope;

import java.util.Objects;

import org.cairnfield.model.edit.SampleRef;

/**
 * A sample that is shown with the selected ones to compare them with.
 *
 * @param label what it is, for a person, such as "carrier" or "nearest of C7"
 */
public record Companion(SampleRef sample, CompanionRole role, String label) {

	public Companion {
		Objects.requireNonNull(sample);
		Objects.requireNonNull(role);
		Objects.requireNonNull(label);
	}
}
