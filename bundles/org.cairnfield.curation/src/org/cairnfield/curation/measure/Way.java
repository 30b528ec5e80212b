package org.cairnfield.curation.measure;

import java.util.Optional;

import org.cairnfield.core.measure.PositionErrors;
import org.cairnfield.core.stats.Bootstrap;
import org.cairnfield.core.stats.Interval;

/**
 * One way of matching, measured on test samples and set beside plain matching of the same ones.
 *
 * @param name            "plain", "plain-3w", "split", "split+approved", "released"; of an earlier release "release 1.0.0"
 * @param how             the same for a person
 * @param run             of all test samples
 * @param mean            95 % bootstrap interval of the mean error, metres
 * @param ratio           mean error to that of plain
 * @param ratioInterval   95 % bootstrap interval of that, both drawn on the same test samples; NaN where a sample got no place
 * @param comparisonShare fingerprints compared, of those that plain compares
 * @param bytes           that a device reads a query, mean; see {@link PackCost}
 * @param byteShare       of those that it would read in plain matching
 */
public record Way(String name, String how, TestRun run, Interval mean, double ratio, Interval ratioInterval,
		double comparisonShare,
		double bytes, double byteShare) {

	private static final String RELEASE = Messages.Way_release;
	private static final double CONFIDENCE = 0.95;
	/** Of all that is drawn. */
	private static final long SEED = 1;

	/**
	 * Sets a run beside plain matching.
	 *
	 * @param plain the same for plain matching; null where this is it
	 */
	public static Way of(String name, String how, TestRun run, double bytes, Way plain) {
		double[] errors = run.errors().errorsMetres();
		double[] of = plain == null ? errors : plain.errors().errorsMetres();
		Interval ratio = errors.length == of.length && errors.length > 0
				? Bootstrap.seeded(SEED).ratioOfMeans(errors, of)
				: new Interval(Double.NaN, Double.NaN, CONFIDENCE);
		return new Way(name, how, run, run.mean(SEED),
				plain == null ? 1 : run.errors().meanMetres() / plain.errors().meanMetres(), ratio,
				plain == null ? 1 : run.comparisons() / plain.comparisons(), bytes,
				plain == null ? 1 : bytes / plain.bytes);
	}

	/** What the way of an earlier release is called. */
	public static String ofRelease(String version) {
		return RELEASE + version;
	}

	/** The version of the earlier release that a way is of; empty for a name of another way. */
	public static Optional<String> release(String name) {
		return name.startsWith(RELEASE) ? Optional.of(name.substring(RELEASE.length())) : Optional.empty();
	}

	/** The same under another name. */
	public Way named(String other) {
		return new Way(other, how, run, mean, ratio, ratioInterval, comparisonShare, bytes, byteShare);
	}

	/** Errors of all test samples. */
	public PositionErrors errors() {
		return run.errors();
	}

	/** Fingerprints compared a query, centroids included, mean. */
	public double comparisons() {
		return run.comparisons();
	}
}
