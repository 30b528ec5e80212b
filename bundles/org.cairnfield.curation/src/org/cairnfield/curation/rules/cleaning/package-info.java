/** The list of all cleaning rules. */
package org.cairnfield.curation.rules.cleaning;
