/** The small language that filters samples, and rows of other lists. */
package org.cairnfield.curation.filter;
