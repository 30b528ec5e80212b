package org.cairnfield.ui.internal.intake;

import java.util.function.Consumer;
import org.cairnfield.curation.intake.SameNames;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Asks whether access points of one name at several sites are one sender. Nothing is chosen unless the archive knows. */
final class SameNamesQuestion {

	private static final int WIDTH = 600;

	private final Composite page;
	private final Label text;
	private final Button oneSender;
	private final Button perSite;

	/** @param answered hears each answer */
	SameNamesQuestion(Composite parent, Consumer<SameNames.Answer> answered) {
		page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().applyTo(page);
		GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(page);
		page.setVisible(false);
		text = new Label(page, SWT.WRAP);
		text.setData("org.cairnfield.id", "intake.sameNames");
		GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(text);
		oneSender = choice(Messages.SameNamesQuestion_oneSenderHeardAtSeveral, "intake.sameNames.oneSender",
				SameNames.Answer.ONE_SENDER, answered);
		perSite = choice(Messages.SameNamesQuestion_everySiteHasItsOwn, "intake.sameNames.perSite",
				SameNames.Answer.PER_SITE, answered);
	}

	private Button choice(String title, String id, SameNames.Answer answer, Consumer<SameNames.Answer> answered) {
		Button button = new Button(page, SWT.RADIO);
		button.setText(title);
		button.setData("org.cairnfield.id", id);
		button.addListener(SWT.Selection, event -> {
			if (button.getSelection()) {
				answered.accept(answer);
			}
		});
		return button;
	}

	/** Shows the question that a reading raises, with the answer so far; hides where there is none. */
	void ask(IntakeState.Reading reading) {
		boolean asked = reading.question().areFound();
		((GridData) page.getLayoutData()).exclude = !asked;
		page.setVisible(asked);
		text.setText(asked ? reading.question().question().replace("&", "&&") : "");
		oneSender.setSelection(reading.answer() == SameNames.Answer.ONE_SENDER);
		perSite.setSelection(reading.answer() == SameNames.Answer.PER_SITE);
		page.requestLayout();
	}
}
