/** Colours that carry data, and the shapes that say the same. */
package org.cairnfield.ui.charts.colour;
