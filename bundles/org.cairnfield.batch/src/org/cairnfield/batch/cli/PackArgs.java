package org.cairnfield.batch.cli;

import org.cairnfield.core.match.Voting;
import org.cairnfield.exchange.pack.PackSettings;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How a device is to search, and how coarsely levels are written. */
final class PackArgs {

	@Option(names = "--step-db", paramLabel = "DB", defaultValue = "1", description = "Levels of the device pack in whole steps of so many dB, 1 to 16; default ${DEFAULT-VALUE}.")
	int stepDb;

	@Option(names = "--probes", paramLabel = "N", defaultValue = "3", description = "Clusters that a device searches, 1 to 100; default ${DEFAULT-VALUE}.")
	int probes;

	@Option(names = "--voters", paramLabel = "K", defaultValue = "3", description = "Samples that vote, weighted, 1 to 100; default ${DEFAULT-VALUE}.")
	int voters;

	@Spec(Spec.Target.MIXEE)
	CommandSpec spec;

	/** @throws ParameterException for a number out of range */
	PackSettings settings() {
		try {
			return new PackSettings(stepDb, probes, true, new Voting(voters, true));
		} catch (IllegalArgumentException e) {
			throw new ParameterException(spec.commandLine(), e.getMessage(), e);
		}
	}
}
