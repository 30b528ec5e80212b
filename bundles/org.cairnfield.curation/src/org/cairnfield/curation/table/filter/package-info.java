/** The small language that filters a table of samples. */
package org.cairnfield.curation.table.filter;
