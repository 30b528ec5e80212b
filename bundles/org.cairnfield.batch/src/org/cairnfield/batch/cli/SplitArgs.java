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
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.split.SplitRequest;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How to split, and when to propose. */
final class SplitArgs {

	@Spec(Spec.Target.MIXEE)
	CommandSpec spec;

	@Option(names = "--epsilon", paramLabel = "E", descriptionKey = "SplitArgs_epsilon")
	Double epsilon;

	@Option(names = "--min-pts", paramLabel = "K", descriptionKey = "SplitArgs_minPts")
	Integer minPts;

	@Option(names = "--representation", paramLabel = "NAME", defaultValue = "positive", descriptionKey = "SplitArgs_representation")
	String representation;

	@Option(names = "--distance", paramLabel = "NAME", defaultValue = "city-block", descriptionKey = "SplitArgs_distance")
	String distance;

	@Option(names = "--pca", paramLabel = "SHARE", descriptionKey = "SplitArgs_pca")
	Double pca;

	@Option(names = "--search", paramLabel = "SEARCH", descriptionKey = "SplitArgs_search")
	String search;

	@Option(names = "--time", paramLabel = "S", descriptionKey = "SplitArgs_time")
	Double seconds;

	@Option(names = "--gate", paramLabel = "SHARE", defaultValue = "0.10", descriptionKey = "SplitArgs_gate")
	double gate;

	@Option(names = "--threshold", paramLabel = "R", defaultValue = "0.1", descriptionKey = "SplitArgs_threshold")
	double threshold;

	@Option(names = "--seed", paramLabel = "N", defaultValue = "1", descriptionKey = "SplitArgs_seed")
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
					Words.bind(Messages.SplitArgs_timeMustBeANumber, seconds));
		}
		return Duration.ofMillis(Math.round(seconds * 1000));
	}

	SplitRequest request() {
		if (epsilon != null && !(epsilon >= 0 && epsilon < Double.POSITIVE_INFINITY)) {
			throw new ParameterException(spec.commandLine(),
					Words.bind(Messages.SplitArgs_epsilonMustBeANumber, epsilon));
		}
		if (minPts != null && minPts < 1) {
			throw new ParameterException(spec.commandLine(), Words.bind(Messages.SplitArgs_minPtsMustBeAt, minPts));
		}
		if (pca != null && !(pca > 0 && pca <= 1)) {
			throw new ParameterException(spec.commandLine(), Words.bind(Messages.SplitArgs_pcaMustBeAbove0, pca));
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
