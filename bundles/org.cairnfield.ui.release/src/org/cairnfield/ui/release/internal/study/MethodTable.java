package org.cairnfield.ui.release.internal.study;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

import org.cairnfield.curation.study.StudyMethod;
import org.cairnfield.curation.study.StudyRow;
import org.cairnfield.curation.study.StudyTable;
import org.cairnfield.ui.show.Marked;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

/** A line a method: of one map, or the means over all. */
final class MethodTable {

	/** What a line shows; empty texts where the method was skipped. */
	private record Line(StudyMethod method, String toPlain, String interval, String toThree, String time, String compared, String floors, String offline, String rank,
			String how) {
	}

	private final TableViewer table;

	MethodTable(Composite parent) {
		table = new TableViewer(parent, SWT.FULL_SELECTION | SWT.BORDER);
		Marked.named(Marked.id(table.getTable(), "study.methods"), "Methods side by side").setHeaderVisible(true);
		GridDataFactory.fillDefaults().grab(true, true).hint(200, 100).applyTo(table.getTable());
		table.setContentProvider(ArrayContentProvider.getInstance());
		column("Method", 138, SWT.LEFT, "", line -> line.method.code());
		column("Error to plain", 116, SWT.RIGHT, "Mean error to that of the nearest fingerprint of all", Line::toPlain);
		column("95 %", 100, SWT.RIGHT, "Interval of that ratio", Line::interval);
		column("To plain-3w", 104, SWT.RIGHT, "Mean error to that of the three nearest of all, weighted", Line::toThree);
		column("Match time", 100, SWT.RIGHT, "Processor time of a match to that of plain matching", Line::time);
		column("Compared", 92, SWT.RIGHT, "Fingerprints compared for one position, as a share of the map", Line::compared);
		column("Right floor", 96, SWT.RIGHT, "Share put on the right floor of the right site", Line::floors);
		column("Made in", 76, SWT.RIGHT, "Time that making the map searchable takes", Line::offline);
		column("Rank", 60, SWT.RIGHT, "Of the mean error; mean over the maps", Line::rank);
		column("How", 420, SWT.LEFT, "", Line::how);
	}

	private void column(String title, int width, int alignment, String tip, Function<Line, String> text) {
		TableViewerColumn column = new TableViewerColumn(table, alignment);
		column.getColumn().setText(title);
		column.getColumn().setWidth(width);
		column.getColumn().setToolTipText(tip);
		column.setLabelProvider(ColumnLabelProvider.createTextProvider(element -> text.apply((Line) element)));
	}

	/** Hears of another selection. */
	void onSelected(Runnable listener) {
		table.addSelectionChangedListener(event -> listener.run());
	}

	/** The method of the selected line. */
	Optional<StudyMethod> selected() {
		return Optional.ofNullable((Line) table.getStructuredSelection().getFirstElement()).map(Line::method);
	}

	/** @param map its name; null for the means over all */
	void show(StudyTable study, String map) {
		List<Line> lines = study == null ? List.of() : map == null ? means(study) : study.of(map).stream().map(MethodTable::line).toList();
		if (!lines.equals(table.getInput())) {
			Optional<StudyMethod> before = selected();
			table.setInput(lines);
			lines.stream().filter(line -> before.filter(line.method::equals).isPresent()).findFirst()
					.ifPresent(line -> table.setSelection(new StructuredSelection(line)));
		}
	}

	private static List<Line> means(StudyTable study) {
		return study.averages().stream().map(mean -> new Line(StudyMethod.of(mean.method()), ratio(mean.toPlain().value()), range(mean.toPlain().interval().low(), mean.toPlain().interval().high()),
				ratio(mean.toPlain3w().value()), ratio(mean.matchTime().value()), percent(mean.comparisonShare()), percent(mean.floorHitRate()),
				seconds(mean.offlineS()), String.format(Locale.ROOT, "%.1f", mean.rank()), how(study, mean))).toList();
	}

	private static String how(StudyTable study, StudyTable.Average mean) {
		int maps = study.maps().size();
		return (mean.maps() < maps ? "on " + mean.maps() + " of " + maps + " maps; " : "") + StudyMethod.of(mean.method()).how();
	}

	private static Line line(StudyRow row) {
		StudyMethod method = StudyMethod.of(row.method());
		return Optional.ofNullable(row.figures()).map(figures -> new Line(method, ratio(figures.toPlain()), range(figures.toPlainLow(), figures.toPlainHigh()),
				ratio(figures.toPlain3w()), ratio(figures.matchTimeRatio()), percent(figures.comparisonShare()), percent(figures.floorHitRate()), seconds(row.offlineS()), "",
				row.how())).orElseGet(() -> new Line(method, "", "", "", "", "", "", "", "", "skipped: " + row.skipped()));
	}

	private static String ratio(double value) {
		return Double.isNaN(value) ? "–" : String.format(Locale.ROOT, value < 0.1 ? "%.3f" : "%.2f", value);
	}

	private static String range(double low, double high) {
		return Double.isNaN(low) ? "–" : ratio(low) + " … " + ratio(high);
	}

	private static String percent(double share) {
		return String.format(Locale.ROOT, "%.1f %%", 100 * share);
	}

	private static String seconds(double value) {
		return String.format(Locale.ROOT, "%.1f s", value);
	}
}
