package org.cairnfield.batch.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.cairnfield.core.measure.PositionErrors;
import org.cairnfield.core.stats.Kappa;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.decide.Agreement;
import org.cairnfield.curation.decide.Standings;
import org.cairnfield.curation.measure.Measures;
import org.cairnfield.curation.measure.ReleasedMap;
import org.cairnfield.curation.measure.SplitFacts;
import org.cairnfield.curation.measure.Way;
import org.cairnfield.curation.propose.Advice;
import org.cairnfield.curation.propose.Evidence;
import org.cairnfield.curation.propose.EvidenceTable;
import org.cairnfield.curation.propose.SplitProposals;
import org.cairnfield.curation.propose.Warning;
import org.cairnfield.curation.run.FileRun;
import org.cairnfield.model.Split;

/** Results as JSON and as tables; field names are a contract with scripts. */
final class Results {

	private static final double CONFIDENCE = 0.95;

	private Results() {
	}

	static Json split(FileRun run, Workers workers) {
		Json json = new Json().put("epsilon", run.split().getEpsilon()).put("minPts", run.split().getMinPts())
				.put("clusters", run.onMap().clustering().clusters())
				.put("noiseShare", run.onMap().clustering().noiseShare())
				.put("representation", run.split().getRepresentation()).put("distance", run.split().getDistance());
		run.curve(workers).elbowEpsilon().ifPresent(epsilon -> json.put("elbowEpsilon", epsilon));
		if (run.study().components(workers) > 0) {
			json.put("pcaComponents", run.study().components(workers));
		}
		return json.put("search", run.split().getSearch().code()).put("searchReason", run.split().getSearchReason());
	}

	static void printSplit(FileRun run, Workers workers, PrintWriter out) {
		int components = run.study().components(workers);
		out.printf(Locale.ROOT, Messages.Results_splitClustersNoiseMinpts,
				run.onMap().clustering().clusters(),
				100 * run.onMap().clustering().noiseShare(), run.split().getEpsilon(), run.split().getMinPts(),
				run.split().getRepresentation(),
				run.split().getDistance(),
				components > 0 ? Words.bind(Messages.Results_principalComponents, components) : "");
		run.curve(workers).elbowEpsilon().ifPresent(epsilon -> out.printf(Locale.ROOT,
				Messages.Results_elbowByKneedleOnThe, epsilon));
		printSearch(run.split(), out);
	}

	private static void printSearch(Split split, PrintWriter out) {
		if (split.getSearch() != null) {
			out.println(Words.bind(Messages.Results_search, split.getSearch(), split.getSearchReason()));
		}
	}

	static Json proposals(FileRun run) {
		return new Json().put("made", run.proposals().made()).put("unplaced", run.proposals().unplaced())
				.put("gateReached", run.proposals().open());
	}

	private static String advice(EvidenceTable evidence) {
		Map<Advice, Long> counts = evidence.all().stream().filter(Evidence::made)
				.collect(Collectors.groupingBy(Evidence::advice, TreeMap::new, Collectors.counting()));
		return counts.entrySet().stream().map(a -> a.getKey().word() + ' ' + a.getValue())
				.collect(Collectors.joining(", "));
	}

	static void printProposals(FileRun run, PrintWriter out) {
		SplitProposals proposals = run.proposals();
		if (!proposals.open()) {
			out.printf(Locale.ROOT,
					Messages.Results_proposalsNoneNoiseIsBelow,
					100 * proposals.noiseShare(), 100 * proposals.rule().gate(), proposals.unplaced());
			return;
		}
		out.printf(Locale.ROOT, Messages.Results_proposalsMadeRSamplesStay, proposals.made(),
				proposals.rule().threshold(), proposals.unplaced());
	}

	/** What every way of matching has, of files and of archives. */
	private static Json way(String name, Way way) {
		PositionErrors e = way.errors();
		return new Json().put("name", name).put("meanErrorM", e.meanMetres()).put("meanLowM", way.mean().low())
				.put("meanHighM", way.mean().high()).put("medianErrorM", e.medianMetres()).put("p75M", e.p75Metres())
				.put("p95M", e.p95Metres())
				.put("floorHitRate", e.floorHitRate()).put("siteHitRate", e.siteHitRate())
				.put("toPlain", way.ratio()).put("toPlainLow", way.ratioInterval().low())
				.put("toPlainHigh", way.ratioInterval().high())
				.put("comparisonsPerQuery", way.comparisons()).put("comparisonShare", way.comparisonShare())
				.put("how", way.how());
	}

	static List<Map<String, Object>> ways(FileRun run) {
		return run.measured().ways().stream()
				.map(way -> way(FileRun.nameOf(way), way).put("rmseM", way.errors().rmseMetres())
						.put("p90M", way.errors().p90Metres()).put("ce50M", way.errors().ce50Metres())
						.put("ce95M", way.errors().ce95Metres())
						.put("matchTimeRatio", run.measured().timeRatios().get(way.name())).fields())
				.toList();
	}

	static void printWays(FileRun run, PrintWriter out) {
		ConsoleTable table = new ConsoleTable("matching", Messages.Results_meanM, Messages.Results_95Interval,
				Messages.Results_medianM, Messages.Results_rmseM, "75 % m",
				"90 % m",
				"95 % m", "floor", "site", "compared", "time");
		for (Way way : run.measured().ways()) {
			PositionErrors e = way.errors();
			table.row(FileRun.nameOf(way), f("%.3f", e.meanMetres()),
					f("%.3f", way.mean().low()) + " … " + f("%.3f", way.mean().high()),
					f("%.3f", e.medianMetres()), f("%.3f", e.rmseMetres()), f("%.3f", e.p75Metres()),
					f("%.3f", e.p90Metres()), f("%.3f", e.p95Metres()), f("%.1f %%", 100 * e.floorHitRate()),
					f("%.1f %%", 100 * e.siteHitRate()), f("%.1f", way.comparisons()),
					f("%.3f", run.measured().timeRatios().get(way.name())));
		}
		table.print(out);
		out.println();
		out.println(Words.bind(Messages.Results_chosen, run.measured().way(Measures.RELEASED).how()));
		out.println(
				Messages.Results_errorsInThePlanePercentiles);
		out.println(Messages.Results_timeProcessorTimeToPlain);
	}

	static Json split(Split split, SplitFacts facts) {
		boolean dbscan = split.getMethod() == null;
		return new Json().put("id", split.getId()).put("scope", split.getScope().toString())
				.put("method", dbscan ? "dbscan" : split.getMethod())
				.put("epsilon", dbscan ? split.getEpsilon() : null).put("minPts", dbscan ? split.getMinPts() : null)
				.put("representation", split.getRepresentation()).put("distance", split.getDistance())
				.put("samples", facts.samples()).put("clusters", facts.clusters()).put("noise", facts.noise())
				.put("noiseShare", facts.noiseShare()).put("largest", facts.largest())
				.put("comparisonsPerQuery", facts.comparisonsPerQuery()).put("comparisonShare", facts.comparisonShare())
				.put("meanErrorM", facts.meanErrorMetres()).put("plainMeanErrorM", facts.plainErrorMetres())
				.put("basis", facts.basis())
				.put("search", split.getSearch() == null ? null : split.getSearch().code())
				.put("searchReason", split.getSearchReason())
				.put("inRelease", split.isInRelease());
	}

	static void printSplit(Split split, SplitFacts facts, PrintWriter out) {
		String method = split.getMethod() != null ? split.getMethod()
				: String.format(Locale.ROOT, Messages.Results_minpts, split.getEpsilon(), split.getMinPts());
		out.printf(Locale.ROOT, Messages.Results_splitSamples, split.getId(), split.getScope(),
				facts.samples(), method, split.getRepresentation(), split.getDistance());
		out.println(Words.bind(Messages.Results_from, facts, facts.basis()));
		printSearch(split, out);
	}

	static Json proposals(String split, SplitProposals made, EvidenceTable evidence) {
		return new Json().put("split", split).put("made", made.made()).put("unplaced", made.unplaced())
				.put("gateReached", made.open())
				.put("noiseShare", made.noiseShare()).put("nearestDiffers", differing(evidence))
				.put("withWarnings", evidence.all().stream().filter(e -> e.made() && !e.warnings().isEmpty()).count())
				.put("effectBasis", evidence.basis());
	}

	private static long differing(EvidenceTable evidence) {
		return evidence.all().stream().filter(e -> e.made() && !e.agrees()).count();
	}

	static void printProposals(String split, SplitProposals made, EvidenceTable evidence, PrintWriter out) {
		if (!made.open()) {
			out.printf(Locale.ROOT,
					Messages.Results_proposalsNoneForNoiseIs,
					split,
					100 * made.noiseShare(), 100 * made.rule().gate(), made.unplaced());
			return;
		}
		out.printf(Locale.ROOT, Messages.Results_proposalsMadeForRSamples, made.made(), split,
				made.rule().threshold(), made.unplaced());
		out.printf(Locale.ROOT, Messages.Results_ofTheNearestLabelledSample,
				differing(evidence),
				evidence.basis());
		out.println(Words.bind(Messages.Results_advice, advice(evidence)));
		for (Advice advice : Advice.values()) {
			if (evidence.all().stream().anyMatch(e -> e.made() && e.advice() == advice)) {
				out.println("             " + advice.word() + ": " + evidence.rates().of(advice).text());
			}
		}
		Map<Warning, Long> warnings = evidence.all().stream().filter(Evidence::made).flatMap(e -> e.warnings().stream())
				.collect(Collectors.groupingBy(w -> w, TreeMap::new, Collectors.counting()));
		out.println(Words.bind(Messages.Results_warnings, warnings.isEmpty() ? "none"
				: warnings.entrySet().stream()
						.map(w -> w.getValue() + " " + w.getKey().name().toLowerCase(Locale.ROOT).replace('_', ' '))
						.collect(Collectors.joining(", "))));
	}

	static Json measurement(ReleasedMap map, Measures measured) {
		return new Json().put("split", map.splits().isEmpty() ? null : String.join(", ", map.splits()))
				.put("samples", map.map().size())
				.put("testSamples", measured.test()).put("approved", map.joined()).put("open", map.open())
				.put("notes", map.notes())
				.put("variants", measured.ways().stream().map(way -> way(way.name(), way).fields()).toList());
	}

	static void printMeasurement(ReleasedMap map, Measures measured, PrintWriter out) {
		out.printf(Locale.ROOT, Messages.Results_measuredOnTestSamplesApproved,
				map.splits().isEmpty() ? Messages.Results_theMapWhichIsNot
						: Words.bind(Messages.Results_split, String.join(", ", map.splits())),
				measured.test(), map.joined(),
				map.open());
		map.notes().forEach(note -> out.println("             " + note));
		ConsoleTable table = new ConsoleTable("matching", Messages.Results_meanM, Messages.Results_95OfMean,
				Messages.Results_medianM, "75 % m", "95 % m",
				"floor", "site", Messages.Results_toPlain,
				Messages.Results_95OfRatio, "compared", "share");
		for (Way way : measured.ways()) {
			PositionErrors e = way.errors();
			table.row(way.name(), f("%.3f", e.meanMetres()),
					f("%.3f", way.mean().low()) + " … " + f("%.3f", way.mean().high()),
					f("%.3f", e.medianMetres()), f("%.3f", e.p75Metres()), f("%.3f", e.p95Metres()),
					f("%.1f %%", 100 * e.floorHitRate()),
					f("%.1f %%", 100 * e.siteHitRate()), f("%.3f", way.ratio()),
					f("%.3f", way.ratioInterval().low()) + " … " + f("%.3f", way.ratioInterval().high()),
					f("%.1f", way.comparisons()),
					f("%.1f %%", 100 * way.comparisonShare()));
		}
		table.print(out);
		out.println(Words.bind(Messages.Results_released, measured.way(Measures.RELEASED).how()));
		out.println(
				Messages.Results_errorsInThePlanePercentiles2);
		out.println(Messages.Results_comparedFingerprintsPerQuery);
	}

	static Json standings(Standings standings, Json result) {
		standings.counts().forEach((state, count) -> result.put(state.toString().replace(" a", "A"), count));
		Agreement agreement = standings.agreement();
		Kappa kappa = agreement.kappa();
		return result.put("awaitingSecond", standings.awaitingSecond()).put("open", standings.open())
				.put("judgedByTwo", kappa.items())
				.put("kappa", kappa.value()).put("kappaLow", kappa.interval(CONFIDENCE).low())
				.put("kappaHigh", kappa.interval(CONFIDENCE).high()).put("kappaDegenerate", agreement.isDegenerate())
				.put("disputedSamples", standings.disputes().stream().map(s -> s.sample().toString()).toList());
	}

	static void printStandings(Standings standings, PrintWriter out) {
		out.println(Words.bind(Messages.Results_proposalsOf, standings.split(),
				standings.counts().entrySet().stream().filter(e -> e.getValue() > 0)
						.map(e -> e.getValue() + " " + e.getKey()).collect(Collectors.joining(", "))));
		if (standings.awaitingSecond() > 0) {
			out.println(Words.bind(Messages.Results_waitForASecondReviewer, standings.awaitingSecond()));
		}
		out.println(
				"             " + (standings.open() == 0 ? Messages.Results_allDecided
						: Words.bind(Messages.Results_holdAReleaseBack, standings.open())));
		Agreement agreement = standings.agreement();
		if (agreement.kappa().items() > 0) {
			out.println(Words.bind(Messages.Results_agreementSamplesJudgedByTwo, agreement.kappaText(),
					agreement.kappa().items(), agreement.differing().size()));
		}
		standings.disputes().forEach(s -> out.println(Words.bind(Messages.Results_disputed, s.sample())));
	}

	private static String f(String format, double value) {
		return Double.isNaN(value) ? "–" : String.format(Locale.ROOT, format, value);
	}
}
