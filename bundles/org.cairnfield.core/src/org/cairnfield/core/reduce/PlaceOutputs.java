package org.cairnfield.core.reduce;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.cairnfield.core.map.RadioMap;

/**
 * The places of samples as targets of a fit: x and y less the mean of their site (each site has a frame of its own), floor, and an
 * indicator column for each of several sites. Columns have mean 0. x, y and floor have variance 1; the variances of all indicators add
 * up to 1. A column that would not vary is left out.
 */
public final class PlaceOutputs {

	private PlaceOutputs() {
	}

	/** By sample, then column. */
	public static double[][] of(RadioMap map) {
		int sites = map.sites().size();
		double[] x = lessMean(map, map::x);
		double[] y = lessMean(map, map::y);
		List<double[]> columns = new ArrayList<>();
		addScaled(columns, List.of(x));
		addScaled(columns, List.of(y));
		addScaled(columns, List.of(column(map, map::floor)));
		List<double[]> ofSites = new ArrayList<>();
		for (int i = 0; i < sites; i++) {
			int site = i;
			ofSites.add(column(map, s -> map.site(s) == site ? 1 : 0));
		}
		addScaled(columns, ofSites);
		double[][] outputs = new double[map.size()][columns.size()];
		for (int c = 0; c < columns.size(); c++) {
			for (int s = 0; s < outputs.length; s++) {
				outputs[s][c] = columns.get(c)[s];
			}
		}
		return outputs;
	}

	private static double[] column(RadioMap map, IntToDoubleFunction value) {
		double[] column = new double[map.size()];
		Arrays.setAll(column, value::applyAsDouble);
		return column;
	}

	private static double[] lessMean(RadioMap map, IntToDoubleFunction coordinate) {
		double[] sum = new double[map.sites().size()];
		int[] count = new int[sum.length];
		for (int s = 0; s < map.size(); s++) {
			sum[map.site(s)] += coordinate.applyAsDouble(s);
			count[map.site(s)]++;
		}
		return column(map, s -> coordinate.applyAsDouble(s) - sum[map.site(s)] / count[map.site(s)]);
	}

	/** Adds columns less their means, scaled so that their variances add up to 1; none where nothing varies. */
	private static void addScaled(List<double[]> to, List<double[]> columns) {
		double squares = 0;
		for (double[] column : columns) {
			double mean = Arrays.stream(column).average().orElse(0);
			for (int s = 0; s < column.length; s++) {
				column[s] -= mean;
				squares += column[s] * column[s];
			}
		}
		for (double[] column : columns) {
			double scale = Math.sqrt(squares / column.length);
			double largest = Arrays.stream(column).map(Math::abs).max().orElse(0);
			if (largest > 1e-9) {
				Arrays.setAll(column, s -> column[s] / scale);
				to.add(column);
			}
		}
	}
}
