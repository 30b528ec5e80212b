package org.cairnfield.ui.show;

import java.util.List;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;

/** A dialog around a table of text: what it is about, the lines, and what can be done about them. */
public abstract class TableDialog extends TitleAreaDialog {

	private static final int COPY = IDialogConstants.CLIENT_ID + 100;

	private final String name;
	private final String id;
	private TextTable table;

	/**
	 * @param name title of its window
	 * @param id   begins the names of its controls, such as "damage"
	 */
	protected TableDialog(Shell parent, String name, String id) {
		super(parent);
		this.name = name;
		this.id = id;
		setHelpAvailable(false);
		setShellStyle(getShellStyle() | SWT.RESIZE);
	}

	/** Sets title and message. */
	protected abstract void describe();

	/** A table of that name without lines. */
	protected abstract TextTable createTable(Composite parent, String tableId);

	/** The lines now, a text for each column. */
	protected abstract List<String[]> lines();

	/** For more below the table. */
	protected void createBelow(Composite page) {
		// as a rule nothing
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(name);
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = (Composite) super.createDialogArea(parent);
		describe();
		Composite page = new Composite(area, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(page);
		GridLayoutFactory.swtDefaults().margins(10, 10).applyTo(page);
		table = createTable(page, id + ".table");
		Marked.named(table.control(), name);
		GridDataFactory.fillDefaults().grab(true, true).hint(SWT.DEFAULT, 200).applyTo(table.control());
		table.show(lines());
		createBelow(page);
		return area;
	}

	/** The table; null before it is made. */
	protected final TextTable table() {
		return table;
	}

	/** A button of the row below that calls itself by a name. */
	protected final Button button(Composite parent, int button, String label, String buttonId, boolean usual) {
		Button made = createButton(parent, button, label, usual);
		made.setData("org.cairnfield.id", id + '.' + buttonId);
		return made;
	}

	/** A button that copies the lines. */
	protected final void copyButton(Composite parent) {
		button(parent, COPY, Messages.TableDialog_copyTheList, "copy", false);
	}

	@Override
	protected void buttonPressed(int button) {
		if (button == COPY) {
			table.copy();
		} else {
			super.buttonPressed(button);
		}
	}

	@Override
	protected boolean isResizable() {
		return true;
	}
}
