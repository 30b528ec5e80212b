package org.cairnfield.ui.review.internal.prefs;

import java.util.LinkedHashSet;
import java.util.Set;

import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.propose.Band;
import org.cairnfield.curation.propose.Bands;
import org.cairnfield.ui.review.internal.desk.Marked;
import org.cairnfield.ui.review.internal.desk.ReviewSettings;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.osgi.service.prefs.BackingStoreException;

/** The page of the preferences for bands of strength, and which of them need two reviewers. */
public final class ReviewPage extends PreferencePage implements IWorkbenchPreferencePage {

	private Text bands;
	private Composite second;
	private Set<String> chosen;

	public ReviewPage() {
		setDescription("Bands of the strength r, by names and bounds of your own. Strength says where a sample fits, not whether it is good.");
		noDefaultAndApplyButton();
	}

	@Override
	public void init(IWorkbench workbench) {
		// nothing to prepare
	}

	@Override
	protected Control createContents(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).applyTo(page);
		new Label(page, SWT.NONE).setText("&Bands, weakest first:");
		bands = Marked.id(new Text(page, SWT.BORDER), "prefs.bands");
		bands.setText(ReviewSettings.bands().toString());
		bands.setToolTipText("Names, each with its lowest r, separated by semicolons: " + Bands.USUAL);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(bands);
		bands.addListener(SWT.Modify, event -> check());
		Label two = new Label(page, SWT.WRAP);
		two.setText("Bands whose verdicts need a second reviewer, who does not see the first verdict:");
		GridDataFactory.fillDefaults().span(2, 1).indent(0, 8).applyTo(two);
		second = Marked.id(new Composite(page, SWT.NONE), "prefs.second");
		GridLayoutFactory.fillDefaults().applyTo(second);
		GridDataFactory.fillDefaults().grab(true, true).span(2, 1).applyTo(second);
		chosen = new LinkedHashSet<>(ReviewSettings.policy().secondBands());
		check();
		return page;
	}

	private void check() {
		try {
			Bands now = Bands.parse(bands.getText());
			setErrorMessage(null);
			setValid(true);
			for (Control old : second.getChildren()) {
				old.dispose();
			}
			for (Band band : now.all()) {
				Button check = Marked.id(new Button(second, SWT.CHECK), "prefs.second." + band.name());
				check.setText(band.title());
				check.setSelection(chosen.contains(band.name()));
				check.addListener(SWT.Selection, event -> {
					if (check.getSelection()) {
						chosen.add(band.name());
					} else {
						chosen.remove(band.name());
					}
				});
			}
			second.layout();
		} catch (IllegalArgumentException e) {
			setErrorMessage(e.getMessage());
			setValid(false);
		}
	}

	@Override
	public boolean performOk() {
		Bands now = Bands.parse(bands.getText());
		chosen.removeIf(name -> now.named(name).isEmpty());
		try {
			ReviewSettings.put(now, new ReviewPolicy(now, chosen, ReviewPolicy.USUAL.limitShare(), ReviewPolicy.USUAL.confidence()).secondBands());
			return true;
		} catch (BackingStoreException e) {
			setErrorMessage("The preferences could not be kept: " + e.getMessage());
			return false;
		}
	}
}
