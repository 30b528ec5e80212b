package org.cairnfield.core.simulate;

import java.time.Instant;

/**
 * What a surveyor sets out to do: walk the floors of a site from the lowest up and record at every stop.
 *
 * @param name                 of the survey; with the seed it decides all its noise
 * @param season               surveys of one season meet access points in the same state
 * @param start                when the first sample is recorded
 * @param repeats              samples recorded at each stop, at least 1
 * @param secondsPerSample     how long one takes
 * @param metresPerSecond      walking speed between stops
 * @param placementSdMetres    how far from the noted place he really stands, standard deviation in x and in y
 */
public record SurveyPlan(String name, String season, Walk walk, SurveyDevice device, Instant start, int repeats,
		double secondsPerSample, double metresPerSecond, double placementSdMetres) {

	/** One sample a stop, 4 s each, at 1 m/s, a quarter of a metre off. */
	public static SurveyPlan of(String name, String season, Walk walk, SurveyDevice device, Instant start) {
		return new SurveyPlan(name, season, walk, device, start, 1, 4, 1, 0.25);
	}

	/** The same with several samples at each stop. */
	public SurveyPlan repeated(int times) {
		return new SurveyPlan(name, season, walk, device, start, times, secondsPerSample, metresPerSecond,
				placementSdMetres);
	}
}
