package org.cairnfield.batch.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.cairnfield.core.stats.Kappa;
import org.cairnfield.curation.decide.Agreement;
import org.cairnfield.curation.decide.Outcome;
import org.cairnfield.curation.decide.Standings;
import org.cairnfield.curation.measure.SplitFacts;
import org.cairnfield.curation.measure.SplitMeasurement;
import org.cairnfield.curation.propose.Evidence;
import org.cairnfield.curation.propose.EvidenceTable;
import org.cairnfield.curation.propose.SplitProposals;
import org.cairnfield.curation.propose.Warning;
import org.cairnfield.model.Split;

/** What an archive keeps of splits and what follows from it, as JSON and as tables; field names are a contract with scripts. */
final class KeptResults {

	private static final double CONFIDENCE = 0.95;

	private KeptResults() {
	}

	static Json split(Split split, SplitFacts facts) {
		return new Json().put("id", split.getId()).put("scope", split.getScope().toString()).put("epsilon", split.getEpsilon())
				.put("minPts", split.getMinPts()).put("representation", split.getRepresentation()).put("distance", split.getDistance())
				.put("samples", facts.samples()).put("clusters", facts.clusters()).put("noise", facts.noise())
				.put("noiseShare", facts.noiseShare()).put("largest", facts.largest())
				.put("comparisonsPerQuery", facts.comparisonsPerQuery()).put("comparisonShare", facts.comparisonShare())
				.put("meanErrorM", facts.meanErrorMetres()).put("plainMeanErrorM", facts.plainErrorMetres()).put("basis", facts.basis());
	}

	static void printSplit(Split split, SplitFacts facts, PrintWriter out) {
		out.printf(Locale.ROOT, "split        %s (%s): %d samples, ε %.6g, minPts %d, %s, %s%n", split.getId(), split.getScope(),
				facts.samples(), split.getEpsilon(), split.getMinPts(), split.getRepresentation(), split.getDistance());
		out.println("             " + facts + "; from " + facts.basis());
	}

	static Json proposals(String split, SplitProposals made, EvidenceTable evidence) {
		return new Json().put("split", split).put("made", made.made()).put("unplaced", made.unplaced()).put("gateReached", made.open())
				.put("noiseShare", made.noiseShare()).put("nearestDiffers", differing(evidence))
				.put("withWarnings", evidence.all().stream().filter(e -> e.made() && !e.warnings().isEmpty()).count())
				.put("effectBasis", evidence.basis());
	}

	private static long differing(EvidenceTable evidence) {
		return evidence.all().stream().filter(e -> e.made() && !e.agrees()).count();
	}

	static void printProposals(String split, SplitProposals made, EvidenceTable evidence, PrintWriter out) {
		if (!made.open()) {
			out.printf(Locale.ROOT, "proposals    none for %s: %.1f %% noise is below the gate of %.1f %%; %d samples stay noise%n", split,
					100 * made.noiseShare(), 100 * made.rule().gate(), made.unplaced());
			return;
		}
		out.printf(Locale.ROOT, "proposals    %d made for %s (r ≥ %s), %d samples stay unplaced%n", made.made(), split,
				made.rule().threshold(), made.unplaced());
		out.printf(Locale.ROOT, "             of %d the nearest labelled sample is in another cluster; effects %s%n", differing(evidence),
				evidence.basis());
		Map<Warning, Long> warnings = evidence.all().stream().filter(Evidence::made).flatMap(e -> e.warnings().stream())
				.collect(Collectors.groupingBy(w -> w, TreeMap::new, Collectors.counting()));
		out.println("             warnings: " + (warnings.isEmpty() ? "none" : warnings.entrySet().stream()
				.map(w -> w.getValue() + " " + w.getKey().name().toLowerCase(Locale.ROOT).replace('_', ' ')).collect(Collectors.joining(", "))));
	}

	static Json measurement(String split, SplitMeasurement measured, Outcome outcome) {
		return new Json().put("split", split).put("samples", measured.samples()).put("testSamples", measured.testSamples())
				.put("approved", measured.approved()).put("open", outcome.open())
				.put("variants", measured.columns().stream().map(c -> new Json().put("name", c.name())
						.put("meanErrorM", c.errors().meanMetres()).put("meanLowM", c.meanInterval().low())
						.put("meanHighM", c.meanInterval().high()).put("medianErrorM", c.errors().medianMetres())
						.put("p75M", c.errors().p75Metres()).put("p95M", c.errors().p95Metres())
						.put("floorHitRate", c.errors().floorHitRate()).put("siteHitRate", c.errors().siteHitRate())
						.put("toPlain", c.ratio()).put("toPlainLow", c.ratioInterval().low()).put("toPlainHigh", c.ratioInterval().high())
						.put("comparisonsPerQuery", c.comparisons()).put("comparisonShare", c.comparisonShare()).put("how", c.how())
						.fields()).toList());
	}

	static void printMeasurement(String split, SplitMeasurement measured, Outcome outcome, PrintWriter out) {
		out.printf(Locale.ROOT, "measured     split %s on %d test samples; %d approved, %d still to be decided%n", split,
				measured.testSamples(), measured.approved(), outcome.open());
		TextTable table = new TextTable("matching", "mean m", "95 % interval", "median m", "75 % m", "95 % m", "to plain",
				"95 % interval", "compared", "share");
		for (SplitMeasurement.Column c : measured.columns()) {
			table.row(c.name(), f("%.3f", c.errors().meanMetres()), f("%.3f", c.meanInterval().low()) + " … " + f("%.3f", c.meanInterval().high()),
					f("%.3f", c.errors().medianMetres()), f("%.3f", c.errors().p75Metres()), f("%.3f", c.errors().p95Metres()),
					f("%.3f", c.ratio()), f("%.3f", c.ratioInterval().low()) + " … " + f("%.3f", c.ratioInterval().high()),
					f("%.1f", c.comparisons()), f("%.1f %%", 100 * c.comparisonShare()));
		}
		table.print(out);
		out.println("             errors in the plane, percentiles by Hyndman-Fan type 6, intervals by the bootstrap, ratios paired;");
		out.println("             compared: fingerprints per query");
	}

	static Json standings(Standings standings, Json result) {
		standings.counts().forEach((state, count) -> result.put(state.toString().replace(" a", "A"), count));
		Agreement agreement = standings.agreement();
		Kappa kappa = agreement.kappa();
		return result.put("awaitingSecond", standings.awaitingSecond()).put("open", standings.open()).put("judgedByTwo", kappa.items())
				.put("kappa", kappa.value()).put("kappaLow", kappa.interval(CONFIDENCE).low())
				.put("kappaHigh", kappa.interval(CONFIDENCE).high())
				.put("disputedSamples", standings.disputes().stream().map(s -> s.sample().toString()).toList());
	}

	static void printStandings(Standings standings, PrintWriter out) {
		out.println("proposals    of " + standings.split() + ": " + standings.counts().entrySet().stream().filter(e -> e.getValue() > 0)
				.map(e -> e.getValue() + " " + e.getKey()).collect(Collectors.joining(", ")));
		if (standings.awaitingSecond() > 0) {
			out.println("             " + standings.awaitingSecond() + " wait for a second reviewer");
		}
		out.println("             " + (standings.open() == 0 ? "all decided" : standings.open() + " hold a release back"));
		Agreement agreement = standings.agreement();
		Kappa kappa = agreement.kappa();
		if (kappa.items() > 0) {
			out.printf(Locale.ROOT, "agreement    κ %s (95 %% interval %s … %s) on %d samples judged by two; %d differed%n", f("%.3f", kappa.value()),
					f("%.3f", kappa.interval(CONFIDENCE).low()), f("%.3f", kappa.interval(CONFIDENCE).high()), kappa.items(),
					agreement.differing().size());
		}
		standings.disputes().forEach(s -> out.println("disputed     " + s.sample()));
	}

	private static String f(String format, double value) {
		return Double.isNaN(value) ? "n/a" : String.format(Locale.ROOT, format, value);
	}
}
