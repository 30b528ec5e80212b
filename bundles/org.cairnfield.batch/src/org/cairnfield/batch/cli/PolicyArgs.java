package org.cairnfield.batch.cli;

import java.util.Set;
import java.util.TreeSet;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.propose.Bands;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How a team reviews. */
final class PolicyArgs {

	@Spec(Spec.Target.MIXEE)
	CommandSpec spec;

	@Option(names = "--bands", paramLabel = "TEXT", defaultValue = "loose -1; fair 0.5; close 0.8",
			description = "Bands of strength, weakest first, each a name and its lowest r; default \"${DEFAULT-VALUE}\".")
	String bands;

	@Option(names = "--second", paramLabel = "BAND", description = "A band whose verdicts need a second reviewer; may be repeated.")
	Set<String> second = new TreeSet<>();

	ReviewPolicy policy() {
		try {
			return new ReviewPolicy(Bands.parse(bands), second, ReviewPolicy.USUAL.limitShare(), ReviewPolicy.USUAL.confidence());
		} catch (IllegalArgumentException e) {
			throw new ParameterException(spec.commandLine(), e.getMessage());
		}
	}
}
