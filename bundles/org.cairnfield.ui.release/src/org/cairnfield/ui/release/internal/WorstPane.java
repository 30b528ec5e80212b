package org.cairnfield.ui.release.internal;

import java.util.List;
import java.util.Optional;

import org.cairnfield.curation.measure.Measures;
import org.cairnfield.curation.measure.SideBySide;
import org.cairnfield.curation.measure.Way;
import org.cairnfield.ui.show.OnPlan;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The test samples that a way of matching puts farthest off; each can be looked at on the plan. */
final class WorstPane {

	private static final int MOST = 100;

	private final ReleaseDesk desk;
	private final Composite page;
	private final Combo way;
	private final Button look;
	private final TableViewer samples;
	private SideBySide side;

	WorstPane(Composite parent, ReleaseDesk desk) {
		this.desk = desk;
		page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(3).margins(4, 2).applyTo(page);
		new Label(page, SWT.NONE).setText("&By");
		way = new Combo(page, SWT.READ_ONLY);
		way.setData("org.cairnfield.id", "measures.worst.way");
		way.addListener(SWT.Selection, event -> list());
		way.setEnabled(false);
		look = Forms.button(page, Messages.WorstPane_showOnThePlan, "measures.worst.show", this::look);
		samples = Forms.table(page, SWT.SINGLE, "measures.worst", Messages.WorstPane_worstSamples);
		GridDataFactory.fillDefaults().grab(true, true).span(3, 1).hint(300, 60).applyTo(samples.getControl());
		Forms.<SideBySide.Placed>column(samples, Messages.WorstPane_testSample, 230, SWT.LEFT,
				placed -> placed.sample().toString());
		Forms.<SideBySide.Placed>column(samples, Messages.WorstPane_takenAt, 210, SWT.LEFT,
				placed -> NLS.bind(Messages.WorstPane_floor, placed.site(), placed.level()));
		Forms.<SideBySide.Placed>column(samples, Messages.WorstPane_errorM, 80, SWT.RIGHT,
				placed -> MeasuresView.metres(placed.errorMetres()));
		Forms.<SideBySide.Placed>column(samples, Messages.WorstPane_putOn, 230, SWT.LEFT,
				placed -> (placed.isRight() ? "" : "▲ ") + placed.found());
		samples.addDoubleClickListener(event -> look());
		samples.addSelectionChangedListener(event -> look.setEnabled(!event.getSelection().isEmpty()));
		look.setEnabled(false);
	}

	Composite control() {
		return page;
	}

	void show(Optional<SideBySide> now) {
		side = now.orElse(null);
		String chosen = way.getText();
		way.removeAll();
		List<String> names = now.map(SideBySide::ways).orElse(List.of()).stream().map(Way::name).toList();
		names.forEach(way::add);
		way.setEnabled(!names.isEmpty()); // the toolkit gives no focus to an empty one
		way.select(Math.max(names.indexOf(chosen.isEmpty() ? Measures.RELEASED : chosen), names.isEmpty() ? -1 : 0));
		page.layout();
		list();
	}

	private void list() {
		int at = way.getSelectionIndex();
		samples.setInput(side == null || at < 0 ? List.of() : side.worst(side.ways().get(at), MOST));
		look.setEnabled(false);
	}

	private void look() {
		if (samples.getStructuredSelection().getFirstElement() instanceof SideBySide.Placed placed) {
			desk.session().ifPresent(session -> OnPlan.show(session, placed.sample()));
		}
	}
}
