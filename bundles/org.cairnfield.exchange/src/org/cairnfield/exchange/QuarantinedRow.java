package org.cairnfield.exchange;

/**
 * A row that was not taken in.
 *
 * @param line   the physical line on which it begins, from 1, as a text editor counts
 * @param fault  the kind of reason
 * @param reason in words
 * @param record the row as it stands in the file, without its line end
 */
public record QuarantinedRow(long line, Fault fault, String reason, String record) {
}
