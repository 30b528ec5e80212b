package org.cairnfield.ui.internal.intake;

import java.lang.reflect.InvocationTargetException;

import org.eclipse.jface.operation.IRunnableWithProgress;
import org.eclipse.jface.wizard.IWizard;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.widgets.Shell;

/** The dialog of a wizard that can be left while it reads: it stops reading, and then closes. */
final class IntakeDialog extends WizardDialog {

	private int running;
	private boolean leaving;

	IntakeDialog(Shell parent, IWizard wizard) {
		super(parent, wizard);
	}

	@Override
	public void run(boolean fork, boolean cancelable, IRunnableWithProgress work)
			throws InvocationTargetException, InterruptedException {
		running++;
		try {
			super.run(fork, cancelable, work);
		} finally {
			running--;
			if (running == 0 && leaving) {
				getShell().getDisplay().asyncExec(() -> { // whoever ran it still says what came of it
					if (getShell() != null) {
						close();
					}
				});
			}
		}
	}

	@Override
	public boolean close() {
		if (running > 0) {
			leaving = true;
			getProgressMonitor().setCanceled(true);
			return false;
		}
		return super.close();
	}
}
