package org.cairnfield.curation.review;

import java.time.Clock;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import org.cairnfield.core.text.Words;
import org.cairnfield.curation.decide.RecordedVerdicts;
import org.cairnfield.curation.decide.Review;
import org.cairnfield.curation.decide.ReviewRefused;
import org.cairnfield.curation.decide.Ruling;
import org.cairnfield.curation.decide.Standing;
import org.cairnfield.model.Split;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.values.SampleKey;
import org.eclipse.emf.common.command.Command;

/**
 * One person's work on the proposals of an archive: the split under review, the evidence on its noise, the queue, the
 * sample in hand, and verdicts. Whoever holds it reports what happens to the archive ({@link #archiveChanged},
 * {@link #ledgersChanged}, {@link #savePointMade}). For one thread.
 */
public final class ReviewSession {

	private final ReviewedArchive archive;
	private final ReviewListener listener;
	private final RecordedVerdicts recorded;
	private final Clock clock;
	private final ReviewEvidence evidence = new ReviewEvidence();
	private final ReviewQueue queue = new ReviewQueue();
	private final ReviewStandings standings = new ReviewStandings();
	private final BandAudit audit = new BandAudit();
	private Reviewer reviewer;
	private String splitId;
	private List<String> splits = List.of();
	private SampleKey current;
	private RulingDraft draft = RulingDraft.EMPTY;
	private ReviewMessage message = ReviewMessage.NONE;

	/** Call {@link #archiveChanged} to begin. */
	public ReviewSession(ReviewedArchive archive, Reviewer reviewer, Clock clock, ReviewListener listener) {
		this.archive = archive;
		this.reviewer = reviewer;
		this.clock = clock;
		this.listener = listener;
		this.recorded = RecordedVerdicts.of(archive.archive());
	}

	// The split under review and its evidence

	/** The split under review; null for none. */
	public Split split() {
		return splitId == null ? null : ArchiveIndex.of(archive.archive()).split(splitId).orElse(null);
	}

	/** Takes up another split. @param id null for the first with something to decide */
	public void choose(String id) {
		if (!Objects.equals(id, splitId)) {
			splitId = id;
			clear();
			archiveChanged();
		}
	}

	private void clear() {
		evidence.clear();
		queue.clear();
		current = null;
		standings.clear();
		audit.look(null);
		audit.renew(null, Set.of());
		message = ReviewMessage.NONE;
	}

	/** Samples, surveys or splits may have changed: asks for evidence that is out of date. */
	public void archiveChanged() {
		if (split() == null) {
			splitId = firstSplit();
			clear();
		}
		Split split = split();
		if (split == null) {
			listener.splitChanged();
			return;
		}
		ledgersChanged();
		List<String> all = archive.archive().getSplits().stream().map(Split::getId).toList();
		boolean others = !all.equals(splits);
		splits = all;
		Optional<EvidenceRequest> request = evidence.request(archive.archive(), split);
		request.ifPresent(listener::evidenceWanted);
		if (others || request.isPresent()) {
			listener.splitChanged();
		}
		if (!queue.isAssignedAsIn(archive.archive(), split)) {
			fill();
		}
	}

	/** One with something to decide, if there is. */
	private String firstSplit() {
		List<Split> all = archive.archive().getSplits();
		return all.stream().filter(split -> split.getProposals() != null && !split.getProposals().all().isEmpty())
				.findFirst()
				.or(() -> all.stream().findFirst()).map(Split::getId).orElse(null);
	}

	/** Takes evidence that was asked for; what is out of date by now is dropped. */
	public void accept(SplitEvidence computed) {
		boolean first = !evidence.isKnown();
		if (!evidence.accept(computed)) {
			return;
		}
		ledgersChanged();
		fill();
		listener.splitChanged();
		if (first || evidence.of(current) == null) {
			QueueRow start = queue.list().after(null, 1, standings::isLeft);
			show(start != null ? start.key() : null);
		}
	}

	/** Evidence that was asked for could not be computed. */
	public void evidenceFailed(String why) {
		evidence.failed(why);
		listener.splitChanged();
	}

	private void fill() {
		if (evidence.isKnown() && split() != null) {
			evidence.notice(standings.all());
			audit.renew(standings.all(), evidence.marked());
			queue.fill(archive.archive(), split(), evidence.all(), reviewer.policy().bands());
			arrange(queue.settings());
		}
	}

	/** What is known of the noise of the split. */
	public ReviewEvidence evidence() {
		return evidence;
	}

	// The queue

	/** Lists the queue in another way. */
	public void arrange(QueueSettings now) {
		queue.arrange(now, this::isListed);
		listener.queueChanged();
	}

	private boolean isListed(QueueRow row) {
		Standing standing = standings.of(row.key());
		if (standing == null) {
			return false;
		}
		QueueSettings settings = queue.settings();
		boolean shown = audit.looking().isPresent() ? audit.hasDrawn(row.key())
				: settings.shown().shows(row, standing, reviewer.person());
		return shown && settings.filter().accepts(row, standings.text(row.key()));
	}

	/** Noise samples in the order of the review. */
	public ReviewQueue queue() {
		return queue;
	}

	/** The sample in hand; null for none. */
	public SampleKey current() {
		return current;
	}

	/** Takes a sample in hand. */
	public void show(SampleKey sample) {
		if (!Objects.equals(sample, current)) {
			current = sample;
			listener.currentChanged();
		}
	}

	/** Takes up the next sample that is left to decide, or the one before that was listed. */
	public void walk(int by) {
		QueueRow row = by > 0 ? queue.list().after(current, 1, standings::isLeft)
				: queue.list().after(current, -1, any -> true);
		if (row != null) {
			show(row.key());
		}
	}

	/** Such as "214 of 226 left", where the queue lists what is assigned to the person of that; empty where nothing is proposed. */
	public String countText() {
		return queue.countText(reviewer.person(), standings::isLeft);
	}

	// How things stand

	/** Looks at the ledger again. A sample whose verdict has gone, as by undo, is taken in hand again. */
	public void ledgersChanged() {
		refresh(standings.predicted());
	}

	/** @param own was just decided, and is not taken in hand again where two reviewers disagree now; null for none */
	private void refresh(SampleKey own) {
		if (split() == null || standings.isOf(basis())) {
			return;
		}
		PersonalStandings before = read();
		if (before == null || standings.now().showsTheSameAs(before)) {
			return;
		}
		List<SampleKey> reopened = standings.now().reopenedSince(before);
		if (reopened.size() == 1 && !reopened.get(0).equals(own)) {
			message = ReviewMessage
					.done(Words.bind(Messages.ReviewSession_isToBeDecidedAgain, reopened.get(0).sample()));
			show(reopened.get(0));
		}
		listener.verdictsChanged();
	}

	private PersonalStandings read() {
		PersonalStandings before = standings.read(archive.archive(), split(), basis());
		audit.renew(standings.all(), evidence.marked());
		return before;
	}

	/** What is known now of the split; two that are equal lead to the same. */
	PersonalStandings.Basis basis() {
		return PersonalStandings.Basis.of(archive.archive(), split(), reviewer);
	}

	/** Verdicts so far are held by a save point. */
	public void savePointMade() {
		recorded.savePointMade(archive.archive());
	}

	/** Somebody else reviews, or by another policy. */
	public void setReviewer(Reviewer now) {
		if (!now.person().equals(reviewer.person())) {
			message = ReviewMessage.NONE; // what the last one did is not for the eyes of a second reviewer
			draft = RulingDraft.EMPTY;
		}
		reviewer = now;
		standings.clear(); // what is open for another person was not reopened
		ledgersChanged();
		fill();
		listener.splitChanged();
	}

	public Reviewer reviewer() {
		return reviewer;
	}

	/** How the noise samples of the split stand. */
	public ReviewStandings standings() {
		return standings;
	}

	// Verdicts

	/** What goes with the next verdict. */
	public RulingDraft draft() {
		return draft;
	}

	public void setDraft(RulingDraft now) {
		draft = now;
	}

	/** What came of the last step. */
	public ReviewMessage message() {
		return message;
	}

	/** Something is done that changed nothing here. */
	public void say(String done) {
		message = ReviewMessage.done(done);
		listener.verdictsChanged();
	}

	/** Gives the reason why something is not done. @return false */
	public boolean refuse(String why) {
		message = ReviewMessage.refused(why);
		listener.verdictsChanged();
		return false;
	}

	/**
	 * Decides on the sample in hand, with the reason and text of the draft, and takes up the next.
	 *
	 * @return false where it was refused; the message has the reason
	 */
	public boolean decide(Choice choice) {
		SampleKey sample = current;
		if (sample == null || split() == null) {
			return refuse(Messages.ReviewSession_takeUpASampleOf);
		}
		String readOnly = archive.readOnlyReason().orElse(null);
		if (readOnly != null) {
			return refuse(Words.bind(Messages.ReviewSession_nothingCanBeDecided, readOnly));
		}
		try {
			Ruling ruling = VerdictRules.ruling(choice, sample, draft, evidence.of(sample));
			Review review = audit.counting(sample).map(review()::inAudit).orElseGet(this::review);
			Command command = VerdictRules.command(review, reviewer.person(), sample, standings.of(sample), ruling);
			if (!archive.run(command)) {
				return refuse(Words.bind(Messages.ReviewSession_nothingToChangeAbout, sample.sample()));
			}
			message = ReviewMessage.done(sample.sample() + ' ' + choice.done(ruling.cluster())
					+ (ruling.reasonCode() == null ? "" : " (" + ruling.reasonCode() + ')') + '.');
			draft = RulingDraft.EMPTY;
			standings.expect(sample, choice.expected(), ruling);
			walk(1);
			listener.verdictsChanged();
			return true;
		} catch (ReviewRefused | IllegalArgumentException e) {
			return refuse(e.getMessage());
		}
	}

	private Review review() {
		return standings.all() == null
				? new Review(archive.archive(), split(), reviewer.person(), reviewer.policy(), recorded, clock)
				: new Review(archive.archive(), split(), reviewer.person(), standings.all(), recorded, clock);
	}

	/** Takes the person's last verdict on the sample in hand back, whenever it was given. @return whether it did */
	public boolean takeBack() {
		try {
			if (current == null || split() == null || !archive.run(review().takeBack(current))) {
				return false;
			}
			message = ReviewMessage.done(Words.bind(Messages.ReviewSession_theVerdictOnIsTaken, current.sample()));
			read();
			listener.verdictsChanged();
			return true;
		} catch (ReviewRefused e) {
			return refuse(e.getMessage());
		}
	}

	/** Something was undone; a sample whose verdict has gone is taken in hand again. @param what was undone */
	public void undone(String what) {
		refresh(null);
		say(Words.bind(Messages.ReviewSession_undone, what));
	}

	/** Many verdicts were given at once: all is read and listed again. */
	void changedAtOnce(String done) {
		message = ReviewMessage.done(done);
		audit.look(null);
		read();
		arrange(queue.settings());
		listener.verdictsChanged();
		Standing standing = standings.of(current);
		if (standing == null || !PersonalStandings.isLeft(standing)) {
			walk(1);
		}
	}

	// Audits

	/** Approving bands at once. */
	public BandAudit audit() {
		return audit;
	}

	/** Looks at the samples that the audit of a band has drawn. @param band null for all samples again */
	public void lookAtAudit(String band) {
		audit.look(band);
		arrange(queue.settings());
		if (audit.looking().isPresent() && !audit.hasDrawn(current)) {
			walk(1);
		}
		listener.verdictsChanged();
	}

	/** Approves the rest of a band after its audit. @return whether it did; the message has the reason why not */
	public boolean approveRest(String band) {
		int rest = audit.of(band).map(plan -> plan.rest().size()).orElse(0);
		try {
			if (!archive.run(review().approveBand(band, evidence.marked()))) {
				return refuse(Words.bind(Messages.ReviewSession_bandHasNothingLeftTo, band));
			}
			changedAtOnce(Words.bind(Messages.ReviewSession_proposalsOfBandApprovedAfter, rest, band));
			return true;
		} catch (ReviewRefused e) {
			return refuse(e.getMessage());
		}
	}

	ReviewedArchive archive() {
		return archive;
	}

	RecordedVerdicts recorded() {
		return recorded;
	}

	Clock clock() {
		return clock;
	}
}
