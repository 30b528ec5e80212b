package org.cairnfield.ui.release.internal;

import org.cairnfield.curation.release.GateSet;
import org.cairnfield.ui.show.Marked;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Sets the gates of an archive in the text form that the archive keeps, and says at once what is wrong with it. */
final class GatesDialog extends TitleAreaDialog {

	private static final String HOW = Messages.GatesDialog_oneGateALineWith;

	private GateSet gates;
	private Text text;

	GatesDialog(Shell shell, GateSet gates) {
		super(shell);
		this.gates = gates;
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.GatesDialog_gates);
	}

	@Override
	protected boolean isResizable() {
		return true;
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		setTitle(Messages.GatesDialog_whatAReleaseMustMeet);
		setMessage(HOW);
		Composite area = (Composite) super.createDialogArea(parent);
		text = new Text(area, SWT.MULTI | SWT.BORDER | SWT.V_SCROLL | SWT.H_SCROLL);
		Marked.named(Marked.id(text, "gates.text"), Messages.GatesDialog_theFileOfGates);
		text.setFont(JFaceResources.getTextFont());
		text.setText(gates.toString());
		text.addListener(SWT.Modify, event -> check());
		GridDataFactory.fillDefaults().grab(true, true).indent(8, 4)
				.hint(convertWidthInCharsToPixels(110), 16 * text.getLineHeight()).applyTo(text);
		return area;
	}

	private void check() {
		try {
			gates = GateSet.parse(text.getText());
			setErrorMessage(null);
		} catch (IllegalArgumentException e) {
			setErrorMessage(e.getMessage());
		}
		getButton(IDialogConstants.OK_ID).setEnabled(getErrorMessage() == null);
	}

	/** As they were written, once the dialog is closed by OK. */
	GateSet gates() {
		return gates;
	}
}
