/**
 * The text formats of an archive: one record a line, tabs between fields, UTF-8, lines ended by LF. Each file begins with a
 * line that tells what it is and in which version, and ends with a seal, so that a cut or changed file is noticed.
 */
package org.cairnfield.archive.internal.text;
