package org.cairnfield.batch.cli;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.measure.PackRequest;
import org.cairnfield.curation.split.SplitsInRelease;
import org.cairnfield.exchange.pack.PackSettings;
import org.cairnfield.model.Archive;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How a device is to search, and how coarsely levels are written. */
final class PackArgs {

	@Option(names = "--step-db", paramLabel = "DB", defaultValue = "1", descriptionKey = "PackArgs_stepDb")
	int stepDb;

	@Option(names = "--probes", paramLabel = "N", descriptionKey = "PackArgs_probes")
	Integer probes;

	@Option(names = "--voters", paramLabel = "K", descriptionKey = "PackArgs_voters")
	Integer voters;

	@Option(names = "--split", paramLabel = "NAME", descriptionKey = "PackArgs_split2")
	List<String> splits = List.of();

	@Spec(Spec.Target.MIXEE)
	CommandSpec spec;

	/** @throws ParameterException for a number out of range */
	PackRequest request() {
		try {
			return new PackRequest(stepDb, number(probes), number(voters), Optional.empty());
		} catch (IllegalArgumentException e) {
			throw new ParameterException(spec.commandLine(), e.getMessage(), e);
		}
	}

	private static OptionalInt number(Integer given) {
		return given == null ? OptionalInt.empty() : OptionalInt.of(given);
	}

	/** Chooses the splits that are named; where the archive is open for reading only, nothing of it is kept. */
	void choose(Archive archive) throws ArchiveException {
		if (!splits.isEmpty()) {
			SplitsInRelease.Choose choice = new SplitsInRelease.Choose(archive, ArchiveWork.splits(archive, splits));
			if (choice.canExecute()) {
				choice.execute();
			}
		}
	}

	/** @throws ParameterException where splits are named for something that has its own already */
	void requireNoSplit(String why) {
		if (!splits.isEmpty()) {
			throw new ParameterException(spec.commandLine(), Words.bind(Messages.PackArgs_split, why));
		}
	}

	/** Likewise for a pack of a release: as it was made, unless something else is asked for. */
	PackRequest request(PackSettings released) {
		return probes == null && voters == null && stepDb == 1 ? PackRequest.like(released) : request();
	}
}
