package org.cairnfield.curation.decide;

import java.nio.file.Path;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.FilledTable;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Count;
import org.cairnfield.model.values.SampleKey;
import org.eclipse.emf.common.command.Command;

/**
 * Verdicts that were given in a table of {@link VerdictTable}. All rows are looked at; where one is wrong nothing is to
 * be taken in, so that the table can be mended and taken in as a whole.
 *
 * @param command  gives the verdicts, as one change; cannot be executed where there are none
 * @param taken    how many verdicts
 * @param known    how many rows say what the ledger says already
 * @param blank    how many rows have no decision
 * @param rejected how many of those taken are rejections, as older tables have them
 * @param problems what is wrong, in the order of the file; then there is nothing to execute
 */
public record VerdictIntake(GiveVerdictsCommand command, int taken, int known, int blank, int rejected,
		List<Problem> problems) {

	private static final List<String> REQUIRED = List.of("split", "sample", "decision", "reason", "text", "person",
			"content",
			"evidence");

	/** What people should know of the verdicts, for a person; empty for nothing. */
	public String note() {
		return rejected == 0 ? ""
				: Words.bind(Messages.VerdictIntake_withRejectTheMapWrite, Count.of(rejected, "row"),
						rejected == 1 ? Messages.VerdictIntake_itsSampleLeaves
								: Messages.VerdictIntake_theirSamplesLeave);
	}

	/** Gives the verdicts at once, for work without an undo stack; nothing where there is a problem. */
	public void apply() {
		if (command.canExecute()) {
			command.execute();
		}
	}

	/**
	 * Something wrong with a row.
	 *
	 * @param line   physical line, from 1
	 * @param remedy what to do
	 */
	public record Problem(Path file, long line, String what, String remedy) {

		@Override
		public String toString() {
			return Words.bind(Messages.VerdictIntake_line, file, line, what, remedy);
		}
	}

	private static final class Wrong extends Exception {
		private static final long serialVersionUID = 1;
		private final String remedy;

		Wrong(String what, String remedy) {
			super(what);
			this.remedy = remedy;
		}
	}

	/**
	 * @param person who takes the table in: decided where a row does not say who, and has entered the rest; may be null
	 * @throws IntakeException where the file cannot be read or is not such a table
	 */
	public static VerdictIntake read(Path file, Archive archive, Split split, ReviewPolicy policy, String person,
			RecordedVerdicts recorded, Clock clock) throws IntakeException {
		Reading reading = new Reading(archive, split, policy, person, recorded, clock);
		List<Problem> problems = new ArrayList<>();
		Map<SampleKey, Long> seen = new HashMap<>();
		for (FilledTable.Row row : FilledTable.read(file, REQUIRED)) {
			try {
				reading.take(row, seen);
			} catch (Wrong e) {
				problems.add(new Problem(file, row.line(), e.getMessage(), e.remedy));
			} catch (ReviewRefused e) {
				problems.add(new Problem(file, row.line(), e.getMessage(),
						Messages.VerdictIntake_correctTheDecisionOrLeave));
			}
		}
		// a ledger has its lines in the order in which they were given; tables are sorted by sample
		List<LedgerEntry> given = problems.isEmpty()
				? reading.given.stream().sorted(Comparator.comparing(LedgerEntry::time)).toList()
				: List.of();
		return new VerdictIntake(new GiveVerdictsCommand(archive, split.getId(), given, recorded, clock,
				Words.bind(Messages.VerdictIntake_takeIn, Count.of(given.size(), "verdict"))), given.size(),
				reading.known, reading.blank,
				(int) given.stream().filter(entry -> entry.decision() == Decision.REJECT).count(),
				List.copyOf(problems));
	}

	private static final class Reading {
		private final Archive archive;
		private final Split split;
		private final ReviewPolicy policy;
		private final String person;
		private final RecordedVerdicts recorded;
		private final Clock clock;
		private final Standings standings;
		private final ContentOfReview content;
		private final Map<String, Review> reviews = new HashMap<>();
		private final List<LedgerEntry> given = new ArrayList<>();
		private Clock rowClock;
		private int known;
		private int blank;

		Reading(Archive archive, Split split, ReviewPolicy policy, String person, RecordedVerdicts recorded,
				Clock clock) {
			this.archive = archive;
			this.split = split;
			this.policy = policy;
			this.person = person;
			this.recorded = recorded;
			this.clock = clock;
			rowClock = clock;
			standings = Standings.of(archive, split, policy);
			content = new ContentOfReview(archive, split);
		}

		void take(FilledTable.Row row, Map<SampleKey, Long> seen) throws Wrong {
			if (row.field("decision").isEmpty()) {
				if (!row.field("home").isEmpty()) {
					throw new Wrong(Words.bind(Messages.VerdictIntake_aHomeIsGivenAnd, row.field("home")),
							Messages.VerdictIntake_writeMoveAsTheDecision);
				}
				blank++;
				return;
			}
			SampleKey sample = sample(row);
			Long before = seen.putIfAbsent(sample, row.line());
			if (before != null) {
				throw new Wrong(Words.bind(Messages.VerdictIntake_sampleWasDecidedOnLine, sample, before),
						Messages.VerdictIntake_keepOneOfTheTwo);
			}
			Decision decision = decision(row);
			int home = home(row, decision);
			String who = row.field("person").isEmpty() ? person : row.field("person");
			if (who == null || who.isBlank()) {
				throw new Wrong(Messages.VerdictIntake_nobodyIsNamedWhoDecided,
						Messages.VerdictIntake_fillInTheColumnPerson);
			}
			if (saysWhatIsKnown(row, sample, decision, home, who)) {
				known++;
				return;
			}
			requirePresent(row, "content", content.sample(sample), sample,
					Messages.VerdictIntake_theSampleHasChangedSince);
			requirePresent(row, "evidence", content.evidence(sample), sample,
					Messages.VerdictIntake_theEvidenceHasChangedSince);
			rowClock = at(row);
			Command one = review(who).decide(sample,
					new Ruling(decision, home, row.field("reason"), row.field("text")));
			((GiveVerdictsCommand) one).wanted().forEach(entry -> given.add(entry.enteredBy(person)));
		}

		/** One a person for the whole table, since each looks at all the labels first. */
		private Review review(String who) {
			return reviews.computeIfAbsent(who, name -> new Review(archive, split, name, policy, recorded, new Clock() {
				@Override
				public ZoneId getZone() {
					return clock.getZone();
				}

				@Override
				public Clock withZone(ZoneId zone) {
					return clock.withZone(zone);
				}

				@Override
				public Instant instant() {
					return rowClock.instant();
				}
			}));
		}

		private SampleKey sample(FilledTable.Row row) throws Wrong {
			if (!row.field("split").equals(split.getId())) {
				throw new Wrong(
						Words.bind(Messages.VerdictIntake_theRowIsOfSplit, row.field("split"), split.getId()),
						Messages.VerdictIntake_takeItInForThat);
			}
			try {
				return SampleKey.parse(row.field("sample"));
			} catch (IllegalArgumentException e) {
				throw new Wrong(e.getMessage(), Messages.VerdictIntake_leaveTheColumnSampleAs);
			}
		}

		private static Decision decision(FilledTable.Row row) throws Wrong {
			Decision decision = Decision.get(row.field("decision").toLowerCase(Locale.ROOT));
			if (decision == null) {
				throw new Wrong(Words.bind(Messages.VerdictIntake_isNoDecision, row.field("decision")),
						Messages.VerdictIntake_writeApproveMovePoolFaulty);
			}
			return decision;
		}

		/** The cluster that a sample is moved to. */
		private static int home(FilledTable.Row row, Decision decision) throws Wrong {
			String home = row.field("home");
			if (decision != Decision.MOVE) {
				if (!home.isEmpty()) {
					throw new Wrong(
							Words.bind(Messages.VerdictIntake_aHomeIsGivenThough, home, decision.getLiteral()),
							Messages.VerdictIntake_writeMoveAsTheDecision);
				}
				return Ruling.NO_CLUSTER;
			}
			try {
				int cluster = Integer.parseInt(home);
				if (cluster >= 0) {
					return cluster;
				}
			} catch (NumberFormatException e) {
				// reported below
			}
			String nearest = row.field("nearestCluster");
			throw new Wrong(
					home.isEmpty() ? Messages.VerdictIntake_theDecisionIsMoveAnd
							: Words.bind(Messages.VerdictIntake_isNoNumberOfA, home),
					Words.bind(Messages.VerdictIntake_writeTheNumberOfA, nearest.isEmpty() ? ""
							: Words.bind(Messages.VerdictIntake_theNearestLabelledSampleIs, nearest)));
		}

		/** A row that was exported with its verdict and left as it was. */
		private boolean saysWhatIsKnown(FilledTable.Row row, SampleKey sample, Decision decision, int home,
				String who) {
			return standings.of(sample).stream().flatMap(s -> s.entries().stream()).anyMatch(
					e -> e.isBy(who) && e.decision() == decision && (decision != Decision.MOVE || e.cluster() == home)
							&& same(e.reasonCode(), row.field("reason"))
							&& same(e.text(), row.field("text")) && same(e.sampleContent(), row.field("content"))
							&& same(e.evidence(), row.field("evidence")));
		}

		private static boolean same(String kept, String field) {
			return (kept == null ? "" : kept.strip()).replace("\r\n", "\n").equals(field.replace("\r\n", "\n"));
		}

		private static void requirePresent(FilledTable.Row row, String column, Optional<String> now, SampleKey sample,
				String what)
				throws Wrong {
			if (!row.field(column).equals(now.orElse(""))) {
				throw new Wrong(sample + ": " + what, Messages.VerdictIntake_exportTheTableAgainAnd);
			}
		}

		/** The clock of a verdict: the time in the row, or now. */
		private Clock at(FilledTable.Row row) throws Wrong {
			if (row.field("time").isEmpty()) {
				return clock;
			}
			try {
				return Clock.fixed(Instant.parse(row.field("time")), ZoneOffset.UTC);
			} catch (DateTimeException e) {
				throw new Wrong(Words.bind(Messages.VerdictIntake_isNoTime, row.field("time")),
						Messages.VerdictIntake_writeItAs203105);
			}
		}
	}
}
