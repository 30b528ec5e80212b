package org.cairnfield.ui.review.internal.split;

import org.cairnfield.curation.measure.SplitFacts;
import org.cairnfield.curation.split.Trial;
import org.cairnfield.ui.show.Marked;
import org.cairnfield.ui.show.SmallScreen;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** What the present ε and minPts make of the map, in figures. */
final class TrialFacts {

	private static final int LINES = 7;
	/** On a small screen, with the rest to be scrolled to. */
	private static final int FEW_LINES = 3;

	private final SplitWork work;
	private final Label title;
	private final Text facts;
	private Trial shown;
	private SplitFacts shownFacts;
	private double shownGate;

	TrialFacts(Composite parent, SplitWork work) {
		this.work = work;
		title = Marked.line(parent, "split.trial.title", 1);
		title.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
		facts = Marked.named(Marked.id(
				new Text(parent,
						SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | (SmallScreen.isThere() ? SWT.V_SCROLL : SWT.NONE)),
				"split.facts"), Messages.TrialFacts_factsOfTheTrialSplit);
		facts.setBackground(parent.getBackground());
		// of one height, lest the curve above moves under the hand that drags ε
		GridDataFactory.fillDefaults().grab(true, false)
				.hint(100, (SmallScreen.isThere() ? FEW_LINES : LINES) * facts.getLineHeight()).applyTo(facts);
		work.onChange(this::show);
		show();
	}

	private void show() {
		if (facts.isDisposed()) {
			return;
		}
		Marked.say(title, title());
		title.setToolTipText(work.reason().isEmpty() ? null : work.reason());
		Trial trial = work.trial();
		facts.setEnabled(trial == null || work.isCurrent());
		double gate = ProposalChoice.set().gate();
		if (trial == shown && work.facts() == shownFacts && gate == shownGate && !facts.getText().isEmpty()) {
			return;
		}
		shown = trial;
		shownFacts = work.facts();
		shownGate = gate;
		facts.setText(trial == null ? Messages.TrialFacts_dragTheLineInThe
				: SplitWords.trial(trial, work.study().map().map().size(), gate)
						+ (shownFacts == null ? Messages.TrialFacts_costAndErrorBeingComputed
								: '\n' + SplitWords.facts(shownFacts)));
	}

	private String title() {
		if (work.choice() == null || Double.isNaN(work.epsilon())) {
			return "";
		}
		String parameters = NLS.bind(Messages.TrialFacts_minpts,
				SplitWords.epsilon(work.epsilon(), work.choice().unit()), work.choice().minPts());
		return work.why().isEmpty() ? parameters : parameters + ", " + work.why();
	}
}
