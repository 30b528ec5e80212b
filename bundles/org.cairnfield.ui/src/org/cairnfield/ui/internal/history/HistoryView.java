package org.cairnfield.ui.internal.history;

import java.io.IOException;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.history.ArchiveDiff;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.PastState;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.history.SavePoints;
import org.cairnfield.ui.internal.history.model.SignatureText;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.save.Restore;
import org.cairnfield.ui.save.Saving;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.show.DiffTree;
import org.cairnfield.ui.show.Marked;
import org.cairnfield.ui.work.Work;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

/** The save points: make one, compare, look at a past state, take one back, restore. */
public final class HistoryView extends ViewPart implements SessionListener {

	private static final int MOST = 500;
	private static final String WHAT = Messages.HistoryView_whatChanged;
	private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm")
			.withZone(ZoneId.systemDefault());

	/** What is done with the history on another thread. */
	private interface Look<T> {
		T at(History history) throws Exception;
	}

	private RemoteLine remote;
	private SavePoints here = new SavePoints(List.of(), List.of());
	private Text note;
	private Button make;
	private TableViewer points;
	private BranchColumn graph;
	private DiffTree changes;
	private Button open;
	private Button compare;
	private Button undo;
	private Button restore;
	private ArchiveSession session;
	private int asked;

	@Override
	public void createPartControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(page);
		createNote(page);
		SashForm sash = new SashForm(page, SWT.HORIZONTAL | SWT.SMOOTH);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
		createTable(sash);
		changes = new DiffTree(sash, "history");
		sash.setWeights(55, 45);
		createButtons(page);
		getSite().setSelectionProvider(points);
		Sessions.workbench().add(this);
	}

	private void createNote(Composite parent) {
		Composite row = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(2).margins(6, 2).applyTo(row);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
		note = new Text(row, SWT.BORDER | SWT.SINGLE);
		note.setMessage(Messages.HistoryView_whatWasDoneInYour);
		note.setData("org.cairnfield.id", "history.note");
		note.addListener(SWT.DefaultSelection, event -> makeSavePoint());
		GridDataFactory.fillDefaults().grab(true, false).applyTo(note);
		make = button(row, Messages.HistoryView_makeASavePoint, "history.make", this::makeSavePoint);
	}

	private void createTable(Composite parent) {
		Table table = new Table(parent, SWT.MULTI | SWT.FULL_SELECTION | SWT.BORDER);
		table.setHeaderVisible(true);
		Marked.named(Marked.id(table, "history.points"), Messages.HistoryView_savePoints);
		points = new TableViewer(table);
		points.setContentProvider(ArrayContentProvider.getInstance());
		graph = new BranchColumn(points);
		column(Messages.HistoryView_time, 130, point -> TIME.format(point.time()));
		column(Messages.HistoryView_who, 110, SavePoint::person);
		column(WHAT, 380, SavePoint::summary);
		column(Messages.HistoryView_savePoint, 90, SavePoint::shortId);
		column(Messages.HistoryView_exchange, 80, point -> remote.word(point));
		points.addSelectionChangedListener(event -> {
			enable();
			showChanges();
		});
	}

	/** @param text of a save point; a line that tells where the history breaks has its words in the widest column */
	private void column(String title, int width, Function<SavePoint, String> text) {
		TableViewerColumn column = new TableViewerColumn(points, SWT.NONE);
		column.getColumn().setText(title);
		column.getColumn().setWidth(width);
		column.setLabelProvider(
				ColumnLabelProvider.createTextProvider(element -> element instanceof SavePoint point ? text.apply(point)
						: title.equals(WHAT) ? breakText((Damage) element) : ""));
	}

	private void createButtons(Composite parent) {
		Composite row = new Composite(parent, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
		GridLayoutFactory.swtDefaults().numColumns(6).margins(6, 2).applyTo(row);
		open = button(row, Messages.HistoryView_viewThisState, "history.open", this::openPast);
		compare = button(row, Messages.HistoryView_compare, "history.compare", this::compare);
		undo = button(row, Messages.HistoryView_revertItsChanges, "history.undo", this::undo);
		restore = button(row, Messages.HistoryView_restoreThisState, "history.restore", this::restore);
		compare.setToolTipText(Messages.HistoryView_twoSavePointsWithEach);
		remote = new RemoteLine(row, this::load, this::list);
		undo.setToolTipText(Messages.HistoryView_byANewSavePoint);
		restore.setToolTipText(Messages.HistoryView_byANewSavePoint2);
	}

	private static Button button(Composite parent, String text, String id, Runnable action) {
		Button button = new Button(parent, SWT.PUSH);
		button.setText(text);
		button.setData("org.cairnfield.id", id);
		button.addListener(SWT.Selection, event -> action.run());
		return button;
	}

	@Override
	public void sessionChanged(ArchiveSession now) {
		session = now;
		changes.say(Messages.HistoryView_selectASavePointTo);
		load();
	}

	@Override
	public void stateChanged() {
		enable();
	}

	private void load() {
		here = new SavePoints(List.of(), List.of());
		if (session == null || !session.open().hasHistory()) {
			list();
			return;
		}
		look(Messages.HistoryView_readingTheHistory, history -> history.savePoints(MOST), found -> {
			here = found;
			list();
		}, problem -> {
			list();
			changes.say(Problems.text(problem));
		});
	}

	/** What would come in, what is here, and where the history breaks off. */
	private void list() {
		List<SavePoint> all = Stream.concat(remote.coming().stream(), here.points().stream()).toList();
		graph.show(all, remote.coming());
		points.setInput(Stream.concat(all.stream(), here.damages().stream()).toList());
		enable();
	}

	/** What is not listed because it cannot be read, where the readable part ends. */
	private static String breakText(Damage damage) {
		return NLS.bind(Messages.HistoryView_theHistoryBreaksOffHere, damage);
	}

	private void enable() {
		boolean mayChange = session != null && session.readOnlyReason().isEmpty();
		int selected = selected().size();
		make.setEnabled(mayChange);
		note.setEnabled(mayChange);
		open.setEnabled(selected == 1);
		compare.setEnabled(selected == 1 || selected == 2);
		boolean oneOfHere = selected == 1 && !remote.coming().contains(selected().get(0));
		undo.setEnabled(mayChange && oneOfHere);
		restore.setEnabled((mayChange || isDamaged()) && oneOfHere);
	}

	/** Restoring is what mends it. */
	private boolean isDamaged() {
		return session != null && session.past().isEmpty() && !session.open().damages().isEmpty();
	}

	private List<SavePoint> selected() {
		List<SavePoint> selected = new ArrayList<>();
		for (Object element : points.getStructuredSelection()) {
			if (element instanceof SavePoint point) {
				selected.add(point);
			} else {
				return List.of(); // nothing can be done with what cannot be read
			}
		}
		return selected;
	}

	private <T> void look(String name, Look<T> look, Consumer<T> result,
			Consumer<Exception> failed) {
		ArchiveSession of = session;
		Work.start(name, workers -> {
			try (History history = of.open().history()) {
				return look.at(history);
			}
		}, value -> {
			if (of == session && !points.getControl().isDisposed()) { // the person may have gone on
				result.accept(value);
			}
		}, failed);
	}

	private void showChanges() {
		List<SavePoint> selected = selected();
		if (selected.size() == 1) {
			showChangesOf(selected.get(0));
		} else if (selected.size() == 2) {
			compare();
		} else if (points.getStructuredSelection().getFirstElement() instanceof Damage damage) {
			asked++;
			changes.say(breakText(damage));
		}
	}

	private void showChangesOf(SavePoint point) {
		String[] signature = { "" };
		compareBy(NLS.bind(Messages.HistoryView_changesOf, point.shortId()), history -> {
			signature[0] = signature(history, point);
			return history.changesOf(point);
		}, () -> message(point, signature[0]));
	}

	private static String signature(History history, SavePoint point) {
		try {
			return SignatureText.of(point, history.check().signature(point));
		} catch (IOException | RuntimeException e) { // what it changed can be shown all the same
			return NLS.bind(Messages.HistoryView_theSignatureCannotBeChecked, Problems.text(e));
		}
	}

	/** With what is known of its signature, and of a merge, whose work it brings together as well. */
	private String message(SavePoint point, String signature) {
		String rest = point.message().substring(point.summary().length());
		if (point.parents().size() < 2) {
			return point.summary() + '\n' + signature + rest;
		}
		String parents = point.parents().stream().map(parent -> parent.substring(0, 8) + here.points().stream()
				.filter(each -> each.id().equals(parent)).findFirst()
				.map(each -> NLS.bind(Messages.HistoryView_by, each.person())).orElse(""))
				.collect(Collectors.joining(Messages.HistoryView_and));
		return NLS.bind(Messages.HistoryView_bringsTogether,
				new Object[] { point.summary(), signature, parents, rest });
	}

	private void compare() {
		List<SavePoint> selected = selected();
		if (selected.size() == 2) {
			boolean ascending = selected.get(0).time().isBefore(selected.get(1).time());
			SavePoint before = selected.get(ascending ? 0 : 1);
			SavePoint after = selected.get(ascending ? 1 : 0);
			compareBy(Messages.HistoryView_comparing, history -> history.compare(before, after),
					NLS.bind(Messages.HistoryView_fromTo, before.shortId(), after.shortId()));
		} else {
			SavePoint before = selected.get(0);
			compareBy(Messages.HistoryView_comparing, history -> history.compareWithSaved(before),
					NLS.bind(Messages.HistoryView_fromToWhatIsSaved, before.shortId(),
							session.isModified() ? Messages.HistoryView_unsavedChangesAreNotIn : ""));
		}
	}

	private void compareBy(String name, Look<ArchiveDiff> look, String heading) {
		compareBy(name, look, () -> heading);
	}

	/** @param heading asked for once it is there */
	private void compareBy(String name, Look<ArchiveDiff> look, Supplier<String> heading) {
		int question = ++asked;
		changes.say(Messages.HistoryView_comparing2);
		look(name, look, diff -> {
			if (question == asked) {
				changes.show(heading.get(), diff);
			}
		}, problem -> changes.say(Problems.text(problem)));
	}

	private void makeSavePoint() {
		if (!make.isEnabled()) {
			return;
		}
		String why = note.getText().isBlank() ? null : note.getText().strip();
		Optional<?>[] made = { Optional.empty() };
		if (Saving.inName(session, Messages.HistoryView_makingASavePoint,
				person -> made[0] = session.open().savePoint(person, why))) {
			note.setText("");
			if (made[0].isEmpty()) {
				changes.say(Messages.HistoryView_nothingHasChangedSinceThe);
			} else {
				remote.forget();
			}
			load();
		}
	}

	private void openPast() {
		SavePoint point = selected().get(0);
		look(Messages.HistoryView_openingAPastState, history -> history.open(point),
				(PastState state) -> Sessions.workbench().showPast(state),
				problem -> Problems.show(Messages.HistoryView_thePastStateDoesNot, problem));
	}

	private void undo() {
		Restore.change(points.getControl().getShell(), session, selected().get(0));
	}

	private void restore() {
		SavePoint point = selected().get(0);
		Restore.state(points.getControl().getShell(), session, point,
				NLS.bind(Messages.HistoryView_savePointOf, point.shortId(), TIME.format(point.time())));
	}

	@Override
	public void setFocus() {
		Marked.focus(points.getControl());
	}

	@Override
	public void dispose() {
		Sessions.workbench().remove(this);
		remote.dispose();
		super.dispose();
	}
}
