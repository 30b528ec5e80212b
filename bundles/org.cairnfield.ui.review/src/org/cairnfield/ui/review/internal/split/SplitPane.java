package org.cairnfield.ui.review.internal.split;

import java.util.List;
import java.util.Set;

import org.cairnfield.curation.split.SplitScopes;
import org.cairnfield.model.Survey;
import org.cairnfield.ui.review.internal.desk.DeskListener;
import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.show.Marked;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** The content of the view: trying splits beside the curve or the sweep, and the splits that were kept. */
final class SplitPane implements SessionListener {

	/** Points from which on two pictures fit side by side. */
	private static final int WIDE = 620;
	/** Lines of text as high as the page is at least; in a lower view it scrolls, so that the curve can be read and dragged. */
	private static final int LEAST_LINES = 20;

	private final SplitWork work = new SplitWork();
	private final Composite page;
	private final StackLayout stack = new StackLayout();
	private final Label empty;
	private final CTabFolder tabs;
	private final SplitForm form;
	private final KeptPane kept;
	private ArchiveSession session;
	private List<SplitScopes.Entry> scopes = List.of();
	private boolean stale = true;

	SplitPane(Composite parent, ReviewDesk desk) {
		page = new Composite(parent, SWT.NONE);
		page.setLayout(stack);
		empty = Marked.id(new Label(page, SWT.WRAP), "split.empty");
		tabs = Marked.id(new CTabFolder(page, SWT.BOTTOM | SWT.FLAT), "split.tabs");
		ScrolledComposite scrolled = new ScrolledComposite(tabs, SWT.V_SCROLL);
		Composite trying = new Composite(scrolled, SWT.NONE);
		scrolled.setContent(trying);
		scrolled.setExpandHorizontal(true);
		scrolled.setExpandVertical(true);
		scrolled.setShowFocusedControl(true);
		GC gc = new GC(trying);
		scrolled.setMinHeight(LEAST_LINES * gc.getFontMetrics().getHeight());
		gc.dispose();
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(0, 0).applyTo(trying);
		form = new SplitForm(trying, work);
		Composite right = new Composite(trying, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(2, 3).applyTo(right);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(right);
		SashForm sash = new SashForm(right, SWT.HORIZONTAL | SWT.SMOOTH);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
		CTabFolder pictures = Marked.id(new CTabFolder(sash, SWT.TOP | SWT.FLAT), "split.pictures");
		tab(pictures, Messages.SplitPane_curve, new CurvePane(pictures, work).control());
		tab(pictures, Messages.SplitPane_cost, new TriedPane(pictures, work).control());
		tab(pictures, Messages.SplitPane_sweep, new SweepPane(pictures, work).control());
		tab(pictures, Messages.SplitPane_sizes,
				new TrialSizes(pictures, work, "split.sizes", Messages.TrialSizes_clusterSizes).control());
		pictures.setSelection(0);
		// where there is room, sizes stand beside the curve and follow it
		new TrialSizes(sash, work, "split.sizesBeside", Messages.TrialSizes_clusterSizesBesideTheCurve);
		sash.setWeights(60, 40);
		sash.setMaximizedControl(pictures);
		sash.addListener(SWT.Resize, event -> {
			Control alone = sash.getClientArea().width < WIDE ? pictures : null;
			if (alone != sash.getMaximizedControl()) {
				sash.setMaximizedControl(alone);
			}
		});
		new TrialFacts(right, work);
		kept = new KeptPane(tabs, desk);
		new KeepBar(trying, work, form, id -> {
			desk.choose(id);
			kept.show();
		});
		tab(tabs, Messages.SplitPane_tryASplit, scrolled);
		tab(tabs, Messages.SplitPane_keptSplits, kept.control());
		tabs.setSelection(0);
		page.addListener(SWT.Show, event -> refresh());
		page.addListener(SWT.Paint, event -> refresh());
		page.addListener(SWT.Dispose, event -> {
			Sessions.workbench().remove(this);
			work.cancel();
		});
		Sessions.workbench().add(this);
		// the desk tells of other settings, by which proposals are made or not
		DeskListener settings = new DeskListener() {
			@Override
			public void splitChanged() {
				work.tell();
			}
		};
		desk.add(settings);
		page.addListener(SWT.Dispose, event -> desk.remove(settings));
	}

	private static void tab(CTabFolder folder, String title, Control content) {
		CTabItem item = new CTabItem(folder, SWT.NONE);
		item.setText(title);
		item.setControl(content);
	}

	@Override
	public void sessionChanged(ArchiveSession now) {
		session = now;
		invalidate();
		kept.show();
	}

	@Override
	public void samplesChanged(Set<Survey> surveys) {
		invalidate();
	}

	@Override
	public void structureChanged() {
		// a verdict, or a split that was kept, leaves the map as it was
		if (session != null && !SplitScopes.of(session.archive()).equals(scopes)) {
			invalidate();
		}
		kept.show();
	}

	/** What was computed is of an earlier state; asked for anew when somebody looks. */
	private void invalidate() {
		stale = true;
		if (!page.isDisposed()) {
			stack.topControl = session == null ? empty : tabs;
			empty.setText(Messages.SplitPane_openAnArchiveToSplit);
			page.layout();
			page.redraw();
			if (page.isVisible()) {
				refresh();
			}
		}
	}

	private void refresh() {
		if (!stale || page.isDisposed() || !page.isVisible()) {
			return;
		}
		stale = false;
		work.show(session);
		scopes = session == null ? List.of() : SplitScopes.of(session.archive());
		form.setScopes(scopes);
		form.choose();
	}

	void setFocus() {
		if (Marked.holdsFocus(page)) {
			return;
		}
		if (session != null) {
			form.setFocus();
		} else {
			page.setFocus();
		}
	}
}
