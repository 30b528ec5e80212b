/** What can be set by itself in an archive, as a text: for what several people have set to different values. */
package org.cairnfield.model.conflict;
