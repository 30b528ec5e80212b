package org.cairnfield.report.internal.picture;

/**
 * What a method costs and errs, a point a map, and on average.
 *
 * @param times  match time to plain matching, above 0, one a map
 * @param errors mean error to plain matching, one a map
 * @param low    lower bound of the mean of the errors
 * @param high   upper bound
 */
public record MethodPoints(String method, double[] times, double[] errors, double meanTime, double meanError,
		double low, double high) {
}
