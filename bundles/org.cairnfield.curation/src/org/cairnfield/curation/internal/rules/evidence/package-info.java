/** What several rules need to know about a map, worked out once: order of recording, spots, neighbours, seasons. */
package org.cairnfield.curation.internal.rules.evidence;
