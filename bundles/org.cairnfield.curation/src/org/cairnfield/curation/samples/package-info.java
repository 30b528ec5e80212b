/** The samples of a scope, with what is known of them. */
package org.cairnfield.curation.samples;
