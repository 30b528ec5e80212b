/** A table of samples, a million or so: its columns, their texts, sorted and filtered beside whoever looks at it. */
package org.cairnfield.curation.table;
