package org.cairnfield.batch.cli;

import java.io.IOException;
import java.time.Clock;
import java.util.Set;
import java.util.TreeSet;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.propose.Bands;
import org.cairnfield.curation.release.ReleaseBook;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How a team reviews: as the archive says, unless options say otherwise for this once. */
final class PolicyArgs {

	@Spec(Spec.Target.MIXEE)
	CommandSpec spec;

	@Option(names = "--bands", paramLabel = "TEXT", descriptionKey = "PolicyArgs_bands")
	String bands;

	@Option(names = "--second", paramLabel = "BAND", descriptionKey = "PolicyArgs_second")
	Set<String> second = new TreeSet<>();

	/** Fails for options that are wrong in any archive. */
	void check() {
		if (bands != null) {
			over(ReviewPolicy.USUAL);
		}
	}

	/** That of an archive, with what the options say in place of it. */
	ReviewPolicy policy(OpenArchive archive) throws IOException {
		return over(new ReleaseBook(archive, Clock.systemUTC()).gates().policy(archive.archive()));
	}

	/** What the options say, the rest as in another policy. */
	ReviewPolicy over(ReviewPolicy other) {
		try {
			Bands own = bands == null ? other.bands() : Bands.parse(bands);
			Set<String> needing = !second.isEmpty() ? second : bands == null ? other.secondBands() : Set.of();
			return new ReviewPolicy(own, needing, other.limitShare(), other.confidence());
		} catch (IllegalArgumentException e) {
			throw new ParameterException(spec.commandLine(), e.getMessage());
		}
	}
}
