/** What has become of an archive: its save points, past states, and the difference of two states as radio maps. */
package org.cairnfield.archive.history;
