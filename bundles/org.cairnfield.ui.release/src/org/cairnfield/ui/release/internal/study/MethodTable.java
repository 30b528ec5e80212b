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
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

/** A line a method: of one map, or the means over all. */
final class MethodTable {

	/** What a line shows; empty texts where the method was skipped. */
	private record Line(StudyMethod method, String toPlain, String interval, String toThree, String time,
			String compared, String floors, String offline, String rank,
			String how) {
	}

	private final TableViewer table;

	MethodTable(Composite parent) {
		table = new TableViewer(parent, SWT.FULL_SELECTION | SWT.BORDER);
		Marked.named(Marked.id(table.getTable(), "study.methods"), Messages.MethodTable_methodsSideBySide)
				.setHeaderVisible(true);
		GridDataFactory.fillDefaults().grab(true, true).hint(200, 100).applyTo(table.getTable());
		table.setContentProvider(ArrayContentProvider.getInstance());
		column(Messages.MethodTable_method, 138, SWT.LEFT, "", line -> line.method.code());
		column(Messages.MethodTable_errorToPlain, 116, SWT.RIGHT, Messages.MethodTable_meanErrorToThatOf,
				Line::toPlain);
		column("95 %", 100, SWT.RIGHT, Messages.MethodTable_intervalOfThatRatio, Line::interval);
		column(Messages.MethodTable_toPlain3w, 104, SWT.RIGHT, Messages.MethodTable_meanErrorToThatOf2, Line::toThree);
		column(Messages.MethodTable_matchTime, 100, SWT.RIGHT, Messages.MethodTable_processorTimeOfAMatch, Line::time);
		column(Messages.MethodTable_compared, 92, SWT.RIGHT, Messages.MethodTable_fingerprintsComparedForOnePosition,
				Line::compared);
		column(Messages.MethodTable_rightFloor, 96, SWT.RIGHT, Messages.MethodTable_sharePutOnTheRight, Line::floors);
		column(Messages.MethodTable_madeIn, 76, SWT.RIGHT, Messages.MethodTable_timeThatMakingTheMap, Line::offline);
		column(Messages.MethodTable_rank, 60, SWT.RIGHT, Messages.MethodTable_ofTheMeanErrorMean, Line::rank);
		column(Messages.MethodTable_how, 420, SWT.LEFT, "", Line::how);
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
		List<Line> lines = study == null ? List.of()
				: map == null ? means(study) : study.of(map).stream().map(MethodTable::line).toList();
		if (!lines.equals(table.getInput())) {
			Optional<StudyMethod> before = selected();
			table.setInput(lines);
			lines.stream().filter(line -> before.filter(line.method::equals).isPresent()).findFirst()
					.ifPresent(line -> table.setSelection(new StructuredSelection(line)));
		}
	}

	private static List<Line> means(StudyTable study) {
		return study.averages().stream()
				.map(mean -> new Line(StudyMethod.of(mean.method()), ratio(mean.toPlain().value()),
						range(mean.toPlain().interval().low(), mean.toPlain().interval().high()),
						ratio(mean.toPlain3w().value()), ratio(mean.matchTime().value()),
						percent(mean.comparisonShare()), percent(mean.floorHitRate()),
						seconds(mean.offlineS()), String.format(Locale.ROOT, "%.1f", mean.rank()), how(study, mean)))
				.toList();
	}

	private static String how(StudyTable study, StudyTable.Average mean) {
		int maps = study.maps().size();
		return (mean.maps() < maps ? NLS.bind(Messages.MethodTable_onOfMaps, mean.maps(), maps) : "")
				+ StudyMethod.of(mean.method()).how();
	}

	private static Line line(StudyRow row) {
		StudyMethod method = StudyMethod.of(row.method());
		return Optional.ofNullable(row.figures())
				.map(figures -> new Line(method, ratio(figures.toPlain()),
						range(figures.toPlainLow(), figures.toPlainHigh()),
						ratio(figures.toPlain3w()), ratio(figures.matchTimeRatio()), percent(figures.comparisonShare()),
						percent(figures.floorHitRate()), seconds(row.offlineS()), "",
						row.how()))
				.orElseGet(() -> new Line(method, "", "", "", "", "", "", "", "",
						NLS.bind(Messages.MethodTable_skipped, row.skipped())));
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
