package org.cairnfield.batch.cli;

import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.decide.ReviewRefused;
import org.cairnfield.curation.decide.SetReviewPolicyCommand;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "policy", description = {
		"Show or change how proposals are reviewed: bands of strength, second reviewers, audits.",
		"Gates, reports and the workbench use the same. With options it is changed, as one save point." })
final class PolicyCommand extends ArchiveCommand {

	@Mixin
	PolicyArgs policyArgs;

	@Option(names = "--no-second", description = "No band needs a second reviewer.")
	boolean noSecond;

	@Option(names = "--audit-limit", paramLabel = "SHARE", description = "An audit stops a band with a larger share of wrong proposals, such as 0.05.")
	Double limit;

	@Option(names = "--audit-confidence", paramLabel = "SHARE", description = "With this probability, such as 0.95.")
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
			throw new ParameterException(spec.commandLine(), "give --second or --no-second, not both");
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
		out().println("bands        " + policy.bands());
		out().println("second       " + (policy.secondBands().isEmpty() ? "no band needs a second reviewer"
				: String.join(", ", new TreeSet<>(policy.secondBands()))));
		out().printf(Locale.ROOT, "audit        stops a band with more than %.3g %% wrong, at %.3g %%%n",
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
