package org.cairnfield.batch.cli;

import java.util.stream.Collectors;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.split.SplitMaker;
import org.cairnfield.curation.split.SplitPlan;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.curation.split.SplitStudies;
import org.cairnfield.curation.study.MethodSplits;
import org.cairnfield.curation.study.StudyMethod;
import org.cairnfield.model.Archive;
import org.cairnfield.model.values.Scope;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Which part of an archive is split, and under which name it is kept. */
final class ArchiveSplitArgs {

	private static final String BEST = "best";

	@Spec(Spec.Target.MIXEE)
	CommandSpec spec;

	@Option(names = "--name", paramLabel = "NAME", description = "With --archive: name of the split that is kept.")
	String name;

	@Option(names = "--scope", paramLabel = "SCOPE", defaultValue = "archive", description = "With --archive: archive (default), site/ID or site/ID/LEVEL.")
	String scope;

	@Option(names = "--per-floor", description = "With --archive: one split for each floor of the scope, named NAME.SITE.LEVEL.")
	boolean perFloor;

	@Option(names = "--method", paramLabel = "METHOD", description = "With --archive: k-means, affinity or kernel-reduction in place of DBSCAN, in the setting that wins on held-out training positions; or best, for whatever of all wins there.")
	String method;

	/** Makes the splits that were asked for. */
	SplitMaker.Made make(Archive archive, SplitPlan plan, Workers workers) {
		if (method == null) {
			return new SplitMaker(new SplitStudies(1)).make(archive, plan, workers);
		}
		SplitRequest request = plan.request();
		if (request.epsilon().isPresent() || request.minPts().isPresent() || request.pcaShare().isPresent()
				|| request.search().isPresent()) {
			throw new ParameterException(spec.commandLine(),
					"--method finds its setting and search itself: leave --epsilon, --min-pts, --pca and --search out");
		}
		if (method.equals(BEST)) {
			return new MethodSplits().best(archive, plan, workers);
		}
		StudyMethod wanted = wanted();
		MethodSplits.whyNot(wanted).ifPresent(why -> {
			throw new ParameterException(spec.commandLine(), "a split by " + method + " is not kept: " + why);
		});
		return new MethodSplits().make(archive, plan, wanted, workers);
	}

	private StudyMethod wanted() {
		try {
			return StudyMethod.of(method);
		} catch (IllegalArgumentException e) {
			throw new ParameterException(spec.commandLine(), "--method must be one of "
					+ MethodSplits.KEPT.stream().map(StudyMethod::code).collect(Collectors.joining(", ")) + " or "
					+ BEST + ", was '" + method + "'");
		}
	}

	SplitPlan plan(SplitRequest request) {
		if (name == null) {
			throw new ParameterException(spec.commandLine(),
					"--name must say under which name the archive keeps the split");
		}
		try {
			return new SplitPlan(name, Scope.parse(scope), perFloor, request);
		} catch (IllegalArgumentException e) {
			throw new ParameterException(spec.commandLine(), e.getMessage());
		}
	}
}
