package org.cairnfield.ui.review.internal.split;

import org.cairnfield.curation.split.SearchChoice;
import org.cairnfield.curation.split.SetSearchCommand;
import org.cairnfield.model.Split;
import org.cairnfield.ui.review.internal.desk.ReviewDesk;
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
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Text;

/** How the split under review is searched, part by part, or all of it as the batch command takes it. */
final class SearchDialog extends TitleAreaDialog {

	private static final int PUBLISHED = IDialogConstants.CLIENT_ID + 1;

	private final ReviewDesk desk;
	private final Split split;
	private Button cut;
	private Button twoLevels;
	private Spinner groups;
	private Spinner cells;
	private Button relative;
	private Button plain;
	private Spinner voters;
	private Button weighted;
	private Text code;
	private Label words;
	private boolean filling;

	private SearchDialog(Shell parent, ReviewDesk desk) {
		super(parent);
		this.desk = desk;
		split = desk.split();
		setShellStyle(getShellStyle() | SWT.RESIZE);
	}

	/** Asks, and sets the search; where that is not possible, the review says why. */
	static void open(Shell parent, ReviewDesk desk) {
		if (desk.split() == null) {
			desk.review().refuse(Messages.SearchDialog_thereIsNoSplitWhose);
		} else if (desk.session().readOnlyReason().isPresent()) {
			desk.review().refuse(
					NLS.bind(Messages.SearchDialog_theSearchCannotBeSet, desk.session().readOnlyReason().get()));
		} else {
			new SearchDialog(parent, desk).open();
		}
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.SearchDialog_setTheSearch);
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		setTitle(NLS.bind(Messages.SearchDialog_howDevicesSearchSplit, split.getId()));
		setMessage(Messages.SearchDialog_measuresGatesReportsAndReleases);
		Composite page = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(2).margins(10, 10).spacing(8, 6).applyTo(page);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(page);
		cut = button(page, SWT.CHECK, Messages.SearchDialog_cutLargeClustersIntoCells, "search.cut");
		twoLevels = button(page, SWT.CHECK, Messages.SearchDialog_twoLevelsTheNearestGroups, "search.twoLevels");
		groups = number(page, Messages.SearchDialog_groupsSearched, "search.groups");
		cells = number(page, Messages.SearchDialog_cellsSearchedClustersWhereNone, "search.cells");
		new Label(page, SWT.NONE).setText(Messages.SearchDialog_cellsAreOrderedBy);
		Composite distances = new Composite(page, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).applyTo(distances);
		relative = button(distances, SWT.RADIO, Messages.SearchDialog_relativeDistance, "search.relative");
		relative.setToolTipText(Messages.SearchDialog_theDistanceAsAShare);
		plain = button(distances, SWT.RADIO, Messages.SearchDialog_plainDistance, "search.plain");
		voters = number(page, Messages.SearchDialog_kTheNearestSamplesThat, "search.k");
		weighted = button(page, SWT.CHECK, Messages.SearchDialog_weightedBy1D1, "search.weighted");
		new Label(page, SWT.NONE).setText(Messages.SearchDialog_forBatchSearch);
		code = Marked.id(new Text(page, SWT.BORDER), "search.code");
		GridDataFactory.fillDefaults().grab(true, false).hint(320, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER)
				.applyTo(code);
		words = Marked.id(new Label(page, SWT.WRAP), "search.words");
		GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(420, SWT.DEFAULT).applyTo(words);
		code.addListener(SWT.Modify, event -> {
			if (!filling) {
				check();
			}
		});
		return page;
	}

	private Button button(Composite page, int style, String text, String id) {
		Button button = Marked.id(new Button(page, style), id);
		button.setText(text);
		button.addListener(SWT.Selection, event -> partChanged());
		GridDataFactory.swtDefaults().span(style == SWT.CHECK ? 2 : 1, 1).applyTo(button);
		return button;
	}

	private Spinner number(Composite page, String label, String id) {
		new Label(page, SWT.NONE).setText(label);
		Spinner number = Marked.id(new Spinner(page, SWT.BORDER), id);
		number.setValues(1, 1, SearchChoice.MOST, 0, 1, 5);
		number.addListener(SWT.Modify, event -> partChanged());
		GridDataFactory.swtDefaults().applyTo(number);
		return number;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		Marked.id(createButton(parent, PUBLISHED, Messages.SearchDialog_publishedMethod, false), "search.published")
				.setToolTipText(Messages.SearchDialog_theNearestClusterAndThe);
		Marked.id(createButton(parent, IDialogConstants.OK_ID, Messages.SearchDialog_setTheSearch2, true), "search.ok");
		createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
		fill(SearchChoice.of(split));
	}

	@Override
	public void create() {
		super.create();
		cut.setFocus(); // mnemonics reach a dialog only where one of its controls has the focus
	}

	/** Shows a search in the parts and as code. */
	private void fill(SearchChoice choice) {
		filling = true;
		code.setText(choice.code());
		filling = false;
		check();
	}

	private void partChanged() {
		if (!filling) {
			fill(new SearchChoice(cut.getSelection(), twoLevels.getSelection() ? groups.getSelection() : 0,
					cells.getSelection(),
					relative.getSelection(), voters.getSelection(), weighted.getSelection()));
		}
	}

	/** The code is what counts; the parts follow it. */
	private void check() {
		SearchChoice choice = null;
		try {
			choice = SearchChoice.parse(code.getText().strip());
			setErrorMessage(null);
			showParts(choice);
		} catch (IllegalArgumentException e) {
			setErrorMessage(e.getMessage());
		}
		words.setText(choice == null ? "" : NLS.bind(Messages.SearchDialog_search, choice));
		words.requestLayout();
		getButton(IDialogConstants.OK_ID)
				.setEnabled(choice != null && new SetSearchCommand(split, choice).canExecute());
	}

	private void showParts(SearchChoice choice) {
		filling = true;
		cut.setSelection(choice.cut());
		twoLevels.setSelection(choice.groups() > 0);
		groups.setEnabled(choice.groups() > 0);
		set(groups, Math.max(1, choice.groups()));
		set(cells, choice.cells());
		relative.setSelection(choice.relative());
		plain.setSelection(!choice.relative());
		set(voters, choice.k());
		weighted.setSelection(choice.weighted());
		filling = false;
	}

	/** Leaves what somebody types into as it is. */
	private static void set(Spinner number, int value) {
		if (number.getSelection() != value) {
			number.setSelection(value);
		}
	}

	@Override
	protected void buttonPressed(int id) {
		if (id == PUBLISHED) {
			fill(SearchChoice.PUBLISHED);
		} else {
			super.buttonPressed(id);
		}
	}

	@Override
	protected void okPressed() {
		desk.session().run(new SetSearchCommand(split, SearchChoice.parse(code.getText().strip())));
		super.okPressed();
	}

	@Override
	protected boolean isResizable() {
		return true;
	}
}
