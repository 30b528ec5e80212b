package org.cairnfield.core.distance;

import java.util.Arrays;
import org.cairnfield.core.map.RadioMap;

/**
 * The plain form that everything sparse is tested against: one value per sample and access point, in the
 * published representations (Torres-Sospedra et al., Expert Systems with Applications 42, 2015, table 1), and
 * distances as their definitions say.
 */
public final class DenseForm {

	private final double[][] values;
	private final Distance distance;

	private DenseForm(double[][] values, Distance distance) {
		this.values = values;
		this.distance = distance;
	}

	public static DenseForm of(Signals signals) {
		RadioMap map = signals.map();
		int min = Integer.MAX_VALUE;
		for (int s = 0; s < map.size(); s++) {
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				min = Math.min(min, map.rssiDbm(k));
			}
		}
		return of(map, signals.representation().toString(), signals.distance(), min - 1);
	}

	/** @param unheardDbm the level that stands for "not heard", one below the lowest */
	public static DenseForm of(RadioMap map, String representation, Distance distance, int unheardDbm) {
		double[][] values = new double[map.size()][map.accessPointCount()];
		for (int s = 0; s < values.length; s++) {
			for (int a = 0; a < values[s].length; a++) {
				int rssi = map.rssiDbm(s, a, unheardDbm);
				values[s][a] = published(representation, rssi, unheardDbm);
			}
		}
		return new DenseForm(values, distance);
	}

	private static double published(String representation, double rssi, double unheard) {
		double positive = rssi - unheard;
		double zero = -unheard;
		return switch (representation) {
		case "positive" -> positive;
		case "normalised" -> positive / zero;
		case "exponential" -> Math.exp(positive / 24) / Math.exp(zero / 24); // not heard is not 0 here
		case "powed" -> Math.pow(positive, Math.E) / Math.pow(zero, Math.E);
		default -> throw new IllegalArgumentException(representation);
		};
	}

	public int size() {
		return values.length;
	}

	/** Values by sample and access point, not copied. */
	public double[][] values() {
		return values;
	}

	public double between(int a, int b) {
		return between(values[a], values[b]);
	}

	public double between(double[] a, double[] b) {
		double sum = 0;
		for (int i = 0; i < a.length; i++) {
			double difference = a[i] - b[i];
			sum += distance == Distance.CITY_BLOCK ? Math.abs(difference) : difference * difference;
		}
		return distance == Distance.CITY_BLOCK ? sum : Math.sqrt(sum);
	}

	/** All distances. */
	public double[][] matrix() {
		double[][] matrix = new double[size()][size()];
		for (int a = 0; a < size(); a++) {
			for (int b = 0; b < size(); b++) {
				matrix[a][b] = between(a, b);
			}
		}
		return matrix;
	}

	/** A distance between two that occur, for an ε on which no rounding can decide. */
	public double epsilonAt(double share) {
		double[] all = Arrays.stream(matrix()).flatMapToDouble(Arrays::stream).sorted().toArray();
		int i = (int) (share * (all.length - 1));
		int next = i;
		while (next < all.length - 1 && all[next] - all[i] < 1e-6) {
			next++;
		}
		return (all[i] + all[next]) / 2;
	}
}
