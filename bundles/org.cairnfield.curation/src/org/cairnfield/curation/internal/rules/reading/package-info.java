/** Rules about single levels: range, codes, saturation, what stays the same and what should. */
package org.cairnfield.curation.internal.rules.reading;
