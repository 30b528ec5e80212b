package org.cairnfield.ui.plan.internal.scene;

/** A word at a sample. @param sample its index on the floor */
public record SampleLabel(int sample, String text) {
}
