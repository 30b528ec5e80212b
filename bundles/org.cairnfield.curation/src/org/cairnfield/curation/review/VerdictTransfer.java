package org.cairnfield.curation.review;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;

import org.cairnfield.core.text.Words;
import org.cairnfield.curation.decide.CarryOver;
import org.cairnfield.curation.decide.CarrySource;
import org.cairnfield.curation.decide.RecordedVerdicts;
import org.cairnfield.curation.decide.Standing;
import org.cairnfield.curation.decide.Standings;
import org.cairnfield.curation.decide.VerdictIntake;
import org.cairnfield.curation.decide.VerdictTable;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.propose.EvidenceTable;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.values.Count;
import org.cairnfield.model.values.SampleKey;

/**
 * Verdicts on the split under review that come from another split or from a table, and go out to one. What takes long
 * is handed out as a question, to be answered on any thread; what comes of it is one change of the archive.
 */
public final class VerdictTransfer {

	/** What carrying over would do. */
	public static final class Preview {
		private final String from;
		private final CarryOver over;
		private final Set<SampleKey> hidden;
		private final PersonalStandings.Basis basis;

		private Preview(String from, CarryOver over, Set<SampleKey> hidden, PersonalStandings.Basis basis) {
			this.from = from;
			this.over = over;
			this.hidden = hidden;
			this.basis = basis;
		}

		public CarryOver over() {
			return over;
		}

		/** Samples left behind whose verdict the person must not see, for they are to give the second. */
		public Set<SampleKey> hidden() {
			return hidden;
		}
	}

	/** A table that was read, and what was known when it was. */
	public static final class Table {
		private final Path file;
		private final VerdictIntake intake;
		private final PersonalStandings.Basis basis;

		private Table(Path file, VerdictIntake intake, PersonalStandings.Basis basis) {
			this.file = file;
			this.intake = intake;
			this.basis = basis;
		}
	}

	private final ReviewSession session;

	public VerdictTransfer(ReviewSession session) {
		this.session = session;
	}

	private Archive archive() {
		return session.archive().archive();
	}

	private boolean isEditable() {
		return session.archive().readOnlyReason().isEmpty();
	}

	/** Splits whose verdicts could be carried over to the one under review, the most natural first. */
	public List<CarrySource> sources() {
		Split split = session.split();
		return split == null || split.getProposals() == null ? List.of() : CarrySource.of(archive(), split);
	}

	/** What to carry over to a split that nobody has reviewed yet. */
	public Optional<CarrySource> offer() {
		Split split = session.split();
		boolean open = split != null && isEditable()
				&& archive().getLedgers().stream().noneMatch(ledger -> split.getId().equals(ledger.getId()));
		return open ? sources().stream().findFirst() : Optional.empty();
	}

	/** Whether the archive can be changed, and has another split with verdicts. */
	public boolean canCarry() {
		return isEditable() && !sources().isEmpty();
	}

	/** Asks what carrying over would do. @param from id of another split */
	public Callable<Preview> look(String from) {
		String id = session.split().getId();
		Reviewer reviewer = session.reviewer();
		RecordedVerdicts recorded = session.recorded();
		Clock clock = session.clock();
		PersonalStandings.Basis basis = session.basis();
		Archive still = ArchiveCopy.of(archive());
		return () -> {
			Split other = split(still, from);
			Set<SampleKey> hidden = Standings.of(still, other, reviewer.policy()).all().stream()
					.filter(standing -> standing.canBeSecond(reviewer.person())).map(Standing::sample)
					.collect(Collectors.toUnmodifiableSet());
			return new Preview(from,
					CarryOver.of(still, other, split(still, id), reviewer.policy(), reviewer.person(), recorded, clock),
					hidden, basis);
		};
	}

	private static Split split(Archive archive, String id) {
		return ArchiveIndex.of(archive).split(id).orElseThrow();
	}

	private boolean isStill(PersonalStandings.Basis basis) {
		return session.split() != null && basis.equals(session.basis());
	}

	/** Carries over what was looked at, as one change. @return whether it was done; the message has the reason why not */
	public boolean carry(Preview preview) {
		if (!isStill(preview.basis)) {
			return session.refuse(Messages.VerdictTransfer_theArchiveHasChangedMeanwhile);
		}
		if (!session.archive().run(preview.over.command().on(archive()))) {
			return session.refuse(Words.bind(Messages.VerdictTransfer_noVerdictOfSplitCan, preview.from));
		}
		session.changedAtOnce(Words.bind(Messages.VerdictTransfer_oneUndoTakesThemBack, text(preview)));
		return true;
	}

	/** Such as "110 verdicts carried over from shop; those of 14 samples stay behind." */
	private static String text(Preview preview) {
		int left = preview.over.left().size();
		return Words.bind(Messages.VerdictTransfer_carriedOverFrom,
				Count.of(preview.over.carried().size(), "verdict", "verdicts"), preview.from,
				left == 0 ? "."
						: Words.bind(Messages.VerdictTransfer_thoseOfStayBehind,
								Count.of(left, "sample", "samples")));
	}

	/** Asks for the table of verdicts for review outside, with what the person may see; the answer is its number of rows. */
	public Callable<Integer> export(Path file) {
		String id = session.split().getId();
		Reviewer reviewer = session.reviewer();
		Archive still = ArchiveCopy.of(archive());
		EvidenceTable evidence = session.evidence().table();
		return () -> {
			VerdictTable.write(file, still, split(still, id), reviewer.policy(), reviewer.person(), evidence);
			return Standings.of(still, split(still, id), reviewer.policy()).all().size();
		};
	}

	/** The table of a split is written. */
	public void exported(Path file, String split, int rows) {
		session.say(Words.bind(Messages.VerdictTransfer_ofSplitWrittenToFill, Count.of(rows, "row", "rows"), split,
				file));
	}

	/** Asks what a table that was filled in would change. */
	public Callable<Table> read(Path file) {
		String id = session.split().getId();
		Reviewer reviewer = session.reviewer();
		RecordedVerdicts recorded = session.recorded();
		Clock clock = session.clock();
		PersonalStandings.Basis basis = session.basis();
		Archive still = ArchiveCopy.of(archive());
		return () -> new Table(file,
				VerdictIntake.read(file, still, split(still, id), reviewer.policy(), reviewer.person(), recorded,
						clock),
				basis);
	}

	/** Takes a table in, as one change; nothing of it where a row is wrong. @return what is wrong */
	public List<VerdictIntake.Problem> take(Table table) {
		VerdictIntake intake = table.intake;
		String rest = Words.bind(Messages.VerdictTransfer_knownAlreadyWithoutADecision,
				Count.of(intake.known(), "was", "were"), Count.of(intake.blank(), "row", "rows"));
		if (!intake.problems().isEmpty()) {
			session.refuse(Words.bind(Messages.VerdictTransfer_nothingWasTakenInFrom, table.file.getFileName(), Count
					.of(intake.problems().size(), Messages.VerdictTransfer_rowIs, Messages.VerdictTransfer_rowsAre)));
		} else if (!isStill(table.basis)) {
			session.refuse(Messages.VerdictTransfer_theArchiveHasChangedWhile);
		} else if (session.archive().run(intake.command().on(archive()))) {
			session.changedAtOnce(Words.bind(Messages.VerdictTransfer_takenInOneUndoTakes,
					Count.of(intake.taken(), "verdict", "verdicts"), rest,
					intake.note().isEmpty() ? "" : ' ' + intake.note()));
		} else {
			session.say(Words.bind(Messages.VerdictTransfer_noNewVerdictInThe, rest));
		}
		return intake.problems();
	}
}
