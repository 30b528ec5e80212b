package org.cairnfield.ui.review.internal.exchange;

import java.util.List;
import java.util.Locale;

import org.cairnfield.curation.decide.VerdictIntake;
import org.cairnfield.ui.review.internal.desk.Marked;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;

/** What is wrong with a table of verdicts, row by row, and what to do about each. */
final class TableProblemsDialog extends TitleAreaDialog {

	private static final int COPY = IDialogConstants.CLIENT_ID + 1;

	private final List<VerdictIntake.Problem> problems;
	private TextTable table;

	TableProblemsDialog(Shell parent, List<VerdictIntake.Problem> problems) {
		super(parent);
		this.problems = problems;
		setShellStyle(getShellStyle() | SWT.RESIZE);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText("Import verdicts");
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		setTitle("Nothing was taken in");
		setMessage(String.format(Locale.ROOT, "%,d %s wrong in %s. Mend the table, then import it again as a whole.", problems.size(),
				problems.size() == 1 ? "row is" : "rows are", problems.get(0).file()), IMessageProvider.ERROR);
		Composite page = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridLayoutFactory.swtDefaults().margins(10, 10).applyTo(page);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(page);
		table = new TextTable(page, "import.problems", new String[] { "Line", "What is wrong", "What to do" }, new int[] { 60, 520, 360 });
		GridDataFactory.fillDefaults().grab(true, true).hint(960, 260).applyTo(table.control());
		table.show(problems.stream().map(p -> new String[] { String.valueOf(p.line()), p.what(), p.remedy() }).toList());
		return page;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		Marked.id(createButton(parent, COPY, "Copy the &list", false), "import.copy");
		createButton(parent, IDialogConstants.OK_ID, IDialogConstants.CLOSE_LABEL, true);
	}

	@Override
	protected void buttonPressed(int id) {
		if (id == COPY) {
			table.copy();
		} else {
			super.buttonPressed(id);
		}
	}

	@Override
	protected boolean isResizable() {
		return true;
	}
}
