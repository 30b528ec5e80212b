package org.cairnfield.ui.review.internal.team;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

import org.cairnfield.curation.decide.Agreement;
import org.cairnfield.curation.decide.ReviewRefused;
import org.cairnfield.curation.decide.Standings;
import org.cairnfield.curation.team.Assigned;
import org.cairnfield.curation.team.Assigning;
import org.cairnfield.curation.team.Share;
import org.cairnfield.curation.team.ShareProgress;
import org.cairnfield.curation.team.TeamChange;
import org.cairnfield.curation.team.WorkShares;
import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.cairnfield.ui.show.Marked;
import org.cairnfield.ui.show.TableDialog;
import org.cairnfield.ui.show.TextTable;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Who is to review which proposals of the split under review and how far each has come; assigns more, and takes assignments away. */
final class AssignmentsDialog extends TableDialog {

	private static final int REMOVE = IDialogConstants.CLIENT_ID + 1;
	private static final String[] TITLES = { Messages.AssignmentsDialog_reviewer, Messages.AssignmentsDialog_share,
			Messages.AssignmentsDialog_proposals, Messages.AssignmentsDialog_given, Messages.AssignmentsDialog_byOthers,
			Messages.AssignmentsDialog_toDo, Messages.AssignmentsDialog_2ndDue, Messages.AssignmentsDialog_disputed,
			Messages.AssignmentsDialog_agreement };
	private static final int[] WIDTHS = { 130, 150, 80, 60, 80, 60, 75, 75, 190 };

	private final ReviewDesk desk;
	private WorkShares shares;
	/** As the table lists them; null for a total. */
	private final List<Assigned> rows = new ArrayList<>();
	private Text reviewers;
	private Combo share;
	private Button assign;
	private Button remove;

	AssignmentsDialog(Shell parent, ReviewDesk desk) {
		super(parent, Messages.AssignmentsDialog_assignments, "assign");
		this.desk = desk;
		look();
	}

	private void look() {
		shares = WorkShares.of(desk.session().archive(), desk.split(), desk.review().reviewer().policy().bands());
	}

	@Override
	protected void describe() {
		setTitle(NLS.bind(Messages.AssignmentsDialog_whoReviewsWhichProposalsOf, shares.split()));
		setMessage(unassigned());
	}

	private String unassigned() {
		return shares.unassigned() == 0 ? NLS.bind(Messages.AssignmentsDialog_eachOfTheProposalsIs, shares.proposals())
				: NLS.bind(Messages.AssignmentsDialog_ofProposalsAreAssignedTo, shares.unassigned(),
						shares.proposals());
	}

	@Override
	protected TextTable createTable(Composite parent, String tableId) {
		TextTable table = new TextTable(parent, tableId, TITLES, WIDTHS);
		table.control().addListener(SWT.Selection, event -> enable());
		return table;
	}

	@Override
	protected List<String[]> lines() {
		Standings standings = Standings.of(desk.session().archive(), desk.split(), desk.review().reviewer().policy());
		boolean blind = standings.all().stream()
				.anyMatch(standing -> standing.canBeSecond(desk.review().reviewer().person()));
		List<String[]> lines = new ArrayList<>();
		rows.clear();
		for (ShareProgress all : shares.progress(standings)) {
			String agreement = blind ? Messages.AssignmentsDialog_afterYourSecondReviews : agreement(all.agreement());
			for (Assigned each : all.shares()) {
				rows.add(each);
				lines.add(line(each.share().toString(), shares.progress(each, standings), agreement));
			}
			if (all.shares().size() > 1) {
				rows.add(null);
				lines.add(line("together", all, agreement));
			}
		}
		return lines;
	}

	private static String[] line(String share, ShareProgress progress, String agreement) {
		return new String[] { progress.reviewer(), share, String.valueOf(progress.proposals()),
				String.valueOf(progress.given()),
				String.valueOf(progress.byOthers()), String.valueOf(progress.toDo()),
				String.valueOf(progress.secondsDue()),
				String.valueOf(progress.disputed()), agreement };
	}

	private static String agreement(Agreement agreement) {
		return agreement.kappa().items() == 0 ? "–"
				: String.format(Locale.ROOT, Messages.AssignmentsDialog_of, 100 * agreement.kappa().observed(),
						agreement.kappa().items())
						+ (agreement.isDegenerate() ? ""
								: String.format(Locale.ROOT, ", κ %.2f", agreement.kappa().value()).replace("-", "−"));
	}

	@Override
	protected void createBelow(Composite page) {
		Composite row = new Composite(page, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(5).applyTo(row);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
		new Label(row, SWT.NONE).setText(Messages.AssignmentsDialog_reviewers);
		reviewers = Marked.id(new Text(row, SWT.BORDER), "assign.reviewers");
		reviewers.setMessage(Messages.AssignmentsDialog_namesWithCommasBetweenThem);
		reviewers.addListener(SWT.Modify, event -> enable());
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(reviewers);
		share = Marked.choice(row, "&get", "assign.share", this::enable);
		share.add(Messages.AssignmentsDialog_anEqualPartEach);
		shares.choices().forEach(each -> share.add(each + " (" + shares.size(each) + ")"));
		share.select(0);
		assign = Marked.button(row, Messages.AssignmentsDialog_assign, "assign.assign", this::assign);
		enable();
	}

	private List<String> names() {
		return Arrays.stream(reviewers.getText().split(",")).map(String::strip).filter(name -> !name.isEmpty())
				.toList();
	}

	private void enable() {
		boolean editable = desk.session().readOnlyReason().isEmpty();
		assign.setEnabled(editable && names().size() >= (share.getSelectionIndex() == 0 ? 2 : 1));
		assign.setToolTipText(assign.isEnabled() ? null
				: editable ? Messages.AssignmentsDialog_nameTheReviewersFirstAt
						: Messages.AssignmentsDialog_theArchiveIsReadOnly);
		int row = table().control().getSelectionIndex();
		if (remove != null) {
			remove.setEnabled(editable && row >= 0 && rows.get(row) != null);
		}
	}

	private void assign() {
		try {
			Assigning assigning = new Assigning(desk.session().archive(), desk.split(),
					desk.review().reviewer().policy().bands(),
					desk.review().reviewer().person(), Clock.systemUTC());
			List<String> names = names();
			int chosen = share.getSelectionIndex();
			Share given = chosen == 0 ? null : shares.choices().get(chosen - 1);
			if (run(given == null ? assigning.equally(names) : assigning.assign(names, given))) {
				reviewers.setText("");
				String overlaps = String.join(" ",
						names.stream().map(shares::overlapText).filter(text -> !text.isEmpty()).toList());
				setMessage(overlaps.isEmpty() ? unassigned() : overlaps);
			}
		} catch (ReviewRefused e) {
			setErrorMessage(e.getMessage());
		}
	}

	private boolean run(TeamChange change) {
		setErrorMessage(null);
		boolean done = desk.session().run(change.command());
		look();
		table().show(lines());
		enable();
		return done;
	}

	private void remove() {
		run(Assigning.remove(desk.session().archive(), List.of(rows.get(table().control().getSelectionIndex()).id())));
		setMessage(unassigned());
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		remove = button(parent, REMOVE, Messages.AssignmentsDialog_remove, "remove", false);
		remove.setToolTipText(Messages.AssignmentsDialog_takesTheSelectedAssignmentAway);
		copyButton(parent);
		createButton(parent, IDialogConstants.OK_ID, IDialogConstants.CLOSE_LABEL, false);
		getShell().setDefaultButton(assign);
		enable();
	}

	@Override
	protected void buttonPressed(int button) {
		if (button == REMOVE) {
			remove();
		} else {
			super.buttonPressed(button);
		}
	}
}
