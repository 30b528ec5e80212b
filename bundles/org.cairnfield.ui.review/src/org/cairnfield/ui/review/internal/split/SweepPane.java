package org.cairnfield.ui.review.internal.split;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

import org.cairnfield.curation.split.SweepCell;
import org.cairnfield.curation.split.SweepTable;
import org.cairnfield.ui.charts.CellGrid;
import org.cairnfield.ui.charts.GridMap;
import org.cairnfield.ui.charts.scale.Axis;
import org.cairnfield.ui.show.Marked;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The grid of ε × minPts; a cell that is picked becomes the trial. */
final class SweepPane {

	private enum Shown {
		NOISE(Messages.SweepPane_noiseShare, Axis.share(Messages.SweepPane_noiseShare2).between(Double.NaN, Double.NaN),
				1, SweepCell::noiseShare),
		CLUSTERS("clusters", Axis.linear(Messages.SweepPane_clusters, ""), 0, SweepCell::clusters),
		LARGEST(Messages.SweepPane_largestCluster,
				Axis.share(Messages.SweepPane_largestCluster2).between(Double.NaN, Double.NaN), 1,
				SweepCell::largestShare),
		ERROR(Messages.SweepPane_meanError, Axis.linear(Messages.SweepPane_meanError2, "m"), 2,
				SweepCell::meanErrorMetres),
		COMPARISONS("comparisons", Axis.share(Messages.SweepPane_comparisonsOfPlain).between(Double.NaN, Double.NaN), 1,
				SweepCell::comparisonShare);

		final String title;
		final Axis axis;
		final int decimals;
		final ToDoubleFunction<SweepCell> value;

		Shown(String title, Axis axis, int decimals, ToDoubleFunction<SweepCell> value) {
			this.title = title;
			this.axis = axis;
			this.decimals = decimals;
			this.value = value;
		}

		boolean needsErrors() {
			return this == ERROR || this == COMPARISONS;
		}
	}

	private final SplitWork work;
	private final Composite page;
	private final Combo colour;
	private final Button run;
	private final Button errors;
	private final GridMap grid;
	private final Label basis;
	private SweepTable shown;
	private Shown shownAs;

	SweepPane(Composite parent, SplitWork work) {
		this.work = work;
		page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(4, 4).numColumns(4).spacing(4, 3).applyTo(page);
		run = Marked.button(page, Messages.SweepPane_sweep, "split.sweep", () -> work.startSweep(false));
		errors = Marked.button(page, Messages.SweepPane_errorsToo, "split.sweepErrors", () -> work.startSweep(true));
		errors.setToolTipText(Messages.SweepPane_alsoTheMeanErrorAnd);
		colour = Marked.choice(page, Messages.SweepPane_colour, "split.colour", this::recolour);
		GridDataFactory.fillDefaults().grab(true, false).hint(70, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER)
				.applyTo(colour);
		for (Shown each : Shown.values()) {
			colour.add(each.title);
		}
		colour.select(0);
		grid = Marked.id(new GridMap(page, SWT.NONE), "split.grid");
		grid.setName(Messages.SweepPane_sweepOfAndMinpts);
		grid.setEmptyText(Messages.SweepPane_pressSweepToSeeWhat);
		grid.onChosen(this::pick);
		GridDataFactory.fillDefaults().grab(true, true).span(4, 1).applyTo(grid);
		basis = Marked.line(page, "split.basis", 4);
		work.onChange(this::show);
		show();
	}

	Composite control() {
		return page;
	}

	private Shown colouring() {
		return Shown.values()[colour.getSelectionIndex()];
	}

	private void recolour() {
		if (colouring().needsErrors() && (work.sweep() == null || !work.sweep().hasErrors())) {
			work.startSweep(true);
		}
		show();
	}

	private void pick(int cell) {
		if (shown != null && cell >= 0) {
			int columns = shown.epsilons().length;
			int[] minPts = sorted(shown);
			work.setBoth(shown.epsilons()[cell % columns], minPts[cell / columns], Messages.SweepPane_pickedInTheSweep,
					"");
		}
	}

	/** Rows of the grid go up, whatever order was asked for. */
	private static int[] sorted(SweepTable table) {
		return Arrays.stream(table.minPts()).sorted().toArray();
	}

	private void show() {
		if (page.isDisposed()) {
			return;
		}
		boolean can = work.study() != null;
		run.setEnabled(can);
		errors.setEnabled(can);
		SweepTable table = work.sweep();
		if (table != shown || colouring() != shownAs) {
			shown = table;
			shownAs = colouring();
			draw();
		}
		if (shown != null && work.choice() != null) {
			int[] minPts = sorted(shown);
			int column = Arrays.binarySearch(shown.epsilons(), work.epsilon());
			int row = Arrays.binarySearch(minPts, work.choice().minPts());
			grid.setChosen(column >= 0 && row >= 0 ? row * shown.epsilons().length + column : -1);
		}
	}

	private void draw() {
		if (shown == null) {
			grid.setGrid(new CellGrid(new double[0], new double[0], new double[0][]));
			grid.setMarked(-1, "");
			Marked.say(basis, "");
			return;
		}
		int[] minPts = sorted(shown);
		double[] xs = shown.epsilons();
		double[][] values = new double[minPts.length][xs.length];
		int best = -1;
		double least = Double.POSITIVE_INFINITY;
		for (int y = 0; y < minPts.length; y++) {
			int from = places(shown, minPts[y]);
			for (int x = 0; x < xs.length; x++) {
				SweepCell cell = shown.cell(x, from);
				values[y][x] = shownAs.value.applyAsDouble(cell);
				if (cell.meanErrorMetres() < least) {
					least = cell.meanErrorMetres();
					best = y * xs.length + x;
				}
			}
		}
		grid.setAxes(Axis.linear("ε", work.choice().unit()), Axis.linear("minPts", ""), shownAs.axis, shownAs.decimals);
		grid.setGrid(new CellGrid(xs, IntStream.of(minPts).asDoubleStream().toArray(), values));
		grid.setMarked(best, best < 0 ? "" : Messages.SweepPane_smallestMeanError);
		Marked.say(basis, shownAs.needsErrors() && !shown.hasErrors() ? Messages.SweepPane_errorsAreNotComputedYet
				: shown.hasErrors() ? NLS.bind(Messages.SweepPane_errors, shown.basis()) : "");
	}

	private static int places(SweepTable table, int minPts) {
		return IntStream.range(0, table.minPts().length).filter(i -> table.minPts()[i] == minPts).findFirst()
				.orElseThrow();
	}
}
