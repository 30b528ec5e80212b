package org.cairnfield.ui.internal.draft;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.model.edit.ModelText;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.show.TableDialog;
import org.cairnfield.ui.show.TextTable;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** Lists what earlier sessions left unsaved, before anything can be edited; what the person does not decide about stays. */
final class RecoveryDialog extends TableDialog {

	private static final int BRING_BACK = IDialogConstants.CLIENT_ID;
	private static final int DELETE = IDialogConstants.CLIENT_ID + 1;

	private final ArchiveSession session;
	private final List<DraftOffer> offers;
	private Label about;

	RecoveryDialog(Shell parent, ArchiveSession session, List<DraftOffer> offers) {
		super(parent, "Unsaved work", "recovery");
		this.session = session;
		this.offers = new ArrayList<>(offers);
	}

	@Override
	protected void describe() {
		setTitle("Unsaved work in " + ModelText.name(session.archive()));
		setMessage("The program ended before these changes were saved. What you keep for later stays until you delete it.");
	}

	@Override
	protected TextTable createTable(Composite parent, String tableId) {
		TextTable table = new TextTable(parent, tableId, new String[] { "Last change", "By", "What" }, new int[] { 160, 140, 320 });
		table.control().addListener(SWT.Selection, event -> enable());
		return table;
	}

	@Override
	protected List<String[]> lines() {
		return offers.stream().map(offer -> new String[] { offer.when(), offer.who(), offer.what() }).toList();
	}

	@Override
	protected void createBelow(Composite page) {
		table().control().select(0);
		about = new Label(page, SWT.WRAP);
		about.setData("org.cairnfield.id", "recovery.about");
		GridDataFactory.fillDefaults().grab(true, false).hint(620, 2 * about.computeSize(SWT.DEFAULT, SWT.DEFAULT).y).applyTo(about);
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		button(parent, BRING_BACK, "&Bring back", "bringBack", true);
		button(parent, IDialogConstants.CANCEL_ID, "&Keep for later", "keep", false);
		button(parent, DELETE, "&Delete …", "delete", false);
		enable();
	}

	private DraftOffer selected() {
		int row = table().control().getSelectionIndex();
		return row < 0 ? null : offers.get(row);
	}

	private void enable() {
		DraftOffer offer = selected();
		Button back = getButton(BRING_BACK);
		if (back == null) {
			return;
		}
		String obstacle = offer == null ? "" : offer.obstacle();
		back.setEnabled(offer != null && obstacle.isEmpty());
		getButton(DELETE).setEnabled(offer != null);
		about.setText(offer == null || !obstacle.isEmpty() ? obstacle : offer.isOfAnother()
				? "Brought back, it becomes a save point under the name of " + offer.who() + "; you can undo it."
				: "Brought back, it is unsaved as before; you can save it or undo it.");
	}

	@Override
	protected void buttonPressed(int button) {
		if (button == BRING_BACK) {
			if (selected().bringBack()) {
				okPressed();
			}
		} else if (button == DELETE) {
			delete(selected());
		} else {
			super.buttonPressed(button);
		}
	}

	private void delete(DraftOffer offer) {
		if (MessageDialog.open(MessageDialog.WARNING, getShell(), "Delete unsaved work", "Delete the changes of " + offer.when() + " by "
				+ offer.who() + "? They cannot be brought back then.", SWT.NONE, "&Delete", "Cancel") == 0 && offer.discard()) {
			offers.remove(offer);
			if (offers.isEmpty()) {
				okPressed();
			} else {
				table().show(lines());
				table().control().select(0);
				enable();
			}
		}
	}
}
