package org.cairnfield.ui.review.internal.verdict;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.curation.decide.ReasonCode;
import org.cairnfield.curation.propose.Evidence;
import org.cairnfield.curation.review.Choice;
import org.cairnfield.curation.review.RulingDraft;
import org.cairnfield.model.Decision;
import org.cairnfield.ui.review.internal.desk.DeskListener;
import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.cairnfield.ui.review.internal.desk.TypingGuard;
import org.cairnfield.ui.show.IfChanged;
import org.cairnfield.ui.show.Marked;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** The keys of the reviewer as buttons, each with its key, and the reason that goes with the next verdict. */
final class VerdictPane implements DeskListener {

	private static final int COLUMNS = 6;
	private static final String BY_EVIDENCE = Messages.VerdictPane_asTheEvidenceSays;

	private final ReviewDesk desk;
	private final Runnable activate;
	private final Composite page;
	private final List<Button> deciding = new ArrayList<>();
	private final List<String> codes = new ArrayList<>(List.of(""));
	private final Button back;
	private final Button next;
	private final Button undo;
	private final Text home;
	private final Combo reason;
	private final Text text;
	private final Label says;
	private boolean filling;

	/** @param activate brings the view to the front */
	VerdictPane(Composite parent, ReviewDesk desk, TypingGuard typing, Runnable activate) {
		this.desk = desk;
		this.activate = activate;
		page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(COLUMNS).margins(6, 4).spacing(6, 4).applyTo(page);
		Composite keys = new Composite(page, SWT.NONE);
		RowLayout layout = new RowLayout(SWT.HORIZONTAL);
		layout.marginLeft = 0;
		layout.marginTop = 0;
		layout.marginBottom = 0;
		layout.center = true;
		layout.spacing = 4;
		keys.setLayout(layout);
		GridDataFactory.fillDefaults().grab(true, false).span(COLUMNS, 1).hint(100, SWT.DEFAULT).applyTo(keys);
		decide(keys, Messages.VerdictPane_approveA, "review.approve", Choice.APPROVE,
				Messages.VerdictPane_theSampleJoinsTheCluster);
		decide(keys, Messages.VerdictPane_moveM, "review.move", Choice.MOVE,
				Messages.VerdictPane_theSampleJoinsAnotherCluster);
		decide(keys, Messages.VerdictPane_poolP, "review.pool", Choice.POOL, Messages.VerdictPane_theSampleGoesToThe);
		decide(keys, Messages.VerdictPane_faultyF, "review.faulty", Choice.FAULTY,
				Messages.VerdictPane_theSampleLeavesTheMap);
		decide(keys, Messages.VerdictPane_deferD, "review.defer", Choice.DEFER,
				Messages.VerdictPane_somebodyDecidesLaterARelease);
		space(keys);
		back = Marked.button(keys, Messages.VerdictPane_backB, "review.back", () -> desk.review().walk(-1));
		back.setToolTipText(Messages.VerdictPane_theLineBefore);
		next = Marked.button(keys, Messages.VerdictPane_nextN, "review.next", () -> desk.review().walk(1));
		next.setToolTipText(Messages.VerdictPane_theNextSampleThatIs);
		space(keys);
		undo = Marked.button(keys, "undo", "review.undo", desk::undo);
		new Label(page, SWT.NONE).setText(Messages.VerdictPane_moveTo);
		home = Marked.named(Marked.id(new Text(page, SWT.BORDER), "review.home"), Messages.VerdictPane_clusterToMoveTo);
		home.setToolTipText(Messages.VerdictPane_numberOfAClusterSuch);
		home.addListener(SWT.Modify, event -> draft());
		home.addListener(SWT.DefaultSelection, event -> leave());
		GridDataFactory.fillDefaults().hint(60, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(home);
		new Label(page, SWT.NONE).setText(Messages.VerdictPane_reasonT);
		reason = Marked.named(Marked.id(new Combo(page, SWT.READ_ONLY), "review.reason"), Messages.VerdictPane_reason);
		reason.add(BY_EVIDENCE);
		add(Decision.APPROVE, Messages.VerdictPane_approve);
		add(Decision.MOVE, Messages.VerdictPane_move);
		add(Decision.POOL, Messages.VerdictPane_pool);
		add(Decision.FAULTY, Messages.VerdictPane_faulty);
		add(Decision.DEFER, Messages.VerdictPane_defer);
		reason.select(0);
		reason.addListener(SWT.Selection, event -> draft());
		text = Marked.named(Marked.id(new Text(page, SWT.BORDER), "review.text"), Messages.VerdictPane_inYourOwnWords);
		text.setMessage(Messages.VerdictPane_inYourOwnWordsIf);
		text.addListener(SWT.Modify, event -> draft());
		text.addListener(SWT.DefaultSelection, event -> leave());
		GridDataFactory.fillDefaults().grab(true, false).span(2, 1).align(SWT.FILL, SWT.CENTER).applyTo(text);
		says = Marked.id(new Label(page, SWT.WRAP), "review.message");
		GridDataFactory.fillDefaults().grab(true, false).span(COLUMNS, 1).hint(100, SWT.DEFAULT).applyTo(says);
		typing.guard(home);
		typing.guard(text); // nobody types into the list of reasons: the keys decide there too
		reason.addListener(SWT.Traverse, this::escape);
		text.addListener(SWT.Traverse, this::escape);
		home.addListener(SWT.Traverse, this::escape);
		reason.addListener(SWT.KeyDown, event -> {
			if (event.character == SWT.CR) {
				event.doit = false;
				leave();
			}
		});
		desk.add(this);
		page.addListener(SWT.Dispose, event -> desk.remove(this));
		show();
	}

	private void decide(Composite parent, String title, String id, Choice choice, String tip) {
		Button button = Marked.button(parent, title, id, () -> desk.review().decide(choice));
		button.setToolTipText(tip);
		deciding.add(button);
	}

	private static void space(Composite parent) {
		new Label(parent, SWT.NONE).setText("  ");
	}

	private void add(Decision decision, String prefix) {
		for (ReasonCode code : ReasonCode.of(decision)) {
			reason.add(prefix + code.title());
			codes.add(code.code());
		}
	}

	private void draft() {
		if (!filling) {
			desk.review().setDraft(new RulingDraft(home.getText(), codes.get(Math.max(0, reason.getSelectionIndex())),
					text.getText()));
		}
	}

	private void escape(Event event) {
		if (event.detail == SWT.TRAVERSE_ESCAPE) {
			event.doit = false;
			leave();
		}
	}

	/** Out of the fields, so that the keys decide again. */
	private void leave() {
		page.forceFocus();
	}

	@Override
	public void reasonAsked() {
		if (!page.isDisposed()) {
			reason.setFocus();
			activate.run();
		}
	}

	@Override
	public void splitChanged() {
		show();
	}

	@Override
	public void verdictsChanged() {
		show();
	}

	@Override
	public void currentChanged() {
		show();
	}

	private void show() {
		if (page.isDisposed()) {
			return;
		}
		boolean editable = desk.session() != null && desk.session().readOnlyReason().isEmpty();
		boolean some = desk.review().current() != null;
		deciding.forEach(button -> button.setEnabled(editable && some));
		back.setEnabled(some);
		next.setEnabled(some);
		undo.setEnabled(editable && desk.session().commands().canUndo());
		undo.setToolTipText(NLS.bind(Messages.VerdictPane_deleteTakesBackYourVerdict,
				undo.isEnabled()
						? NLS.bind(Messages.VerdictPane_undoesTheLastChangeIf,
								desk.session().commands().getUndoCommand().getLabel())
						: Messages.VerdictPane_nothingToUndo));
		filling = true;
		String nearest = nearest();
		if (!home.getMessage().equals(nearest)) {
			home.setMessage(nearest);
		}
		if (!home.getText().equals(desk.review().draft().home())) {
			home.setText(desk.review().draft().home());
		}
		int code = Math.max(0, codes.indexOf(desk.review().draft().reason()));
		if (reason.getSelectionIndex() != code) {
			reason.select(code);
		}
		if (!text.getText().equals(desk.review().draft().text())) {
			text.setText(desk.review().draft().text());
		}
		filling = false;
		String message = desk.review().message().text();
		if (message.isEmpty()) {
			message = !some ? ""
					: NLS.bind(Messages.VerdictPane_reviewingAsOneKeyDecides, desk.review().reviewer().person());
		} else {
			message = (desk.review().message().refused() ? "✖ " : "✔ ") + message;
		}
		IfChanged.text(says, message);
	}

	/** Where a move goes unless the person names another cluster; empty where that is the one proposed, or not known. */
	private String nearest() {
		Evidence evidence = desk.review().evidence().of(desk.review().current());
		return evidence == null || evidence.nearestCluster() < 0 || evidence.made() && evidence.agrees() ? ""
				: "C" + evidence.nearestCluster();
	}

	void setFocus() {
		// a view that becomes active by a click into a field keeps that field
		if (!Marked.holdsFocus(page)) {
			page.forceFocus();
		}
	}
}
