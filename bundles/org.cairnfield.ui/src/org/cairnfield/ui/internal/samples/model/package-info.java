/** A table of samples, a million or so, without widgets: columns, their texts, sorting, picking, export. */
package org.cairnfield.ui.internal.samples.model;
