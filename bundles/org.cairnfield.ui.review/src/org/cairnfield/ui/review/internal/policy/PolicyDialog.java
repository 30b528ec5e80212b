package org.cairnfield.ui.review.internal.policy;

import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.decide.SetReviewPolicyCommand;
import org.cairnfield.curation.propose.Band;
import org.cairnfield.curation.propose.Bands;
import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.cairnfield.ui.review.internal.desk.ReviewNumber;
import org.cairnfield.ui.show.Marked;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** How proposals of the archive are reviewed: bands of strength, second reviewers, audits. */
final class PolicyDialog extends TitleAreaDialog {

	private static final String MESSAGE = Messages.PolicyDialog_theArchiveKeepsItGates;

	private final ReviewDesk desk;
	private final Map<ReviewNumber, Text> numbers = new EnumMap<>(ReviewNumber.class);
	private final Set<String> chosen;
	private Text bands;
	private Composite second;

	PolicyDialog(Shell parent, ReviewDesk desk) {
		super(parent);
		this.desk = desk;
		chosen = new LinkedHashSet<>(policy().secondBands());
		setShellStyle(getShellStyle() | SWT.RESIZE);
	}

	private ReviewPolicy policy() {
		return desk.review().reviewer().policy();
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.PolicyDialog_reviewPolicy);
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		setTitle(Messages.PolicyDialog_howProposalsAreReviewed);
		setMessage(MESSAGE);
		Composite page = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridLayoutFactory.swtDefaults().margins(10, 10).spacing(5, 8).applyTo(page);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(page);
		Composite strength = group(page, Messages.PolicyDialog_bandsOfStrength);
		say(strength, Messages.PolicyDialog_strengthSaysWhereASample);
		new Label(strength, SWT.NONE).setText(Messages.PolicyDialog_bandsWeakestFirst);
		bands = Marked.id(new Text(strength, SWT.BORDER), "policy.bands");
		bands.setToolTipText(NLS.bind(Messages.PolicyDialog_namesEachWithItsLowest, Bands.USUAL));
		GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(bands);
		say(strength, Messages.PolicyDialog_aSecondReviewerWhoDoes);
		second = Marked.id(new Composite(strength, SWT.NONE), "policy.second");
		GridLayoutFactory.fillDefaults().applyTo(second);
		GridDataFactory.fillDefaults().grab(true, false).span(3, 1).indent(12, 0).applyTo(second);
		Composite audit = group(page, Messages.PolicyDialog_auditBeforeABandIs);
		number(audit, ReviewNumber.AUDIT_LIMIT, policy().limitShare(), Messages.PolicyDialog_stopABandWithMore,
				Messages.PolicyDialog_theSmallerTheMoreSamples);
		number(audit, ReviewNumber.AUDIT_CONFIDENCE, policy().confidence(), Messages.PolicyDialog_withAConfidenceOf,
				Messages.PolicyDialog_theHigherTheMoreSamples);
		bands.setText(policy().bands().toString());
		bands.addListener(SWT.Modify, event -> bandsChanged());
		numbers.values().forEach(field -> field.addListener(SWT.Modify, event -> check()));
		boxes();
		return page;
	}

	private static Composite group(Composite page, String title) {
		Group group = new Group(page, SWT.NONE);
		group.setText(title);
		GridLayoutFactory.swtDefaults().numColumns(3).applyTo(group);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(group);
		return group;
	}

	private static void say(Composite group, String text) {
		Label line = new Label(group, SWT.WRAP);
		line.setText(text);
		GridDataFactory.fillDefaults().grab(true, false).span(3, 1).hint(300, SWT.DEFAULT).applyTo(line);
	}

	private void number(Composite group, ReviewNumber which, double value, String label, String tip) {
		new Label(group, SWT.NONE).setText(label);
		Text field = Marked.id(new Text(group, SWT.BORDER | SWT.RIGHT), "policy." + which.key());
		field.setText(which.text(value));
		field.setToolTipText(tip + "; " + which.range());
		GridDataFactory.fillDefaults().hint(60, SWT.DEFAULT).applyTo(field);
		Label unit = new Label(group, SWT.NONE);
		unit.setText(which.unit());
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(unit);
		numbers.put(which, field);
	}

	private void bandsChanged() {
		if (check()) {
			boxes();
		}
	}

	/** One a band; they stay as they are until there are bands again. */
	private void boxes() {
		for (Control old : second.getChildren()) {
			old.dispose();
		}
		for (Band band : Bands.parse(bands.getText()).all()) {
			Button box = Marked.id(new Button(second, SWT.CHECK), "policy.second." + band.name());
			box.setText(band.title());
			box.setSelection(chosen.contains(band.name()));
			box.addListener(SWT.Selection, event -> {
				if (box.getSelection()) {
					chosen.add(band.name());
				} else {
					chosen.remove(band.name());
				}
			});
		}
		second.requestLayout();
	}

	/** As it is written. @throws IllegalArgumentException where it is wrong */
	private ReviewPolicy written() {
		Bands now = Bands.parse(bands.getText());
		Set<String> needing = new LinkedHashSet<>(chosen);
		needing.removeIf(name -> now.named(name).isEmpty());
		return new ReviewPolicy(now, needing, value(ReviewNumber.AUDIT_LIMIT), value(ReviewNumber.AUDIT_CONFIDENCE));
	}

	private double value(ReviewNumber which) {
		return which.parse(numbers.get(which).getText());
	}

	private boolean check() {
		String wrong = null;
		try {
			written();
		} catch (IllegalArgumentException e) {
			wrong = e.getMessage();
		}
		setErrorMessage(wrong);
		getButton(IDialogConstants.OK_ID).setEnabled(wrong == null);
		return wrong == null;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		Marked.id(createButton(parent, IDialogConstants.OK_ID, Messages.PolicyDialog_setThePolicy, true), "policy.ok");
		createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
	}

	@Override
	protected void okPressed() {
		desk.session().run(new SetReviewPolicyCommand(desk.session().archive(), written()));
		super.okPressed();
	}
}
