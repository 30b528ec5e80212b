package org.cairnfield.ui.internal.draft;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.model.edit.ModelText;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** Lists what earlier sessions left unsaved, before anything can be edited; what the person does not decide about stays. */
final class RecoveryDialog extends TitleAreaDialog {

	private static final int BRING_BACK = IDialogConstants.CLIENT_ID;
	private static final int DELETE = IDialogConstants.CLIENT_ID + 1;

	private final ArchiveSession session;
	private final List<DraftOffer> offers;
	private Table table;
	private Label about;

	RecoveryDialog(Shell parent, ArchiveSession session, List<DraftOffer> offers) {
		super(parent);
		this.session = session;
		this.offers = new ArrayList<>(offers);
		setHelpAvailable(false);
		setShellStyle(getShellStyle() | SWT.RESIZE);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText("Unsaved work");
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = (Composite) super.createDialogArea(parent);
		setTitle("Unsaved work in " + ModelText.name(session.archive()));
		setMessage("The program ended before these changes were saved. What you keep for later stays until you delete it.");
		Composite page = new Composite(area, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(page);
		GridLayoutFactory.swtDefaults().margins(10, 10).applyTo(page);
		table = new Table(page, SWT.SINGLE | SWT.BORDER | SWT.FULL_SELECTION);
		table.setData("org.cairnfield.id", "recovery.table");
		table.setHeaderVisible(true);
		for (String title : new String[] { "Last change", "By", "What" }) {
			new TableColumn(table, SWT.LEFT).setText(title);
		}
		GridDataFactory.fillDefaults().grab(true, true).hint(620, 110).applyTo(table);
		table.addListener(SWT.Selection, event -> enable());
		about = new Label(page, SWT.WRAP);
		about.setData("org.cairnfield.id", "recovery.about");
		GridDataFactory.fillDefaults().grab(true, false).hint(620, 2 * about.computeSize(SWT.DEFAULT, SWT.DEFAULT).y).applyTo(about);
		fill();
		return area;
	}

	private void fill() {
		table.removeAll();
		for (DraftOffer offer : offers) {
			new TableItem(table, SWT.NONE).setText(new String[] { offer.when(), offer.who(), offer.what() });
		}
		table.select(0);
		for (TableColumn column : table.getColumns()) {
			column.pack();
		}
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, BRING_BACK, "&Bring back", true).setData("org.cairnfield.id", "recovery.bringBack");
		createButton(parent, IDialogConstants.CANCEL_ID, "&Keep for later", false).setData("org.cairnfield.id", "recovery.keep");
		createButton(parent, DELETE, "&Delete …", false).setData("org.cairnfield.id", "recovery.delete");
		enable();
	}

	private DraftOffer selected() {
		return table.getSelectionIndex() < 0 ? null : offers.get(table.getSelectionIndex());
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
		DraftOffer offer = selected();
		if (button == BRING_BACK) {
			if (offer.bringBack()) {
				offers.remove(offer);
				okPressed();
			}
		} else if (button == DELETE) {
			if (MessageDialog.open(MessageDialog.WARNING, getShell(), "Delete unsaved work", "Delete the changes of " + offer.when() + " by "
					+ offer.who() + "? They cannot be brought back then.", SWT.NONE, "&Delete", "Cancel") == 0 && offer.discard()) {
				offers.remove(offer);
				if (offers.isEmpty()) {
					okPressed();
				} else {
					fill();
					enable();
				}
			}
		} else {
			super.buttonPressed(button);
		}
	}
}
