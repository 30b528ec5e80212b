package org.cairnfield.ui.internal.samples.model;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

import org.cairnfield.curation.samples.FindingMarks;
import org.cairnfield.curation.samples.SampleContent;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.SampleTable;
import org.eclipse.osgi.util.NLS;

/** The texts of cells. Numbers with a point, whatever the language of the machine. */
public final class CellText {

	private static final int STRONGEST = 3;
	private static final long FAR = 1_000_000_000_000L;
	private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT)
			.withZone(ZoneOffset.UTC);

	private CellText() {
	}

	/** What a cell shows; empty where nothing is known. */
	public static String of(SampleContent content, SampleColumn column, int index) {
		SampleTable table = content.table(index);
		int row = content.rows().row(index);
		return switch (column) {
		case ID -> table.id(row);
		case SURVEY -> content.rows().part(index).survey();
		case SITE -> content.rows().part(index).site();
		case FLOOR -> Integer.toString(table.floorLevel(row));
		case X -> metres(table.xMetres(row));
		case Y -> metres(table.yMetres(row));
		case TIME -> table.timeMillis(row) == SampleTable.NO_TIME ? ""
				: TIME.format(Instant.ofEpochMilli(table.timeMillis(row)));
		case DEVICE -> content.rows().part(index).device();
		case KIND -> content.rows().part(index).kind().getLiteral();
		case HEARD -> Integer.toString(table.heard(row));
		case STRONGEST -> strongest(content, table, row);
		case STATE -> table.isKept(row) ? "kept" : NLS.bind(Messages.CellText_setAside, table.reason(row));
		case FINDINGS -> content.findings().of(index).map(CellText::findings).orElse("");
		case CLUSTER -> !content.clusters().has(index) || content.clusters().cluster(index) == Labels.NOISE ? ""
				: Integer.toString(content.clusters().cluster(index));
		case ROLE -> content.clusters().role(index);
		};
	}

	/** With two decimals; a table in motion asks for thousands a second, which is too many for a format. */
	static String metres(double metres) {
		long hundredths = Math.round(Math.abs(metres) * 100);
		if (hundredths > FAR) {
			return String.format(Locale.ROOT, "%.2f", metres);
		}
		long part = hundredths % 100;
		return (metres < 0 && hundredths > 0 ? "-" : "") + hundredths / 100 + (part < 10 ? ".0" : ".") + part;
	}

	/** A shape for those who scan, a word for those who read. */
	private static String findings(FindingMarks.Mark mark) {
		String shape = switch (mark.worst()) {
		case ERROR -> "◆";
		case WARNING -> "▲";
		case NOTE -> "○";
		};
		return shape + ' ' + mark.count() + ' ' + mark.worst().code();
	}

	private static String strongest(SampleContent content, SampleTable table, int row) {
		int[] best = new int[STRONGEST];
		int found = 0;
		for (int k = 0; k < table.heard(row); k++) {
			int at = found;
			while (at > 0 && table.rssiDbm(row, best[at - 1]) < table.rssiDbm(row, k)) {
				at--;
			}
			if (at < STRONGEST) {
				found = Math.min(STRONGEST, found + 1);
				System.arraycopy(best, at, best, at + 1, found - at - 1);
				best[at] = k;
			}
		}
		StringBuilder text = new StringBuilder();
		for (int n = 0; n < found; n++) {
			text.append(n == 0 ? "" : ", ")
					.append(content.address(table.accessPoints().get(table.accessPoint(row, best[n]))))
					.append(' ').append(table.rssiDbm(row, best[n]) < 0 ? "−" : "")
					.append(Math.abs(table.rssiDbm(row, best[n])));
		}
		return text.toString();
	}
}
