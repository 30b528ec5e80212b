/** From numbers to places along an axis, and to text. */
package org.cairnfield.ui.charts.scale;
