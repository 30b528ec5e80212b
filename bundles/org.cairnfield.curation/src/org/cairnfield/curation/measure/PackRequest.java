package org.cairnfield.curation.measure;

import java.util.Optional;
import java.util.OptionalInt;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.match.Voting;
import org.cairnfield.exchange.pack.PackSettings;

/**
 * What a device pack is asked to be.
 *
 * @param levelStepDb levels in whole steps of so many dB, 1 … 16
 * @param cellProbes  cells searched; empty: as the split says
 * @param voters      samples that vote, weighted; empty: likewise
 * @param search      in place of what the split says; empty: as the split says
 */
public record PackRequest(int levelStepDb, OptionalInt cellProbes, OptionalInt voters, Optional<Search> search) {

	/** Levels as they were read, searched as the split says. */
	public static final PackRequest USUAL = new PackRequest(1, OptionalInt.empty(), OptionalInt.empty(),
			Optional.empty());

	/** @throws IllegalArgumentException for a number out of range */
	public PackRequest {
		settings(levelStepDb, cellProbes, voters, Search.USUAL);
	}

	/** The same as a pack that was made before. */
	public static PackRequest like(PackSettings settings) {
		return new PackRequest(settings.levelStepDb(), OptionalInt.empty(), OptionalInt.empty(),
				Optional.of(settings.search()));
	}

	/** What it comes to for a map. */
	public PackSettings settings(ReleasedMap map) {
		return settings(levelStepDb, cellProbes, voters, search.orElse(map.search()));
	}

	private static PackSettings settings(int levelStepDb, OptionalInt cellProbes, OptionalInt voters, Search search) {
		return new PackSettings(levelStepDb, search.with(cellProbes.orElse(search.cellProbes()),
				voters.isPresent() ? new Voting(voters.getAsInt(), true) : search.voting()));
	}
}
