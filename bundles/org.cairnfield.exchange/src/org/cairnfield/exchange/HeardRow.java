package org.cairnfield.exchange;

/**
 * A row that is a sample.
 *
 * @param line        on which it begins
 * @param accessPoint numbers of access points, as the reader counts them
 * @param rssiDbm     their levels
 */
record HeardRow(long line, RowPlace place, int[] accessPoint, int[] rssiDbm) {
}
