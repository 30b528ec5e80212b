/**
 * Charts on SWT canvases. They know numbers, names and units, and nothing of what these are about. All measures follow
 * from the font of the control, colours from its foreground and background.
 */
package org.cairnfield.ui.charts;
