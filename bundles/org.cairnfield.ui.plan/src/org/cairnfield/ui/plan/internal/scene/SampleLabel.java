package org.cairnfield.ui.plan.internal.scene;

/** A word at a sample or a marked place. */
public record SampleLabel(double xMetres, double yMetres, String text) {
}
