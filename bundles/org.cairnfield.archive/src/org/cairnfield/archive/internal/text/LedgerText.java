package org.cairnfield.archive.internal.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.HashSet;
import java.util.Set;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Round;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.values.SampleKey;

/**
 * A ledger: a verdict a line, in the order in which they were given. Ledgers whose verdicts say nothing in the last column, or
 * in the last five, are written without them, as all were once.
 */
public final class LedgerText {

	static final String COLUMNS = "id\tsplit\tsample\tcluster\tdecision\treason\ttext\tperson\ttime\tsupersedes";
	static final String MORE_COLUMNS = COLUMNS + "\tround\tcontent\tevidence\tbatch";
	static final String ALL_COLUMNS = MORE_COLUMNS + "\tenteredBy";
	private static final int FIELDS = 10;
	private static final int MORE_FIELDS = 14;
	private static final int ALL_FIELDS = 15;

	private LedgerText() {
	}

	/** Writes the whole file. */
	public static void write(Ledger ledger, OutputStream out) throws IOException {
		LineWriter line = new LineWriter(out, FileKind.LEDGER);
		line.text("ledger").tab().optional(ledger.getId()).finishLine();
		boolean all = ledger.getVerdicts().stream().anyMatch(verdict -> verdict.getEnteredBy() != null);
		boolean more = all || ledger.getVerdicts().stream().anyMatch(LedgerText::saysMore);
		line.text(all ? ALL_COLUMNS : more ? MORE_COLUMNS : COLUMNS).finishLine();
		for (Verdict verdict : ledger.getVerdicts()) {
			line.optional(verdict.getId()).tab().optional(verdict.getSplit()).tab()
					.optional(verdict.getSample() == null ? null : verdict.getSample().toString()).tab()
					.number(verdict.getCluster()).tab().text(verdict.getDecision().getLiteral()).tab()
					.optional(verdict.getReasonCode()).tab().optional(verdict.getText()).tab()
					.optional(verdict.getPerson())
					.tab().optional(verdict.getTime() == null ? null : verdict.getTime().toString()).tab()
					.optional(verdict.getSupersedes());
			if (more) {
				line.tab().text(verdict.getRound().getLiteral()).tab().optional(verdict.getSampleContent()).tab()
						.optional(verdict.getEvidence()).tab().optional(verdict.getBatch());
			}
			if (all) {
				line.tab().optional(verdict.getEnteredBy());
			}
			line.end();
		}
		line.seal();
	}

	/** Whether a line names the columns of a ledger. */
	static boolean isColumns(String line) {
		return line.equals(COLUMNS) || line.equals(MORE_COLUMNS) || line.equals(ALL_COLUMNS);
	}

	private static boolean saysMore(Verdict verdict) {
		return verdict.getRound() != Round.FIRST || verdict.getSampleContent() != null || verdict.getEvidence() != null
				|| verdict.getBatch() != null;
	}

	/** Reads the whole file; what can not be read is reported and left out. */
	public static Ledger read(InputStream in, Migrations migrations, PartReport report) throws IOException {
		Ledger ledger = ModelFactory.eINSTANCE.createLedger();
		Set<String> seen = new HashSet<>();
		int[] head = { 0 };
		new RecordReader(FileKind.LEDGER, report).read(migrations.bring(FileKind.LEDGER, in, report), line -> {
			if (head[0] == 0 && line.fields() == 2 && line.is(0, "ledger")) {
				ledger.setId(line.optional(1));
				head[0] = 1;
				return false;
			}
			if (head[0] == 1 && isColumns(line.whole())) {
				head[0] = 2;
				return false;
			}
			if (head[0] < 2) {
				throw new Unreadable(Messages.LedgerText_doesNotNameTheLedger);
			}
			Verdict verdict = verdict(line);
			if (!seen.add(verdict.getId())) {
				throw new Unreadable(Words.bind(Messages.LedgerText_aSecondVerdictWithThe, line.shown(0)));
			}
			ledger.getVerdicts().add(verdict);
			return true;
		});
		return ledger;
	}

	private static Verdict verdict(LineReader line) throws Unreadable {
		if (line.fields() != FIELDS && line.fields() != MORE_FIELDS && line.fields() != ALL_FIELDS) {
			throw new Unreadable(Words.bind(Messages.LedgerText_hasFieldsInPlaceOf, line.fields(), FIELDS,
					MORE_FIELDS, ALL_FIELDS));
		}
		Verdict verdict = ModelFactory.eINSTANCE.createVerdict();
		verdict.setId(line.optional(0));
		verdict.setSplit(line.optional(1));
		String sample = line.optional(2);
		verdict.setSample(sample == null ? null : SampleKey.parse(sample));
		verdict.setCluster(line.intNumber(3));
		Decision decision = Decision.get(line.field(4));
		if (decision == null) {
			throw new Unreadable(Words.bind(Messages.LedgerText_noDecision, line.shown(4)));
		}
		verdict.setDecision(decision);
		verdict.setReasonCode(line.optional(5));
		verdict.setText(line.optional(6));
		verdict.setPerson(line.optional(7));
		String time = line.optional(8);
		try {
			verdict.setTime(time == null ? null : Instant.parse(time));
		} catch (DateTimeException e) {
			throw new Unreadable(Words.bind(Messages.LedgerText_notAMomentInUtc, line.shown(8)));
		}
		verdict.setSupersedes(line.optional(9));
		if (line.fields() >= MORE_FIELDS) {
			Round round = Round.get(line.field(10));
			if (round == null) {
				throw new Unreadable(Words.bind(Messages.LedgerText_noRoundOfReview, line.shown(10)));
			}
			verdict.setRound(round);
			verdict.setSampleContent(line.optional(11));
			verdict.setEvidence(line.optional(12));
			verdict.setBatch(line.optional(13));
		}
		if (line.fields() == ALL_FIELDS) {
			verdict.setEnteredBy(line.optional(14));
		}
		return verdict;
	}
}
