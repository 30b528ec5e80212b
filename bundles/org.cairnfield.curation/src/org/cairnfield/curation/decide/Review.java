package org.cairnfield.curation.decide;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Round;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.SampleKey;
import org.eclipse.emf.common.command.Command;

/**
 * One person's review of a split: makes the changes of the archive that verdicts are, and keeps to the rules. A verdict
 * is the first one on a proposal; the second one where the band needs two and somebody else gave the first; the
 * resolution where two disagree and the person is neither. Who decides again supersedes their own. Nothing is changed
 * until a command is executed; each is made for the archive as it is, so execute it before the next is asked for.
 */
public final class Review {

	/** Up to so many samples are looked up one by one. */
	private static final int FEW = 4;

	private final Archive archive;
	private final Split split;
	private final String person;
	private final ReviewPolicy policy;
	private final RecordedVerdicts recorded;
	private final Clock clock;
	private final String batch;
	private SplitMembers members;

	/**
	 * @param person who decides
	 * @throws ReviewRefused where nobody is named
	 */
	public Review(Archive archive, Split split, String person, ReviewPolicy policy, RecordedVerdicts recorded,
			Clock clock) {
		this(archive, split, person, policy, recorded, clock, null, SplitMembers.of(split));
	}

	/** Likewise, where standings of the split are known already: nothing is computed from its labels again. */
	public Review(Archive archive, Split split, String person, Standings known, RecordedVerdicts recorded,
			Clock clock) {
		this(archive, split, person, known.policy(), recorded, clock, null, known.members().upToDate(split));
	}

	private Review(Archive archive, Split split, String person, ReviewPolicy policy, RecordedVerdicts recorded,
			Clock clock,
			String batch, SplitMembers members) {
		if (person == null || person.isBlank()) {
			throw new ReviewRefused(Messages.Review_aVerdictCarriesTheName);
		}
		this.archive = archive;
		this.split = split;
		this.person = person.strip();
		this.policy = policy;
		this.recorded = recorded;
		this.clock = clock;
		this.batch = batch;
		this.members = members;
	}

	/** The same review, in which verdicts on the samples that an audit has drawn count for the audit. */
	public Review inAudit(AuditPlan audit) {
		return new Review(archive, split, person, policy, recorded, clock, audit.id(), members);
	}

	/** Where things stand now. */
	public Standings standings() {
		members = members.upToDate(split);
		return Standings.of(archive, split, policy, members);
	}

	private ContentOfReview content() {
		members = members.upToDate(split);
		return new ContentOfReview(archive, split, members);
	}

	/** @throws ReviewRefused where the rules do not allow it */
	public Command approve(SampleKey sample, String reasonCode, String text) {
		return decide(sample, Ruling.of(Decision.APPROVE, reasonCode, text));
	}

	/** Into another cluster, by its number. @throws ReviewRefused where the rules do not allow it */
	public Command move(SampleKey sample, int cluster, String reasonCode, String text) {
		return decide(sample, Ruling.move(cluster, reasonCode, text));
	}

	/** To where every query searches. @throws ReviewRefused where the rules do not allow it */
	public Command pool(SampleKey sample, String reasonCode, String text) {
		return decide(sample, Ruling.of(Decision.POOL, reasonCode, text));
	}

	/** Out of the map, as older tables have it. @param reasonCode not blank; @throws ReviewRefused where the rules do not allow it */
	public Command reject(SampleKey sample, String reasonCode, String text) {
		return decide(sample, Ruling.of(Decision.REJECT, reasonCode, text));
	}

	/** @throws ReviewRefused where the rules do not allow it */
	public Command defer(SampleKey sample, String reasonCode, String text) {
		return decide(sample, Ruling.of(Decision.DEFER, reasonCode, text));
	}

	/** @throws ReviewRefused where the rules do not allow it */
	public Command decide(SampleKey sample, Ruling ruling) {
		return decide(List.of(sample), ruling);
	}

	/** The same verdict on several samples, as one change. @throws ReviewRefused where the rules do not allow one of them */
	public Command decide(Collection<SampleKey> samples, Decision decision, String reasonCode, String text) {
		return decide(samples, Ruling.of(decision, reasonCode, text));
	}

	/** The same verdict on several samples, as one change. @throws ReviewRefused where the rules do not allow one of them */
	public Command decide(Collection<SampleKey> samples, Ruling ruling) {
		ContentOfReview content = content();
		List<LedgerEntry> entries = new ArrayList<>();
		Optional<Standings> all = samples.size() > FEW ? Optional.of(standings()) : Optional.empty();
		for (SampleKey sample : samples) {
			Standing standing = require(all.map(s -> s.of(sample)).orElseGet(() -> standing(sample, content)), sample,
					ruling, content);
			entries.add(entry(standing, ruling, content));
		}
		return command(entries);
	}

	private Command command(List<LedgerEntry> entries) {
		return new GiveVerdictsCommand(archive, split.getId(), entries, recorded, clock);
	}

	private Optional<Standing> standing(SampleKey sample, ContentOfReview content) {
		return Standings.one(archive, split, sample, content, policy);
	}

	private Standing require(Optional<Standing> found, SampleKey sample, Ruling ruling, ContentOfReview content) {
		Standing standing = found
				.orElseThrow(() -> new ReviewRefused(
						Words.bind(Messages.Review_isNotNoiseInSplit, sample, split.getId())));
		if (standing.state() == ReviewState.SET_ASIDE) {
			throw new ReviewRefused(Words.bind(Messages.Review_isNotInTheMap, sample));
		}
		switch (ruling.decision()) {
		case APPROVE -> requireMade(standing);
		case MOVE -> requireOtherCluster(standing, ruling.cluster(), content);
		case REJECT, FAULTY -> requireReason(ruling);
		default -> {}
		}
		return standing;
	}

	private static void requireMade(Standing standing) {
		if (!standing.made()) {
			throw new ReviewRefused(Words.bind(Messages.Review_nothingIsProposedForIts, standing.sample()));
		}
	}

	private void requireOtherCluster(Standing standing, int cluster, ContentOfReview content) {
		if (!content.hasCluster(cluster)) {
			throw new ReviewRefused(
					Words.bind(Messages.Review_splitHasNoClusterTo, split.getId(), cluster, standing.sample()));
		}
		if (standing.made() && standing.proposal().get().cluster() == cluster) {
			throw new ReviewRefused(
					Words.bind(Messages.Review_clusterIsTheOneThat, cluster, standing.sample()));
		}
	}

	private static void requireReason(Ruling ruling) {
		if (!ruling.hasReason()) {
			throw new ReviewRefused(Messages.Review_aSampleLeavesTheMap);
		}
	}

	private LedgerEntry entry(Standing standing, Ruling ruling, ContentOfReview content) {
		Round round = round(standing);
		Optional<LedgerEntry> before = switch (round) {
		case SECOND -> standing.second();
		case RESOLUTION -> standing.resolution();
		default -> standing.first();
		};
		return entry(standing, ruling, content, round, before.map(LedgerEntry::id).orElse(null));
	}

	private LedgerEntry entry(Standing standing, Ruling ruling, ContentOfReview content, Round round,
			String supersedes) {
		SampleKey sample = standing.sample();
		int cluster = ruling.decision() == Decision.MOVE ? ruling.cluster()
				: standing.proposal().map(Proposal::cluster).orElse(Ruling.NO_CLUSTER);
		Optional<String> held = ruling.decision() == Decision.FAULTY ? content.sampleSetAside(sample)
				: content.sample(sample);
		return new LedgerEntry(null, split.getId(), sample, cluster, ruling.decision(),
				blankToNull(ruling.reasonCode()), ruling.ownWords(),
				person, clock.instant(), supersedes, round, held.orElse(null), content.evidence(sample).orElse(null),
				batch, null);
	}

	private static String blankToNull(String text) {
		return text == null || text.isBlank() ? null : text.strip();
	}

	/** Nobody is their own second. */
	private Round round(Standing standing) {
		if (standing.first().isEmpty() || standing.stale()) {
			return Round.FIRST;
		}
		if (standing.first().get().isBy(person)) {
			return Round.FIRST;
		}
		if (standing.second().isPresent()) {
			return standing.second().get().isBy(person) ? Round.SECOND : Round.RESOLUTION;
		}
		return standing.awaitsSecond() ? Round.SECOND : Round.FIRST;
	}

	/**
	 * The second verdict, and no other.
	 *
	 * @throws ReviewRefused where none is needed, or the person gave the first
	 */
	public Command second(SampleKey sample, Decision decision, String reasonCode, String text) {
		Standing standing = standing(sample, content()).orElse(null);
		if (standing != null && standing.first().filter(entry -> entry.isBy(person)).isPresent()) {
			throw new ReviewRefused(
					Words.bind(Messages.Review_youGaveTheFirstVerdict, sample));
		}
		if (standing == null || !standing.awaitsSecond()) {
			throw new ReviewRefused(Words.bind(Messages.Review_doesNotWaitForA, sample));
		}
		return decide(List.of(sample), decision, reasonCode, text);
	}

	/** @see #resolve(SampleKey, Ruling) */
	public Command resolve(SampleKey sample, Decision decision, String reasonCode, String text) {
		return resolve(sample, Ruling.of(decision, reasonCode, text));
	}

	/**
	 * Settles what two reviewers disagree about, as a third person.
	 *
	 * @param ruling with text: why
	 * @throws ReviewRefused where they do not disagree, the person is one of the two, or no reason is given
	 */
	public Command resolve(SampleKey sample, Ruling ruling) {
		ContentOfReview content = content();
		Standing standing = require(standing(sample, content), sample, ruling, content);
		if (standing.state() != ReviewState.DISPUTED) {
			throw new ReviewRefused(Words.bind(Messages.Review_thereIsNoDisagreementAbout, sample));
		}
		if (Stream.of(standing.first(), standing.second()).flatMap(Optional::stream)
				.anyMatch(entry -> entry.isBy(person))) {
			throw new ReviewRefused(Words.bind(Messages.Review_youGaveOneOfThe, sample));
		}
		if (ruling.ownWords() == null) {
			throw new ReviewRefused(Words.bind(Messages.Review_sayWhyTheDisagreementAbout, sample));
		}
		return command(List.of(entry(standing, ruling, content, Round.RESOLUTION, null)));
	}

	/**
	 * Takes the sample out of the map and sets it aside, as one change.
	 *
	 * @param text what is wrong with it; becomes the reason that it is set aside for
	 * @throws ReviewRefused where the rules do not allow it
	 */
	public Command faulty(SampleKey sample, String text) {
		return decide(sample, Ruling.of(Decision.FAULTY, ReasonCode.FAULTY.code(), text));
	}

	/**
	 * Takes back the person's last verdict on a sample by a line that says so: for verdicts that are older than the undo
	 * stack.
	 *
	 * @throws ReviewRefused where they have given none, or somebody decided after them
	 */
	public Command takeBack(SampleKey sample) {
		List<LedgerEntry> entries = standing(sample, content()).map(Standing::entries).orElse(List.of());
		var gone = Standings.takenBack(entries);
		List<LedgerEntry> standing = entries.stream().filter(e -> !e.takesBack() && !gone.contains(e.id())).toList();
		if (standing.isEmpty() || !standing.get(standing.size() - 1).isBy(person)) {
			throw new ReviewRefused(Words.bind(Messages.Review_theLastVerdictOnIs, sample,
					standing.isEmpty() ? Messages.Review_thereIsNone : Messages.Review_youCanGiveOneThat));
		}
		return command(List.of(GiveVerdictsCommand.takeBack(standing.get(standing.size() - 1), clock)));
	}

	/** The audit of a band that is under way, or a new one. @param marks samples to be looked at one by one */
	public AuditPlan audit(String band, Set<SampleKey> marks) {
		return standings().audit(band, marks);
	}

	/**
	 * Approves the rest of a band, once all samples that the audit has drawn were looked at and no more of them than its
	 * plan allows were not approved. What carries a mark is left to be looked at.
	 *
	 * @param marks samples to be looked at one by one
	 * @throws ReviewRefused where the audit is not finished, or has failed
	 */
	public Command approveBand(String band, Set<SampleKey> marks) {
		AuditPlan audit = audit(band, marks);
		if (audit.isFailed()) {
			throw new ReviewRefused(Words.bind(Messages.Review_ofLookedAtInBand, audit.notApproved(),
					audit.examined(), band, audit.plan().acceptance(), audit.id()));
		}
		if (!audit.isComplete()) {
			throw new ReviewRefused(Words.bind(Messages.Review_beforeBandIsApprovedOf, band, audit.plan().size(),
					audit.lot().size(), audit.plan().size() - audit.examined()));
		}
		Standings standings = standings();
		ContentOfReview content = content();
		Review bulk = inAudit(audit);
		String statement = audit.statement();
		return command(audit.rest().stream().map(key -> standings.of(key).orElseThrow())
				.map(s -> bulk.entry(s, Ruling.of(Decision.APPROVE, ReasonCode.BAND_AUDITED.code(), statement),
						content))
				.toList());
	}
}
