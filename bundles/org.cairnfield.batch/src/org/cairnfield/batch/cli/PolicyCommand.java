package org.cairnfield.batch.cli;

import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.decide.ReviewRefused;
import org.cairnfield.curation.decide.SetReviewPolicyCommand;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "policy", description = {
		"${bundle:PolicyCommand_what}",
		"${bundle:PolicyCommand_more}" })
final class PolicyCommand extends ArchiveCommand {

	@Mixin
	PolicyArgs policyArgs;

	@Option(names = "--no-second", descriptionKey = "PolicyCommand_noSecond")
	boolean noSecond;

	@Option(names = "--audit-limit", paramLabel = "SHARE", descriptionKey = "PolicyCommand_auditLimit")
	Double limit;

	@Option(names = "--audit-confidence", paramLabel = "SHARE", descriptionKey = "PolicyCommand_auditConfidence")
	Double confidence;

	@Override
	Mode mode() {
		return changes() ? Mode.EDIT : Mode.READ;
	}

	private boolean changes() {
		return policyArgs.bands != null || !policyArgs.second.isEmpty() || noSecond || limit != null
				|| confidence != null;
	}

	@Override
	void checkArguments() {
		if (noSecond && !policyArgs.second.isEmpty()) {
			throw new ParameterException(spec.commandLine(), Messages.PolicyCommand_giveSecondOrNoSecond);
		}
		policyArgs.check();
		audited(ReviewPolicy.USUAL);
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		if (changes()) {
			ReviewPolicy wanted = audited(policyArgs.over(before(archive)));
			new SetReviewPolicyCommand(archive.archive(), noSecond ? wanted.withSecond(Set.of()) : wanted)
					.executeIfAnother();
			record(archive);
		}
		ReviewPolicy policy = new PolicyArgs().policy(archive);
		if (json) {
			printJson(new Json().put("bands", policy.bands().toString())
					.put("second", new TreeSet<>(policy.secondBands()).stream().toList())
					.put("auditLimit", policy.limitShare()).put("auditConfidence", policy.confidence()));
			return;
		}
		out().println(Words.bind(Messages.PolicyCommand_bands, policy.bands()));
		out().println(Words.bind(Messages.PolicyCommand_second,
				policy.secondBands().isEmpty() ? Messages.PolicyCommand_noBandNeedsASecond
						: String.join(", ", new TreeSet<>(policy.secondBands()))));
		out().printf(Locale.ROOT, Messages.PolicyCommand_auditStopsABandWith,
				100 * policy.limitShare(),
				100 * policy.confidence());
	}

	/** One that cannot be read is replaced. */
	private static ReviewPolicy before(OpenArchive archive) {
		try {
			return ReviewPolicy.of(archive.archive());
		} catch (ReviewRefused e) {
			return ReviewPolicy.USUAL;
		}
	}

	private ReviewPolicy audited(ReviewPolicy other) {
		try {
			return new ReviewPolicy(other.bands(), other.secondBands(), limit == null ? other.limitShare() : limit,
					confidence == null ? other.confidence() : confidence);
		} catch (IllegalArgumentException e) {
			throw new ParameterException(spec.commandLine(), e.getMessage());
		}
	}
}
