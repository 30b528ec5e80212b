package org.cairnfield.ui.review.internal.exchange;

import java.util.Comparator;
import java.util.List;

import org.cairnfield.curation.decide.CarryOver;
import org.cairnfield.curation.decide.CarrySource;
import org.cairnfield.curation.review.VerdictTransfer;
import org.cairnfield.model.values.Count;
import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.cairnfield.ui.show.Marked;
import org.cairnfield.ui.show.TextTable;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** Shows what carrying verdicts over to the split under review would do, before it is done: what goes, what stays and why. */
public final class CarryOverDialog extends TitleAreaDialog {

	private static final int COPY = IDialogConstants.CLIENT_ID + 1;

	private final ReviewDesk desk;
	private final List<CarrySource> sources;
	private Combo from;
	private Label says;
	private TextTable left;
	private VerdictTransfer.Preview preview;

	private CarryOverDialog(Shell parent, ReviewDesk desk) {
		super(parent);
		this.desk = desk;
		sources = desk.exchange().sources();
		setShellStyle(getShellStyle() | SWT.RESIZE);
	}

	/** Asks, and carries over if wanted; says so where there is nothing to carry. */
	public static void open(Shell parent, ReviewDesk desk) {
		if (desk.exchange().canCarry()) {
			new CarryOverDialog(parent, desk).open();
		} else {
			desk.review().refuse(Messages.CarryOverDialog_noOtherSplitOfThis);
		}
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.CarryOverDialog_carryVerdictsOver);
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		setTitle(NLS.bind(Messages.CarryOverDialog_carryVerdictsOverToSplit, desk.split().getId()));
		setMessage(Messages.CarryOverDialog_aVerdictGoesOverWhere);
		Composite page = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(2).margins(10, 10).applyTo(page);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(page);
		from = Marked.choice(page, Messages.CarryOverDialog_fromSplit, "carry.from", this::look);
		for (CarrySource source : sources) {
			from.add(NLS.bind(Messages.CarryOverDialog_verdictsOn, source.split().getId(),
					Count.of(source.samples(), "sample")));
		}
		from.select(0);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(from);
		says = Marked.id(new Label(page, SWT.WRAP), "carry.message");
		GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(300, SWT.DEFAULT).indent(0, 4).applyTo(says);
		left = new TextTable(page, "carry.left", new String[] { Messages.CarryOverDialog_sample,
				Messages.CarryOverDialog_verdict, Messages.CarryOverDialog_whyItStaysBehind },
				new int[] { 205, 90, 580 });
		GridDataFactory.fillDefaults().grab(true, true).span(2, 1).hint(900, 260)
				.applyTo(Marked.named(left.control(), Messages.CarryOverDialog_verdictsThatStayBehind));
		return page;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		Marked.id(createButton(parent, COPY, Messages.CarryOverDialog_copyTheList, false), "carry.copy");
		Marked.id(createButton(parent, IDialogConstants.OK_ID, Messages.CarryOverDialog_carryOver, true), "carry.ok");
		createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
		look();
	}

	private void look() {
		preview = null;
		enable();
		left.show(List.of());
		says.setText(Messages.CarryOverDialog_comparingTheTwoSplits);
		desk.exchange().look(sources.get(from.getSelectionIndex()).split().getId(), this::show, why -> {
			if (!says.isDisposed()) {
				says.setText("✖ " + why);
				says.requestLayout();
			}
		});
	}

	private void show(VerdictTransfer.Preview found) {
		if (says.isDisposed()) {
			return;
		}
		preview = found;
		CarryOver over = found.over();
		long samples = over.carried().stream().map(entry -> entry.sample()).distinct().count();
		says.setText((samples == 0 ? Messages.CarryOverDialog_noVerdictGoesOver
				: NLS.bind(Messages.CarryOverDialog_verdictsOnGoOver, Count.of(samples, "sample")))
				+ (over.left().isEmpty() ? Messages.CarryOverDialog_noneStaysBehind
						: NLS.bind(Messages.CarryOverDialog_thoseOnStayBehindFor,
								Count.of(over.left().size(), "sample"))));
		says.requestLayout();
		left.show(over.left().stream()
				.sorted(Comparator.comparing(CarryOver.Left::why).thenComparing(CarryOver.Left::sample))
				.map(each -> new String[] { each.sample().toString(),
						found.hidden().contains(each.sample()) ? Messages.CarryOverDialog_notShownToYou
								: each.was().toString(),
						each.why() })
				.toList());
		enable();
	}

	private void enable() {
		getButton(IDialogConstants.OK_ID).setEnabled(preview != null && !preview.over().carried().isEmpty());
		getButton(COPY).setEnabled(preview != null && !preview.over().left().isEmpty());
	}

	@Override
	protected void buttonPressed(int id) {
		if (id == COPY) {
			left.copy();
		} else {
			super.buttonPressed(id);
		}
	}

	@Override
	protected void okPressed() {
		desk.exchange().carry(preview);
		super.okPressed();
	}

	@Override
	protected boolean isResizable() {
		return true;
	}
}
