package org.cairnfield.curation.internal.rules.accesspoint;

import static org.cairnfield.curation.rules.Reason.judged;
import static org.cairnfield.curation.rules.Reason.onCampuses;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.LongUnaryOperator;
import org.cairnfield.core.distance.DisjointSets;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.radio.MacAddress;
import org.cairnfield.core.stats.Median;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.rules.Alternative;
import org.cairnfield.curation.rules.DescribedRule;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.RuleOutcome;
import org.cairnfield.curation.rules.Parameter;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.RuleScope;
import org.cairnfield.curation.rules.Settings;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.curation.rules.Topic;
import org.cairnfield.curation.rules.RuleWords;
import org.cairnfield.curation.rules.Threshold;
import org.cairnfield.curation.internal.rules.evidence.AccessPoints;
import org.cairnfield.curation.internal.rules.evidence.Doubles;
import org.cairnfield.curation.internal.rules.evidence.Robust;

/**
 * Several addresses of one radio: they differ in the last hexadecimal digit, the one before, or the first octet
 * (common practice for virtual networks), are heard together, and read the same everywhere but for noise. Addresses of
 * different boxes next to each other in number differ in level from place to place.
 */
public final class SharedRadioRule extends DescribedRule {

	public static final Alternative NOTE = new Alternative("note", Messages.SharedRadioRule_noteThatTheyAreOne);
	public static final Alternative ONE = new Alternative("one", Messages.SharedRadioRule_countThemAsOneAccess);

	public static final Parameter MEAN = Parameter.number("mean-db",
			Messages.SharedRadioRule_largestMeanDifferenceOfLevel, 3, 0.1, 20,
			"dB",
			onCampuses(Messages.SharedRadioRule_15And6Find));
	public static final Parameter SPREAD = Parameter.number("spread-db",
			Messages.SharedRadioRule_largestRobustStandardDeviationOf, 4.5,
			0.5,
			20, "dB", onCampuses(Messages.SharedRadioRule_225FindsTheSame));
	public static final Parameter TOGETHER = Parameter.share("together",
			Messages.SharedRadioRule_shareOfSamplesOfThose, 0.8,
			onCampuses(Messages.SharedRadioRule_04FindsTheSame));
	public static final Parameter FEWEST = Parameter.count("fewest-samples",
			Messages.SharedRadioRule_samplesThatHeardBoth, 15, 3, 10_000,
			onCampuses(Messages.SharedRadioRule_8And30FindThe));

	private static final Threshold WELL_DBM = new Threshold(Messages.SharedRadioRule_levelFromWhichBothShould, -80,
			"dBm",
			judged(Messages.SharedRadioRule_some10DbAboveThe));
	private static final List<LongUnaryOperator> ALIKE = List.of(v -> v & ~0xFL, v -> v & ~0xF0L,
			v -> v & 0x00FF_FFFF_FFFFL);

	public SharedRadioRule() {
		super("shared-radio", Messages.SharedRadioRule_severalAddressesOfOneRadio,
				Messages.SharedRadioRule_eachAddressOfARadio,
				Severity.NOTE, Topic.ACCESS_POINT, RuleScope.ARCHIVE, MEAN, SPREAD, TOGETHER, FEWEST);
	}

	@Override
	public List<Alternative> alternatives() {
		return List.of(NOTE, ONE);
	}

	@Override
	protected List<Threshold> fixed() {
		return List.of(WELL_DBM);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		RadioMap map = input.map().map();
		AccessPoints heard = AccessPoints.of(input);
		int n = map.accessPointCount();
		DisjointSets sets = new DisjointSets(n);
		boolean anyAddress = false;
		Map<String, String> radios = input.map().radios();
		Map<String, double[]> figures = new HashMap<>();
		for (int way = 0; way < ALIKE.size(); way++) {
			Map<Long, List<Integer>> alike = new TreeMap<>();
			for (int a = 0; a < n; a++) {
				Optional<MacAddress> address = MacAddress.find(map.accessPoints().get(a));
				anyAddress |= address.isPresent();
				if (address.isPresent() && heard.heardBy(a) >= settings.countOf(FEWEST)) {
					alike.computeIfAbsent(ALIKE.get(way).applyAsLong(address.get().value()), k -> new ArrayList<>())
							.add(a);
				}
			}
			for (List<Integer> group : alike.values()) {
				for (int i = 0; i < group.size(); i++) {
					for (int j = i + 1; j < group.size(); j++) {
						String radio = radios.get(map.accessPoints().get(group.get(i)));
						boolean known = radio != null && radio.equals(radios.get(map.accessPoints().get(group.get(j))));
						double[] difference = known ? null
								: difference(map, heard, group.get(i), group.get(j), settings);
						if (difference != null) {
							sets.join(group.get(i), group.get(j));
							figures.merge(map.accessPoints().get(group.get(i)), difference, SharedRadioRule::worse);
							figures.merge(map.accessPoints().get(group.get(j)), difference, SharedRadioRule::worse);
						}
					}
				}
			}
		}
		if (!anyAddress) {
			return RuleOutcome.notApplicable(Messages.SharedRadioRule_accessPointsAreNotNamed);
		}
		return RuleOutcome.found(findings(map, sets, figures));
	}

	private static double[] worse(double[] a, double[] b) {
		return new double[] { Math.max(a[0], b[0]), Math.max(a[1], b[1]) };
	}

	/** Mean and spread of the difference in dB, or null where they are not one radio's. */
	private static double[] difference(RadioMap map, AccessPoints heard, int a, int b, Settings settings) {
		Both both = new Both();
		both.compare(map, heard, a, b, false);
		double mean = Math.abs((double) both.sumDb / Math.max(1, both.count));
		if (both.count < settings.countOf(FEWEST) || both.well == 0
				|| both.wellBoth < settings.of(TOGETHER) * both.well || mean > settings.of(MEAN)) {
			return null;
		}
		both.compare(map, heard, a, b, true);
		double[] all = both.differences.toArray();
		// Not below the step of whole dB, which would hide the spread of a few.
		double spread = Math.max(Robust.sd(all), meanDeviation(all));
		return spread <= settings.of(SPREAD) ? new double[] { mean, spread } : null;
	}

	/** What samples heard of two access points; the differences one by one only for the few pairs that may be one. */
	private static final class Both {
		private int count;
		private int well;
		private int wellBoth;
		private long sumDb;
		private final Doubles differences = new Doubles();

		void compare(RadioMap map, AccessPoints heard, int a, int b, boolean keep) {
			int i = 0;
			int j = 0;
			while (i < heard.heardBy(a) || j < heard.heardBy(b)) {
				int left = i < heard.heardBy(a) ? heard.sample(a, i) : Integer.MAX_VALUE;
				int right = j < heard.heardBy(b) ? heard.sample(b, j) : Integer.MAX_VALUE;
				int levelA = left <= right ? map.rssiDbm(heard.reading(a, i)) : RadioMap.LOWEST_RSSI_DBM;
				int levelB = right <= left ? map.rssiDbm(heard.reading(b, j)) : RadioMap.LOWEST_RSSI_DBM;
				if (keep && left == right) {
					differences.add(levelA - levelB);
				} else if (!keep) {
					boolean isWell = Math.max(levelA, levelB) >= WELL_DBM.value();
					well += isWell ? 1 : 0;
					wellBoth += isWell && left == right ? 1 : 0;
					count += left == right ? 1 : 0;
					sumDb += left == right ? levelA - levelB : 0;
				}
				i += left <= right ? 1 : 0;
				j += right <= left ? 1 : 0;
			}
		}
	}

	/** Mean absolute deviation from the median, scaled to a normal standard deviation by √(π/2). */
	private static double meanDeviation(double[] values) {
		double middle = Median.of(values);
		return Math.sqrt(Math.PI / 2) * Arrays.stream(values).map(v -> Math.abs(v - middle)).average().orElse(0);
	}

	private List<Finding> findings(RadioMap map, DisjointSets sets, Map<String, double[]> figures) {
		Map<Integer, List<String>> groups = new TreeMap<>();
		for (int a = 0; a < map.accessPointCount(); a++) {
			groups.computeIfAbsent(sets.find(a), r -> new ArrayList<>()).add(map.accessPoints().get(a));
		}
		List<Finding> findings = new ArrayList<>();
		for (List<String> group : groups.values()) {
			if (group.size() > 1) {
				group.sort(null);
				double mean = group.stream().mapToDouble(g -> figures.get(g)[0]).max().orElse(0);
				double spread = group.stream().mapToDouble(g -> figures.get(g)[1]).max().orElse(0);
				String message = String.format(Locale.ROOT,
						Messages.SharedRadioRule_soundLikeOneRadioHeard,
						RuleWords.list(group), RuleWords.decibels(mean), RuleWords.decibels(spread));
				findings.add(Finding.of(this).message(message)
						.about(group.stream().map(Subject.OfAccessPoint::new).toList())
						.figure("addresses", group.size(), "")
						.figure(Messages.SharedRadioRule_meanDifference, mean, "dB")
						.figure("spread", spread, "dB").remedy(NOTE, new Remedy.GroupAccessPoints(group))
						.remedy(ONE, new Remedy.CountAs(others(group), Messages.SharedRadioRule_oneRadioSendsUnderAll))
						.build());
			}
		}
		findings.sort(Comparator.comparing(f -> f.subjects().get(0).label()));
		return findings;
	}

	/** All but the first count as the first. */
	private static Map<String, String> others(List<String> group) {
		Map<String, String> others = new TreeMap<>();
		group.subList(1, group.size()).forEach(each -> others.put(each, group.get(0)));
		return others;
	}
}
