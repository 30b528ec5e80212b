package org.cairnfield.ui.review.internal.queue;

import java.util.Arrays;

import org.cairnfield.curation.filter.FilterException;
import org.cairnfield.curation.propose.QueueOrder;
import org.cairnfield.curation.review.QueueFilter;
import org.cairnfield.curation.review.QueueGrouping;
import org.cairnfield.curation.review.QueueShown;
import org.cairnfield.model.Split;
import org.cairnfield.ui.review.internal.desk.DeskListener;
import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.cairnfield.ui.review.internal.desk.TypingGuard;
import org.cairnfield.ui.review.internal.exchange.OfferBar;
import org.cairnfield.ui.show.Marked;
import org.cairnfield.ui.work.Soon;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** The queue of the reviewer: which split, which of its noise, in which order; and approval by band beneath. */
final class QueuePane implements DeskListener {

	/** So long after the last key the filter is applied. */
	private static final int PATIENCE_MILLIS = 150;

	private final ReviewDesk desk;
	private final Composite page;
	private final Combo split;
	private final Label count;
	private final Text filter;
	private String filterProblem = "";
	private final Combo shown;
	private final Combo grouping;
	private final Combo order;
	private final Label says;
	private final OfferBar offer;
	private final QueueTable table;
	private final AuditPane audit;

	QueuePane(Composite parent, ReviewDesk desk, TypingGuard typing) {
		this.desk = desk;
		page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(page);
		Composite top = row(page, 5);
		split = Marked.choice(top, Messages.QueuePane_split, "review.split", this::chooseSplit);
		GridDataFactory.fillDefaults().hint(110, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(split);
		shown = combo(top, Messages.QueuePane_show, "review.shown", () -> desk.review()
				.arrange(desk.review().queue().settings().withShown(QueueShown.values()[selected("shown")])));
		for (QueueShown each : QueueShown.values()) {
			shown.add(each.title());
		}
		count = Marked.id(new Label(top, SWT.RIGHT), "review.count");
		count.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(count);
		Composite second = row(page, 1);
		filter = Marked.named(
				Marked.id(new Text(second, SWT.SEARCH | SWT.ICON_CANCEL | SWT.ICON_SEARCH), "review.filter"),
				Messages.QueuePane_filterOfTheQueue);
		filter.setMessage(Messages.QueuePane_filterSuchAsCluster7);
		filter.setToolTipText(String.join("\n", QueueFilter.HELP));
		GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
		Soon apply = new Soon(PATIENCE_MILLIS, this::applyFilter);
		filter.addListener(SWT.Modify, event -> apply.postpone());
		filter.addListener(SWT.DefaultSelection, event -> applyFilter());
		typing.guard(filter);
		Composite third = row(page, 4);
		grouping = combo(third, Messages.QueuePane_group, "review.grouping",
				() -> desk.review().arrange(
						desk.review().queue().settings().withGrouping(QueueGrouping.values()[selected("grouping")])));
		for (QueueGrouping each : QueueGrouping.values()) {
			grouping.add(each.title());
		}
		order = combo(third, Messages.QueuePane_sort, "review.order", () -> desk.review()
				.arrange(desk.review().queue().settings().withOrder(QueueOrder.values()[selected("order")])));
		for (QueueOrder each : QueueOrder.values()) {
			order.add(each.title());
		}
		says = Marked.line(page, "review.queue.message", 1);
		((GridData) says.getLayoutData()).horizontalIndent = 6;
		offer = new OfferBar(page, desk, "review.offer", 1);
		table = new QueueTable(page, desk);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(table.control());
		audit = new AuditPane(page, desk);
		filter.addListener(SWT.KeyDown, event -> {
			if (event.keyCode == SWT.ARROW_DOWN) {
				event.doit = false;
				table.control().setFocus();
			} else if (event.keyCode == SWT.ESC) {
				event.doit = false;
				filter.setText("");
				table.control().setFocus();
			}
		});
		desk.add(this);
		page.addListener(SWT.Dispose, event -> desk.remove(this));
		splitChanged();
	}

	private static Composite row(Composite parent, int columns) {
		Composite row = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(columns).margins(6, 2).spacing(5, 2).applyTo(row);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
		return row;
	}

	private static Combo combo(Composite parent, String label, String id, Runnable changed) {
		Combo combo = Marked.choice(parent, label, id, changed);
		GridDataFactory.fillDefaults().grab(true, false).hint(70, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER)
				.applyTo(combo);
		return combo;
	}

	private int selected(String which) {
		Combo combo = switch (which) {
		case "shown" -> shown;
		case "grouping" -> grouping;
		default -> order;
		};
		return Math.max(0, combo.getSelectionIndex());
	}

	private void chooseSplit() {
		if (split.getSelectionIndex() >= 0) {
			desk.choose(split.getText());
		}
	}

	private void applyFilter() {
		if (!page.isDisposed()) {
			try {
				QueueFilter now = QueueFilter.parse(filter.getText());
				filterProblem = "";
				if (!now.equals(desk.review().queue().settings().filter())) {
					desk.review().arrange(desk.review().queue().settings().withFilter(now));
				}
			} catch (FilterException e) {
				filterProblem = "✖ " + e.getMessage();
			}
			say();
		}
	}

	@Override
	public void splitChanged() {
		if (page.isDisposed()) {
			return;
		}
		String[] ids = desk.session() == null ? new String[0]
				: desk.session().archive().getSplits().stream().map(Split::getId).toArray(String[]::new);
		if (!Arrays.equals(ids, split.getItems())) {
			split.setItems(ids);
		}
		split.setEnabled(ids.length > 0);
		if (desk.split() != null) {
			split.setText(desk.split().getId());
		}
		queueChanged();
	}

	@Override
	public void queueChanged() {
		if (page.isDisposed()) {
			return;
		}
		shown.select(desk.review().queue().settings().shown().ordinal());
		grouping.select(desk.review().queue().settings().grouping().ordinal());
		order.select(desk.review().queue().settings().order().ordinal());
		shown.setEnabled(desk.review().audit().looking().isEmpty());
		table.refill();
		say();
		audit.show();
	}

	@Override
	public void verdictsChanged() {
		if (!page.isDisposed()) {
			table.restate();
			say();
			audit.showSoon();
		}
	}

	@Override
	public void currentChanged() {
		if (!page.isDisposed()) {
			table.select();
		}
	}

	private void say() {
		count.setText(desk.review().countText());
		count.setToolTipText(desk.review().countText().isEmpty() ? null : Messages.QueuePane_proposalsOnWhichYouStill);
		String text = "";
		if (!filterProblem.isEmpty()) {
			text = filterProblem;
		} else if (desk.session() == null) {
			text = Messages.QueuePane_openAnArchiveToReview;
		} else if (desk.split() == null) {
			text = Messages.QueuePane_thereIsNoSplitYet;
		} else if (!desk.review().evidence().problem().isEmpty()) {
			text = "✖ " + desk.review().evidence().problem();
		} else if (desk.review().evidence().table() == null) {
			text = Messages.QueuePane_computingTheEvidenceOnEach;
		} else if (desk.review().queue().rows().isEmpty()) {
			text = NLS.bind(Messages.QueuePane_splitHasNoProposalsMake, desk.split().getId());
		} else if (desk.review().queue().list().lines().isEmpty()) {
			text = isNothingMine()
					? NLS.bind(Messages.QueuePane_noProposalOfThisSplit, desk.review().reviewer().person())
					: Messages.QueuePane_noLineMatchesClearThe;
		} else if (desk.review().evidence().isWaiting()) {
			text = Messages.QueuePane_theMapHasChangedEvidence;
		}
		Marked.say(says, text);
		offer.show();
	}

	private boolean isNothingMine() {
		return desk.review().queue().settings().shown() == QueueShown.MINE
				&& desk.review().queue().shares().of(desk.review().reviewer().person()).isEmpty();
	}

	void setFocus() {
		if (!Marked.holdsFocus(page)) {
			table.control().setFocus();
		}
	}
}
