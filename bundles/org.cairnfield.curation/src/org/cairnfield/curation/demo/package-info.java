/** The invented museums to try things out on. */
package org.cairnfield.curation.demo;
