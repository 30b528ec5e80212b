package org.cairnfield.archive.internal.merge;

/**
 * One thing that two people have set to different values, for somebody to choose.
 *
 * @param where what it belongs to, such as {@code survey spring, sample S-12}
 * @param what  the thing itself, such as {@code position}
 * @param base  the value that both began with, as a text; null where there was none
 * @param mine  the one; null where it was taken away
 * @param theirs the other, likewise
 */
public record MergeConflict(String where, String what, String base, String mine, String theirs) {
}
