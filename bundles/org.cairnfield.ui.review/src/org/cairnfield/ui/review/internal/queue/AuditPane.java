package org.cairnfield.ui.review.internal.queue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.cairnfield.curation.decide.Agreement;
import org.cairnfield.curation.decide.AuditPlan;
import org.cairnfield.curation.decide.Standings;
import org.cairnfield.curation.propose.Band;
import org.cairnfield.curation.review.ReviewSession;
import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.cairnfield.ui.show.IfChanged;
import org.cairnfield.ui.show.Marked;
import org.cairnfield.ui.work.Soon;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Approval of a whole band after a sampled audit, and how far two reviewers agree. */
final class AuditPane {

	private static final int PATIENCE_MILLIS = 400;

	private final ReviewDesk desk;
	private final Composite page;
	private final Combo band;
	private final Button look;
	private final Button approve;
	private final Label plan;
	private final Label agreement;
	private final Soon soon = new Soon(PATIENCE_MILLIS, this::showUnlessGone);
	private List<Band> bands = List.of();

	AuditPane(Composite parent, ReviewDesk desk) {
		this.desk = desk;
		page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(4).margins(6, 3).spacing(5, 2).applyTo(page);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(page);
		band = Marked.choice(page, Messages.AuditPane_band, "review.audit.band", this::chosen);
		GridDataFactory.fillDefaults().grab(true, false).hint(90, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER)
				.applyTo(band);
		look = Marked.button(page, Messages.AuditPane_lookAtTheSampleDrawn, "review.audit.look", this::look);
		approve = Marked.button(page, Messages.AuditPane_approveTheRest, "review.audit.approve",
				() -> desk.review().approveRest(name()));
		plan = Marked.line(page, "review.audit.plan", 4);
		agreement = Marked.line(page, "review.agreement", 4);
	}

	private String name() {
		return bands.get(Math.max(0, band.getSelectionIndex())).name();
	}

	private void chosen() {
		if (desk.review().audit().looking().isPresent()) {
			desk.review().lookAtAudit(null);
		}
		show();
	}

	private void look() {
		desk.review().lookAtAudit(desk.review().audit().looking().isEmpty() ? name() : null);
	}

	/** Soon: plans need a look at the whole ledger, and the next sample must not wait for it. */
	void showSoon() {
		soon.request();
	}

	private void showUnlessGone() {
		if (!page.isDisposed()) {
			show();
		}
	}

	void show() {
		ReviewSession review = desk.review();
		boolean some = desk.review().evidence().table() != null && review.standings().all() != null
				&& desk.review().queue().rows().stream().anyMatch(row -> row.evidence().made());
		IfChanged.shown(page, some);
		if (!some) {
			return;
		}
		List<Band> now = review.reviewer().policy().bands().all();
		if (!now.equals(bands)) {
			bands = now;
			band.setItems(bands.stream().map(Band::title).toArray(String[]::new));
			band.select(bands.size() - 1);
		}
		Optional<AuditPlan> audit = review.audit().looking().or(() -> review.audit().of(name()));
		boolean editable = desk.session().readOnlyReason().isEmpty();
		boolean any = audit.filter(a -> !a.lot().isEmpty()).isPresent();
		look.setText(review.audit().looking().isPresent() ? Messages.AuditPane_backToTheWholeQueue
				: audit.filter(AuditPlan::isFailed).isPresent() ? Messages.AuditPane_drawAnotherSample
						: Messages.AuditPane_lookAtTheSampleDrawn);
		look.setEnabled(any || review.audit().looking().isPresent());
		approve.setEnabled(editable && audit.filter(AuditPlan::isPassed).filter(a -> !a.rest().isEmpty()).isPresent());
		Marked.say(plan, audit.map(this::describe).orElse(""));
		Marked.say(agreement, agreement());
		page.layout();
	}

	private String describe(AuditPlan audit) {
		if (audit.lot().isEmpty()) {
			return audit.marked() == 0 ? Messages.AuditPane_nothingIsLeftToDecide
					: NLS.bind(Messages.AuditPane_inThisBandOnlyLeft, marked(audit));
		}
		String drawn = String.format(Locale.ROOT, Messages.AuditPane_toApproveThisBandAt, audit.plan().size(),
				audit.lot().size(), 100 * audit.limitShare(),
				100 * (1 - desk.review().reviewer().policy().confidence()),
				audit.marked() == 0 ? "" : NLS.bind(Messages.AuditPane_besideThemLeftToLook, marked(audit)));
		String before = audit.failed().isEmpty() ? ""
				: NLS.bind(Messages.AuditPane_failedBefore, String.join(", ", audit.failed()));
		if (audit.examined() == 0) {
			return drawn + before;
		}
		String state = String.format(Locale.ROOT, Messages.AuditPane_lookedAtOfNotApproved, audit.examined(),
				audit.plan().size(), audit.notApproved(), 100 * audit.wilson().low(), 100 * audit.wilson().high());
		String next = audit.isPassed() ? NLS.bind(Messages.AuditPane_theRestMayBeApproved, audit.rest().size())
				: audit.isFailed() ? Messages.AuditPane_theAuditHasFailedWhatever : "";
		return drawn + state + next + before;
	}

	private static String marked(AuditPlan audit) {
		return audit.marked() == 1 ? Messages.AuditPane_1ProposalWithAMark
				: NLS.bind(Messages.AuditPane_proposalsWithAMarkAre, audit.marked());
	}

	/** Whoever is still to give second verdicts is not told how often the first reviewer agrees. */
	private String agreement() {
		Standings standings = desk.review().standings().all();
		Agreement of = standings.agreement();
		int waiting = standings.awaitingSecond();
		boolean blind = standings.all().stream()
				.anyMatch(standing -> standing.canBeSecond(desk.review().reviewer().person()));
		if (blind || of.kappa().items() == 0) {
			return waiting == 0 ? ""
					: NLS.bind(Messages.AuditPane_forASecondReviewer, waiting,
							waiting == 1 ? Messages.AuditPane_verdictWaits : Messages.AuditPane_verdictsWait);
		}
		return String.format(Locale.ROOT, Messages.AuditPane_twoReviewersOnAgreeOn,
				of.kappa().items(), of.kappa().items() == 1 ? "sample" : "samples", 100 * of.kappa().observed(),
				of.kappaText(), standings.disputes().size(), waiting);
	}
}
