package org.cairnfield.ui.internal.conflicts;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;

import org.cairnfield.curation.conflict.DecideConflictsCommand;
import org.cairnfield.model.Survey;
import org.cairnfield.model.conflict.DecidedLater;
import org.cairnfield.model.conflict.Place;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.ui.internal.conflicts.model.ConflictRow;
import org.cairnfield.ui.internal.conflicts.model.ConflictValue;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.show.Marked;
import org.cairnfield.ui.show.SessionSelection;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.part.ViewPart;

/** What several people have set to different values, to be decided one by one, by mouse or by keys alone. */
public final class ConflictsView extends ViewPart implements SessionListener {

	private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm")
			.withZone(ZoneId.systemDefault());
	private static final String NONE = Messages.ConflictsView_noConflictsTheyAriseWhere;

	private Label state;
	private TableViewer conflicts;
	private TableViewer values;
	private Button keep;
	private ArchiveSession session;

	@Override
	public void createPartControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(page);
		state = new Label(page, SWT.WRAP);
		state.setData("org.cairnfield.id", "conflicts.state");
		GridDataFactory.fillDefaults().grab(true, false).indent(6, 4).hint(200, SWT.DEFAULT).applyTo(state);
		SashForm sash = new SashForm(page, SWT.HORIZONTAL | SWT.SMOOTH);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
		conflicts = table(sash, "conflicts.list", Messages.ConflictsView_conflicts);
		column(conflicts, Messages.ConflictsView_where, 300, ConflictRow::place);
		column(conflicts, Messages.ConflictsView_what, 120, ConflictRow::unit);
		column(conflicts, Messages.ConflictsView_before, 150, ConflictRow::before);
		column(conflicts, Messages.ConflictsView_setTo, 360, ConflictRow::claims);
		conflicts.addSelectionChangedListener(event -> showValues());
		values = table(sash, "conflicts.values", Messages.ConflictsView_valuesOfTheConflict);
		column(values, Messages.ConflictsView_setBy, 130, ConflictValue::who);
		column(values, Messages.ConflictsView_time, 130,
				(ConflictValue value) -> value.time() == null ? "" : TIME.format(value.time()));
		column(values, Messages.ConflictsView_value, 260, ConflictValue::words);
		values.addSelectionChangedListener(event -> enable());
		values.addDoubleClickListener(event -> keep()); // Return as well
		sash.setWeights(60, 40);
		createButton(page);
		SessionSelection.provide(getSite(), page);
		Sessions.workbench().add(this);
	}

	private static TableViewer table(Composite parent, String id, String name) {
		Table table = new Table(parent, SWT.SINGLE | SWT.FULL_SELECTION | SWT.BORDER);
		table.setHeaderVisible(true);
		Marked.named(Marked.id(table, id), name);
		TableViewer viewer = new TableViewer(table);
		viewer.setContentProvider(ArrayContentProvider.getInstance());
		return viewer;
	}

	@SuppressWarnings("unchecked")
	private static <T> void column(TableViewer viewer, String title, int width, Function<T, String> text) {
		TableViewerColumn column = new TableViewerColumn(viewer, SWT.NONE);
		column.getColumn().setText(title);
		column.getColumn().setWidth(width);
		column.setLabelProvider(ColumnLabelProvider.createTextProvider(element -> text.apply((T) element)));
	}

	private void createButton(Composite parent) {
		Composite row = new Composite(parent, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
		GridLayoutFactory.swtDefaults().margins(6, 2).applyTo(row);
		keep = new Button(row, SWT.PUSH);
		keep.setText(Messages.ConflictsView_keepThisValue);
		keep.setData("org.cairnfield.id", "conflicts.keep");
		keep.setToolTipText(Messages.ConflictsView_decidesTheConflictForThe);
		keep.addListener(SWT.Selection, event -> keep());
		GridDataFactory.swtDefaults().align(SWT.END, SWT.CENTER).grab(true, false).applyTo(keep);
	}

	@Override
	public void sessionChanged(ArchiveSession now) {
		session = now;
		show();
	}

	@Override
	public void structureChanged() {
		if (!rows().stream().map(ConflictRow::conflict).toList().equals(DecidedLater.open(session.archive()))) {
			show();
		}
	}

	@Override
	public void stateChanged() {
		enable();
	}

	@SuppressWarnings("unchecked")
	private List<ConflictRow> rows() {
		return conflicts.getInput() == null ? List.of() : (List<ConflictRow>) conflicts.getInput();
	}

	/** Lists what is open now; what was selected stays so or, once it is decided, the next is. */
	private void show() {
		int at = conflicts.getTable().getSelectionIndex();
		ConflictRow before = selected();
		List<ConflictRow> rows = session == null ? List.of() : ConflictRow.of(session.archive());
		conflicts.setInput(rows);
		ConflictRow next = before == null ? null
				: rows.stream().filter(row -> row.conflict() == before.conflict()).findFirst()
						.orElse(rows.isEmpty() ? null : rows.get(Math.min(at, rows.size() - 1)));
		conflicts.setSelection(next == null ? StructuredSelection.EMPTY : new StructuredSelection(next));
		state.setText(session == null ? Messages.ConflictsView_noArchiveIsOpen
				: rows.isEmpty() ? NONE
						: session.readOnlyReason()
								.map(reason -> NLS.bind(Messages.ConflictsView_nothingCanBeDecided, reason))
								.orElse(Messages.ConflictsView_selectAConflictOnThe));
		state.requestLayout();
		showValues();
	}

	private ConflictRow selected() {
		return (ConflictRow) conflicts.getStructuredSelection().getFirstElement();
	}

	private void showValues() {
		ConflictRow row = selected();
		values.setInput(row == null ? List.of() : row.values());
		if (row != null) {
			showPlace(row);
		}
		enable();
	}

	/** The sample that it is about becomes what the other views show, with the places where people have put it. */
	private void showPlace(ConflictRow row) {
		Survey survey = Place.survey(session.archive(), row.conflict().getPlace());
		String sample = Place.sample(row.conflict().getPlace());
		int at = survey == null || sample == null ? -1 : survey.table().row(sample);
		if (at >= 0) {
			SampleRef ref = new SampleRef(survey, at);
			session.select(session.selection().withScope(survey).withSamples(List.of(ref))
					.withMarked(ArchiveIndex.floor(ref).map(row::places).orElse(List.of())));
		}
	}

	private void enable() {
		keep.setEnabled(session != null && session.readOnlyReason().isEmpty() && selected() != null
				&& !values.getStructuredSelection().isEmpty());
	}

	private void keep() {
		if (keep.isEnabled()) {
			ConflictValue chosen = (ConflictValue) values.getStructuredSelection().getFirstElement();
			session.run(new DecideConflictsCommand(session.archive(),
					Collections.singletonMap(selected().conflict(), chosen.value())));
		}
	}

	@Override
	public void setFocus() {
		if (selected() == null && !rows().isEmpty()) {
			conflicts.setSelection(new StructuredSelection(rows().get(0)));
		}
		Marked.focus(conflicts.getControl());
	}

	@Override
	public void dispose() {
		Sessions.workbench().remove(this);
		super.dispose();
	}
}
