package org.cairnfield.ui.review.internal.split;

import java.util.List;
import java.util.Locale;

import org.cairnfield.core.choose.AutomaticChoice;
import org.cairnfield.curation.split.TriedSearches;
import org.cairnfield.ui.charts.DotChart;
import org.cairnfield.ui.charts.scale.Axis;
import org.cairnfield.ui.show.Marked;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** What each combination of ε and search costs, and how well it finds held-out samples; another dot can be taken. */
final class TriedPane {

	private final SplitWork work;
	private final Composite page;
	private final DotChart dots;
	private final Label basis;
	private AutomaticChoice.Choice shown;

	TriedPane(Composite parent, SplitWork work) {
		this.work = work;
		page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(4, 4).spacing(4, 3).applyTo(page);
		dots = Marked.id(new DotChart(page, SWT.NONE), "split.tried");
		dots.setName(Messages.TriedPane_errorAndCostOfWhat);
		dots.setEmptyText(Messages.TriedPane_pressSuggestToSeeWhat);
		dots.setAxes(Axis.share(Messages.TriedPane_comparisonsOfPlain).between(Double.NaN, Double.NaN),
				Axis.linear(Messages.TriedPane_meanError, "m"));
		dots.onChosen(this::pick);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(dots);
		basis = Marked.line(page, "split.triedBasis", 1);
		work.onChange(this::show);
		show();
	}

	Composite control() {
		return page;
	}

	private void pick(int dot) {
		if (shown != null && dot >= 0) {
			work.take(shown, shown.tried().get(dot));
		}
	}

	private void show() {
		if (page.isDisposed()) {
			return;
		}
		if (work.tried() != shown) {
			shown = work.tried();
			dots.setDots(shown == null ? List.of() : shown.tried().stream().map(TriedPane::dot).toList(),
					TriedSearches.KINDS);
			dots.setLimit(shown == null ? Double.NaN : shown.budgetShare(), "budget");
			dots.setMarked(shown == null ? -1 : 0, Messages.TriedPane_chosenTheSmallestErrorsWithin);
			Marked.say(basis, shown == null ? ""
					: String.format(Locale.ROOT,
							Messages.TriedPane_trainingSamplesHeldOut, shown.questions()));
			basis.setToolTipText(Messages.TriedPane_byBlocksOfPositionsNoise);
		}
		dots.setChosen(shown == null || work.taken() == null ? -1 : shown.tried().indexOf(work.taken()));
	}

	private static DotChart.Dot dot(AutomaticChoice.Tried tried) {
		return new DotChart.Dot(tried.comparisonShare(), tried.meanErrorMetres(), TriedSearches.words(tried),
				TriedSearches.kind(tried));
	}
}
