package org.cairnfield.ui.scope;

import java.util.Objects;

import org.cairnfield.model.Floor;

/**
 * A place on a floor where no sample is, such as one where somebody would have a sample.
 *
 * @param label what it is, for a person
 */
public record MarkedPlace(Floor floor, double xMetres, double yMetres, String label) {

	public MarkedPlace {
		Objects.requireNonNull(floor);
		Objects.requireNonNull(label);
	}
}
