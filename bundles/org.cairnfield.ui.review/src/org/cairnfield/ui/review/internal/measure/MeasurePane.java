package org.cairnfield.ui.review.internal.measure;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;

import org.cairnfield.core.stats.Interval;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.measure.Measures;
import org.cairnfield.curation.measure.PackRequest;
import org.cairnfield.curation.measure.ReleasedMap;
import org.cairnfield.curation.measure.Way;
import org.cairnfield.curation.split.UnfitSurveyException;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.review.internal.desk.DeskListener;
import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.cairnfield.ui.save.Damaged;
import org.cairnfield.ui.show.Marked;
import org.cairnfield.ui.work.LatestWork;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Plain matching, the split, the split with what was approved, and what a device gets side by side, with 95 % intervals. */
final class MeasurePane implements DeskListener {

	private record Found(ReleasedMap map, Measures measures) {
	}

	private final ReviewDesk desk;
	private final Composite page;
	private final Button measure;
	private final Button cancel;
	private final Label says;
	private final TableViewer table;
	private final LatestWork work = new LatestWork(this::show);
	private Measures measured;
	private int approved;
	private int samples;
	private Split of;
	private String problem = "";
	private boolean outdated;

	MeasurePane(Composite parent, ReviewDesk desk) {
		this.desk = desk;
		page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(3).margins(6, 4).spacing(6, 4).applyTo(page);
		measure = Marked.button(page, Messages.MeasurePane_measure, "measure.start", this::start);
		cancel = Marked.button(page, Messages.MeasurePane_cancel, "measure.cancel", work::cancel);
		says = Marked.line(page, "measure.message", 1);
		table = new TableViewer(page, SWT.FULL_SELECTION | SWT.BORDER);
		Marked.named(Marked.id(table.getTable(), "measure.table"), Messages.MeasurePane_measuresOfTheSplit)
				.setHeaderVisible(true);
		GridDataFactory.fillDefaults().grab(true, true).span(3, 1).applyTo(table.getTable());
		column(Messages.MeasurePane_matching, 150, SWT.LEFT, Way::name);
		column(Messages.MeasurePane_meanError, 98, SWT.RIGHT, c -> metres(c.errors().meanMetres()));
		column(Messages.MeasurePane_95OfMean, 115, SWT.RIGHT, c -> interval(c.mean(), " m"));
		column(Messages.MeasurePane_median, 75, SWT.RIGHT, c -> metres(c.errors().medianMetres()));
		column(Messages.MeasurePane_95Within, 104, SWT.RIGHT, c -> metres(c.errors().p95Metres()));
		column(Messages.MeasurePane_toPlain, 70, SWT.RIGHT, c -> String.format(Locale.ROOT, "%.3f", c.ratio()));
		column(Messages.MeasurePane_95OfRatio, 115, SWT.RIGHT, c -> interval(c.ratioInterval(), ""));
		column(Messages.MeasurePane_comparedPerQuery, 135, SWT.RIGHT,
				c -> String.format(Locale.ROOT, "%,.1f (%.1f %%)", c.comparisons(), 100 * c.comparisonShare()));
		column(Messages.MeasurePane_how, 420, SWT.LEFT, Way::how);
		table.setContentProvider(ArrayContentProvider.getInstance());
		desk.add(this);
		page.addListener(SWT.Dispose, event -> {
			desk.remove(this);
			work.cancel();
		});
		show();
	}

	private void column(String title, int width, int alignment, Function<Way, String> text) {
		TableViewerColumn column = new TableViewerColumn(table, alignment);
		column.getColumn().setText(title);
		column.getColumn().setWidth(width);
		column.setLabelProvider(ColumnLabelProvider.createTextProvider(element -> text.apply((Way) element)));
	}

	private static String metres(double value) {
		return Double.isNaN(value) ? "–" : String.format(Locale.ROOT, "%.2f m", value);
	}

	private static String interval(Interval interval, String unit) {
		return String.format(Locale.ROOT, Messages.MeasurePane_to, interval.low(), interval.high(), unit);
	}

	@Override
	public void splitChanged() {
		if (desk.split() != of) {
			work.cancel();
			measured = null;
			problem = "";
		}
		outdated = measured != null;
		show();
	}

	@Override
	public void verdictsChanged() {
		outdated = measured != null;
		show();
	}

	private void start() {
		if (!Damaged.mayGoOn(page.getShell(), desk.session(), Messages.MeasurePane_measure2)) {
			return;
		}
		Archive still = ArchiveCopy.of(desk.session().archive());
		ReviewPolicy policy = desk.review().standings().all().policy();
		String id = desk.split().getId();
		of = desk.split();
		problem = "";
		work.start(NLS.bind(Messages.MeasurePane_measuringSplit, id), workers -> {
			Split split = still.getSplits().stream().filter(each -> each.getId().equals(id)).findFirst().orElseThrow();
			ReleasedMap map = ReleasedMap.within(still, split, policy);
			Measures found = Measures.of(map, ArchiveMap.of(still, split.getScope(), SurveyKind.TEST).map(),
					PackRequest.USUAL, workers);
			if (found.ways().isEmpty()) {
				throw new UnfitSurveyException(NLS.bind(Messages.MeasurePane_thereIsNoTestSurvey, id));
			}
			return new Found(map, found);
		}, found -> {
			measured = found.measures;
			samples = found.map.map().size();
			approved = found.map.joined();
			outdated = false;
			show();
		}, why -> {
			problem = Problems.text(why);
			show();
		});
	}

	private void show() {
		if (page.isDisposed()) {
			return;
		}
		measure.setEnabled(
				desk.review().evidence().onMap() != null && desk.review().standings().all() != null && !work.isBusy());
		cancel.setVisible(work.isBusy());
		if (table.getInput() != (measured == null ? List.of() : measured.ways())) {
			table.setInput(measured == null ? List.of() : measured.ways());
		}
		Marked.say(says, text());
	}

	private String text() {
		if (work.isBusy()) {
			return Messages.MeasurePane_matchingTheTestSamples;
		}
		if (!problem.isEmpty()) {
			return "✖ " + problem;
		}
		if (measured == null) {
			return desk.split() == null ? Messages.MeasurePane_keepASplitToMeasure
					: Messages.MeasurePane_matchesTheSamplesOfThe;
		}
		return String.format(Locale.ROOT, Messages.MeasurePane_splitMapSamplesTestSamples,
				of.getId(), samples, measured.test(), approved,
				outdated ? Messages.MeasurePane_verdictsOrMapHaveChanged : "");
	}

	void setFocus() {
		Marked.focus(measure);
	}
}
