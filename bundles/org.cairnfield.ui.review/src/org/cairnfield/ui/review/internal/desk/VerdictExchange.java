package org.cairnfield.ui.review.internal.desk;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.cairnfield.curation.decide.CarryOver;
import org.cairnfield.curation.decide.CarrySource;
import org.cairnfield.curation.decide.RecordedVerdicts;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.decide.Standing;
import org.cairnfield.curation.decide.Standings;
import org.cairnfield.curation.decide.VerdictIntake;
import org.cairnfield.curation.decide.VerdictTable;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Count;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.session.ArchiveSession;

/**
 * Verdicts on the split under review that come from another split or from a table, and go out to one. Looking at them
 * happens beside the user interface; what comes of it is one change of the archive.
 */
public final class VerdictExchange {

	/**
	 * What carrying over would do.
	 *
	 * @param hidden samples left behind whose verdict the person must not see, for they are to give the second
	 */
	public record Preview(String from, CarryOver over, Set<SampleKey> hidden, Stands.Basis state) {
	}

	private final ReviewDesk desk;
	private final LatestWork looking = new LatestWork();
	private final LatestWork tables = new LatestWork();

	VerdictExchange(ReviewDesk desk) {
		this.desk = desk;
	}

	/** Splits whose verdicts could be carried over to the one under review, the most natural first. */
	public List<CarrySource> sources() {
		Split split = desk.split();
		return split == null || split.getProposals() == null ? List.of() : CarrySource.of(desk.session().archive(), split);
	}

	/** What to carry over to a split that nobody has reviewed yet. */
	public Optional<CarrySource> offer() {
		Split split = desk.split();
		boolean open = split != null && desk.session().readOnlyReason().isEmpty()
				&& desk.session().archive().getLedgers().stream().noneMatch(ledger -> split.getId().equals(ledger.getId()));
		return open ? sources().stream().findFirst() : Optional.empty();
	}

	/** Whether the archive can be changed, and has another split with verdicts. */
	public boolean canCarry() {
		return desk.session() != null && desk.session().readOnlyReason().isEmpty() && !sources().isEmpty();
	}

	/** Looks at what carrying over would do; the latest question counts. */
	public void look(String from, Consumer<Preview> result, Consumer<String> failed) {
		String id = desk.split().getId();
		ReviewPolicy policy = desk.verdicts().policy();
		String person = desk.verdicts().person();
		RecordedVerdicts recorded = desk.verdicts().recorded();
		Clock clock = desk.verdicts().clock();
		Stands.Basis state = desk.verdicts().basis(desk.split());
		Archive still = ArchiveCopy.of(desk.session().archive());
		looking.start("Comparing splits " + from + " and " + id, workers -> {
			Split other = ReviewDesk.find(still, from);
			Set<SampleKey> hidden = Standings.of(still, other, policy).all().stream().filter(s -> s.canBeSecond(person))
					.map(Standing::sample).collect(Collectors.toUnmodifiableSet());
			return new Preview(from, CarryOver.of(still, other, ReviewDesk.find(still, id), policy, recorded, clock), hidden, state);
		}, result, why -> failed.accept(Problems.text(why)));
	}

	/** Carries over what was looked at, as one change. @return whether it was done; the message says why not */
	public boolean carry(Preview preview) {
		VerdictDesk verdicts = desk.verdicts();
		if (desk.split() == null || !preview.state().equals(verdicts.basis(desk.split()))) {
			return verdicts.refuse("The archive has changed meanwhile; look at what goes over again.");
		}
		if (!desk.session().run(preview.over().command().on(desk.session().archive()))) {
			return verdicts.refuse("No verdict of split " + preview.from() + " can be carried over.");
		}
		verdicts.changedAtOnce(text(preview) + " One Undo takes them back.");
		return true;
	}

	/** Such as "110 verdicts carried over from shop; those of 14 samples stay behind." */
	private static String text(Preview preview) {
		int left = preview.over().left().size();
		return Count.of(preview.over().carried().size(), "verdict", "verdicts") + " carried over from " + preview.from()
				+ (left == 0 ? "." : "; those of " + Count.of(left, "sample", "samples") + " stay behind.");
	}

	/** Writes the table of verdicts for review outside, with what the person may see. */
	public void export(Path file) {
		ArchiveSession session = desk.session();
		String id = desk.split().getId();
		ReviewPolicy policy = desk.verdicts().policy();
		String person = desk.verdicts().person();
		Archive still = ArchiveCopy.of(session.archive());
		tables.start("Writing the verdicts of split " + id, workers -> {
			Split split = ReviewDesk.find(still, id);
			VerdictTable.write(file, still, split, policy, person);
			return Standings.of(still, split, policy).all().size();
		}, rows -> desk.verdicts().say(Count.of(rows, "row", "rows") + " of split " + id + " written to " + file
				+ ". Fill in the column decision, then import the table."), why -> desk.verdicts().refuse(Problems.text(why)));
	}

	/**
	 * Takes in a table that was filled in, as one change; nothing of it where a row is wrong.
	 *
	 * @param wrong hears what is wrong, if something is
	 */
	public void takeIn(Path file, Consumer<List<VerdictIntake.Problem>> wrong) {
		ArchiveSession session = desk.session();
		String id = desk.split().getId();
		ReviewPolicy policy = desk.verdicts().policy();
		String person = desk.verdicts().person();
		RecordedVerdicts recorded = desk.verdicts().recorded();
		Clock clock = desk.verdicts().clock();
		Stands.Basis state = desk.verdicts().basis(desk.split());
		Archive still = ArchiveCopy.of(session.archive());
		tables.start("Reading " + file.getFileName(),
				workers -> VerdictIntake.read(file, still, ReviewDesk.find(still, id), policy, person, recorded, clock), intake -> {
					if (!intake.problems().isEmpty()) {
						desk.verdicts().refuse("Nothing was taken in from " + file.getFileName() + ": "
								+ Count.of(intake.problems().size(), "row is", "rows are") + " wrong.");
						wrong.accept(intake.problems());
					} else if (desk.session() != session || desk.split() == null || !state.equals(desk.verdicts().basis(desk.split()))) {
						desk.verdicts().refuse("The archive has changed while the table was read; take it in again.");
					} else {
						give(session, intake);
					}
				}, why -> desk.verdicts().refuse(Problems.text(why)));
	}

	private void give(ArchiveSession session, VerdictIntake intake) {
		String rest = Count.of(intake.known(), "was", "were") + " known already, " + Count.of(intake.blank(), "row", "rows") + " without a decision.";
		if (session.run(intake.command().on(session.archive()))) {
			desk.verdicts().changedAtOnce(Count.of(intake.taken(), "verdict", "verdicts") + " taken in; " + rest + " One Undo takes them back.");
		} else {
			desk.verdicts().say("No new verdict in the table; " + rest);
		}
	}
}
