package org.cairnfield.batch.cli;

import java.util.stream.Collectors;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
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

	@Option(names = "--name", paramLabel = "NAME", descriptionKey = "ArchiveSplitArgs_name")
	String name;

	@Option(names = "--scope", paramLabel = "SCOPE", defaultValue = "archive", descriptionKey = "ArchiveSplitArgs_scope")
	String scope;

	@Option(names = "--per-floor", descriptionKey = "ArchiveSplitArgs_perFloor")
	boolean perFloor;

	@Option(names = "--method", paramLabel = "METHOD", descriptionKey = "ArchiveSplitArgs_method")
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
					Messages.ArchiveSplitArgs_methodFindsItsSettingAnd);
		}
		if (method.equals(BEST)) {
			return new MethodSplits().best(archive, plan, workers);
		}
		StudyMethod wanted = wanted();
		MethodSplits.whyNot(wanted).ifPresent(why -> {
			throw new ParameterException(spec.commandLine(),
					Words.bind(Messages.ArchiveSplitArgs_aSplitByIsNot, method, why));
		});
		return new MethodSplits().make(archive, plan, wanted, workers);
	}

	private StudyMethod wanted() {
		try {
			return StudyMethod.of(method);
		} catch (IllegalArgumentException e) {
			throw new ParameterException(spec.commandLine(), Words.bind(Messages.ArchiveSplitArgs_methodMustBeOneOf,
					MethodSplits.KEPT.stream().map(StudyMethod::code).collect(Collectors.joining(", ")), BEST, method));
		}
	}

	SplitPlan plan(SplitRequest request) {
		if (name == null) {
			throw new ParameterException(spec.commandLine(),
					Messages.ArchiveSplitArgs_nameMustSayUnderWhich);
		}
		try {
			return new SplitPlan(name, Scope.parse(scope), perFloor, request);
		} catch (IllegalArgumentException e) {
			throw new ParameterException(spec.commandLine(), e.getMessage());
		}
	}
}
