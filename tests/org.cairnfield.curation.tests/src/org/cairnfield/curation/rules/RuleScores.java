package org.cairnfield.curation.rules;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cairnfield.core.geometry.Polygon;
import org.cairnfield.core.simulate.FaultKind;
import org.cairnfield.core.simulate.PlantedFault;
import org.cairnfield.core.simulate.SimulatedArchive;

/**
 * What rules found, held against what was planted: precision and recall of each rule, counted in what the rule is
 * about (samples, access points, surveys, gaps).
 */
final class RuleScores {

	/** @param found named by the rule; @param right of those, planted; @param planted in all; @param met of those */
	record Score(int found, int right, int planted, int met) {

		double precision() {
			return found == 0 ? Double.NaN : (double) right / found;
		}

		double recall() {
			return planted == 0 ? Double.NaN : (double) met / planted;
		}
	}

	private final SimulatedArchive archive;
	private final SurveyedMap map;
	private final RunResult result;
	final Map<String, Set<FaultKind>> kindsOfSample = new HashMap<>();

	/** Of a copied row the original: which of the two is the copy nobody can tell. */
	private final Map<String, String> twins = new HashMap<>();

	RuleScores(SimulatedArchive archive, SurveyedMap map, RunResult result) {
		this.archive = archive;
		this.map = map;
		this.result = result;
		Map<String, String> copyOf = new HashMap<>();
		for (PlantedFault fault : archive.truth()) {
			if (fault.kind() == FaultKind.COPIED_ROW) {
				twins.put(fault.sample(), fault.detail().replace("beside ", ""));
			}
			if (fault.kind() == FaultKind.DUPLICATE_IMPORT) {
				copyOf.put(fault.sample(), fault.detail().replace("same as ", ""));
			} else if (!fault.sample().isEmpty()) {
				kindsOfSample.computeIfAbsent(fault.sample(), s -> EnumSet.noneOf(FaultKind.class)).add(fault.kind());
			}
		}
		Map<String, String> copies = new HashMap<>();
		copyOf.forEach((copy, first) -> copies.put(first, copy));
		copyOf.forEach((copy, first) -> {
			if (kindsOfSample.containsKey(first)) {
				kindsOfSample.put(copy, kindsOfSample.get(first));
			}
			if (twins.containsKey(first)) {
				twins.put(copy, copies.get(twins.get(first)));
			}
		});
	}

	/** By rule; rules of whose kind nothing was planted are scored on what they found. */
	Map<String, Score> all() {
		Map<String, Score> scores = new TreeMap<>();
		RuleKinds.SAMPLES.forEach((rule, kinds) -> scores.put(rule, samples(rule, kinds)));
		RuleKinds.ACCESS_POINTS.forEach((rule, kinds) -> scores.put(rule, accessPoints(rule, kinds)));
		RuleKinds.SURVEYS.forEach((rule, kinds) -> scores.put(rule, surveys(rule, kinds)));
		scores.put("device-offset", devices());
		scores.put("coverage-gap", gaps());
		scores.put("outside-outline", outside());
		return scores;
	}

	private boolean has(String sample, Set<FaultKind> kinds) {
		return kindsOfSample.getOrDefault(sample, Set.of()).stream().anyMatch(kinds::contains);
	}

	/** Samples that a rule names: subjects, or where it speaks of a survey those beside. */
	private Set<String> named(String rule) {
		Set<String> named = new TreeSet<>();
		for (Finding finding : result.findings(rule)) {
			List<Subject> subjects = new ArrayList<>(finding.subjects());
			if (finding.subjects().stream().noneMatch(s -> s instanceof Subject.OfSample)) {
				subjects = finding.related();
			}
			subjects.stream().filter(s -> s instanceof Subject.OfSample).forEach(s -> named.add(s.label()));
		}
		return named;
	}

	private Score samples(String rule, Set<FaultKind> kinds) {
		Set<FaultKind> right = EnumSet.copyOf(kinds);
		right.addAll(RuleKinds.ALSO_RIGHT.getOrDefault(rule, Set.of()));
		Set<String> named = named(rule);
		Set<String> partners = partners(rule);
		int rightly = (int) named.stream().filter(s -> has(s, right) || partners.contains(s)).count();
		List<String> planted = new ArrayList<>();
		for (int s = 0; s < map.size(); s++) {
			// A sparse sample to which a later fault gave readings is sparse no more.
			boolean undone = rule.equals("few-readings") && map.map().heard(s) > 2;
			if (has(map.sampleId(s), kinds) && !undone) {
				planted.add(map.sampleId(s));
			}
		}
		int met = (int) planted.stream().filter(s -> named.contains(s) || named.contains(twins.getOrDefault(s, s)))
				.count();
		return new Score(named.size(), rightly, planted.size(), met);
	}

	/** Samples that are rightly named beside a planted one: the other half of a pair, what is few by nature. */
	private Set<String> partners(String rule) {
		Set<String> partners = new HashSet<>();
		Map<String, String> copyOf = new HashMap<>();
		for (PlantedFault fault : archive.truth()) {
			List<String> others = Pattern.compile("(?:beside|readings of|same as) ([^, ]+)").matcher(fault.detail())
					.results()
					.map(m -> m.group(1)).toList();
			if (fault.kind() == FaultKind.DUPLICATE_IMPORT) {
				copyOf.put(fault.sample(), others.get(0));
			}
			boolean paired = switch (rule) {
			case "contradictory-samples" -> fault.kind() == FaultKind.FOREIGN_SCAN;
			case "exact-duplicate" -> fault.kind() == FaultKind.COPIED_ROW;
			case "levels-apart" -> fault.kind() == FaultKind.LEVEL_JUMP;
			default -> false;
			};
			if (paired) {
				partners.addAll(others);
			}
		}
		if (rule.equals("one-scan-two-places")) {
			Set<FaultKind> apart = EnumSet.copyOf(RuleKinds.ALSO_RIGHT.get("wrong-place"));
			apart.add(FaultKind.SCAN_ELSEWHERE);
			apart.add(FaultKind.CACHED_SCAN);
			Set<Long> scans = new HashSet<>();
			for (int s = 0; s < map.size(); s++) {
				if (has(map.sampleId(s), apart)) {
					scans.add(map.readingsKey(s));
				}
			}
			for (int s = 0; s < map.size(); s++) {
				if (scans.contains(map.readingsKey(s))) {
					partners.add(map.sampleId(s));
				}
			}
		}
		Set<String> misplaced = new HashSet<>();
		for (int s = 0; s < map.size(); s++) {
			if (rule.equals("levels-apart") && has(map.sampleId(s), RuleKinds.ALSO_RIGHT.get(rule))) {
				misplaced.add(place(s));
			}
		}
		for (int s = 0; s < map.size(); s++) {
			if (misplaced.contains(place(s))) {
				partners.add(map.sampleId(s));
			}
			if (rule.equals("few-readings") && map.map().heard(s) < 3
					|| rule.equals("level-out-of-range") && hasLevelOutside(s)) {
				partners.add(map.sampleId(s));
			}
		}
		copyOf.forEach((copy, original) -> {
			if (partners.contains(original)) {
				partners.add(copy);
			}
		});
		return partners;
	}

	/** By the rule's own limits: strong levels come about without a fault, too. */
	private boolean hasLevelOutside(int s) {
		for (int k = map.map().firstReading(s); k < map.map().endReading(s); k++) {
			if (map.map().rssiDbm(k) > -25 || map.map().rssiDbm(k) < -105) {
				return true;
			}
		}
		return false;
	}

	private String place(int s) {
		return map.site(s) + " " + map.map().floor(s) + " " + map.map().x(s) + " " + map.map().y(s);
	}

	private Score accessPoints(String rule, Set<FaultKind> kinds) {
		Set<String> planted = new TreeSet<>();
		Set<String> partners = new TreeSet<>();
		for (PlantedFault fault : archive.truth()) {
			if (RuleKinds.ALSO_RIGHT.getOrDefault(rule, Set.of()).contains(fault.kind())) {
				partners.add(fault.accessPoint());
			}
			if (kinds.contains(fault.kind())) {
				planted.add(fault.accessPoint());
				partners.add(fault.detail().replace("same radio as ", ""));
			}
		}
		for (PlantedFault second : archive.truth(FaultKind.SECOND_ADDRESS)) {
			if (planted.contains(second.detail().replace("same radio as ", ""))) {
				partners.add(second.accessPoint());
			}
		}
		Set<String> named = new TreeSet<>();
		for (Finding finding : result.findings(rule)) {
			finding.subjects().stream().filter(s -> s instanceof Subject.OfAccessPoint)
					.forEach(s -> named.add(s.label()));
		}
		int right = (int) named.stream().filter(a -> planted.contains(a) || partners.contains(a)).count();
		return new Score(named.size(), right, planted.size(), (int) planted.stream().filter(named::contains).count());
	}

	private Score surveys(String rule, Set<FaultKind> kinds) {
		Set<String> planted = new TreeSet<>();
		archive.truth().stream().filter(f -> kinds.contains(f.kind())).forEach(f -> planted.add(f.survey()));
		Set<String> named = new TreeSet<>();
		result.findings(rule).forEach(f -> named.add(f.subjects().get(0).label()));
		int right = (int) named.stream().filter(s -> planted.contains(s.replace("-again", "")) || planted.contains(s))
				.count();
		return new Score(named.size(), right, planted.size(), (int) planted.stream().filter(named::contains).count());
	}

	/** A device is rightly named where the offset found lies within 1.5 dB of the simulated one. */
	private Score devices() {
		Map<String, Double> offsets = new TreeMap<>();
		for (PlantedFault fault : archive.truth(FaultKind.DEVICE_OFFSET)) {
			Matcher m = Pattern.compile("(.*) reads (\\S+) dB more than (.*)").matcher(fault.detail());
			if (m.matches()) {
				offsets.put(m.group(1) + " to " + m.group(3), Double.parseDouble(m.group(2)));
				offsets.put(m.group(3) + " to " + m.group(1), -Double.parseDouble(m.group(2)));
			}
		}
		if (archive.survey(archive.surveys().get(0).name()).device().startsWith("Wrist guide")) {
			offsets.put("Wrist guide A to Wrist guide B", 5.0);
			offsets.put("Wrist guide B to Wrist guide A", -5.0);
		}
		List<Finding> findings = result.findings("device-offset");
		int right = (int) findings.stream().filter(f -> {
			Double truth = offsets.get(f.subjects().get(0).label() + " to " + f.related().get(0).label());
			return truth != null && Math.abs(truth - f.figure("offset")) <= 1.5;
		}).count();
		return new Score(findings.size(), right, offsets.size() / 2, right);
	}

	/** A gap is rightly named where its middle lies in one that was planted. */
	private Score gaps() {
		List<String> planted = archive.truth(FaultKind.COVERAGE_GAP).stream().map(PlantedFault::detail).toList();
		Set<String> met = new HashSet<>();
		List<Finding> findings = result.findings("coverage-gap");
		int right = 0;
		for (Finding finding : findings) {
			Subject.OfCell cell = (Subject.OfCell) finding.subjects().get(0);
			for (String gap : planted) {
				Matcher m = Pattern.compile("(.*) floor (-?\\d+), x (\\S+) to (\\S+) m, y (\\S+) to (\\S+) m")
						.matcher(gap);
				if (m.matches() && m.group(1).equals(cell.site()) && Integer.parseInt(m.group(2)) == cell.floor()
						&& within(finding.figure("x"), m.group(3), m.group(4))
						&& within(finding.figure("y"), m.group(5), m.group(6))) {
					right++;
					met.add(gap);
				}
			}
		}
		return new Score(findings.size(), right, planted.size(), met.size());
	}

	private static boolean within(double value, String low, String high) {
		return value >= Double.parseDouble(low) && value <= Double.parseDouble(high);
	}

	/** Planted are displaced samples that came to lie outside by more than the tolerance. */
	private Score outside() {
		Set<FaultKind> kinds = EnumSet.of(FaultKind.WRONG_POSITION, FaultKind.SWAPPED_AXES, FaultKind.WRONG_FLOOR);
		Set<String> named = named("outside-outline");
		int right = (int) named.stream().filter(s -> has(s, kinds)).count();
		int planted = 0;
		int met = 0;
		for (int s = 0; s < map.size(); s++) {
			Polygon outline = map.floor(map.site(s), map.map().floor(s)).flatMap(FloorPlan::outline).orElse(null);
			if (has(map.sampleId(s), kinds) && outline != null && !outline.contains(map.map().x(s), map.map().y(s))
					&& outline.metresToEdge(map.map().x(s), map.map().y(s)) > 1) {
				planted++;
				met += named.contains(map.sampleId(s)) ? 1 : 0;
			}
		}
		return new Score(named.size(), right, planted, met);
	}
}
