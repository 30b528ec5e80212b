package org.cairnfield.ui.plan.internal.model;

/** A place of an access point on the floor on show: where it seems to be, or where somebody knows it is. */
public interface ShownPlace {

	/** Id. */
	String accessPoint();

	/** In the frame of the floor. */
	double xMetres();

	/** In the frame of the floor. */
	double yMetres();
}
