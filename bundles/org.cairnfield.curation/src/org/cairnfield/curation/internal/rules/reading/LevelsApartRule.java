package org.cairnfield.curation.internal.rules.reading;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.stats.Median;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.rules.DescribedRule;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.RuleOutcome;
import org.cairnfield.curation.rules.Parameter;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.RuleScope;
import org.cairnfield.curation.rules.Settings;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.curation.rules.Topic;
import org.cairnfield.curation.rules.RuleWords;
import org.cairnfield.curation.internal.rules.evidence.Ints;
import org.cairnfield.curation.internal.rules.evidence.Spots;
import org.cairnfield.model.values.Count;

/**
 * One access point read at one place by one device at levels far apart. Levels at a place vary by a few dB, by ten and
 * more when somebody walks past; thirty is a factor of a thousand in power.
 */
public final class LevelsApartRule extends DescribedRule {

	public static final Parameter APART = Parameter.number("apart-db", "from lowest to highest level at a place", 30, 10,
			100, "dB");

	public LevelsApartRule() {
		super("levels-apart", "One access point far apart at one place",
				"Two levels thirty dB apart cannot both describe the place: one belongs elsewhere, or the address is used"
						+ " by two senders.",
				Severity.WARNING, Topic.READING, RuleScope.SURVEY, APART);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		RadioMap map = input.map().map();
		Spots spots = Spots.of(input);
		TreeMap<Integer, Integer> dropped = new TreeMap<>();
		int places = 0;
		int worstDb = 0;
		String worst = "";
		for (int spot = 0; spot < spots.size(); spot++) {
			TreeMap<Integer, Ints> readings = spots.members(spot).length < 2 ? new TreeMap<>()
					: byAccessPoint(map, spots.members(spot));
			boolean any = false;
			for (var each : readings.entrySet()) {
				Ints list = each.getValue();
				int range = range(map, list);
				if (list.size() < 2 || range < settings.of(APART)) {
					continue;
				}
				any = true;
				if (range > worstDb) {
					worstDb = range;
					worst = String.format(Locale.ROOT, "%s by %d dB at %s on floor %d", map.accessPoints().get(each.getKey()),
							range, RuleWords.place(spots.map().x(spot), spots.map().y(spot)), spots.map().floor(spot));
				}
				strays(map, list, settings.of(APART) / 2, dropped);
			}
			places += any ? 1 : 0;
		}
		if (places == 0) {
			return RuleOutcome.found(List.of());
		}
		return RuleOutcome.found(List.of(finding(input, settings, dropped, places, worst, worstDb)));
	}

	private static TreeMap<Integer, Ints> byAccessPoint(RadioMap map, int[] samples) {
		TreeMap<Integer, Ints> readings = new TreeMap<>();
		for (int s : samples) {
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				readings.computeIfAbsent(map.accessPoint(k), a -> new Ints()).add(k);
			}
		}
		return readings;
	}

	private static int range(RadioMap map, Ints readings) {
		int[] levels = Arrays.stream(readings.toArray()).map(map::rssiDbm).toArray();
		return Arrays.stream(levels).max().orElse(0) - Arrays.stream(levels).min().orElse(0);
	}

	/** Of three and more those far from the middle; of two nobody knows which. */
	private static void strays(RadioMap map, Ints readings, double fromMiddleDb, TreeMap<Integer, Integer> dropped) {
		double middle = Median.of(Arrays.stream(readings.toArray()).mapToDouble(map::rssiDbm).toArray());
		for (int k : readings.toArray()) {
			if (readings.size() == 2 || Math.abs(map.rssiDbm(k) - middle) >= fromMiddleDb) {
				dropped.put(k, map.accessPoint(k));
			}
		}
	}

	private Finding finding(RuleInput input, Settings settings, TreeMap<Integer, Integer> dropped, int places,
			String worst, int worstDb) {
		RadioMap map = input.map().map();
		Selected bad = new Selected(input.map());
		for (int s = 0; s < map.size(); s++) {
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				if (dropped.containsKey(k)) {
					bad.add(s, k);
				}
			}
		}
		String message = String.format(Locale.ROOT,
				"In %s, %s at %s %s levels %s dB apart and more, by one device at one place; the most is %s.", input.unit(),
				Count.of(bad.addresses().size(), "access point"), Count.of(places, "place"),
				bad.addresses().size() == 1 ? "has" : "have", RuleWords.number(settings.of(APART)), worst);
		return Finding.of(this).message(message).about(new Subject.OfSurvey(input.unit())).about(bad.accessPoints())
				.beside(bad.subjects()).figure("places", places, "").figure("farthest apart", worstDb, "dB")
				.figure("readings to leave out", bad.size(), "")
				.remedy(bad.drop("far from the other levels at the same place")).build();
	}
}
