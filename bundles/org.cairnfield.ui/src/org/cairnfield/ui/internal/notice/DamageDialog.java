package org.cairnfield.ui.internal.notice;

import java.util.List;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.ui.show.Marked;
import org.cairnfield.ui.show.TableDialog;
import org.cairnfield.ui.show.TextTable;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;

/** Lists what is wrong on disk, with file, line and remedy; asks before a damaged archive is opened. */
public final class DamageDialog extends TableDialog {

	private final List<Damage> damages;
	private final boolean opening;

	private DamageDialog(Shell parent, List<Damage> damages, boolean opening) {
		super(parent, Messages.DamageDialog_damage, "damage");
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
		setTitle(Messages.DamageDialog_theseFilesAreNotAs);
		setMessage(opening ? Messages.DamageDialog_whatCanStillBeRead
				: Messages.DamageDialog_theArchiveIsReadOnly, IMessageProvider.ERROR);
	}

	@Override
	protected TextTable createTable(Composite parent, String tableId) {
		return new TextTable(parent, tableId,
				new String[] { Messages.DamageDialog_file, Messages.DamageDialog_line,
						Messages.DamageDialog_whatIsWrong, Messages.DamageDialog_whatToDo },
				new int[] { 270, 50, 300, 390 });
	}

	@Override
	protected List<String[]> lines() {
		return damages.stream()
				.map(damage -> new String[] { damage.file(), damage.line() > 0 ? Long.toString(damage.line()) : "",
						damage.reason(), damage.remedy() })
				.toList();
	}

	/** The chosen line in full: reasons and remedies are longer than a column is wide. */
	@Override
	protected void createBelow(Composite page) {
		Text whole = new Text(page, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.BORDER | SWT.V_SCROLL);
		Marked.named(Marked.id(whole, "damage.whole"), Messages.DamageDialog_theDamageInFull);
		GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, 4 * whole.getLineHeight()).applyTo(whole);
		Table table = table().control();
		Runnable show = () -> {
			int at = Math.max(0, table.getSelectionIndex());
			whole.setText(at < damages.size() ? whole(damages.get(at)) : "");
		};
		table.addListener(SWT.Selection, event -> show.run());
		show.run();
	}

	private static String whole(Damage damage) {
		return NLS.bind(Messages.DamageDialog_whatToDo2,
				new Object[] { damage.file(),
						damage.line() > 0 ? NLS.bind(Messages.DamageDialog_line2, damage.line()) : "", damage.reason(),
						damage.remedy() });
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		copyButton(parent);
		if (opening) {
			button(parent, IDialogConstants.OK_ID, Messages.DamageDialog_openAnyway, "open", false);
			button(parent, IDialogConstants.CANCEL_ID, Messages.DamageDialog_doNotOpen, "cancel", true);
		} else {
			createButton(parent, IDialogConstants.OK_ID, IDialogConstants.CLOSE_LABEL, true);
		}
	}
}
