package org.cairnfield.ui.review.internal.desk;

import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.cairnfield.curation.decide.RecordedVerdicts;
import org.cairnfield.curation.decide.Review;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.decide.ReviewRefused;
import org.cairnfield.curation.decide.ReviewState;
import org.cairnfield.curation.decide.Standing;
import org.cairnfield.curation.decide.Standings;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.emf.common.command.Command;

/** Verdicts on the split under review: how things stand for the person who sits here, and giving another. */
public final class VerdictDesk {

	private final ReviewDesk desk;
	private final Clock clock = Clock.systemUTC();
	private Archive recordedOf;
	private RecordedVerdicts recorded;
	private ReviewPolicy policy = ReviewSettings.policy();
	private String person = ReviewSettings.person();
	private Stands stands;
	private SampleKey decided;
	private Map<SampleKey, Standing> seen = Map.of();
	private final BandAudit audit;
	private String draftReason = "";
	private String draftText = "";
	private String message = "";
	private boolean refused;

	VerdictDesk(ReviewDesk desk) {
		this.desk = desk;
		this.audit = new BandAudit(desk, this);
	}

	/** Approving bands at once. */
	public BandAudit audit() {
		return audit;
	}

	/** Another split, or another archive. */
	void clear() {
		stands = null;
		seen = Map.of();
		audit.end();
		message = "";
		refused = false;
		Archive archive = desk.session() == null ? null : desk.session().archive();
		if (archive != recordedOf) {
			recordedOf = archive;
			recorded = archive == null ? null : RecordedVerdicts.of(archive);
		}
	}

	/** What was decided so far is held by a save point. */
	void saved() {
		if (recorded != null) {
			recorded.savePointMade(desk.session().archive());
		}
	}

	/** Other bands, or another person. */
	void settingsChanged() {
		policy = ReviewSettings.policy();
		if (!person.equals(ReviewSettings.person())) {
			person = ReviewSettings.person();
			message = ""; // what the last one did is not for the eyes of a second reviewer
			refused = false;
			setDraft("", "");
		}
		refresh();
	}

	/** Looks at the ledger again. A sample whose verdict has gone, as by undo, is taken in hand again. */
	void refresh() {
		Split split = desk.split();
		if (split == null) {
			return;
		}
		if (stands != null && decided == null && basis(split).equals(stands.basis())) {
			return;
		}
		Map<SampleKey, Standing> before = seen;
		read(split);
		if (before.isEmpty() || before.equals(seen)) {
			return;
		}
		List<SampleKey> reopened = seen.values().stream().filter(now -> isLeft(now) && before.containsKey(now.sample())
				&& !isLeft(before.get(now.sample()))).map(Standing::sample).limit(2).toList();
		boolean own = reopened.size() == 1 && reopened.get(0).equals(decided); // the two reviewers disagree
		decided = null;
		if (reopened.size() == 1 && !own) {
			message = reopened.get(0).sample() + " is to be decided again.";
			refused = false;
			desk.show(reopened.get(0));
		}
		desk.tell(DeskListener::verdictsChanged);
	}

	/** The next sample must not wait for the ledger to be read again; that follows as soon as the change is told. */
	private void expect(SampleKey sample, Choice choice) {
		Standing was = seen.get(sample);
		if (was != null) {
			ReviewState state = switch (choice) {
				case APPROVE -> ReviewState.APPROVED;
				case REJECT -> ReviewState.REJECTED;
				case DEFER -> ReviewState.DEFERRED;
				case FAULTY -> ReviewState.SET_ASIDE;
			};
			Map<SampleKey, Standing> now = new HashMap<>(seen);
			now.put(sample, new Standing(sample, was.proposal(), was.made(), state, was.entries(), was.first(), was.second(),
					was.resolution(), false, false, false));
			seen = now;
		}
		decided = sample;
	}

	/** What is known now; two that are equal lead to the same. */
	Stands.Basis basis(Split split) {
		return Stands.Basis.of(desk.session().archive(), split, policy, person);
	}

	private void read(Split split) {
		stands = Stands.of(desk.session().archive(), split, basis(split), stands);
		seen = stands.seen();
		audit.renew();
	}

	/** Who decides. */
	public String person() {
		return person;
	}

	public ReviewPolicy policy() {
		return policy;
	}

	/** As the ledger says; null while there is no split. What this holds may have to be hidden from the person. */
	public Standings standings() {
		return stands == null ? null : stands.all();
	}

	/** How a sample stands, as far as the person may know; null for one that is not noise. */
	public Standing standing(SampleKey sample) {
		return seen.get(sample);
	}

	/** Whether the person still has something to decide about it. */
	public boolean isLeft(QueueRow row) {
		Standing standing = seen.get(row.key());
		return standing != null && row.evidence().made() && isLeft(standing);
	}

	private static boolean isLeft(Standing standing) {
		ReviewState state = standing.state();
		return standing.made() && (state == ReviewState.UNDECIDED || state == ReviewState.STALE || state == ReviewState.DISPUTED);
	}

	boolean isApproved(SampleKey sample) {
		return stands != null && stands.all().of(sample).filter(Standing::joins).isPresent();
	}

	/** Whether the queue lists a row. */
	boolean isShown(QueueRow row, QueueShown shown) {
		Standing standing = seen.get(row.key());
		if (standing == null) {
			return false;
		}
		if (audit.looking().isPresent()) {
			return audit.hasDrawn(row.key());
		}
		ReviewState state = standing.state();
		return switch (shown) {
			case ALL -> true;
			case LEFT -> isLeft(row);
			case DISPUTED -> state == ReviewState.DISPUTED;
			case STALE -> state == ReviewState.STALE;
			case DEFERRED -> state == ReviewState.DEFERRED;
			case DECIDED -> state == ReviewState.APPROVED || state == ReviewState.REJECTED;
			case UNPLACED -> !row.evidence().made();
		};
	}

	/** Where a sample stands, in words with a sign. */
	public String stateText(SampleKey sample) {
		Standing standing = seen.get(sample);
		if (standing == null) {
			return "";
		}
		return switch (standing.state()) {
			case UNDECIDED -> standing.hidden() ? "2nd review" : "";
			case APPROVED -> standing.awaitsSecond() ? "✔ needs 2nd" : "✔ approved";
			case REJECTED -> standing.awaitsSecond() ? "✖ needs 2nd" : "✖ rejected";
			case DEFERRED -> "… deferred";
			case DISPUTED -> "≠ disagreement";
			case STALE -> "▲ stale";
			case UNPLACED -> "unplaced";
			case SET_ASIDE -> "∅ set aside";
		};
	}

	/** What came of the last key. */
	public String message() {
		return message;
	}

	/** Whether that was refused. */
	public boolean isRefused() {
		return refused;
	}

	Review review() {
		ArchiveSession session = desk.session();
		return stands == null ? new Review(session.archive(), desk.split(), person, policy, recorded, clock)
				: new Review(session.archive(), desk.split(), person, stands.all(), recorded, clock);
	}

	/** What goes with the next verdict. @param reason code, empty where the evidence is to say it */
	public void setDraft(String reason, String text) {
		draftReason = reason;
		draftText = text;
	}

	/** Reason code of the next verdict, empty where the evidence is to say it. */
	public String draftReason() {
		return draftReason;
	}

	/** Free text of the next verdict. */
	public String draftText() {
		return draftText;
	}

	/**
	 * Decides on the sample in hand, with the reason and text of the draft, and takes up the next.
	 *
	 * @return false where it was refused; the message says why
	 */
	public boolean decide(Choice choice) {
		String reasonCode = draftReason;
		String text = draftText;
		SampleKey sample = desk.current();
		if (sample == null || desk.split() == null) {
			return refuse("Take up a sample of the queue first.");
		}
		String readOnly = desk.session().readOnlyReason().orElse(null);
		if (readOnly != null) {
			return refuse("Nothing can be decided: " + readOnly + '.');
		}
		try {
			String reason = choice.reason(reasonCode, desk.evidence(sample));
			if (choice == Choice.REJECT && reason == null) {
				return refuse("The evidence gives no reason to reject " + sample.sample() + ": choose one (T), then press R.");
			}
			Command command = command(review(), choice, sample, reason, text);
			if (!desk.session().run(command)) {
				return refuse("Nothing to change about " + sample.sample() + '.');
			}
			message = sample.sample() + ' ' + choice.done() + (reason == null ? "" : " (" + reason + ')') + '.';
			refused = false;
			setDraft("", "");
			expect(sample, choice);
			desk.walk(1);
			desk.tell(DeskListener::verdictsChanged);
			return true;
		} catch (ReviewRefused | IllegalArgumentException e) {
			return refuse(sentence(e.getMessage()));
		}
	}

	private Command command(Review review, Choice choice, SampleKey sample, String reason, String text) {
		Review in = audit.hasDrawn(sample) ? review.inAudit(audit.looking().get()) : review;
		if (choice == Choice.FAULTY) {
			return in.faulty(sample, text);
		}
		Standing standing = seen.get(sample);
		if (standing != null && standing.awaitsSecond()
				&& standing.first().filter(first -> first.isBy(person) && first.decision() == choice.decision()).isPresent()) {
			throw new ReviewRefused("you gave the first verdict on " + sample.sample() + ", so somebody else has to give the second");
		}
		if (standing != null && standing.state() == ReviewState.DISPUTED) {
			return in.resolve(sample, choice.decision(), reason, text);
		}
		return switch (choice) {
			case APPROVE -> in.approve(sample, reason, text);
			case REJECT -> in.reject(sample, reason, text);
			default -> in.defer(sample, reason, text);
		};
	}

	/** Takes the person's last verdict on the sample in hand back, whenever it was given. */
	public boolean takeBack() {
		try {
			if (desk.current() != null && desk.session().run(review().takeBack(desk.current()))) {
				message = "The verdict on " + desk.current().sample() + " is taken back.";
				refused = false;
				read(desk.split());
				desk.tell(DeskListener::verdictsChanged);
				return true;
			}
			return false;
		} catch (ReviewRefused e) {
			return refuse(sentence(e.getMessage()));
		}
	}

	/** Undoes the last change of the archive; a sample whose verdict goes is taken in hand again. */
	public void undo() {
		ArchiveSession session = desk.session();
		if (session != null && session.readOnlyReason().isEmpty() && session.commands().canUndo()) {
			String what = session.commands().getUndoCommand().getLabel();
			session.commands().undo();
			decided = null;
			refresh();
			message = "Undone: " + what + '.';
			refused = false;
			desk.tell(DeskListener::verdictsChanged);
		}
	}

	/** Many verdicts were given at once: all is read and listed anew. */
	void changedAtOnce(String said) {
		message = said;
		refused = false;
		audit.end();
		read(desk.split());
		desk.arrange(desk.settings());
		desk.tell(DeskListener::verdictsChanged);
		Standing current = seen.get(desk.current());
		if (current == null || !isLeft(current)) {
			desk.walk(1);
		}
	}

	/** Which verdicts a save point holds. */
	RecordedVerdicts recorded() {
		return recorded;
	}

	Clock clock() {
		return clock;
	}

	/** What was asked for is done, and changed nothing here. */
	void say(String done) {
		message = done;
		refused = false;
		desk.tell(DeskListener::verdictsChanged);
	}

	/** Says why something is not done. @return false */
	public boolean refuse(String why) {
		message = why;
		refused = true;
		desk.tell(DeskListener::verdictsChanged);
		return false;
	}

	private static String sentence(String text) {
		return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1) + (text.endsWith(".") ? "" : ".");
	}

	/** Does something, and says so where the rules refuse it. */
	void attempt(Runnable step) {
		try {
			step.run();
		} catch (ReviewRefused e) {
			refuse(sentence(e.getMessage()));
		}
	}
}
