package org.cairnfield.ui.plan.internal.scene;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.model.Archive;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.ui.charts.scale.ShownNumbers;
import org.eclipse.osgi.util.NLS;

/** A sample in words. */
public final class SampleText {

	private static final int STRONGEST = 3;

	private SampleText() {
	}

	/** In one line: id, place, how many it heard. */
	public static String line(SampleRows samples, int sample) {
		SampleTable table = samples.table(sample);
		int row = samples.row(sample);
		String reason = table.reason(row);
		return NLS.bind(Messages.SampleText_xYHeard,
				new Object[] { table.id(row), ShownNumbers.text(table.xMetres(row), 2, "m"),
						ShownNumbers.text(table.yMetres(row), 2, "m"), table.heard(row),
						ModelText.name(samples.part(sample).source()),
						reason == null ? "" : NLS.bind(Messages.SampleText_setAside, reason) });
	}

	/** In some lines, with the strongest access points and what was found. */
	public static String lines(SampleRows samples, int sample, Archive archive, List<Finding> findings) {
		SampleTable table = samples.table(sample);
		int row = samples.row(sample);
		StringBuilder text = new StringBuilder();
		ArchiveIndex index = ArchiveIndex.of(archive);
		text.append(table.id(row)).append('\n');
		text.append("x ").append(ShownNumbers.text(table.xMetres(row), 2, "m")).append(", y ")
				.append(ShownNumbers.text(table.yMetres(row), 2, "m")).append('\n');
		text.append(ModelText.name(samples.part(sample).source())).append('\n');
		text.append(table.heard(row)).append(Messages.SampleText_accessPointsHeard);
		IntStream.range(0, table.heard(row)).boxed()
				.sorted(Comparator.comparingInt((Integer k) -> -table.rssiDbm(row, k))).limit(STRONGEST)
				.forEach(k -> text.append("\n   ").append(ShownNumbers.text(table.rssiDbm(row, k), 0, "dBm"))
						.append("   ")
						.append(address(index, table.accessPoints().get(table.accessPoint(row, k)))));
		if (!table.isKept(row)) {
			text.append(Messages.SampleText_setAside2).append(table.reason(row));
		}
		text.append(findings.stream().map(finding -> "\n! " + finding.message()).distinct().limit(STRONGEST)
				.collect(Collectors.joining()));
		return text.toString();
	}

	private static String address(ArchiveIndex index, String id) {
		return index.accessPoint(id).map(ModelText::address).orElse(id);
	}
}
