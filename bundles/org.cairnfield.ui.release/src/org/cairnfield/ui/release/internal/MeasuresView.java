package org.cairnfield.ui.release.internal;

import java.util.List;
import java.util.Locale;

import org.cairnfield.curation.release.ReleaseMeasures;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.part.ViewPart;

/** Is it better: the ways of matching side by side, on the same test samples. */
public final class MeasuresView extends ViewPart implements ReleaseDesk.Listener {

	private final ReleaseDesk desk = ReleaseDesk.workbench();
	private Label from;
	private TableViewer ways;

	@Override
	public void createPartControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().margins(6, 4).applyTo(page);
		from = new Label(page, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(from);
		ways = Forms.table(page, SWT.SINGLE, "measures.table");
		GridDataFactory.fillDefaults().grab(true, true).hint(300, 80).applyTo(ways.getControl());
		Forms.<ReleaseMeasures.Way>column(ways, "Way of matching", 150, SWT.LEFT, ReleaseMeasures.Way::name);
		Forms.<ReleaseMeasures.Way>column(ways, "Mean error, m", 125, SWT.RIGHT, way -> metres(way.errors().meanMetres()));
		Forms.<ReleaseMeasures.Way>column(ways, "95 % interval, m", 140, SWT.RIGHT,
				way -> metres(way.mean().low()) + " … " + metres(way.mean().high()));
		Forms.<ReleaseMeasures.Way>column(ways, "Median, m", 95, SWT.RIGHT, way -> metres(way.errors().medianMetres()));
		Forms.<ReleaseMeasures.Way>column(ways, "75 %, m", 75, SWT.RIGHT, way -> metres(way.errors().p75Metres()));
		Forms.<ReleaseMeasures.Way>column(ways, "95 %, m", 75, SWT.RIGHT, way -> metres(way.errors().p95Metres()));
		Forms.<ReleaseMeasures.Way>column(ways, "Right site and floor", 165, SWT.RIGHT,
				way -> percent(way.errors().siteAndFloorHitRate()));
		Forms.<ReleaseMeasures.Way>column(ways, "Fingerprints compared", 185, SWT.RIGHT,
				way -> String.format(Locale.ROOT, "%,.0f", way.comparisons()));
		Forms.<ReleaseMeasures.Way>column(ways, "How", 420, SWT.LEFT, ReleaseMeasures.Way::how);
		desk.add(this);
	}

	private static String metres(double value) {
		return Double.isNaN(value) ? "–" : String.format(Locale.ROOT, "%.2f", value);
	}

	private static String percent(double share) {
		return Double.isNaN(share) ? "–" : String.format(Locale.ROOT, "%.1f %%", 100 * share);
	}

	@Override
	public void deskChanged() {
		List<ReleaseMeasures.Way> measured = desk.check().map(check -> check.measures().ways()).orElse(List.of());
		ways.setInput(measured);
		from.setText(measured.isEmpty() ? "Ask the gates to measure the map on the archive's test surveys."
				: "On " + desk.check().get().measures().test() + " test samples, each way on the same; errors in the plane.");
	}

	@Override
	public void setFocus() {
		ways.getControl().setFocus();
	}

	@Override
	public void dispose() {
		desk.remove(this);
		super.dispose();
	}
}
