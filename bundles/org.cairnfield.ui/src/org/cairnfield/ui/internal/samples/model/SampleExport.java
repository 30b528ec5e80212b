package org.cairnfield.ui.internal.samples.model;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;

import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.samples.FindingMarks;
import org.cairnfield.curation.samples.SampleContent;
import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.ResultTable;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.SampleTable;
import org.eclipse.osgi.util.NLS;

/** Samples of a table for other programs. */
public final class SampleExport {

	private static final List<String> HEADER = List.of("id", "survey", "site", "floor", "x (m)", "y (m)",
			Messages.SampleExport_timeUtc, "device",
			"heard", "state", "reason", "findings", "worst", "rules", "cluster", "role",
			Messages.SampleExport_readingsDbm);

	private SampleExport() {
	}

	/**
	 * Writes a table of all that is known of the samples, numbers in full, the readings of each as
	 * {@code address level; address level}.
	 *
	 * @param indices of the samples, in order
	 * @throws IntakeException where the file cannot be written
	 */
	public static void write(Path file, SampleContent content, int[] indices, Workers workers) throws IntakeException {
		workers.progress().begin(NLS.bind(Messages.SampleExport_writing, file.getFileName()), indices.length);
		ResultTable.write(file, HEADER, Arrays.stream(indices).mapToObj(index -> {
			workers.checkCancelled();
			workers.progress().advance(1);
			return row(content, index);
		}));
	}

	private static List<?> row(SampleContent content, int index) {
		SampleTable table = content.table(index);
		int row = content.rows().row(index);
		SampleRows.Part part = content.rows().part(index);
		FindingMarks.Mark mark = content.findings().of(index).orElse(null);
		boolean clustered = content.clusters().has(index) && content.clusters().cluster(index) != Labels.NOISE;
		List<Object> fields = new ArrayList<>();
		fields.add(table.id(row));
		fields.add(part.survey());
		fields.add(part.site());
		fields.add(table.floorLevel(row));
		fields.add(table.xMetres(row));
		fields.add(table.yMetres(row));
		fields.add(table.timeMillis(row) == SampleTable.NO_TIME ? null : Instant.ofEpochMilli(table.timeMillis(row)));
		fields.add(part.device());
		fields.add(table.heard(row));
		fields.add(table.isKept(row) ? "kept" : Messages.SampleExport_setAside);
		fields.add(table.reason(row));
		fields.add(mark == null ? 0 : mark.count());
		fields.add(mark == null ? null : mark.worst().code());
		fields.add(mark == null ? null : mark.rules());
		fields.add(clustered ? content.clusters().cluster(index) : null);
		fields.add(content.clusters().role(index));
		fields.add(readings(content, table, row));
		return fields;
	}

	private static String readings(SampleContent content, SampleTable table, int row) {
		StringBuilder text = new StringBuilder();
		for (int k = 0; k < table.heard(row); k++) {
			text.append(k == 0 ? "" : "; ").append(content.address(table.accessPoints().get(table.accessPoint(row, k))))
					.append(' ')
					.append(table.rssiDbm(row, k));
		}
		return text.toString();
	}

	/**
	 * The cells of the samples as text, a line each under a line of headers, with tabs between them, as spreadsheets paste it.
	 *
	 * @param indices of the samples, in order
	 */
	public static String text(SampleContent content, List<SampleColumn> columns, int[] indices, Workers workers) {
		StringBuilder text = new StringBuilder();
		line(text, columns.size(), i -> columns.get(i).title());
		for (int index : indices) {
			workers.checkCancelled();
			line(text, columns.size(), i -> CellText.of(content, columns.get(i), index));
		}
		return text.toString();
	}

	private static void line(StringBuilder text, int cells, IntFunction<String> cell) {
		for (int i = 0; i < cells; i++) {
			text.append(i == 0 ? "" : "\t").append(cell.apply(i).replace('\t', ' '));
		}
		text.append('\n');
	}
}
