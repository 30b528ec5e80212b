package org.cairnfield.core.simulate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.radio.MacAddress;
import org.cairnfield.core.radio.WifiBand;
import org.cairnfield.core.radio.WifiChannel;

/**
 * A courier whose phone is a hotspot crosses every floor while it is surveyed: one address, locally administered,
 * heard all over. He enters at one corner and leaves at the opposite one, taking an eighth of the survey of the
 * floor.
 */
final class CourierHotspot {

	/** Locally administered and invented. */
	static final MacAddress ADDRESS = MacAddress.parse("0A:00:5E:00:53:C7");

	private static final double POWER_DBM = 8;
	private static final double NOISE_SD_DB = 4;
	private static final double DETECTED_DBM = -88;
	private static final int MHZ = new WifiChannel(WifiBand.GHZ_2_4, 6).centreMhz();

	private CourierHotspot() {
	}

	/** The survey with his readings added; the rows of truth go to {@code truth}. */
	static SimulatedSurvey walkThrough(SimulatedSurvey survey, Site site, long seed, List<PlantedFault> truth) {
		RadioMap map = survey.map();
		List<String> accessPoints = new ArrayList<>(map.accessPoints());
		int hotspot = accessPoints.size();
		accessPoints.add(ADDRESS.toString());
		List<DraftSample> drafts = DraftSample.of(map);
		long key = Streams.key(Streams.key(seed, "courier"), survey.name());
		for (Floor floor : site.floors()) {
			List<Integer> samples = new ArrayList<>();
			for (int s = 0; s < map.size(); s++) {
				if (map.floor(s) == floor.level()) {
					samples.add(s);
				}
			}
			SplittableRandom random = Streams.random(Streams.key(key, floor.level()));
			int window = samples.size() / 8;
			int first = random.nextInt(Math.max(1, samples.size() - window));
			for (int i = first; i < first + window; i++) {
				int s = samples.get(i);
				double share = (i - first) / (double) Math.max(1, window - 1);
				double hisX = floor.outline().width() * share;
				double hisY = floor.outline().depth() * (random.nextInt(2) == 0 ? share : 0.9 * share + 0.05);
				double metres = Math.hypot(map.x(s) - hisX, map.y(s) - hisY);
				long level = Math.round(POWER_DBM - ItuIndoor.OFFICE_2_4_GHZ.lossDb(metres, MHZ, 0)
						+ NOISE_SD_DB * Streams.gaussian(Streams.key(Streams.key(key, "level"), s)));
				if (level >= DETECTED_DBM) {
					drafts.get(s).readings.put(hotspot, (int) Math.min(level, SurveyDevice.HIGHEST_DBM));
					truth.add(new PlantedFault(FaultKind.HOTSPOT, survey.name(), survey.sampleIds().get(s),
							ADDRESS.toString(), String.format(Locale.ROOT, "courier %.0f m away", metres)));
				}
			}
		}
		return MarrowQuay.with(survey, DraftSample.build(drafts, accessPoints));
	}
}
