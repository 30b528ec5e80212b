/** The table of samples: as many as there are, sorted, filtered, edited. */
package org.cairnfield.ui.internal.samples;
