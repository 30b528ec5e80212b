package org.cairnfield.ui.plan;

import java.util.Optional;

import org.cairnfield.model.edit.SampleRef;
import org.eclipse.swt.graphics.Point;

/** Where the plan shows things; for whoever points at them, such as tests. */
public interface PlanGeometry {

	/** Key of the data of a plan's canvas under which its geometry is found, also where two plans are next to each other. */
	String GEOMETRY = "org.cairnfield.geometry";

	/** Where a sample is on the canvas, in its points, inside the visible part or not; empty where it is on another floor. */
	Optional<Point> toCanvas(SampleRef sample);

	/** Likewise, on the display. */
	Optional<Point> toDisplay(SampleRef sample);

	/** Where a place of the floor on show is on the display, in the points of the display. */
	Point toDisplay(double xMetres, double yMetres);

	/** Whether nothing waits to be drawn. */
	boolean isDrawn();
}
