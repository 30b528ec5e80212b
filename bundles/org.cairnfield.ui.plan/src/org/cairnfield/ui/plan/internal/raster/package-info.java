/** Draws samples and plan images into arrays of pixels. Knows no widgets. */
package org.cairnfield.ui.plan.internal.raster;
