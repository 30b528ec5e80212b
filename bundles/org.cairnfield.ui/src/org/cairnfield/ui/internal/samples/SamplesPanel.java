package org.cairnfield.ui.internal.samples;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.filter.SampleFilter;
import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.ui.internal.samples.model.Arrangement;
import org.cairnfield.ui.internal.samples.model.SampleColumn;
import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.work.Work;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The samples of the scope: filter, table, and what of it is shown and picked. */
public final class SamplesPanel extends Composite implements SessionListener {

	/** So many rows are sorted and filtered at once; more of them beside the user interface. */
	private static final int FEW = 5_000;

	private final FilterBar filter;
	private final InlineBar bar;
	private final SampleGrid grid;
	private final Label status;
	private final SampleActions actions;
	private final PlaceEditing editing;
	private ArchiveSession session;
	/** What is to be shown, and what is shown until that is ready. */
	private TableSnapshot snapshot;
	private TableSnapshot shown;
	private SampleColumn sortedBy;
	private boolean descending;
	private Job arranging;
	/** The last that gathers what is picked. */
	private Job picking;
	private boolean selecting;
	private boolean telling;

	public SamplesPanel(Composite parent) {
		super(parent, SWT.NONE);
		GridLayout layout = new GridLayout();
		layout.marginWidth = 4;
		layout.marginHeight = 4;
		layout.verticalSpacing = 3;
		setLayout(layout);
		filter = new FilterBar(this, now -> arrange(), this::setFocusToTable);
		filter.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
		bar = new InlineBar(this, this::setFocusToTable);
		grid = new SampleGrid(this, this::picked, this::sortBy);
		grid.window().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
		status = new Label(this, SWT.NONE);
		status.setData("org.cairnfield.id", "samples.status");
		status.setLayoutData(new GridData(SWT.FILL, SWT.BOTTOM, true, false));
		actions = new SampleActions(this, bar);
		editing = new PlaceEditing(grid, bar, this::reload);
		grid.window().table().addListener(SWT.MouseDoubleClick, e -> edit(grid.columnAt(e.x, e.y)));
		grid.window().table().addListener(SWT.KeyDown, e -> {
			if (e.keyCode == SWT.F2) {
				edit(SampleColumn.X);
			}
		});
		Sessions.workbench().add(this);
		addListener(SWT.Dispose, e -> {
			Sessions.workbench().remove(this);
			cancelArranging();
		});
	}

	/** What can be done with the samples selected. */
	public SampleActions actions() {
		return actions;
	}

	/** The filter, for commands that go there. */
	FilterBar filter() {
		return filter;
	}

	SampleGrid grid() {
		return grid;
	}

	@Override
	public boolean setFocus() {
		return grid.window().setFocus();
	}

	private void setFocusToTable() {
		grid.window().setFocus();
	}

	// what happens to the archive

	@Override
	public void sessionChanged(ArchiveSession now) {
		session = now;
		bar.close();
		reload();
	}

	@Override
	public void selectionChanged(ArchiveSelection before, ArchiveSelection now) {
		if (before.scope() != now.scope()) {
			reload();
		} else if (!selecting && !before.samples().equals(now.samples())) {
			followSelection();
		}
	}

	@Override
	public void samplesChanged(Set<Survey> surveys) {
		reload();
	}

	@Override
	public void structureChanged() {
		reload();
	}

	@Override
	public void findingsChanged() {
		if (session != null && !session.findings().isChecking()) {
			editing.whenDone(); // nobody likes a field to vanish while writing
		}
	}

	// rows

	private void reload() {
		editing.close();
		snapshot = session == null ? null : new TableSnapshot(session);
		arrange();
	}

	private void arrange() {
		cancelArranging();
		TableSnapshot of = snapshot;
		if (of == null) {
			show(null, Arrangement.NONE);
			return;
		}
		SampleFilter wanted = filter.filter();
		SampleColumn column = sortedBy;
		boolean down = descending;
		if (of.rows().size() <= FEW) {
			show(of, arrangement(of, column, down, wanted, Workers.inline()));
			return;
		}
		status.setText(NLS.bind(Messages.SamplesPanel_samplesBeingLookedThrough, count(of.rows().size())));
		Job[] own = new Job[1];
		own[0] = Work.start(Messages.SamplesPanel_arrangingTheSamples,
				workers -> arrangement(of, column, down, wanted, workers), made -> {
					if (arranging == own[0] && !isDisposed()) {
						arranging = null;
						show(of, made);
					}
				});
		arranging = own[0];
	}

	private static Arrangement arrangement(TableSnapshot of, SampleColumn column, boolean down, SampleFilter wanted,
			Workers workers) {
		var content = of.content();
		return Arrangement.of(content, column, down, wanted.on(content), workers);
	}

	private void cancelArranging() {
		if (arranging != null) {
			arranging.cancel();
			arranging = null;
		}
	}

	private void show(TableSnapshot of, Arrangement made) {
		boolean same = shown != null && of != null && shown.rows().hasSameRows(of.rows());
		shown = of;
		editing.close();
		grid.show(made, same);
		filter.say(filter.filter().remarks(made.content()));
		if (!same && session != null) {
			followSelection();
		}
		tellStatus();
	}

	private void sortBy(SampleColumn column) {
		descending = sortedBy == column && !descending;
		sortedBy = column;
		arrange();
	}

	// selection

	private void picked() {
		tellStatus();
		if (!telling && session != null) {
			telling = true;
			// once for a run of keys that are held down
			getDisplay().asyncExec(this::tellSelection);
		}
	}

	private void tellSelection() {
		telling = false;
		if (isDisposed() || session == null || shown == null) {
			return;
		}
		SampleRows samples = shown.rows();
		int[] indices = grid.picks().indices();
		if (indices.length <= FEW) {
			tell(refs(samples, indices));
			return;
		}
		ArchiveSession of = session;
		Job[] own = new Job[1];
		own[0] = Work.start(Messages.SamplesPanel_selectingSamples, workers -> refs(samples, indices), refs -> {
			if (picking == own[0] && session == of && !isDisposed()) {
				tell(refs);
			}
		});
		picking = own[0];
	}

	private static List<SampleRef> refs(SampleRows samples, int[] indices) {
		SampleRef[] refs = new SampleRef[indices.length];
		for (int i = 0; i < refs.length; i++) {
			refs[i] = samples.ref(indices[i]);
		}
		return List.of(refs);
	}

	private void tell(List<SampleRef> refs) {
		picking = null;
		selecting = true;
		session.select(session.selection().withSamples(refs));
		selecting = false;
	}

	private void followSelection() {
		if (shown == null) {
			return;
		}
		List<SampleRef> refs = session.selection().samples();
		int[] indices = new int[refs.size()];
		int count = 0;
		for (SampleRef ref : refs) {
			int index = shown.rows().indexOf(ref);
			if (index >= 0) {
				indices[count++] = index;
			}
		}
		grid.pick(Arrays.copyOf(indices, count));
		tellStatus();
	}

	private void tellStatus() {
		int all = shown == null ? 0 : shown.rows().size();
		if (session == null) {
			status.setText(Messages.SamplesPanel_noArchiveIsOpenOpen);
		} else if (all == 0) {
			status.setText(Messages.SamplesPanel_noSamplesHereChooseA);
		} else {
			Arrangement now = grid.arrangement();
			int picked = grid.picks().size();
			int hidden = picked - grid.picks().shown();
			status.setText(NLS.bind(Messages.SamplesPanel_ofSamplesShown,
					new Object[] { count(now.size()), count(all),
							picked == 0 ? "" : NLS.bind(Messages.SamplesPanel_selected, count(picked)),
							hidden == 0 ? "" : NLS.bind(Messages.SamplesPanel_ofThemHiddenByThe, count(hidden)),
							session.readOnlyReason().isPresent() ? Messages.SamplesPanel_readOnly : "" }));
		}
	}

	static String count(int number) {
		return String.format(Locale.ROOT, "%,d", number);
	}

	// what actions need

	ArchiveSession session() {
		return session;
	}

	Arrangement arrangement() {
		return grid.arrangement();
	}

	/** Indices of what is picked, in the order of the table. */
	int[] pickedIndices() {
		return grid.picks().indices();
	}

	/** Columns as they stand on screen. */
	List<SampleColumn> columns() {
		List<SampleColumn> columns = new ArrayList<>();
		for (int column : grid.window().table().getColumnOrder()) {
			columns.add(SampleColumn.values()[column]);
		}
		return columns;
	}

	/** Lets the person edit the place of the row that keys go on from. */
	void edit(SampleColumn first) {
		editing.begin(session, shown == null ? null : shown.rows(), first);
	}
}
