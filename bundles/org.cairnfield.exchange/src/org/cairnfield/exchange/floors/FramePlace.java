package org.cairnfield.exchange.floors;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

import org.cairnfield.exchange.export.SiteFrame;
import org.cairnfield.exchange.export.SiteProjection;

/** Where on Earth the frame of a site would lie for the levels of a file to be where they should. */
public final class FramePlace {

	/** A tenth of a millimetre on the ground. */
	private static final double PER_DEGREE = 1e9;
	private static final double FARTHEST_NORTH_DEGREES = 89;

	private FramePlace() {
	}

	/**
	 * A frame whose y axis points north.
	 *
	 * @param middleMetres {x, y} in the frame where the middle of the levels is to be, or null: their south-western corner is its origin
	 * @throws IllegalArgumentException where the levels have no positions, lie at a pole, or far apart
	 */
	public static SiteFrame.Anchor of(List<MappedLevel> levels, double[] middleMetres) {
		List<double[][]> paths = levels.stream().flatMap(FramePlace::paths).toList();
		double[][] positions = paths.stream().flatMap(Arrays::stream).toArray(double[][]::new);
		if (positions.length == 0) {
			throw new IllegalArgumentException("the levels have no positions");
		}
		double[] first = positions[0];
		if (Math.abs(first[1]) > FARTHEST_NORTH_DEGREES) {
			throw new IllegalArgumentException("the levels lie at a pole");
		}
		EarthSystem.requireNear(first, paths.stream());
		// about the first position, so that a building across the 180th meridian is one building
		SiteProjection about = new SiteProjection(new SiteFrame.Anchor(first[1], first[0], 0));
		double[] box = { 0, 0, 0, 0 };
		for (double[] position : positions) {
			double[] at = about.metres(position[0], position[1]);
			box[0] = Math.min(box[0], at[0]);
			box[1] = Math.min(box[1], at[1]);
			box[2] = Math.max(box[2], at[0]);
			box[3] = Math.max(box[3], at[1]);
		}
		double east = middleMetres == null ? box[0] : (box[0] + box[2]) / 2 - middleMetres[0];
		double north = middleMetres == null ? box[1] : (box[1] + box[3]) / 2 - middleMetres[1];
		double[] origin = about.lonLat(east, north);
		return new SiteFrame.Anchor(rounded(origin[1]), rounded(origin[0]), 0);
	}

	private static Stream<double[][]> paths(MappedLevel level) {
		return level.extent().isEmpty() ? level.shapes().stream().flatMap(shape -> shape.paths().stream())
				: level.extent().stream().flatMap(List::stream);
	}

	private static double rounded(double degrees) {
		return Math.rint(degrees * PER_DEGREE) / PER_DEGREE;
	}
}
