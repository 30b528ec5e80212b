package org.cairnfield.ui.review.internal.split;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.curation.split.SplitScopes;
import org.cairnfield.model.values.Scope;
import org.cairnfield.ui.show.Marked;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Text;

/** The choices above the curve: what, measured how, minPts and ε. */
final class SplitForm {

	/** How many splits come of it; those of one come first. */
	enum Kind {
		ONE(Messages.SplitForm_oneSplit, true), BEST(Messages.SplitForm_oneSplitByTheBest, true),
		PER_FLOOR(Messages.SplitForm_onePerFloorThis, false),
		PER_FLOOR_CHOSEN(Messages.SplitForm_onePerFloorChosenFor, false);

		final String title;
		private final boolean isOne;

		Kind(String title, boolean isOne) {
			this.title = title;
			this.isOne = isOne;
		}
	}

	private static final int WIDTH = 250;

	private final SplitWork work;
	private final Combo scope;
	private final Combo kind;
	private final Combo representation;
	private final Combo distance;
	private final Spinner minPts;
	private final Text epsilon;
	private String shownEpsilon = "";
	private final Label unit;
	private final Button suggest;
	private final Button cancel;
	private final Label busy;
	private List<SplitScopes.Entry> entries = List.of();

	SplitForm(Composite parent, SplitWork work) {
		this.work = work;
		Composite column = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).margins(6, 4).spacing(6, 3).applyTo(column);
		GridDataFactory.fillDefaults().grab(false, true).hint(WIDTH, SWT.DEFAULT).applyTo(column);
		scope = choice(column, Messages.SplitForm_scope, "split.scope", this::choose);
		kind = choice(column, "as", "split.kind", this::enable);
		kind.setToolTipText(Messages.SplitForm_theBestMethodIsWhichever);
		representation = choice(column, Messages.SplitForm_levels, "split.representation", this::choose);
		representation.setItems(SplitRequest.representations().toArray(String[]::new));
		representation.select(0);
		representation.setToolTipText(Messages.SplitForm_howALevelInDbm);
		distance = choice(column, Messages.SplitForm_distance, "split.distance", this::choose);
		distance.setItems(SplitRequest.distances().toArray(String[]::new));
		distance.select(0);
		new Label(column, SWT.NONE).setText("min&Pts");
		minPts = Marked.id(new Spinner(column, SWT.BORDER), "split.minPts");
		minPts.setValues(5, 1, 100, 0, 1, 5);
		minPts.setToolTipText(Messages.SplitForm_aSampleWithSoMany);
		minPts.addListener(SWT.Selection, event -> choose());
		new Label(column, SWT.NONE).setText("&ε");
		Composite reach = new Composite(column, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(3).spacing(4, 0).applyTo(reach);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(reach);
		epsilon = Marked.named(Marked.id(new Text(reach, SWT.BORDER | SWT.RIGHT), "split.epsilon"), "ε");
		epsilon.setToolTipText(Messages.SplitForm_twoSamplesThisFarApart);
		GridDataFactory.fillDefaults().hint(60, SWT.DEFAULT).grab(true, false).align(SWT.FILL, SWT.CENTER)
				.applyTo(epsilon);
		epsilon.addListener(SWT.DefaultSelection, event -> readEpsilon());
		epsilon.addListener(SWT.FocusOut, event -> readEpsilon());
		unit = new Label(reach, SWT.NONE);
		suggest = Marked.button(reach, Messages.SplitForm_suggest, "split.suggest", work::chooseAutomatically);
		suggest.setToolTipText(Messages.SplitForm_triesValuesOfAndWays);
		cancel = Marked.button(column, Messages.SplitForm_cancel, "split.cancel", work::cancel);
		busy = Marked.id(new Label(column, SWT.WRAP), "split.busy");
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(busy);
		work.onChange(this::show);
		enable();
	}

	private static Combo choice(Composite parent, String label, String id, Runnable changed) {
		Combo combo = Marked.choice(parent, label, id, changed);
		GridDataFactory.fillDefaults().grab(true, false).hint(60, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER)
				.applyTo(combo);
		return combo;
	}

	/** Scopes of the archive on show; the one chosen stays where it still exists. */
	void setScopes(List<SplitScopes.Entry> now) {
		Scope before = entries.isEmpty() ? null : scope();
		entries = now;
		scope.setItems(
				entries.stream().map(entry -> (entry.scope().level() != null ? "    " : "") + entry.title() + "  ("
						+ SplitWords.count(entry.samples(), "sample", "samples") + ')').toArray(String[]::new));
		int at = 0;
		for (int i = 0; i < entries.size(); i++) {
			at = entries.get(i).scope().equals(before) ? i : at;
		}
		scope.select(at);
		enable();
	}

	/** Asks for what the choices say now. */
	void choose() {
		if (!entries.isEmpty()) {
			work.choose(new SplitChoice(scope(), representation.getText(), distance.getText(), minPts.getSelection()));
		}
		enable();
	}

	Scope scope() {
		return entries.get(Math.max(0, scope.getSelectionIndex())).scope();
	}

	String scopeTitle() {
		return entries.isEmpty() ? "" : entries.get(Math.max(0, scope.getSelectionIndex())).title();
	}

	Kind kind() {
		return Kind.values()[kind.getSelectionIndex()];
	}

	private void readEpsilon() {
		if (epsilon.getText().equals(shownEpsilon)) {
			return; // it may have more digits than are shown
		}
		try {
			double typed = Double.parseDouble(epsilon.getText().strip());
			if (typed > 0 && Double.isFinite(typed)) {
				work.setEpsilon(typed);
				return;
			}
		} catch (NumberFormatException e) {
			// shown again as it was
		}
		show();
	}

	private void show() {
		if (epsilon.isDisposed()) {
			return;
		}
		if (!epsilon.isFocusControl() || work.isCurrent()) {
			String text = Double.isNaN(work.epsilon()) ? "" : String.format(Locale.ROOT, "%.6g", work.epsilon());
			text = text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
			shownEpsilon = text;
			if (!text.equals(epsilon.getText())) {
				epsilon.setText(text);
			}
		}
		if (work.choice() != null) {
			unit.setText(work.choice().unit());
			unit.requestLayout();
			if (minPts.getSelection() != work.choice().minPts()) {
				minPts.setSelection(work.choice().minPts());
			}
		}
		busy.setText(work.busyText());
		cancel.setVisible(work.isBusy());
		busy.requestLayout();
		enable();
	}

	private void enable() {
		boolean some = !entries.isEmpty();
		scope.setEnabled(some);
		kind.setEnabled(some);
		listKinds(some && scope().level() != null);
		suggest.setEnabled(work.study() != null);
		epsilon.setEnabled(work.study() != null);
		cancel.setVisible(work.isBusy());
	}

	/** A floor can only be one split. */
	private void listKinds(boolean oneFloor) {
		String[] titles = Arrays.stream(Kind.values()).filter(each -> !oneFloor || each.isOne).map(each -> each.title)
				.toArray(String[]::new);
		if (titles.length != kind.getItemCount()) {
			int before = kind.getSelectionIndex();
			kind.setItems(titles);
			kind.select(before >= 0 && before < titles.length ? before : 0);
		}
	}

	boolean setFocus() {
		return scope.setFocus();
	}
}
