package org.cairnfield.ui.show;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

import org.cairnfield.curation.decide.LedgerEntry;
import org.cairnfield.curation.decide.ReviewRefused;
import org.cairnfield.curation.team.CommentBook;
import org.cairnfield.curation.team.CommentSubject;
import org.cairnfield.model.Comment;
import org.cairnfield.ui.prefs.Preferences;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;

/** The comments on one subject, and a field to add another. It takes no room while there is no subject. */
public final class CommentBox implements SessionListener {

	private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm")
			.withZone(ZoneId.systemDefault());
	private static final int MOST_LINES = 5;

	private final Composite page;
	private final Text list;
	private final Text field;
	private final Button add;
	/** What was begun on other subjects. */
	private final Map<String, String> begun = new HashMap<>();
	private ArchiveSession session;
	private CommentSubject subject;
	private boolean ownOnly;

	/**
	 * @param parent  has a grid layout
	 * @param columns of the layout that it spans
	 * @param id      of the view; the parts are called so with ".comments", ".comment.text" and ".comment.add" behind
	 */
	public CommentBox(Composite parent, int columns, String id) {
		page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).margins(4, 2).spacing(4, 2).applyTo(page);
		GridDataFactory.fillDefaults().grab(true, false).span(columns, 1).exclude(true).applyTo(page);
		page.setVisible(false);
		list = new Text(page, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL | SWT.BORDER);
		Marked.named(Marked.id(list, id + ".comments"), Messages.CommentBox_comments);
		GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(100, SWT.DEFAULT).exclude(true).applyTo(list);
		list.setVisible(false);
		field = new Text(page, SWT.BORDER | SWT.SINGLE);
		field.setData("org.cairnfield.id", id + ".comment.text");
		field.setTextLimit(CommentBook.LONGEST);
		field.addListener(SWT.Modify, event -> enable());
		field.addListener(SWT.DefaultSelection, event -> add());
		GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER)
				.applyTo(field);
		add = new Button(page, SWT.PUSH);
		add.setText(Messages.CommentBox_add);
		add.setToolTipText(Messages.CommentBox_addsTheCommentForEverybody);
		add.setData("org.cairnfield.id", id + ".comment.add");
		add.addListener(SWT.Selection, event -> add());
		Sessions.workbench().add(this);
		page.addListener(SWT.Dispose, event -> Sessions.workbench().remove(this));
	}

	/** The field that people type into. */
	public Control field() {
		return field;
	}

	/**
	 * @param of      null for no archive
	 * @param about   null for nothing
	 * @param blindly whether comments of others are not shown, since the person is to judge without knowing what they think
	 */
	public void show(ArchiveSession of, CommentSubject about, boolean blindly) {
		if (page.isDisposed()) {
			return;
		}
		CommentSubject before = subject;
		session = of;
		subject = of == null ? null : about;
		ownOnly = blindly;
		if (!Objects.equals(before, subject)) {
			if (before != null) {
				begun.put(before.toString(), field.getText());
			}
			field.setText(subject == null ? "" : begun.getOrDefault(subject.toString(), ""));
		}
		refresh();
	}

	@Override
	public void teamChanged() {
		refresh();
	}

	private void refresh() {
		if (page.isDisposed()) {
			return;
		}
		String text = text();
		boolean changed = setShown(page, subject != null) | setShown(list, !text.isEmpty());
		if (!text.equals(list.getText())) {
			list.setText(text);
			list.setTopIndex(Integer.MAX_VALUE); // the latest
			changed = true;
		}
		if (changed && subject != null) {
			int lines = Math.min(MOST_LINES, list.getLineCount());
			((GridData) list.getLayoutData()).heightHint = Math.max(1, lines) * list.getLineHeight();
		}
		enable();
		if (changed) {
			page.requestLayout();
		}
	}

	private static boolean setShown(Control control, boolean shown) {
		GridData data = (GridData) control.getLayoutData();
		boolean changed = data.exclude == shown;
		data.exclude = !shown;
		control.setVisible(shown);
		return changed;
	}

	private String text() {
		if (subject == null) {
			return "";
		}
		List<Comment> all = session.comments().on(subject);
		String me = Preferences.person().name();
		List<Comment> seen = all.stream().filter(comment -> !ownOnly || LedgerEntry.isSame(comment.getPerson(), me))
				.toList();
		String lines = seen.stream()
				.map(comment -> comment.getPerson() + ", "
						+ (comment.getTime() == null ? "" : TIME.format(comment.getTime())) + ": "
						+ comment.getText())
				.collect(Collectors.joining("\n"));
		int hidden = all.size() - seen.size();
		return hidden == 0 ? lines
				: NLS.bind(Messages.CommentBox_ofOthersCanBeRead, new Object[] { lines, lines.isEmpty() ? "" : "\n",
						hidden == 1 ? Messages.CommentBox_1Comment : NLS.bind(Messages.CommentBox_comments2, hidden) });
	}

	private void enable() {
		boolean editable = session != null && session.readOnlyReason().isEmpty();
		field.setEnabled(editable);
		field.setMessage(editable ? Messages.CommentBox_comment : "Read-only");
		add.setEnabled(editable && subject != null && !field.getText().isBlank());
	}

	private void add() {
		if (!add.getEnabled()) {
			return;
		}
		try {
			if (session.run(session.comments().add(subject, field.getText(), Preferences.person().name()).command())) {
				field.setText("");
				begun.remove(subject.toString());
				refresh();
				list.setFocus(); // out of the field, so that keys are keys again
			}
		} catch (ReviewRefused e) {
			field.setToolTipText(e.getMessage());
		}
	}
}
