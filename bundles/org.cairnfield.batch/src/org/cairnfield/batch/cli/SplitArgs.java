package org.cairnfield.batch.cli;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.task.TimeLimit;
import org.cairnfield.curation.split.SplitRequest;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How to split, and when to propose. */
final class SplitArgs {

	@Spec(Spec.Target.MIXEE)
	CommandSpec spec;

	@Option(names = "--epsilon", paramLabel = "E", description = "DBSCAN's ε; otherwise chosen on held-out training positions.")
	Double epsilon;

	@Option(names = "--min-pts", paramLabel = "K", description = "DBSCAN's minPts, the sample itself counted; otherwise chosen likewise.")
	Integer minPts;

	@Option(names = "--representation", paramLabel = "NAME", defaultValue = "positive", description = "positive (default), normalised, exponential or powed.")
	String representation;

	@Option(names = "--distance", paramLabel = "NAME", defaultValue = "city-block", description = "city-block (default) or euclidean.")
	String distance;

	@Option(names = "--pca", paramLabel = "SHARE", description = "Before DBSCAN reduce to the principal components that explain this share (0 … 1) of the variance.")
	Double pca;

	@Option(names = "--search", paramLabel = "SEARCH", description = "How the split is searched: automatic (chosen on held-out training positions), published (nearest cluster, nearest sample in it), or e.g. \"cut groups 3 cells 4 relative k 3 weighted\". Default automatic; with --archive, --epsilon and --min-pts published.")
	String search;

	@Option(names = "--time", paramLabel = "S", description = "Seconds that the automatic choice may take, default 600; a large map is judged site by site, and what was left out is said.")
	Double seconds;

	@Option(names = "--gate", paramLabel = "SHARE", defaultValue = "0.10", description = "Noise share from which proposals are made; default ${DEFAULT-VALUE}, common practice.")
	double gate;

	@Option(names = "--threshold", paramLabel = "R", defaultValue = "0.1", description = "Smallest correlation for a proposal; default ${DEFAULT-VALUE}, common practice.")
	double threshold;

	@Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "Seed of all that is drawn; default ${DEFAULT-VALUE}.")
	long seed;

	/** Of a split that an archive keeps. */
	SplitRequest kept() {
		SplitRequest request = request();
		return search == null && epsilon != null && minPts != null ? request.published(epsilon, minPts) : request;
	}

	private Optional<Search> search() {
		return search == null || search.equals("automatic") ? Optional.empty()
				: Optional.of(search.equals("published") ? Search.PUBLISHED : Search.parse(search));
	}

	private Duration time() {
		if (seconds == null) {
			return SplitRequest.USUAL_TIME;
		}
		if (!(seconds > 0 && seconds <= TimeLimit.NEVER.toSeconds())) {
			throw new ParameterException(spec.commandLine(),
					"--time must be a number of seconds above 0, was " + seconds);
		}
		return Duration.ofMillis(Math.round(seconds * 1000));
	}

	SplitRequest request() {
		if (epsilon != null && !(epsilon >= 0 && epsilon < Double.POSITIVE_INFINITY)) {
			throw new ParameterException(spec.commandLine(), "--epsilon must be a number from 0 up, was " + epsilon);
		}
		if (minPts != null && minPts < 1) {
			throw new ParameterException(spec.commandLine(), "--min-pts must be at least 1, was " + minPts);
		}
		if (pca != null && !(pca > 0 && pca <= 1)) {
			throw new ParameterException(spec.commandLine(), "--pca must be above 0 and at most 1, was " + pca);
		}
		try {
			return new SplitRequest(Representation.named(representation), Distance.named(distance),
					epsilon == null ? OptionalDouble.empty() : OptionalDouble.of(epsilon),
					minPts == null ? OptionalInt.empty() : OptionalInt.of(minPts),
					pca == null ? OptionalDouble.empty() : OptionalDouble.of(pca), search(), time(), seed);
		} catch (IllegalArgumentException e) {
			throw new ParameterException(spec.commandLine(), e.getMessage());
		}
	}

	ProposalRule rule() {
		try {
			return new ProposalRule(gate, threshold);
		} catch (IllegalArgumentException e) {
			throw new ParameterException(spec.commandLine(), e.getMessage());
		}
	}
}
