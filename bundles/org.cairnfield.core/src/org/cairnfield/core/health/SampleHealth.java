package org.cairnfield.core.health;

import java.io.Serializable;

import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.task.Workers;

/**
 * What speaks for and against every sample of a map, each sample judged by the others. Two questions are kept
 * apart. Is its <em>place</em> right: do the samples that hear what it hears stand where it is said to stand?
 * Are its <em>readings</em> right: do the samples that stand around it hear what it hears?
 *
 * <p>Columns by sample, doubles; NaN where there was nothing to compare with (a floor's only sample, say). The
 * scores at the end are for ranking, higher is worse; they combine and never replace the figures.
 *
 * <p>Cost: one distance row in signal space a sample, through the lists of what it heard, and one look-up in a
 * grid a floor. Results do not depend on the workers.
 */
public final class SampleHealth implements Serializable {

	/** How many neighbours in signal space vote on place and floor. */
	public static final int SIGNAL_NEIGHBOURS = 5;
	/** How many samples around, by place on the floor, readings are compared with. */
	public static final int PLACE_NEIGHBOURS = 5;

	private static final long serialVersionUID = 1;

	private final HealthColumns columns;
	private final HealthScores scores;

	private SampleHealth(HealthColumns columns) {
		this.columns = columns;
		this.scores = new HealthScores(columns);
	}

	/**
	 * Judges all samples of a map by city-block distance of positive values.
	 *
	 * @throws java.util.concurrent.CancellationException when the caller has cancelled
	 */
	public static SampleHealth of(RadioMap map, Workers workers) {
		HealthColumns columns = new HealthColumns(map.size());
		Neighbours neighbours = new Neighbours(Signals.of(map));
		PlaceIndex places = new PlaceIndex(map);
		DeviceOffsets offsets = DeviceOffsets.of(map, places);
		workers.progress().begin(Messages.SampleHealth_judgingSamples, map.size());
		workers.forRanges(map.size(), () -> {
			SampleProbe probe = new SampleProbe(neighbours, places, offsets, columns);
			return (from, to) -> {
				for (int s = from; s < to; s++) {
					probe.judge(s);
				}
			};
		});
		return new SampleHealth(columns);
	}

	/** How many samples were judged. */
	public int size() {
		return columns.nearestErrorMetres.length;
	}

	/**
	 * Metres from where the sample is said to be to where its nearest in signal space is, both in the site's
	 * plane (frames of floors taken as aligned); positive infinity where that one is at another site.
	 */
	public double nearestErrorMetres(int sample) {
		return columns.nearestErrorMetres[sample];
	}

	/** The median of that over the 5 nearest in signal space, in metres. */
	public double medianErrorMetres(int sample) {
		return columns.medianErrorMetres[sample];
	}

	/** Share, 0 … 1, of the 5 nearest in signal space that are on another floor or at another site. */
	public double floorDisagreement(int sample) {
		return columns.floorDisagreement[sample];
	}

	/** Share, 0 … 1, of the 5 nearest in signal space that are at another site. */
	public double siteDisagreement(int sample) {
		return columns.siteDisagreement[sample];
	}

	/**
	 * Jaccard overlap, 0 … 1, of what it heard with what a sample around it heard: the median over the 5
	 * nearest in place on its floor. Two that heard nothing overlap fully.
	 */
	public double overlap(int sample) {
		return columns.overlap[sample];
	}

	/**
	 * How many dB weaker than the samples around it, on average over access points both heard: the median over
	 * the 5 nearest in place. Devices' offsets, as far as the map shows them, are taken out; NaN where nothing
	 * was heard by both.
	 */
	public double levelDeficitDb(int sample) {
		return columns.levelDeficitDb[sample];
	}

	/**
	 * How unevenly its levels differ from those of the samples around it, in dB: standard deviation over access
	 * points both heard (three at least), the median over the 5 nearest in place. Levels that belong to other
	 * access points show here and not in the deficit.
	 */
	public double levelScatterDb(int sample) {
		return columns.levelScatterDb[sample];
	}

	/** City-block distance to the nearest in signal space: dB summed over access points. */
	public double nearestDistance(int sample) {
		return columns.nearestDistance[sample];
	}

	/** Metres to the farthest of the samples around it that readings were compared with. */
	public double aroundWithinMetres(int sample) {
		return columns.aroundWithinMetres[sample];
	}

	/**
	 * Rank score, 0 … 1, of doubt in its place: by the median error, 5 m more for every one of the 5 nearest that
	 * is on another floor.
	 */
	public double placeScore(int sample) {
		return scores.place[sample];
	}

	/**
	 * Rank score, 0 … 1, of doubt in its readings: the largest of the ranks of lack of overlap, level deficit and
	 * level scatter.
	 */
	public double readingsScore(int sample) {
		return scores.readings[sample];
	}

	/** The larger of the two: what to look at first. */
	public double score(int sample) {
		return Math.max(scores.place[sample], scores.readings[sample]);
	}
}
