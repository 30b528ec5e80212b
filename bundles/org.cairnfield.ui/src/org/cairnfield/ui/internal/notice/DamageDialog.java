package org.cairnfield.ui.internal.notice;

import java.util.List;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.ui.show.TableDialog;
import org.cairnfield.ui.show.TextTable;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;

/** Lists what is wrong on disk, with file, line and remedy; asks before a damaged archive is opened. */
public final class DamageDialog extends TableDialog {

	private final List<Damage> damages;
	private final boolean opening;

	private DamageDialog(Shell parent, List<Damage> damages, boolean opening) {
		super(parent, "Damage", "damage");
		this.damages = damages;
		this.opening = opening;
	}

	/** Shows the damage of an archive that is open. */
	static void show(Shell parent, List<Damage> damages) {
		new DamageDialog(parent, damages, false).open();
	}

	/** Whether the person wants to open an archive with such damage. */
	public static boolean isToBeOpened(Shell parent, List<Damage> damages) {
		return new DamageDialog(parent, damages, true).open() == OK;
	}

	@Override
	protected void describe() {
		setTitle("These files are not as they were saved");
		setMessage(opening ? "What can still be read is shown if you open the archive anyway. It is read-only until it is mended; to mend it, "
				+ "restore a save point in History." : "The archive is read-only until they are mended.", IMessageProvider.ERROR);
	}

	@Override
	protected TextTable createTable(Composite parent, String tableId) {
		return new TextTable(parent, tableId, new String[] { "File", "Line", "What is wrong", "What to do" }, new int[] { 270, 50, 300, 390 });
	}

	@Override
	protected List<String[]> lines() {
		return damages.stream().map(damage -> new String[] { damage.file(), damage.line() > 0 ? Long.toString(damage.line()) : "",
				damage.reason(), damage.remedy() }).toList();
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		copyButton(parent);
		if (opening) {
			button(parent, IDialogConstants.OK_ID, "Open &anyway", "open", false);
			button(parent, IDialogConstants.CANCEL_ID, "&Do not open", "cancel", true);
		} else {
			createButton(parent, IDialogConstants.OK_ID, IDialogConstants.CLOSE_LABEL, true);
		}
	}
}
