/** How the map of a site has aged: its surveys in order of time, and what changed before each. */
package org.cairnfield.curation.timeline;
