package org.cairnfield.ui.internal.intake;

import org.eclipse.jface.wizard.WizardPage;

/** A page of the wizard; it says what is wrong at its top. */
abstract class IntakePage extends WizardPage {

	protected final IntakeState state;

	protected IntakePage(String name, String title, String description, IntakeState state) {
		super(name, title, null);
		setDescription(description);
		this.state = state;
	}

	/** Says what is wrong, or takes that back (null). */
	void say(String problem) {
		setErrorMessage(problem);
	}

	/** Shows what is so by now. */
	abstract void refresh();

	@Override
	public void setVisible(boolean visible) {
		if (visible) {
			refresh();
		}
		super.setVisible(visible);
	}
}
