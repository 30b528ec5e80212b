package org.cairnfield.curation.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.task.Workers;

/** Puts small maps together by hand. Everything is at Tide House unless told otherwise. */
public final class TinyMap {

	/** The site of all samples. */
	public static final String SITE = "Tide House";

	private final RadioMapBuilder builder = new RadioMapBuilder();
	private final List<String> ids = new ArrayList<>();
	private final List<Integer> surveyOf = new ArrayList<>();
	private final List<Survey> surveys = new ArrayList<>();
	private String site = SITE;
	private String device = "Wrist guide A";
	private long timeMillis = RadioMap.NO_TIME;
	private int floor;

	/** Samples that follow are of this survey. */
	public TinyMap survey(String id) {
		surveys.add(Survey.undated(id, site));
		return this;
	}

	public TinyMap survey(String id, LocalDate date) {
		surveys.add(Survey.dated(id, site, date));
		return this;
	}

	public TinyMap site(String name) {
		site = name;
		return this;
	}

	public TinyMap device(String name) {
		device = name;
		return this;
	}

	public TinyMap floor(int level) {
		floor = level;
		return this;
	}

	/** The next sample is recorded so many seconds into some day; those after it a while later each. */
	public TinyMap at(double seconds) {
		timeMillis = Math.round(1000 * seconds);
		return this;
	}

	/** A sample at x, y with readings given as address, level, address, level … */
	public TinyMap sample(double x, double y, Object... readings) {
		builder.sample(site, floor, x, y).device(device);
		if (timeMillis != RadioMap.NO_TIME) {
			builder.time(timeMillis);
		}
		for (int i = 0; i < readings.length; i += 2) {
			builder.reading((String) readings[i], (Integer) readings[i + 1]);
		}
		surveyOf.add(surveys.size() - 1);
		ids.add(surveys.get(surveys.size() - 1).id() + "-" + ids.size());
		return this;
	}

	/** A sample that hears senders without noise: −30 dBm at 1 m and 30 dB less a decade, down to −90 dBm. */
	public TinyMap hears(double x, double y, Map<String, double[]> senders) {
		return hears(x, y, x, y, senders, 0);
	}

	/** Noted at one place, recorded at another, by a device that reads {@code offsetDb} too high. */
	public TinyMap hears(double x, double y, double trueX, double trueY, Map<String, double[]> senders, int offsetDb) {
		List<Object> readings = new ArrayList<>();
		senders.forEach((address, at) -> {
			double metres = Math.max(1, Math.hypot(trueX - at[0], trueY - at[1]));
			int level = (int) Math.round(-30 - 30 * Math.log10(metres)) + offsetDb - (at.length > 2 ? (int) at[2] : 0);
			if (level >= -90) {
				readings.add(address);
				readings.add(level);
			}
		});
		return sample(x, y, readings.toArray());
	}

	/** Senders spread over a floor of 30 m by 20 m. */
	public static Map<String, double[]> senders() {
		Map<String, double[]> senders = new TreeMap<>();
		double[][] at = { { 2, 2 }, { 28, 3 }, { 3, 18 }, { 27, 17 }, { 15, 9 }, { 9, 14 }, { 21, 6 }, { 14, 19 } };
		for (int i = 0; i < at.length; i++) {
			senders.put("00:00:5E:00:53:" + i + "A", at[i]);
		}
		return senders;
	}

	public SurveyedMap build() {
		return build(UnaryOperator.identity());
	}

	public SurveyedMap build(UnaryOperator<SurveyedMapBuilder> more) {
		return more.apply(new SurveyedMapBuilder(builder.build(), ids,
				surveyOf.stream().mapToInt(Integer::intValue).toArray(), surveys)).build();
	}

	/** What a rule finds in a map, all units together. */
	public static List<Finding> findings(Rule rule, SurveyedMap map) {
		return findings(rule, Settings.USUAL, map);
	}

	public static List<Finding> findings(Rule rule, Settings settings, SurveyedMap map) {
		RunResult result = new RuleRun(List.of(rule), Map.of(rule.id(), settings)).over(map, Workers.inline());
		if (!result.failed().isEmpty()) {
			throw new AssertionError(result.failed().toString());
		}
		return result.findings();
	}

	/** Why a rule did not apply to the first unit, or an empty text where it did. */
	public static String whyNot(Rule rule, SurveyedMap map) {
		RuleOutcome first = new RuleRun(List.of(rule)).over(map, Workers.inline()).results().get(0).outcome();
		return first instanceof RuleOutcome.NotApplicable not ? not.reason() : "";
	}

	/** Labels of the subjects of a finding that are samples. */
	public static List<String> samples(Finding finding) {
		return finding.subjects().stream().filter(s -> s instanceof Subject.OfSample).map(Subject::label).toList();
	}

	/** Labels of all subjects of a finding. */
	public static List<String> labels(Finding finding) {
		return finding.subjects().stream().map(Subject::label).toList();
	}
}
