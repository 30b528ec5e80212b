package org.cairnfield.exchange;

/**
 * A column as it was understood.
 *
 * @param number   from 1
 * @param name     the header's name, or one made from the number
 * @param role     what it is taken for
 * @param evidence why, in words
 */
public record Column(int number, String name, ColumnRole role, String evidence) {
}
