package org.cairnfield.ui.review.internal.prefs;

import java.util.EnumMap;
import java.util.Map;

import org.cairnfield.ui.review.internal.desk.ReviewNumber;
import org.cairnfield.ui.review.internal.desk.ReviewSettings;
import org.cairnfield.ui.show.Marked;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.osgi.service.prefs.BackingStoreException;

/** The page of the preferences for when proposals are made. */
public final class ReviewPage extends PreferencePage implements IWorkbenchPreferencePage {

	private final Map<ReviewNumber, Text> numbers = new EnumMap<>(ReviewNumber.class);

	public ReviewPage() {
		setDescription(Messages.ReviewPage_howSplitsAreChosenAnd);
	}

	@Override
	public void init(IWorkbench workbench) {
		// nothing to prepare
	}

	@Override
	protected Control createContents(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(5, 8).applyTo(page);
		Composite proposals = group(page, Messages.ReviewPage_proposals);
		number(proposals, ReviewNumber.GATE, Messages.ReviewPage_madeFromANoiseShare,
				Messages.ReviewPage_withLessNoiseInA);
		number(proposals, ReviewNumber.THRESHOLD, Messages.ReviewPage_forSamplesWithRFrom,
				Messages.ReviewPage_aNoiseSampleThatCorrelates);
		Composite choice = group(page, Messages.ReviewPage_automaticChoice);
		number(choice, ReviewNumber.CHOICE_MINUTES, Messages.ReviewPage_takesAtMost,
				Messages.ReviewPage_whatHasNotBeenTried);
		numbers.forEach((which, field) -> field.setText(which.text(ReviewSettings.number(which))));
		numbers.values().forEach(field -> field.addListener(SWT.Modify, event -> check()));
		return page;
	}

	private static Composite group(Composite page, String title) {
		Group group = new Group(page, SWT.NONE);
		group.setText(title);
		GridLayoutFactory.swtDefaults().numColumns(3).applyTo(group);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(group);
		return group;
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

	private void check() {
		try {
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
		numbers.forEach((which, field) -> field.setText(which.text(which.usual())));
		super.performDefaults();
	}

	@Override
	public boolean performOk() {
		try {
			ReviewSettings.put(values());
			return true;
		} catch (BackingStoreException e) {
			setErrorMessage(NLS.bind(Messages.ReviewPage_thePreferencesCouldNotBe, e.getMessage()));
			return false;
		}
	}
}
