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
import org.eclipse.osgi.util.NLS;
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
		super(parent, Messages.RecoveryDialog_unsavedWork, "recovery");
		this.session = session;
		this.offers = new ArrayList<>(offers);
	}

	@Override
	protected void describe() {
		setTitle(NLS.bind(Messages.RecoveryDialog_unsavedWorkIn, ModelText.name(session.archive())));
		setMessage(Messages.RecoveryDialog_theProgramEndedBeforeThese);
	}

	@Override
	protected TextTable createTable(Composite parent, String tableId) {
		TextTable table = new TextTable(parent, tableId,
				new String[] { Messages.RecoveryDialog_lastChange, "By", Messages.RecoveryDialog_what },
				new int[] { 160, 140, 320 });
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
		GridDataFactory.fillDefaults().grab(true, false).hint(620, 2 * about.computeSize(SWT.DEFAULT, SWT.DEFAULT).y)
				.applyTo(about);
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		button(parent, BRING_BACK, Messages.RecoveryDialog_bringBack, "bringBack", true);
		button(parent, IDialogConstants.CANCEL_ID, Messages.RecoveryDialog_keepForLater, "keep", false);
		button(parent, DELETE, Messages.RecoveryDialog_delete, "delete", false);
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
		about.setText(offer == null || !obstacle.isEmpty() ? obstacle
				: offer.isOfAnother()
						? NLS.bind(Messages.RecoveryDialog_broughtBackItBecomesA, offer.who())
						: Messages.RecoveryDialog_broughtBackItIsUnsaved);
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
		if (MessageDialog.open(MessageDialog.WARNING, getShell(), Messages.RecoveryDialog_deleteUnsavedWork,
				NLS.bind(Messages.RecoveryDialog_deleteTheChangesOfBy, offer.when(), offer.who()), SWT.NONE,
				Messages.RecoveryDialog_delete2, Messages.RecoveryDialog_cancel) == 0 && offer.discard()) {
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
