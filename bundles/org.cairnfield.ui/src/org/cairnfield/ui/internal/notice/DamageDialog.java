package org.cairnfield.ui.internal.notice;

import java.util.List;
import java.util.stream.Collectors;

import org.cairnfield.archive.fault.Damage;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** Lists what is wrong on disk, with file, line and remedy; the list can be copied. */
final class DamageDialog extends Dialog {

	private static final int COPY = IDialogConstants.CLIENT_ID;
	private static final int WIDEST = 420;

	private final List<Damage> damages;

	DamageDialog(Shell parent, List<Damage> damages) {
		super(parent);
		this.damages = damages;
		setShellStyle(getShellStyle() | SWT.RESIZE);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText("Damage");
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = (Composite) super.createDialogArea(parent);
		Label about = new Label(area, SWT.WRAP);
		about.setText("These files are not as they were saved. Nothing can be changed until they are mended.");
		Table table = new Table(area, SWT.MULTI | SWT.BORDER | SWT.FULL_SELECTION);
		table.setData("org.cairnfield.id", "damage.table");
		table.setHeaderVisible(true);
		GridDataFactory.fillDefaults().grab(true, true).hint(900, 260).applyTo(table);
		for (String title : new String[] { "File", "Line", "What is wrong", "What to do" }) {
			new TableColumn(table, title.equals("Line") ? SWT.RIGHT : SWT.LEFT).setText(title);
		}
		for (Damage damage : damages) {
			new TableItem(table, SWT.NONE).setText(new String[] { damage.file(), damage.line() > 0 ? Long.toString(damage.line()) : "",
					damage.reason(), damage.remedy() });
		}
		for (TableColumn column : table.getColumns()) {
			column.pack();
			column.setWidth(Math.min(column.getWidth(), WIDEST));
		}
		return area;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, COPY, "&Copy", false).setData("org.cairnfield.id", "damage.copy");
		createButton(parent, IDialogConstants.OK_ID, IDialogConstants.CLOSE_LABEL, true);
	}

	@Override
	protected void buttonPressed(int button) {
		if (button == COPY) {
			Clipboard clipboard = new Clipboard(getShell().getDisplay());
			clipboard.setContents(new Object[] { damages.stream().map(Damage::toString).collect(Collectors.joining("\n", "", "\n")) },
					new Transfer[] { TextTransfer.getInstance() });
			clipboard.dispose();
		} else {
			super.buttonPressed(button);
		}
	}
}
