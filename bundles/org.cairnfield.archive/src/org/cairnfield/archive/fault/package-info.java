/** What can be wrong with an archive, as values that say what happened, to what, and what to do. */
package org.cairnfield.archive.fault;
