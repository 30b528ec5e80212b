package org.cairnfield.curation.decide;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.Round;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.SampleKey;

/**
 * Where all noise samples of a split stand, as the ledger and the archive are now. It follows from the ledger alone:
 * later verdicts of a round supersede earlier ones, one that takes back makes as if that other had not been given, a
 * resolution counts until one of the two reviewers decides anew. Two first verdicts of people who did not know of each
 * other's count as those of two reviewers: where they differ, a third person settles it. Immutable, for any thread.
 */
public final class Standings {

	private final String split;
	private final ReviewPolicy policy;
	private final Map<SampleKey, Standing> standings = new LinkedHashMap<>();
	private final List<LedgerEntry> entries;
	private final SplitMembers members;

	private Standings(String split, ReviewPolicy policy, List<LedgerEntry> entries, SplitMembers members) {
		this.split = split;
		this.policy = policy;
		this.entries = List.copyOf(entries);
		this.members = members;
	}

	/** Costs a pass over the labels, and over the readings of samples that have verdicts. */
	public static Standings of(Archive archive, Split split, ReviewPolicy policy) {
		return of(archive, split, policy, SplitMembers.of(split));
	}

	static Standings of(Archive archive, Split split, ReviewPolicy policy, SplitMembers members) {
		List<LedgerEntry> entries = entries(archive, split);
		Standings found = new Standings(split.getId(), policy, entries, members);
		ContentOfReview content = new ContentOfReview(archive, split, members);
		Map<SampleKey, List<LedgerEntry>> bySample = new HashMap<>();
		entries.forEach(entry -> bySample.computeIfAbsent(entry.sample(), s -> new ArrayList<>()).add(entry));
		for (SampleKey key : members.noise()) {
			found.standings.put(key, standing(split, key, bySample.getOrDefault(key, List.of()), content, policy));
		}
		return found;
	}

	/**
	 * The same with some samples as they stand now, for when nothing but verdicts on these has changed since: what a key of
	 * the reviewer costs does not grow with the noise.
	 *
	 * @param split the one that this was made of, with the same labels and proposals
	 */
	public Standings renewed(Archive archive, Split split, Collection<SampleKey> changed) {
		List<LedgerEntry> now = entries(archive, split);
		Standings found = new Standings(split.getId(), policy, now, members);
		found.standings.putAll(standings);
		ContentOfReview content = new ContentOfReview(archive, split, members);
		for (SampleKey key : Set.copyOf(changed)) {
			List<LedgerEntry> own = now.stream().filter(entry -> entry.sample().equals(key)).toList();
			found.standings.computeIfPresent(key, (sample, was) -> standing(split, sample, own, content, policy));
		}
		return found;
	}

	/** What follows from the labels alone. */
	SplitMembers members() {
		return members;
	}

	/** Of one sample alone; empty where it is not noise in the split. */
	static Optional<Standing> one(Archive archive, Split split, SampleKey key, ContentOfReview content,
			ReviewPolicy policy) {
		int row = split.getLabels() == null ? -1 : split.getLabels().row(key);
		if (row < 0 || split.getLabels().cluster(row) != Labels.NOISE) {
			return Optional.empty();
		}
		List<LedgerEntry> entries = ledger(archive, split.getId()).map(ledger -> ledger.getVerdicts().stream()
				.filter(v -> key.equals(v.getSample()) && split.getId().equals(v.getSplit())).map(LedgerEntry::of)
				.toList())
				.orElse(List.of());
		return Optional.of(standing(split, key, entries, content, policy));
	}

	/** Verdicts of a split, in the order given. */
	static List<LedgerEntry> entries(Archive archive, Split split) {
		return ledger(archive, split.getId()).map(ledger -> ledger.getVerdicts().stream().map(LedgerEntry::of)
				.filter(entry -> split.getId().equals(entry.split()) && entry.sample() != null).toList())
				.orElse(List.of());
	}

	/** The ledger of a split. */
	static Optional<Ledger> ledger(Archive archive, String split) {
		return archive.getLedgers().stream().filter(ledger -> split.equals(ledger.getId())).findFirst();
	}

	private static Standing standing(Split split, SampleKey key, List<LedgerEntry> entries, ContentOfReview content,
			ReviewPolicy policy) {
		Optional<Proposal> proposal = content.proposal(key);
		boolean made = proposal.filter(p -> p.strengthR() >= split.getThreshold()).isPresent();
		Folded folded = Folded.of(entries, content::holds);
		boolean stale = folded.first != null && !content.holds(folded.first);
		Optional<LedgerEntry> first = Optional.ofNullable(folded.first);
		Optional<LedgerEntry> second = Optional.ofNullable(folded.second).filter(e -> !stale && content.holds(e));
		Optional<LedgerEntry> resolution = Optional.ofNullable(folded.resolution)
				.filter(e -> !stale && content.holds(e));
		ReviewState state;
		if (!content.isKept(key)) {
			state = ReviewState.SET_ASIDE;
		} else if (stale) {
			state = ReviewState.STALE;
		} else {
			state = Standing.decided(first, second, resolution)
					.orElse(made ? ReviewState.UNDECIDED : ReviewState.UNPLACED);
		}
		boolean needsSecond = made && policy.needsSecond(proposal.get().strengthR());
		return new Standing(key, proposal, made, state, List.copyOf(entries), first, second, resolution, stale,
				needsSecond, false);
	}

	/** The verdict of each round that counts. Whoever gave a first verdict without knowing of another's was a second reviewer. */
	private static final class Folded {
		private LedgerEntry first;
		private LedgerEntry second;
		private LedgerEntry resolution;

		private final Predicate<LedgerEntry> holds;

		Folded(Predicate<LedgerEntry> holds) {
			this.holds = holds;
		}

		/** @param holds whether what a verdict rests on is as it was */
		static Folded of(List<LedgerEntry> entries, Predicate<LedgerEntry> holds) {
			Set<String> gone = takenBack(entries);
			Folded folded = new Folded(holds);
			for (LedgerEntry entry : entries) {
				if (!entry.takesBack() && !gone.contains(entry.id())) {
					folded.add(entry);
				}
			}
			return folded;
		}

		private boolean isIndependent(LedgerEntry entry) {
			return first != null && !entry.isBy(first.person()) && !first.id().equals(entry.supersedes())
					&& holds.test(first);
		}

		private void add(LedgerEntry entry) {
			if (entry.round() == Round.RESOLUTION) {
				resolution = entry;
			} else {
				resolution = null;
				if (entry.round() == Round.SECOND || isIndependent(entry)) {
					second = entry;
				} else {
					first = entry;
				}
			}
		}
	}

	static Set<String> takenBack(List<LedgerEntry> entries) {
		Set<String> ids = new HashSet<>();
		for (LedgerEntry entry : entries) {
			if (entry.takesBack()) {
				ids.add(entry.supersedes());
			}
		}
		return ids;
	}

	/** Id of the split. */
	public String split() {
		return split;
	}

	public ReviewPolicy policy() {
		return policy;
	}

	/** All noise samples, by survey and sample. */
	public List<Standing> all() {
		return List.copyOf(standings.values());
	}

	/** Of a noise sample of the split. */
	public Optional<Standing> of(SampleKey sample) {
		return Optional.ofNullable(standings.get(sample));
	}

	/** All verdicts, in the order given. */
	public List<LedgerEntry> entries() {
		return entries;
	}

	/** How many samples stand where. */
	public Map<ReviewState, Integer> counts() {
		Map<ReviewState, Integer> counts = new EnumMap<>(ReviewState.class);
		for (ReviewState state : ReviewState.values()) {
			counts.put(state, 0);
		}
		standings.values().forEach(standing -> counts.merge(standing.state(), 1, Integer::sum));
		return counts;
	}

	/** How many wait for a second reviewer. */
	public int awaitingSecond() {
		return (int) standings.values().stream().filter(Standing::awaitsSecond).count();
	}

	/** How many hold a release back: undecided, deferred, disputed, stale, or without the second verdict that they need. */
	public int open() {
		return (int) standings.values().stream().filter(Standing::isOpen).count();
	}

	/** Agreement of the two reviewers. */
	public Agreement agreement() {
		return Agreement.of(this);
	}

	/** Agreement of a person with others, where the person was one of the two; theirs are the rows. */
	public Agreement agreement(String person) {
		return Agreement.of(this, person);
	}

	/**
	 * The audit of a band that is under way, or a new one.
	 *
	 * @param marks samples to be looked at one by one
	 * @throws ReviewRefused where there is no such band
	 */
	public AuditPlan audit(String band, Set<SampleKey> marks) {
		return AuditPlan.of(this, band, marks);
	}

	/**
	 * The same, but another one where the one under way has failed.
	 *
	 * @param marks samples to be looked at one by one
	 * @throws ReviewRefused where there is no such band
	 */
	public AuditPlan auditAnew(String band, Set<SampleKey> marks) {
		return AuditPlan.anew(this, band, marks);
	}

	/** Samples on which two reviewers disagree and nobody has settled it. */
	public List<Standing> disputes() {
		return standings.values().stream().filter(s -> s.state() == ReviewState.DISPUTED).toList();
	}
}
