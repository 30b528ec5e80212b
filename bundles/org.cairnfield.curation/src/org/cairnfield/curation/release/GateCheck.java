package org.cairnfield.curation.release;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;

import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.check.RuleCheck;
import org.cairnfield.curation.check.RuleSettings;
import org.cairnfield.curation.check.RulesAsTold;
import org.cairnfield.curation.decide.ReviewState;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.measure.Measures;
import org.cairnfield.curation.measure.PackRequest;
import org.cairnfield.curation.measure.ReleasedMap;
import org.cairnfield.curation.measure.SideBySide;
import org.cairnfield.curation.measure.TestRun;
import org.cairnfield.curation.measure.Way;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.timeline.AgeRemedies;
import org.cairnfield.curation.timeline.MapAge;
import org.cairnfield.exchange.pack.PackSettings;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Scope;

/**
 * The gates of an archive, asked.
 *
 * @param gates    what was asked
 * @param results  in the order of {@link Gate}
 * @param released the map that was judged
 * @param measures how it positions
 * @param settings of the pack that was measured
 * @param check    what the cleaning rules say
 * @param ages     how old the map of each site is
 */
public record GateCheck(GateSet gates, List<GateResult> results, ReleasedMap released, Measures measures,
		PackSettings settings,
		RuleCheck check, List<MapAge> ages) {

	/**
	 * A release to be no worse than.
	 *
	 * @param version  of it
	 * @param archive  its content
	 * @param settings of its pack
	 */
	public record Last(String version, Archive archive, PackSettings settings) {
	}

	/**
	 * Asks all gates, which takes a run of the rules and several of the matcher.
	 *
	 * @param archive a copy, where others go on changing it
	 * @param last    null before the first release
	 */
	public static GateCheck of(Archive archive, GateSet gates, Last last, PackRequest request, Workers workers) {
		ReleasedMap released = ReleasedMap.of(archive, gates.policy(archive));
		Measures measures = Measures.of(released, ReleasedMap.test(archive), request, workers);
		PackSettings settings = request.settings(released);
		RuleCheck check = RuleCheck.remembering(archive, workers);
		Map<Gate, GateResult> results = new EnumMap<>(Gate.class);
		GateCheck asked = new GateCheck(gates, List.of(), released, measures, settings, check,
				MapAge.of(archive, workers.quietly()));
		gates.bounds().forEach((gate, bound) -> {
			GateResult result = asked.ask(gate, bound, archive, last, workers);
			results.put(gate, result);
		});
		return new GateCheck(gates, List.copyOf(results.values()), released, measures, settings, check, asked.ages);
	}

	private GateResult ask(Gate gate, double bound, Archive archive, Last last, Workers workers) {
		return switch (gate) {
		case FINDINGS -> findings(bound, RuleSettings.of(archive).rules());
		case PROPOSALS -> new GateResult(gate, released.open(), bound, states(), null);
		case SECOND_REVIEW -> new GateResult(gate, released.awaiting(), bound,
				gates.policy(archive).secondBands().isEmpty()
						? Messages.GateCheck_theArchiveAsksForNo
						: Words.bind(Messages.GateCheck_bands,
								String.join(", ", new TreeSet<>(gates.policy(archive).secondBands()))),
				null);
		case ERROR -> new GateResult(gate, measures.errorToPlain(), bound, errors(), null);
		case FLOOR -> new GateResult(gate, measures.floorHitRate(), bound, onTest(), null);
		case COST -> new GateResult(gate, measures.costToPlain(), bound, cost(), null);
		case REGRESSION -> regression(bound, archive, last, workers);
		case MEAN -> new GateResult(gate,
				measures.ways().isEmpty() ? Double.NaN : measures.way(Measures.RELEASED).errors().meanMetres(), bound,
				onTest(), null);
		case P95 -> new GateResult(gate,
				measures.ways().isEmpty() ? Double.NaN : measures.way(Measures.RELEASED).errors().p95Metres(), bound,
				onTest(), null);
		case AGE -> age(bound, archive, workers);
		case FLOOR_MEAN, FLOOR_P95, FLOOR_HITS, SITE_MEAN, SITE_P95, SITE_HITS -> worst(gate, bound, archive);
		};
	}

	private GateResult findings(double bound, RulesAsTold told) {
		List<Finding> errors = check.open().stream().filter(f -> f.severity() == Severity.ERROR).toList();
		List<String> rules = errors.stream().map(Finding::rule).distinct().sorted().toList();
		return new GateResult(Gate.FINDINGS, errors.size() + check.result().failed().size(), bound,
				Words.bind(Messages.GateCheck_samplesCheckedFindingsWaived, check.map().surveyed().size(),
						check.waived().size(),
						rules.isEmpty() ? "" : Words.bind(Messages.GateCheck_errorsBy, String.join(", ", rules)),
						check.result().failed().isEmpty() ? ""
								: Words.bind(Messages.GateCheck_rulesBroke, check.result().failed().size()),
						told.told().isEmpty() ? "" : "; " + String.join("; ", told.words())),
				null);
	}

	private String states() {
		if (released.splits().isEmpty()) {
			return Messages.GateCheck_nothingIsSplit;
		}
		List<String> parts = new ArrayList<>();
		for (ReviewState state : ReviewState.values()) {
			if (released.state(state) > 0) {
				parts.add(released.state(state) + " " + state);
			}
		}
		return Words.bind(Messages.GateCheck_splits, String.join(", ", released.splits()),
				parts.isEmpty() ? Messages.GateCheck_noNoise : String.join(", ", parts));
	}

	private String onTest() {
		return measures.ways().isEmpty() ? Messages.GateCheck_thereIsNoTestSurvey
				: Words.bind(Messages.GateCheck_testSamples, measures.test());
	}

	private String errors() {
		if (measures.ways().isEmpty()) {
			return onTest();
		}
		return String.format(Locale.ROOT, Messages.GateCheck_meanMAsReleasedM, onTest(),
				measures.way(Measures.RELEASED).errors().meanMetres(),
				measures.way(TestRun.PLAIN).errors().meanMetres());
	}

	private String cost() {
		if (measures.ways().isEmpty()) {
			return onTest();
		}
		return String.format(Locale.ROOT, Messages.GateCheck_fingerprintsComparedAQueryOf,
				measures.way(Measures.RELEASED).comparisons(),
				released.map().size());
	}

	private GateResult regression(double bound, Archive archive, Last last, Workers workers) {
		if (last == null) {
			return new GateResult(Gate.REGRESSION, 0, bound, Messages.GateCheck_thereIsNoReleaseTo, null);
		}
		if (measures.ways().isEmpty()) {
			return new GateResult(Gate.REGRESSION, Double.NaN, bound, onTest(), null);
		}
		ReleasedMap before = ReleasedMap.of(last.archive(), gates.policy(last.archive()));
		if (before.map().size() == 0) {
			return new GateResult(Gate.REGRESSION, 0, bound,
					Words.bind(Messages.GateCheck_releaseHoldsNoSample, last.version()), null);
		}
		Way then = Measures.released(before, ReleasedMap.test(archive), last.settings(), null, workers);
		double now = measures.way(Measures.RELEASED).errors().meanMetres();
		return new GateResult(Gate.REGRESSION, now / then.mean().high(), bound,
				String.format(Locale.ROOT,
						Messages.GateCheck_onTheSameTestSamples,
						measures.test(),
						now, last.version(), then.errors().meanMetres(), then.mean().low(), then.mean().high()),
				null);
	}

	/** A site counts where something that can be done about its age makes it better, as measured on its latest survey. */
	private static GateResult age(double bound, Archive archive, Workers workers) {
		List<String> contradicted = new ArrayList<>();
		for (Site site : archive.getSites()) {
			AgeRemedies.of(archive, site, workers)
					.ifPresent(plan -> plan.best().ifPresent(best -> contradicted.add(String.format(Locale.ROOT,
							Messages.GateCheck_surveyOfMToM, ArchiveMap.nameOf(site), plan.day(),
							best.kind().title().toLowerCase(Locale.ROOT),
							best.before().metres(), best.after().metres()))));
		}
		return new GateResult(Gate.AGE, contradicted.size(), bound,
				contradicted.isEmpty() ? Messages.GateCheck_noRemedyForAgeHelps : String.join("; ", contradicted),
				null);
	}

	/** Of the floor or site that has the worst figure. */
	private GateResult worst(Gate gate, double bound, Archive archive) {
		if (measures.ways().isEmpty()) {
			return new GateResult(gate, Double.NaN, bound, onTest(), null);
		}
		WorstPlace worst = WorstPlace.of(gate, SideBySide.of(ArchiveMap.of(archive, Scope.ARCHIVE, SurveyKind.TEST),
				List.of(measures.way(Measures.RELEASED))));
		return new GateResult(gate, worst.figure(), bound, worst.words(), null);
	}

	/** Gates that hold the release back. */
	public List<GateResult> holding() {
		return results.stream().filter(GateResult::holds).toList();
	}

	/**
	 * The same with gates overridden.
	 *
	 * @param by by gate
	 */
	public GateCheck overruled(Map<Gate, GateResult.Overrule> by) {
		return new GateCheck(gates,
				results.stream().map(r -> by.containsKey(r.gate()) ? r.overridden(by.get(r.gate())) : r).toList(),
				released, measures, settings, check, ages);
	}
}
