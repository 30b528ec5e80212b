/** What several people have set to different values: decided one by one, or as a table. */
package org.cairnfield.curation.conflict;
