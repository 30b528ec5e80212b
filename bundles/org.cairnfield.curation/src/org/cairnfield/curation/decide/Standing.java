package org.cairnfield.curation.decide;

import java.util.List;
import java.util.Optional;
import org.cairnfield.model.Decision;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.SampleKey;

/**
 * Where one noise sample stands.
 *
 * @param proposal       its best cluster, also below the threshold
 * @param made           whether it is proposed: r reaches the threshold
 * @param state          what follows from the verdicts
 * @param entries        all verdicts on it, in the order given, superseded ones and those taken back included
 * @param first          the first reviewer's that counts, stale or not
 * @param second         the second reviewer's that counts
 * @param resolution     what settled the two
 * @param stale          whether the first verdict no longer counts, since what it rested on has changed
 * @param needsSecond    whether its band needs a second reviewer
 * @param hidden         whether verdicts are not shown, since the person who asks is to give the second
 */
public record Standing(SampleKey sample, Optional<Proposal> proposal, boolean made, ReviewState state,
		List<LedgerEntry> entries, Optional<LedgerEntry> first, Optional<LedgerEntry> second,
		Optional<LedgerEntry> resolution, boolean stale, boolean needsSecond, boolean hidden) {

	/** Whether a second reviewer has still to look. */
	public boolean awaitsSecond() {
		return needsSecond && !stale && second.isEmpty() && resolution.isEmpty()
				&& state.isDecided();
	}

	/** Whether somebody has still to decide, the second reviewer included. */
	public boolean isOpen() {
		return state.isOpen() || awaitsSecond();
	}

	/** Whether the sample joins the cluster that was proposed: approved, by two where two are needed. */
	public boolean joins() {
		return state == ReviewState.APPROVED && !awaitsSecond();
	}

	/** Where the sample goes as things stand, by the word of two where two are needed; out while nobody has decided. */
	public Home home() {
		if (awaitsSecond()) {
			return Home.OUT;
		}
		return switch (state) {
		case APPROVED -> made ? Home.cluster(proposal.get().cluster()) : Home.OUT;
		case MOVED -> counting().map(entry -> Home.cluster(entry.cluster())).orElse(Home.OUT);
		case POOLED -> Home.POOL;
		default -> Home.OUT;
		};
	}

	/** The verdict that counts: what settled two, or the first; empty where it is stale. */
	public Optional<LedgerEntry> counting() {
		return stale ? Optional.empty() : resolution.isPresent() ? resolution : first;
	}

	/** Whether a person could give the second verdict. */
	public boolean canBeSecond(String person) {
		return awaitsSecond() && !first.get().isBy(person);
	}

	/** As somebody may see it: who is to give the second verdict is not shown the first. */
	public Standing seenBy(String person) {
		return !canBeSecond(person) ? this
				: new Standing(sample, proposal, made, ReviewState.UNDECIDED, List.of(),
						Optional.empty(), Optional.empty(), Optional.empty(), false, true, true);
	}

	/** What the verdicts say; empty where they do not. */
	static Optional<ReviewState> decided(Optional<LedgerEntry> first, Optional<LedgerEntry> second,
			Optional<LedgerEntry> resolution) {
		if (resolution.isPresent()) {
			return Optional.of(state(resolution.get().decision()));
		}
		if (first.isPresent() && second.isPresent() && !first.get().agreesWith(second.get())) {
			return Optional.of(ReviewState.DISPUTED);
		}
		return first.map(entry -> state(entry.decision()));
	}

	private static ReviewState state(Decision decision) {
		return switch (decision) {
		case APPROVE -> ReviewState.APPROVED;
		case MOVE -> ReviewState.MOVED;
		case POOL -> ReviewState.POOLED;
		case REJECT, FAULTY -> ReviewState.REJECTED;
		default -> ReviewState.DEFERRED;
		};
	}
}
