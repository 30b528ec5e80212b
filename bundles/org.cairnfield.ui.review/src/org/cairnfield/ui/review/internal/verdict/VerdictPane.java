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
	private static final String BY_EVIDENCE = "as the evidence says";

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
		decide(keys, "approve  A", "review.approve", Choice.APPROVE, "The sample joins the cluster that is proposed");
		decide(keys, "move  M", "review.move", Choice.MOVE,
				"The sample joins another cluster: that of the nearest labelled sample, or the one named below");
		decide(keys, "pool  P", "review.pool", Choice.POOL, "The sample goes to the pool, which every query searches");
		decide(keys, "faulty  F", "review.faulty", Choice.FAULTY, "The sample leaves the map and is set aside");
		decide(keys, "defer  D", "review.defer", Choice.DEFER, "Somebody decides later; a release waits for it");
		space(keys);
		back = Marked.button(keys, "back  B", "review.back", () -> desk.review().walk(-1));
		back.setToolTipText("The line before");
		next = Marked.button(keys, "next  N", "review.next", () -> desk.review().walk(1));
		next.setToolTipText("The next sample that is left to decide");
		space(keys);
		undo = Marked.button(keys, "undo", "review.undo", desk::undo);
		new Label(page, SWT.NONE).setText("move to");
		home = Marked.named(Marked.id(new Text(page, SWT.BORDER), "review.home"), "Cluster to move to");
		home.setToolTipText("Number of a cluster, such as 7; empty for that of the nearest labelled sample");
		home.addListener(SWT.Modify, event -> draft());
		home.addListener(SWT.DefaultSelection, event -> leave());
		GridDataFactory.fillDefaults().hint(60, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(home);
		new Label(page, SWT.NONE).setText("reason  T");
		reason = Marked.named(Marked.id(new Combo(page, SWT.READ_ONLY), "review.reason"), "Reason");
		reason.add(BY_EVIDENCE);
		add(Decision.APPROVE, "approve: ");
		add(Decision.MOVE, "move: ");
		add(Decision.POOL, "pool: ");
		add(Decision.FAULTY, "faulty: ");
		add(Decision.DEFER, "defer: ");
		reason.select(0);
		reason.addListener(SWT.Selection, event -> draft());
		text = Marked.named(Marked.id(new Text(page, SWT.BORDER), "review.text"), "In your own words");
		text.setMessage("In your own words, if need be; Enter goes back to the keys");
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
			desk.review().setDraft(new RulingDraft(home.getText(), codes.get(Math.max(0, reason.getSelectionIndex())), text.getText()));
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
		undo.setToolTipText((undo.isEnabled() ? "Undoes the last change if it is a verdict: " + desk.session().commands().getUndoCommand().getLabel()
				: "Nothing to undo") + ". Delete takes back your verdict on this sample, however old");
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
			message = !some ? "" : "Reviewing as " + desk.review().reviewer().person() + ": one key decides, and the next sample comes at once.";
		} else {
			message = (desk.review().message().refused() ? "✖ " : "✔ ") + message;
		}
		IfChanged.text(says, message);
	}

	/** Where a move goes unless the person names another cluster; empty where that is the one proposed, or not known. */
	private String nearest() {
		Evidence evidence = desk.review().evidence().of(desk.review().current());
		return evidence == null || evidence.nearestCluster() < 0 || evidence.made() && evidence.agrees() ? "" : "C" + evidence.nearestCluster();
	}

	void setFocus() {
		// a view that becomes active by a click into a field keeps that field
		if (!Marked.holdsFocus(page)) {
			page.forceFocus();
		}
	}
}
