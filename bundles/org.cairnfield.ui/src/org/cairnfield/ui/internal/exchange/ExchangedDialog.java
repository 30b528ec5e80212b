package org.cairnfield.ui.internal.exchange;

import java.util.List;

import org.cairnfield.archive.Exchanged;
import org.cairnfield.model.values.Count;
import org.cairnfield.ui.internal.exchange.model.ExchangeText;
import org.cairnfield.ui.show.Marked;
import org.cairnfield.ui.show.TableDialog;
import org.cairnfield.ui.show.TextTable;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Lists the save points that an exchange has brought and sent, and what people should know of it. */
final class ExchangedDialog extends TableDialog {

	private static final int NOTE_LINES = 4;

	private final Exchanged exchanged;

	ExchangedDialog(Shell parent, Exchanged exchanged) {
		super(parent, Messages.ExchangedDialog_exchangeWithOthers, "exchanged");
		this.exchanged = exchanged;
	}

	@Override
	protected void describe() {
		setTitle(NLS.bind(Messages.ExchangedDialog_receivedSent,
				Count.of(exchanged.received().size(), Messages.ExchangedDialog_savePoint), exchanged.sent().size()));
		setMessage(exchanged.conflicts() == 0 ? Messages.ExchangedDialog_nothingIsLeftToDecide
				: NLS.bind(Messages.ExchangedDialog_toDecideTheViewConflicts,
						Count.of(exchanged.conflicts(), "conflict")));
	}

	@Override
	protected TextTable createTable(Composite parent, String tableId) {
		return new TextTable(parent, tableId, ExchangeText.TITLES.toArray(String[]::new),
				new int[] { 80, 130, 130, 360, 90 });
	}

	@Override
	protected List<String[]> lines() {
		return ExchangeText.lines(exchanged);
	}

	@Override
	protected void createBelow(Composite page) {
		if (!exchanged.notes().isEmpty()) {
			Text notes = new Text(page, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.BORDER | SWT.V_SCROLL);
			Marked.named(Marked.id(notes, "exchanged.notes"), Messages.ExchangedDialog_notesOnTheExchange);
			notes.setText(String.join("\n", exchanged.notes()));
			GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, NOTE_LINES * notes.getLineHeight())
					.applyTo(notes);
		}
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		copyButton(parent);
		createButton(parent, IDialogConstants.OK_ID, IDialogConstants.CLOSE_LABEL, true);
	}
}
