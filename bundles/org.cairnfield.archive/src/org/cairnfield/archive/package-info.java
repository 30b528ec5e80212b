/** Archives on disk: created, opened, saved, recorded in their history. */
package org.cairnfield.archive;
