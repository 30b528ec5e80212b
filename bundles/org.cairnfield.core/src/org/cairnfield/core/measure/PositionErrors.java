package org.cairnfield.core.measure;

import java.io.Serializable;
import java.util.Arrays;
import org.cairnfield.core.stats.Percentile;
import org.cairnfield.core.stats.Summary;

/**
 * What errors a set of position estimates has, with the quantities of clause 8 of ISO/IEC 18305:2016 in
 * their usual form. The error vector is estimate - truth = (dx, dy) and h its length, both in metres. All
 * percentiles, CE50 and CE95 among them, follow {@link Percentile#RULE}; with few points the rule decides
 * more than the data, so report n.
 *
 * <p>Figures of horizontal error are NaN where no estimate enters them. RMSE² = |bias|² + var dx + var dy.
 */
public final class PositionErrors implements Serializable {

	private static final long serialVersionUID = 1;

	private final Horizontal horizontal;
	private final int points;
	private final int located;
	private final int floorHits;
	private final int siteHits;
	private final int placeHits;
	private final double[] errorsMetres;
	private final Summary summary;
	private final double[] percentiles;
	private final double biasX;
	private final double biasY;
	private final double varianceX;
	private final double varianceY;
	private final double covarianceXy;

	/** As the other, with {@link Horizontal#ALL}. */
	public static PositionErrors of(Positions estimates, Positions truth) {
		return new PositionErrors(estimates, truth, Horizontal.ALL);
	}

	/**
	 * @param truth as many as there are estimates, in the same order, all known
	 * @throws IllegalArgumentException where the sizes differ or a true position is unknown
	 */
	public static PositionErrors of(Positions estimates, Positions truth, Horizontal horizontal) {
		return new PositionErrors(estimates, truth, horizontal);
	}

	private PositionErrors(Positions estimates, Positions truth, Horizontal horizontal) {
		this.horizontal = horizontal;
		this.points = truth.size();
		if (estimates.size() != points) {
			throw new IllegalArgumentException(estimates.size() + " estimates of " + points + " true positions");
		}
		double[] dx = new double[points];
		double[] dy = new double[points];
		int used = 0;
		int known = 0;
		int floors = 0;
		int sites = 0;
		int places = 0;
		for (int i = 0; i < points; i++) {
			if (!truth.isKnown(i)) {
				throw new IllegalArgumentException("true position " + i + " is unknown");
			}
			if (!estimates.isKnown(i)) {
				continue;
			}
			known++;
			boolean rightFloor = estimates.floor(i) == truth.floor(i);
			boolean rightSite = estimates.site(i) == truth.site(i);
			floors += rightFloor ? 1 : 0;
			sites += rightSite ? 1 : 0;
			places += rightFloor && rightSite ? 1 : 0;
			if (enters(horizontal, rightSite, rightFloor)) {
				dx[used] = estimates.x(i) - truth.x(i);
				dy[used] = estimates.y(i) - truth.y(i);
				used++;
			}
		}
		this.located = known;
		this.floorHits = floors;
		this.siteHits = sites;
		this.placeHits = places;
		dx = Arrays.copyOf(dx, used);
		dy = Arrays.copyOf(dy, used);
		this.errorsMetres = new double[used];
		for (int i = 0; i < used; i++) {
			errorsMetres[i] = Math.hypot(dx[i], dy[i]);
		}
		this.summary = Summary.of(errorsMetres);
		this.percentiles = Percentile.of(Percentile.RULE, errorsMetres, 50, 75, 90, 95);
		this.biasX = Summary.of(dx).mean();
		this.biasY = Summary.of(dy).mean();
		this.varianceX = covariance(dx, biasX, dx, biasX);
		this.varianceY = covariance(dy, biasY, dy, biasY);
		this.covarianceXy = covariance(dx, biasX, dy, biasY);
	}

	private static boolean enters(Horizontal horizontal, boolean rightSite, boolean rightFloor) {
		return switch (horizontal) {
		case ALL -> true;
		case RIGHT_SITE -> rightSite;
		case RIGHT_FLOOR -> rightSite && rightFloor;
		};
	}

	private static double covariance(double[] a, double meanA, double[] b, double meanB) {
		double sum = 0;
		for (int i = 0; i < a.length; i++) {
			sum += (a[i] - meanA) * (b[i] - meanB);
		}
		return sum / a.length;
	}

	/** Which estimates the horizontal figures are about. */
	public Horizontal horizontal() {
		return horizontal;
	}

	/** How many positions were asked for. */
	public int points() {
		return points;
	}

	/** How many of them got an estimate. */
	public int located() {
		return located;
	}

	/** How many estimates the horizontal figures are about. */
	public int n() {
		return errorsMetres.length;
	}

	/** Share of the points that got an estimate; NaN for no points. */
	public double coverage() {
		return (double) located / points;
	}

	/** Share of the estimates with the right level, at whatever site; NaN for none. */
	public double floorHitRate() {
		return (double) floorHits / located;
	}

	/** Share of the estimates with the right site; NaN for none. */
	public double siteHitRate() {
		return (double) siteHits / located;
	}

	/** Share of the estimates on the right floor of the right site; NaN for none. */
	public double siteAndFloorHitRate() {
		return (double) placeHits / located;
	}

	/** Estimates with the right level, to make an interval of {@link #floorHitRate} from. */
	public int floorHits() {
		return floorHits;
	}

	/** Estimates with the right site. */
	public int siteHits() {
		return siteHits;
	}

	/** Estimates on the right floor of the right site. */
	public int siteAndFloorHits() {
		return placeHits;
	}

	/** h of each estimate that enters, in the order given; a copy. */
	public double[] errorsMetres() {
		return errorsMetres.clone();
	}

	/** Mean of h. */
	public double meanMetres() {
		return summary.mean();
	}

	/** Standard deviation of h, divisor n - 1; NaN for fewer than two. */
	public double sdMetres() {
		return summary.sd();
	}

	/** Largest h. */
	public double maxMetres() {
		return summary.max();
	}

	/** Root of the mean of h². */
	public double rmseMetres() {
		double sum = 0;
		for (double h : errorsMetres) {
			sum += h * h;
		}
		return Math.sqrt(sum / errorsMetres.length);
	}

	/** Median of h; the same figure as {@link #ce50Metres}. */
	public double medianMetres() {
		return percentiles[0];
	}

	/** 75th percentile of h. */
	public double p75Metres() {
		return percentiles[1];
	}

	/** 90th percentile of h. */
	public double p90Metres() {
		return percentiles[2];
	}

	/** 95th percentile of h; the same figure as {@link #ce95Metres}. */
	public double p95Metres() {
		return percentiles[3];
	}

	/** Circular error probable: the radius that holds half of the errors. */
	public double ce50Metres() {
		return percentiles[0];
	}

	/** The radius that holds 95 % of the errors. */
	public double ce95Metres() {
		return percentiles[3];
	}

	/** Mean of dx. */
	public double biasXMetres() {
		return biasX;
	}

	/** Mean of dy. */
	public double biasYMetres() {
		return biasY;
	}

	/** Length of the mean error vector. */
	public double biasMetres() {
		return Math.hypot(biasX, biasY);
	}

	/** Variance of dx in m², divisor n. */
	public double varianceXSquareMetres() {
		return varianceX;
	}

	/** Variance of dy in m², divisor n. */
	public double varianceYSquareMetres() {
		return varianceY;
	}

	/** Covariance of dx and dy in m², divisor n. */
	public double covarianceXySquareMetres() {
		return covarianceXy;
	}
}
