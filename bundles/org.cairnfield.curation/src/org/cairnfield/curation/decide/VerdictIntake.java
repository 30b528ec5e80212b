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
				: Count.of(rejected, "row") + " with reject: "
						+ (rejected == 1 ? "its sample leaves" : "their samples leave")
						+ " the map. Write pool to have a sample searched by every query instead.";
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
			return file + ", line " + line + ": " + what + ". " + remedy + ".";
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
				problems.add(new Problem(file, row.line(), e.getMessage(), "Correct the decision, or leave it empty"));
			}
		}
		// a ledger has its lines in the order in which they were given; tables are sorted by sample
		List<LedgerEntry> given = problems.isEmpty()
				? reading.given.stream().sorted(Comparator.comparing(LedgerEntry::time)).toList()
				: List.of();
		return new VerdictIntake(new GiveVerdictsCommand(archive, split.getId(), given, recorded, clock,
				"Take in " + Count.of(given.size(), "verdict")), given.size(), reading.known, reading.blank,
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
					throw new Wrong("a home is given, '" + row.field("home") + "', and no decision",
							"Write move as the decision, or leave the home empty");
				}
				blank++;
				return;
			}
			SampleKey sample = sample(row);
			Long before = seen.putIfAbsent(sample, row.line());
			if (before != null) {
				throw new Wrong("sample " + sample + " was decided on line " + before + " already",
						"Keep one of the two rows");
			}
			Decision decision = decision(row);
			int home = home(row, decision);
			String who = row.field("person").isEmpty() ? person : row.field("person");
			if (who == null || who.isBlank()) {
				throw new Wrong("nobody is named who decided", "Fill in the column 'person'");
			}
			if (saysWhatIsKnown(row, sample, decision, home, who)) {
				known++;
				return;
			}
			requirePresent(row, "content", content.sample(sample), sample,
					"the sample has changed since the table was exported");
			requirePresent(row, "evidence", content.evidence(sample), sample,
					"the evidence has changed since the table was exported");
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
				throw new Wrong("the row is of split '" + row.field("split") + "', not of " + split.getId(),
						"Take it in for that split");
			}
			try {
				return SampleKey.parse(row.field("sample"));
			} catch (IllegalArgumentException e) {
				throw new Wrong(e.getMessage(), "Leave the column 'sample' as it was exported");
			}
		}

		private static Decision decision(FilledTable.Row row) throws Wrong {
			Decision decision = Decision.get(row.field("decision").toLowerCase(Locale.ROOT));
			if (decision == null) {
				throw new Wrong("'" + row.field("decision") + "' is no decision",
						"Write approve, move, pool, faulty or defer, or leave it empty");
			}
			return decision;
		}

		/** The cluster that a sample is moved to. */
		private static int home(FilledTable.Row row, Decision decision) throws Wrong {
			String home = row.field("home");
			if (decision != Decision.MOVE) {
				if (!home.isEmpty()) {
					throw new Wrong("a home is given, '" + home + "', though the decision is " + decision.getLiteral(),
							"Write move as the decision, or leave the home empty");
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
					home.isEmpty() ? "the decision is move, and no home is given"
							: "'" + home + "' is no number of a cluster",
					"Write the number of a cluster into the column 'home'"
							+ (nearest.isEmpty() ? "" : "; the nearest labelled sample is in cluster " + nearest));
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
				throw new Wrong(sample + ": " + what, "Export the table again and look at this one once more");
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
				throw new Wrong("'" + row.field("time") + "' is no time",
						"Write it as 2031-05-01T10:00:00Z, or leave it empty");
			}
		}
	}
}
