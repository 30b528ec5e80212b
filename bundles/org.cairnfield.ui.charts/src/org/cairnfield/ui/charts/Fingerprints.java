package org.cairnfield.ui.charts;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The readings of one to four samples: a level for each sample and access point. */
public final class Fingerprints {

	/** More cannot be compared side by side. */
	public static final int MOST_SAMPLES = 4;

	/** In which order access points are listed. */
	public enum Order {
		/** The strongest level first. */
		STRENGTH,
		/** Those heard by more than one sample first, then the others, each by strength. */
		SHARED_FIRST
	}

	private final List<String> samples;
	private final List<String> accessPoints;
	private final double[][] levelsDbm;

	/**
	 * Copies its arguments. Access points that nobody hears are left out.
	 *
	 * @param samples      one to four names
	 * @param accessPoints their labels
	 * @param levelsDbm    by sample, then access point; NaN for not heard
	 * @throws IllegalArgumentException where the shapes do not agree
	 */
	public Fingerprints(List<String> samples, List<String> accessPoints, double[][] levelsDbm) {
		if (samples.isEmpty() || samples.size() > MOST_SAMPLES || levelsDbm.length != samples.size()) {
			throw new IllegalArgumentException(samples.size() + " samples, levels of " + levelsDbm.length);
		}
		for (double[] levels : levelsDbm) {
			if (levels.length != accessPoints.size()) {
				throw new IllegalArgumentException(
						accessPoints.size() + " access points, but " + levels.length + " levels");
			}
		}
		int[] heard = IntStream.range(0, accessPoints.size())
				.filter(ap -> IntStream.range(0, levelsDbm.length).anyMatch(s -> !Double.isNaN(levelsDbm[s][ap])))
				.toArray();
		this.samples = List.copyOf(samples);
		this.accessPoints = IntStream.of(heard).mapToObj(accessPoints::get).toList();
		this.levelsDbm = new double[levelsDbm.length][];
		for (int s = 0; s < levelsDbm.length; s++) {
			double[] levels = levelsDbm[s];
			this.levelsDbm[s] = IntStream.of(heard).mapToDouble(ap -> levels[ap]).toArray();
		}
	}

	/** The same readings in another order; ties by label. */
	Fingerprints sorted(Order order) {
		Comparator<Integer> strongest = Comparator.comparingDouble(ap -> -strongestDbm(ap));
		Comparator<Integer> first = order == Order.SHARED_FIRST
				? Comparator.comparing((Integer ap) -> isHeardByOneOnly(ap))
				: Comparator.comparing(ap -> false);
		int[] places = IntStream.range(0, accessPoints.size()).boxed()
				.sorted(first.thenComparing(strongest).thenComparing(accessPoints::get)).mapToInt(ap -> ap).toArray();
		double[][] levels = new double[samples.size()][];
		for (int s = 0; s < levels.length; s++) {
			double[] own = levelsDbm[s];
			levels[s] = IntStream.of(places).mapToDouble(ap -> own[ap]).toArray();
		}
		return new Fingerprints(samples, IntStream.of(places).mapToObj(accessPoints::get).toList(), levels);
	}

	/** Names of the samples. */
	public List<String> samples() {
		return samples;
	}

	/** Labels of the access points that somebody hears. */
	public List<String> accessPoints() {
		return accessPoints;
	}

	/** NaN for not heard. */
	public double levelDbm(int sample, int accessPoint) {
		return levelsDbm[sample][accessPoint];
	}

	/** Whether there are several samples, but one alone hears it. */
	public boolean isHeardByOneOnly(int accessPoint) {
		return samples.size() > 1 && IntStream.range(0, samples.size())
				.filter(s -> !Double.isNaN(levelsDbm[s][accessPoint])).count() == 1;
	}

	/** The level of the sample that hears it best. */
	double strongestDbm(int accessPoint) {
		return IntStream.range(0, samples.size()).mapToDouble(s -> levelsDbm[s][accessPoint])
				.filter(level -> !Double.isNaN(level)).max().orElse(Double.NEGATIVE_INFINITY);
	}

	/** How many are heard by more than one. */
	int shared() {
		return (int) IntStream.range(0, accessPoints.size()).filter(ap -> !isHeardByOneOnly(ap)).count();
	}
}
