package org.cairnfield.curation.decide;

import java.util.HashSet;
import java.util.Set;
import org.cairnfield.model.Archive;

/**
 * Which verdicts a save point holds. One for each open archive, shared by all that review in it; whoever makes a save
 * point says so.
 */
public final class RecordedVerdicts {

	private final Set<String> ids = new HashSet<>();

	/** Of an archive as it was opened: all its verdicts count as recorded. */
	public static RecordedVerdicts of(Archive archive) {
		RecordedVerdicts recorded = new RecordedVerdicts();
		recorded.savePointMade(archive);
		return recorded;
	}

	/** From now on the verdicts that the archive has are held by a save point. */
	public void savePointMade(Archive archive) {
		archive.getLedgers().forEach(ledger -> ledger.getVerdicts().forEach(verdict -> ids.add(verdict.getId())));
	}

	boolean has(String id) {
		return ids.contains(id);
	}
}
