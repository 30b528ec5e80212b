package org.cairnfield.archive.internal.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;

/**
 * The samples of a survey: one a line, sorted by id; readings sorted by access point.
 *
 * <pre>
 * cairnfield samples 1
 * id            floor  x     y     time                  state          readings
 * TH-SPRING-02  0      0.66  13    2031-04-08T07:30:00Z  kept           00005e005301:-61 00005e005302:-74
 * TH-SPRING-03  0      2.86  13    -                     aside: moved   -
 * end           2      8c736521
 * </pre>
 */
public final class SamplesText {

	static final String COLUMNS = "id\tfloor\tx\ty\ttime\tstate\treadings";
	private static final int FIELDS = 7;
	private static final String KEPT = "kept";
	private static final String ASIDE = "aside: ";
	private static final String NOTHING = "-";

	private SamplesText() {
	}

	/** Writes the whole file. */
	public static void write(SampleTable table, OutputStream out) throws IOException {
		write(table, 0, table.size(), out);
	}

	/** Writes a file of some rows. */
	static void write(SampleTable table, int from, int to, OutputStream out) throws IOException {
		LineWriter line = new LineWriter(out, FileKind.SAMPLES);
		MomentText moments = new MomentText();
		line.text(COLUMNS).finishLine();
		for (int row = from; row < to; row++) {
			write(table, row, line, moments);
			line.end();
		}
		line.seal();
	}

	private static void write(SampleTable table, int row, LineWriter line, MomentText moments) {
		line.field(table.id(row)).tab().number(table.floorLevel(row)).tab().decimal(table.xMetres(row)).tab()
				.decimal(table.yMetres(row)).tab();
		long millis = table.timeMillis(row);
		if (millis == SampleTable.NO_TIME) {
			line.text(NOTHING);
		} else {
			moments.write(millis, line);
		}
		line.tab();
		String reason = table.reason(row);
		if (reason == null) {
			line.text(KEPT);
		} else {
			line.text(ASIDE).field(reason);
		}
		line.tab();
		int heard = table.heard(row);
		if (heard == 0) {
			line.text(NOTHING);
		}
		for (int k = 0; k < heard; k++) {
			if (k > 0) {
				line.ascii(' ');
			}
			line.text(table.accessPoints().get(table.accessPoint(row, k)));
			line.ascii(':');
			line.number(table.rssiDbm(row, k));
		}
	}

	/** Reads the whole file; what can not be read is reported and left out. */
	public static SampleTable read(InputStream in, Migrations migrations, PartReport report) throws IOException {
		Reading reading = new Reading();
		reading.add(in, migrations, report);
		return reading.table(report);
	}

	/** Reads one table from any number of files. */
	public static final class Reading {

		private final SampleTableBuilder builder = SampleTable.builder();
		private final AccessPointBytes accessPoints = new AccessPointBytes(builder);
		private final MomentText moments = new MomentText();
		private final SeenIds seen = new SeenIds();
		private boolean columns;

		/** Adds the samples of a file; what can not be read is reported and left out. */
		public void add(InputStream in, Migrations migrations, PartReport report) throws IOException {
			columns = false;
			new RecordReader(FileKind.SAMPLES, report).read(migrations.bring(FileKind.SAMPLES, in, report), this::read);
		}

		private boolean read(LineReader line) throws IOException {
			if (!columns) {
				columns = true;
				if (!line.whole().equals(COLUMNS)) {
					throw new Unreadable(
							Words.bind(Messages.SamplesText_doesNotNameTheColumns, COLUMNS.replace('\t', ' ')));
				}
				return false;
			}
			if (line.fields() != FIELDS) {
				throw new Unreadable(Words.bind(Messages.SamplesText_hasFieldsInPlaceOf, line.fields(), FIELDS));
			}
			String id = line.field(0);
			int floor = line.intNumber(1);
			double x = line.decimal(2);
			double y = line.decimal(3);
			long millis = time(line);
			String reason = reason(line);
			int[] heard = accessPoints.read(line, FIELDS - 1, NOTHING);
			if (!seen.isNew(id)) {
				throw new Unreadable(Words.bind(Messages.SamplesText_aSecondSampleWithThe, line.shown(0)));
			}
			builder.sample(id, floor, x, y).time(millis).reason(reason);
			for (int k = 0; k < heard.length; k += 2) {
				if (heard[k] < 0) {
					break;
				}
				builder.reading(heard[k], heard[k + 1]);
			}
			return true;
		}

		private long time(LineReader line) throws Unreadable {
			if (line.is(4, NOTHING)) {
				return SampleTable.NO_TIME;
			}
			long millis = moments.parse(line.bytes(), line.start(4), line.end(4));
			if (millis == MomentText.NONE) {
				throw new Unreadable(Words.bind(Messages.SamplesText_notAMomentInUtc, line.shown(4)));
			}
			return millis;
		}

		private static String reason(LineReader line) throws Unreadable {
			if (line.is(5, KEPT)) {
				return null;
			}
			String state = line.field(5);
			if (!state.startsWith(ASIDE) || state.length() == ASIDE.length()) {
				throw new Unreadable(
						Words.bind(Messages.SamplesText_theStateIsNeitherNor, KEPT, ASIDE, line.shown(5)));
			}
			String reason = state.substring(ASIDE.length());
			if (reason.isBlank() || reason.chars().anyMatch(c -> c < ' ' || c == 0x7f)) {
				throw new Unreadable(Words.bind(Messages.SamplesText_noReasonForSettingA, line.shown(5)));
			}
			return reason;
		}

		/** The samples of all files. */
		public SampleTable table(PartReport report) {
			try {
				return builder.build();
			} catch (IllegalArgumentException e) {
				report.damage(0, e.getMessage());
				return SampleTable.EMPTY;
			}
		}
	}
}
