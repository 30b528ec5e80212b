/** Shapes in the plane of a floor. */
package org.cairnfield.core.geometry;
