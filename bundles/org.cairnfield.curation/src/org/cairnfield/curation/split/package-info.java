/** Splitting a map: asking what it would give, making splits, keeping them in an archive. */
package org.cairnfield.curation.split;
