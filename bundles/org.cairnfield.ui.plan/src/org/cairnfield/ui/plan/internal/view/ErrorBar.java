package org.cairnfield.ui.plan.internal.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.cairnfield.curation.measure.ErrorMap;
import org.cairnfield.curation.measure.Measures;
import org.cairnfield.ui.plan.internal.errors.ErrorsShown;
import org.cairnfield.ui.save.Damaged;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.show.IfChanged;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** What the error map shows: a way of matching, and another one next to it; and what it is made of. */
final class ErrorBar {

	private static final String NONE = "nothing";
	private static final String MEASURE = Messages.ErrorBar_measure;

	private final List<Control> choices;
	private final Combo way;
	private final Combo beside;
	private final Button measure;
	private final Label message;
	private final Runnable changed;
	private final ErrorWork work = new ErrorWork(this::show);
	private ArchiveSession session;

	/**
	 * @param row     of choices
	 * @param pane    that has a line for what goes on
	 * @param changed called when {@link #shown} is to be asked again
	 */
	ErrorBar(Composite row, Composite pane, Runnable changed) {
		this.changed = changed;
		way = PlanPane.combo(row, Messages.ErrorBar_way, "plan.errors.way");
		beside = PlanPane.combo(row, Messages.ErrorBar_nextToIt, "plan.errors.beside");
		measure = new Button(row, SWT.PUSH);
		measure.setText(MEASURE);
		measure.setData("org.cairnfield.id", "plan.errors.measure");
		measure.addListener(SWT.Selection, event -> measureAgainOrCancel());
		Button close = new Button(row, SWT.PUSH);
		close.setText(Messages.ErrorBar_close);
		close.setToolTipText(Messages.ErrorBar_showTheMapAgain);
		close.setData("org.cairnfield.id", "plan.errors.close");
		close.addListener(SWT.Selection, event -> turn(false));
		choices = List.of(way.getParent(), beside.getParent(), measure, close);
		choices.forEach(choice -> PlanPane.inRow(choice, false));
		message = new Label(pane, SWT.WRAP);
		message.setData("org.cairnfield.id", "plan.errors.message");
		GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).indent(8, 0).exclude(true)
				.applyTo(message);
		message.setVisible(false);
		for (Combo each : List.of(way, beside)) {
			each.addListener(SWT.Selection, event -> choose());
		}
		list();
		message.addListener(SWT.Dispose, event -> work.stop());
	}

	boolean isOn() {
		return measure.getVisible();
	}

	/** Turns the error map on, which measures where nothing is measured, or off. */
	void turn(boolean on) {
		if (on == isOn()) {
			return;
		}
		choices.forEach(choice -> PlanPane.inRow(choice, on));
		if (on) {
			way.setFocus();
		}
		if (on && session != null && !work.isMeasured()) {
			measure();
		} else if (!on && work.isBusy()) {
			work.cancel();
		}
		show();
	}

	/** Another archive is on show, or none (null). */
	void session(ArchiveSession other) {
		session = other;
		work.session(other);
	}

	/** The archive has changed, and what was measured is out of date. */
	void outdate() {
		if (work.isMeasured() || work.isBusy()) {
			work.forget(Messages.ErrorBar_theArchiveHasChangedSince);
		}
	}

	private void measureAgainOrCancel() {
		if (work.isBusy()) {
			work.cancel();
		} else {
			work.forget("");
			measure();
		}
	}

	private void measure() {
		if (session != null && Damaged.mayGoOn(message.getShell(), session, Messages.ErrorBar_errorMap)) {
			work.measure(wanted());
		}
	}

	private void choose() {
		if (work.lacks(wanted())) {
			measure();
		} else {
			show();
		}
	}

	private List<String> wanted() {
		List<String> wanted = new ArrayList<>(List.of(way.getText()));
		if (beside.getSelectionIndex() > 0) {
			wanted.add(beside.getText());
		}
		return wanted;
	}

	/** One or two maps, or what to say in their place; colours mean the same on both. */
	List<ErrorsShown> shown() {
		List<Optional<ErrorMap>> maps = wanted().stream().map(work::map).toList();
		double top = maps.stream().flatMap(Optional::stream).mapToDouble(ErrorMap::p95Metres).filter(p95 -> p95 > 0)
				.max().orElse(1);
		double rounded = Math.max(1, ErrorMap.roundUp(top));
		String empty = work.message().isEmpty() ? Messages.ErrorBar_measureToSeeTheErrors : work.message();
		return maps.stream().map(map -> new ErrorsShown(map.orElse(null), rounded, empty)).toList();
	}

	private void list() {
		List<String> ways = work.ways();
		fill(way, ways, Measures.RELEASED);
		List<String> others = new ArrayList<>(ways);
		others.add(0, NONE);
		fill(beside, others, NONE);
	}

	private static void fill(Combo combo, List<String> items, String otherwise) {
		String chosen = combo.getText();
		if (!Arrays.asList(combo.getItems()).equals(items)) {
			combo.setItems(items.toArray(String[]::new));
			combo.select(items.indexOf(items.contains(chosen) ? chosen : otherwise));
			combo.requestLayout();
		}
	}

	private void show() {
		if (message.isDisposed()) {
			return;
		}
		list();
		measure.setEnabled(session != null);
		IfChanged.text(measure, work.isBusy() ? Messages.ErrorBar_cancel : MEASURE);
		String text = isOn() ? work.message() : "";
		if (!text.equals(message.getText())) {
			message.setText(text);
			((GridData) message.getLayoutData()).exclude = text.isEmpty();
			message.setVisible(!text.isEmpty());
			message.requestLayout();
		}
		changed.run();
	}
}
