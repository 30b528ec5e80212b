package org.cairnfield.ui.internal.exchange;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.show.Chooser;
import org.cairnfield.ui.show.Marked;
import org.cairnfield.ui.work.Soon;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** A dialog with fields for folders or URLs; what is wrong with them stands below the fields. */
abstract class RemoteDialog extends Dialog {

	private static final int WIDTH = 560;
	/** What is wrong is said once nothing more is typed. */
	private static final int SAY_MILLIS = 500;

	private final String title;
	private final String id;
	private final String action;
	private Label problemIcon;
	private Label problem;
	private final Soon saying = new Soon(SAY_MILLIS, this::sayWhatIsWrong);

	/**
	 * @param id     begins the names of its controls
	 * @param action label of the button that does it
	 */
	RemoteDialog(Shell parent, String title, String id, String action) {
		super(parent);
		this.title = title;
		this.id = id;
		this.action = action;
		setShellStyle(getShellStyle() | SWT.RESIZE);
	}

	/** Adds the fields to three columns. */
	abstract void createFields(Composite page);

	/** What a person should know before the button is pressed. */
	abstract String advice();

	/** Does it. @throws Exception with a message for the person, who may then correct the fields */
	abstract void perform() throws Exception;

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(title);
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite page = (Composite) super.createDialogArea(parent);
		GridLayoutFactory.swtDefaults().numColumns(3).margins(12, 12).spacing(8, 8).applyTo(page);
		createFields(page);
		Composite line = new Composite(page, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).span(3, 1).applyTo(line);
		GridLayoutFactory.fillDefaults().numColumns(2).applyTo(line);
		problemIcon = new Label(line, SWT.NONE);
		problemIcon.setImage(JFaceResources.getImage(DLG_IMG_MESSAGE_ERROR));
		GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.BEGINNING).applyTo(problemIcon);
		problem = new Label(line, SWT.WRAP);
		problem.setData("org.cairnfield.id", id + ".problem");
		GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(problem);
		explain("");
		Label advice = new Label(page, SWT.WRAP);
		advice.setData("org.cairnfield.id", id + ".advice");
		advice.setText(advice().replace("&", "&&"));
		GridDataFactory.fillDefaults().grab(true, true).span(3, 1).hint(WIDTH, SWT.DEFAULT).applyTo(advice);
		return page;
	}

	/** A field in a line with its label and a button that asks for a folder. */
	final Text field(Composite page, String label, String name, String browse) {
		new Label(page, SWT.NONE).setText(label);
		Text field = new Text(page, SWT.BORDER | SWT.SINGLE);
		field.setData("org.cairnfield.id", id + '.' + name);
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(WIDTH / 2, SWT.DEFAULT)
				.applyTo(field);
		Button button = new Button(page, SWT.PUSH);
		Marked.named(button, NLS.bind(Messages.RemoteDialog_for, Marked.words(browse), Marked.words(label)))
				.setText(browse);
		button.setData("org.cairnfield.id", id + '.' + name + ".browse");
		button.addListener(SWT.Selection, event -> {
			DirectoryDialog chooser = new DirectoryDialog(getShell(), SWT.OPEN);
			chooser.setText(title);
			String folder = Chooser.open(chooser, "archive");
			if (folder != null) {
				field.setText(folder);
			}
		});
		field.addListener(SWT.Modify, event -> {
			enable();
			saying.postpone();
		});
		return field;
	}

	/** Shows what is wrong; nothing for an empty text. */
	final void explain(String text) {
		saying.cancel();
		problem.setText(text.replace("&", "&&"));
		problemIcon.setVisible(!text.isEmpty());
		Control line = problem.getParent();
		GridDataFactory.fillDefaults().grab(true, false).span(3, 1).exclude(text.isEmpty()).applyTo(line);
		line.setVisible(!text.isEmpty());
		if (getShell() != null && getShell().isVisible()) {
			getShell().layout(true, true);
			getShell().setSize(getShell().computeSize(getShell().getSize().x, SWT.DEFAULT));
		}
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, action, true).setData("org.cairnfield.id", id + ".do");
		createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
		enable();
	}

	private void enable() {
		Button button = getButton(IDialogConstants.OK_ID);
		if (button != null) {
			button.setEnabled(isFilled() && wrong().isEmpty());
		}
	}

	private void sayWhatIsWrong() {
		if (!problem.isDisposed()) {
			explain(isFilled() ? wrong() : "");
		}
	}

	private String wrong() {
		try {
			check();
			return "";
		} catch (ArchiveException e) {
			return Problems.text(e);
		}
	}

	/** @throws ArchiveException where something is entered with which nothing can be done, whatever is there */
	abstract void check() throws ArchiveException;

	/** Whether there is something in all fields. */
	abstract boolean isFilled();

	@Override
	protected void okPressed() {
		try {
			perform();
			super.okPressed();
		} catch (Exception e) {
			explain(Problems.text(e));
		}
	}
}
