package org.cairnfield.curation.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.RuleRun;
import org.cairnfield.curation.rules.RunResult;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.rules.Waiver;
import org.cairnfield.curation.rules.Waivers;
import org.cairnfield.curation.internal.selftest.SelfTests;
import org.cairnfield.model.Archive;
import org.cairnfield.model.ModelFactory;

/**
 * What the rules say of an archive, and how far they can be trusted there.
 *
 * @param map    what they looked at
 * @param result all that they said
 * @param tests  what came of trying the rules out on this map
 * @param open   findings that no waiver covers, worst first
 * @param waived those that one does
 */
public record RuleCheck(ArchiveMap map, RunResult result, SelfTests tests, List<Finding> open, List<Finding> waived) {

	/** Enough for a large archive, or for dozens of states of a usual one: some 25 MB. */
	private static final RuleMemory MEMORY = new RuleMemory(500_000);

	/**
	 * Everything, computed now.
	 *
	 * @throws java.util.concurrent.CancellationException when cancelled
	 */
	public static RuleCheck of(Archive archive, RuleRun rules, Workers workers) {
		return of(archive, rules, new RuleMemory(0), workers);
	}

	/**
	 * By the rules as the archive tells them, but only what this program has not computed lately, for this archive or another,
	 * is computed.
	 *
	 * @throws java.util.concurrent.CancellationException when cancelled
	 */
	public static RuleCheck remembering(Archive archive, Workers workers) {
		return of(archive, RuleSettings.of(archive).rules().run(), MEMORY, workers);
	}

	static RuleCheck of(Archive archive, RuleRun rules, RuleMemory memory, Workers workers) {
		ArchiveMap map = ArchiveMap.of(archive);
		RunResult result = rules.over(map.surveyed(), memory.results(), workers);
		SelfTests tests = SelfTests.over(map.surveyed(), result, rules, memory.tests(), workers);
		memory.keep(result, tests);
		List<Finding> findings = Judgement.of(result, tests, rules);
		Waivers waivers = new Waivers(archive.getWaivers().stream().map(RuleCheck::fromModel).toList());
		List<Finding> open = waivers.open(findings).stream().sorted((a, b) -> a.severity().compareTo(b.severity()))
				.toList();
		List<Finding> waived = findings.stream().filter(f -> waivers.covering(f).isPresent()).toList();
		return new RuleCheck(map, result, tests, open, waived);
	}

	/** Open and waived, in no order. */
	public List<Finding> findings() {
		return Stream.concat(open.stream(), waived.stream()).toList();
	}

	/** Open findings by the sample that they are about, or that is of a survey that they are about; worst first. */
	public Map<String, List<Finding>> openBySample() {
		Map<String, List<Finding>> bySample = new HashMap<>();
		Map<String, List<Finding>> bySurvey = new HashMap<>();
		for (Finding finding : open) {
			finding.samples()
					.forEach(sample -> bySample.computeIfAbsent(sample.id(), id -> new ArrayList<>(1)).add(finding));
			finding.wholeSurveys()
					.forEach(survey -> bySurvey.computeIfAbsent(survey.id(), id -> new ArrayList<>(1)).add(finding));
		}
		SurveyedMap surveyed = map.surveyed();
		for (int s = 0; s < surveyed.size() && !bySurvey.isEmpty(); s++) {
			List<Finding> whole = bySurvey.getOrDefault(surveyed.surveys().get(surveyed.survey(s)).id(), List.of());
			if (!whole.isEmpty()) {
				bySample.computeIfAbsent(surveyed.sampleId(s), id -> new ArrayList<>(1)).addAll(whole);
			}
		}
		bySample.values().forEach(findings -> findings.sort(Comparator.comparing(Finding::severity)));
		return bySample;
	}

	/** The worst severity among the open findings. */
	public Optional<Severity> worst() {
		return open.stream().map(Finding::severity).min(Severity::compareTo);
	}

	/** A waiver as the archive keeps it: the content it covers is in its key. */
	public static org.cairnfield.model.Waiver toModel(Waiver waiver) {
		org.cairnfield.model.Waiver kept = ModelFactory.eINSTANCE.createWaiver();
		kept.setRule(waiver.rule());
		kept.setContentKey(Arrays.stream(waiver.subjectKeys()).mapToObj(Long::toHexString)
				.collect(Collectors.joining(" ")));
		kept.setReason(waiver.reason());
		kept.setPerson(waiver.person());
		kept.setTime(waiver.when());
		return kept;
	}

	static Waiver fromModel(org.cairnfield.model.Waiver kept) {
		long[] keys = Arrays.stream(kept.getContentKey().split(" ")).mapToLong(k -> Long.parseUnsignedLong(k, 16))
				.toArray();
		return new Waiver(kept.getRule(), keys, kept.getReason(), kept.getPerson(), kept.getTime());
	}
}
