package org.cairnfield.ui.review.internal.prefs;

import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

import org.cairnfield.curation.propose.Band;
import org.cairnfield.curation.propose.Bands;
import org.cairnfield.ui.review.internal.desk.Marked;
import org.cairnfield.ui.review.internal.desk.ReviewNumber;
import org.cairnfield.ui.review.internal.desk.ReviewSettings;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.osgi.service.prefs.BackingStoreException;

/** The page of the preferences for how a team reviews: when proposals are made, bands of strength, second reviewers, audits. */
public final class ReviewPage extends PreferencePage implements IWorkbenchPreferencePage {

	private final Map<ReviewNumber, Text> numbers = new EnumMap<>(ReviewNumber.class);
	private Text bands;
	private Composite second;
	private Set<String> chosen;

	public ReviewPage() {
		setDescription("How proposals are made and reviewed. A split that is kept stays as it was made.");
	}

	@Override
	public void init(IWorkbench workbench) {
		// nothing to prepare
	}

	@Override
	protected Control createContents(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(5, 8).applyTo(page);
		Composite proposals = group(page, "Proposals");
		number(proposals, ReviewNumber.GATE, "Made from a &noise share of", "With less noise in a split, no proposals are made");
		number(proposals, ReviewNumber.THRESHOLD, "for samples with &r from", "A noise sample that correlates less with every cluster stays unplaced");
		Composite strength = group(page, "Bands of strength");
		say(strength, "Strength says where a sample fits, not whether it is good.");
		new Label(strength, SWT.NONE).setText("&Bands, weakest first");
		bands = Marked.id(new Text(strength, SWT.BORDER), "prefs.bands");
		bands.setToolTipText("Names, each with its lowest r, separated by semicolons: " + Bands.USUAL);
		GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(bands);
		say(strength, "A second reviewer, who does not see the first verdict, is needed in:");
		second = Marked.id(new Composite(strength, SWT.NONE), "prefs.second");
		GridLayoutFactory.fillDefaults().applyTo(second);
		GridDataFactory.fillDefaults().grab(true, false).span(3, 1).indent(12, 0).applyTo(second);
		Composite audit = group(page, "Audit before a band is approved at once");
		number(audit, ReviewNumber.AUDIT_LIMIT, "Stop a band with more &wrong than", "The smaller, the more samples are to be looked at");
		number(audit, ReviewNumber.AUDIT_CONFIDENCE, "with a &confidence of", "The higher, the more samples are to be looked at");
		chosen = new LinkedHashSet<>(ReviewSettings.policy().secondBands());
		bands.setText(ReviewSettings.bands().toString());
		numbers.forEach((which, field) -> field.setText(which.text(ReviewSettings.number(which))));
		bands.addListener(SWT.Modify, event -> bandsChanged());
		numbers.values().forEach(field -> field.addListener(SWT.Modify, event -> check()));
		bandsChanged();
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

	private void number(Composite group, ReviewNumber which, String label, String tip) {
		new Label(group, SWT.NONE).setText(label);
		Text field = Marked.id(new Text(group, SWT.BORDER | SWT.RIGHT), "prefs." + which.key());
		field.setToolTipText(tip + "; " + which.range());
		GridDataFactory.fillDefaults().hint(60, SWT.DEFAULT).applyTo(field);
		Label unit = new Label(group, SWT.NONE);
		unit.setText(which.unit());
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(unit);
		numbers.put(which, field);
	}

	private void bandsChanged() {
		check();
		try {
			Bands now = Bands.parse(bands.getText());
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
			second.requestLayout();
		} catch (IllegalArgumentException e) {
			// told already; the boxes stay until there are bands again
		}
	}

	private void check() {
		try {
			Bands.parse(bands.getText());
			values();
			setErrorMessage(null);
			setValid(true);
		} catch (IllegalArgumentException e) {
			setErrorMessage(e.getMessage());
			setValid(false);
		}
	}

	private Map<ReviewNumber, Double> values() {
		Map<ReviewNumber, Double> values = new EnumMap<>(ReviewNumber.class);
		numbers.forEach((which, field) -> values.put(which, which.parse(field.getText())));
		return values;
	}

	@Override
	protected void performDefaults() {
		chosen.clear();
		bands.setText(Bands.USUAL.toString());
		bandsChanged();
		numbers.forEach((which, field) -> field.setText(which.text(which.usual())));
		super.performDefaults();
	}

	@Override
	public boolean performOk() {
		Bands now = Bands.parse(bands.getText());
		chosen.removeIf(name -> now.named(name).isEmpty());
		try {
			ReviewSettings.put(now, chosen, values());
			return true;
		} catch (BackingStoreException e) {
			setErrorMessage("The preferences could not be kept: " + e.getMessage());
			return false;
		}
	}
}
