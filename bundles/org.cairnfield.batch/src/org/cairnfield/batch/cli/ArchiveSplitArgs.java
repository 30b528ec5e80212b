package org.cairnfield.batch.cli;

import org.cairnfield.curation.split.SplitPlan;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.model.values.Scope;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Which part of an archive is split, and under which name it is kept. */
final class ArchiveSplitArgs {

	@Spec(Spec.Target.MIXEE)
	CommandSpec spec;

	@Option(names = "--name", paramLabel = "NAME", description = "With --archive: name of the split that is kept.")
	String name;

	@Option(names = "--scope", paramLabel = "SCOPE", defaultValue = "archive",
			description = "With --archive: archive (default), site/ID or site/ID/LEVEL.")
	String scope;

	@Option(names = "--per-floor", description = "With --archive: one split for each floor of the scope, named NAME.SITE.LEVEL.")
	boolean perFloor;

	SplitPlan plan(SplitRequest request) {
		if (name == null) {
			throw new ParameterException(spec.commandLine(), "--name must say under which name the archive keeps the split");
		}
		try {
			return new SplitPlan(name, Scope.parse(scope), perFloor, request);
		} catch (IllegalArgumentException e) {
			throw new ParameterException(spec.commandLine(), e.getMessage());
		}
	}
}
