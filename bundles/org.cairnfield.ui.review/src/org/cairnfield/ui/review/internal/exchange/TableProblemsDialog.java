package org.cairnfield.ui.review.internal.exchange;

import java.util.List;
import java.util.Locale;

import org.cairnfield.curation.decide.VerdictIntake;
import org.cairnfield.ui.show.TableDialog;
import org.cairnfield.ui.show.TextTable;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;

/** What is wrong with a table of verdicts, row by row, and what to do about each. */
final class TableProblemsDialog extends TableDialog {

	private final List<VerdictIntake.Problem> problems;

	TableProblemsDialog(Shell parent, List<VerdictIntake.Problem> problems) {
		super(parent, Messages.TableProblemsDialog_importVerdicts, "import");
		this.problems = problems;
	}

	@Override
	protected void describe() {
		setTitle(Messages.TableProblemsDialog_nothingWasTakenIn);
		setMessage(String.format(Locale.ROOT, Messages.TableProblemsDialog_wrongInMendTheTable, problems.size(),
				problems.size() == 1 ? Messages.TableProblemsDialog_rowIs : Messages.TableProblemsDialog_rowsAre,
				problems.get(0).file()), IMessageProvider.ERROR);
	}

	@Override
	protected TextTable createTable(Composite parent, String tableId) {
		return new TextTable(
				parent, tableId, new String[] { Messages.TableProblemsDialog_line,
						Messages.TableProblemsDialog_whatIsWrong, Messages.TableProblemsDialog_whatToDo },
				new int[] { 60, 520, 360 });
	}

	@Override
	protected List<String[]> lines() {
		return problems.stream().map(p -> new String[] { String.valueOf(p.line()), p.what(), p.remedy() }).toList();
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		copyButton(parent);
		createButton(parent, IDialogConstants.OK_ID, IDialogConstants.CLOSE_LABEL, true);
	}
}
