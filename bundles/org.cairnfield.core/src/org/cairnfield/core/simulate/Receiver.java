package org.cairnfield.core.simulate;

import java.util.Arrays;

/** What a device hears at a stop: the mean level, moved by season, device, stance and noise, then cut to size. */
final class Receiver {

	private final Campus campus;
	private final RadioEnvironment environment;
	private final LevelModel levels;
	private final SurveyPlan plan;
	private final long sampleKey;
	/** Offset of every access point this season, dB. */
	private final double[] seasonDb;
	private final int[] heard;
	private final byte[] rssi;

	Receiver(Campus campus, RadioEnvironment environment, LevelModel levels, SurveyPlan plan, long seed) {
		this(campus, environment, levels, plan, Streams.key(Streams.key(seed, "samples"), plan.name()),
				new double[levels.accessPointCount()]);
		long season = Streams.key(Streams.key(seed, "season"), plan.season());
		for (int i = 0; i < seasonDb.length; i++) {
			long key = Streams.key(season, campus.accessPoints().get(i).address().value());
			seasonDb[i] = environment.seasonSdDb() * Streams.gaussian(key);
		}
	}

	private Receiver(Campus campus, RadioEnvironment environment, LevelModel levels, SurveyPlan plan, long sampleKey,
			double[] seasonDb) {
		this.campus = campus;
		this.environment = environment;
		this.levels = levels;
		this.plan = plan;
		this.sampleKey = sampleKey;
		this.seasonDb = seasonDb;
		heard = new int[levels.accessPointCount()];
		rssi = new byte[levels.accessPointCount()];
	}

	/** The same with scratch space of its own. */
	Receiver forOneThread() {
		return new Receiver(campus, environment, levels, plan, sampleKey, seasonDb);
	}

	Surveyor.Recorded record(int sample, Stops stops) {
		SurveyDevice device = plan.device();
		long key = Streams.key(sampleKey, sample);
		double trueX = stops.x(sample) + plan.placementSdMetres() * Streams.gaussian(Streams.key(key, "x"));
		double trueY = stops.y(sample) + plan.placementSdMetres() * Streams.gaussian(Streams.key(key, "y"));
		double stanceDb = environment.sampleNoiseSdDb() * Streams.gaussian(Streams.key(key, "stance"));
		long noiseKey = Streams.key(key, "noise");
		int count = 0;
		for (int i = 0; i < levels.accessPointCount(); i++) {
			double mean = levels.meanDbm(i, stops.site(sample), stops.floorIndex(sample), trueX, trueY);
			if (mean == Double.NEGATIVE_INFINITY) {
				continue;
			}
			long reading = Streams.key(noiseKey, campus.accessPoints().get(i).address().value());
			double level = mean + seasonDb[i] + stanceDb + device.offsetDb()
					+ environment.scanNoiseSdDb() * Streams.gaussian(reading);
			if (Streams.uniform(Streams.key(reading, "heard")) >= device.chanceOfHearing(level)) {
				continue;
			}
			long whole = Math.round(level);
			if (whole >= SurveyDevice.LOWEST_DBM) {
				heard[count] = i;
				rssi[count++] = (byte) Math.min(whole, SurveyDevice.HIGHEST_DBM);
			}
		}
		return new Surveyor.Recorded(Arrays.copyOf(heard, count), Arrays.copyOf(rssi, count));
	}
}
