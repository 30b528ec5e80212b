package org.cairnfield.curation.review;

import java.util.List;

import org.cairnfield.curation.decide.Home;
import org.cairnfield.curation.decide.ReviewState;
import org.cairnfield.curation.decide.Ruling;
import org.cairnfield.curation.decide.Standing;
import org.cairnfield.curation.decide.Standings;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.SampleKey;

/** How the noise samples of the split under review stand, for all and as far as the person may know. */
public final class ReviewStandings {

	private PersonalStandings now;

	ReviewStandings() {
	}

	void clear() {
		now = null;
	}

	/** Reads the ledger, and computes what has changed since it was read last. @return what was known before; null for nothing */
	PersonalStandings read(Archive archive, Split split, PersonalStandings.Basis basis) {
		PersonalStandings before = now;
		now = PersonalStandings.of(archive, split, basis, before);
		return before;
	}

	/** The sample whose verdict is not read from the ledger yet; null for none. */
	SampleKey predicted() {
		return now == null ? null : now.predicted();
	}

	boolean isOf(PersonalStandings.Basis basis) {
		return now != null && now.isOf(basis);
	}

	/** A verdict was given; the ledger is read later. */
	void expect(SampleKey sample, ReviewState state, Ruling ruling) {
		if (now != null) {
			now = now.expecting(sample, state, ruling);
		}
	}

	PersonalStandings now() {
		return now;
	}

	/** As the ledger has it; null while there is no split. What this holds may have to be hidden from the person. */
	public Standings all() {
		return now == null ? null : now.all();
	}

	/** How a sample stands, as far as the person may know; null for one that is not noise. */
	public Standing of(SampleKey sample) {
		return now == null ? null : now.seen(sample);
	}

	/** Where a sample stands, in words with a sign. */
	public String text(SampleKey sample) {
		return StandingWords.of(of(sample));
	}

	/** Whether the person still has something to decide about it. */
	public boolean isLeft(QueueRow row) {
		Standing standing = of(row.key());
		return standing != null && row.evidence().made() && PersonalStandings.isLeft(standing);
	}

	/** Where each noise sample goes as things stand, those that nobody has decided about included. */
	public List<Home> homes() {
		return now == null ? List.of() : now.all().all().stream().map(Standing::home).toList();
	}
}
