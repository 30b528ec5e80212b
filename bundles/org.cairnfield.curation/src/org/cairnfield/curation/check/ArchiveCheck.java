package org.cairnfield.curation.check;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.RuleRun;
import org.cairnfield.curation.rules.RunResult;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.Waiver;
import org.cairnfield.curation.rules.Waivers;
import org.cairnfield.model.Archive;
import org.cairnfield.model.ModelFactory;

/**
 * What the rules say of an archive.
 *
 * @param map     what they looked at
 * @param result  all that they said; give it to the next check, which then asks only about what has changed
 * @param open    findings that no waiver covers, worst first
 * @param waived  those that one does
 */
public record ArchiveCheck(ArchiveMap map, RunResult result, List<Finding> open, List<Finding> waived) {

	/** @param before the result of the check before, or {@link RunResult#NONE} */
	public static ArchiveCheck of(Archive archive, RuleRun rules, RunResult before, Workers workers) {
		ArchiveMap map = ArchiveMap.of(archive);
		RunResult result = rules.over(map.surveyed(), before, workers);
		Waivers waivers = new Waivers(archive.getWaivers().stream().map(ArchiveCheck::fromModel).toList());
		List<Finding> open = waivers.open(result.findings()).stream()
				.sorted((a, b) -> a.severity().compareTo(b.severity())).toList();
		List<Finding> waived = result.findings().stream().filter(f -> waivers.covering(f).isPresent()).toList();
		return new ArchiveCheck(map, result, open, waived);
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
		long[] keys = Arrays.stream(kept.getContentKey().split(" ")).mapToLong(k -> Long.parseUnsignedLong(k, 16)).toArray();
		return new Waiver(kept.getRule(), keys, kept.getReason(), kept.getPerson(), kept.getTime());
	}
}
