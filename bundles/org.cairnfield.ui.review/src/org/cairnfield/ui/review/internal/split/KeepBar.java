package org.cairnfield.ui.review.internal.split;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Consumer;

import org.cairnfield.core.choose.AutomaticChoice;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.propose.SetProposalsCommand;
import org.cairnfield.curation.propose.SplitProposals;
import org.cairnfield.curation.split.AddSplitsCommand;
import org.cairnfield.curation.split.SplitMaker;
import org.cairnfield.curation.split.SplitNames;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.curation.split.SplitPlan;
import org.cairnfield.curation.split.SplitStudy;
import org.cairnfield.curation.split.Trial;
import org.cairnfield.curation.study.MethodSplits;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Scope;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.show.Marked;
import org.cairnfield.ui.work.LatestWork;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Keeps what was tried as a named split, with proposals at once if wanted. */
final class KeepBar {

	private record Kept(List<Split> splits, List<String> notes) {
	}

	/** More would push the curve aside. */
	private static final int MOST_NOTES = 2;

	private final SplitWork work;
	private final SplitForm form;
	private final Consumer<String> kept;
	private final LatestWork keeping = new LatestWork(this::show);
	private final Text name;
	private final Button propose;
	private final Button keep;
	private final Label says;
	private String offered = "";
	private String message = "";
	private ArchiveSession of;

	/** @param kept hears the id of a split that was kept */
	KeepBar(Composite parent, SplitWork work, SplitForm form, Consumer<String> kept) {
		this.work = work;
		this.form = form;
		this.kept = kept;
		Composite bar = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(4).margins(6, 3).applyTo(bar);
		GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(bar);
		new Label(bar, SWT.NONE).setText(Messages.KeepBar_keepAs);
		name = Marked.id(new Text(bar, SWT.BORDER), "split.name");
		name.addListener(SWT.Modify, event -> show());
		name.addListener(SWT.DefaultSelection, event -> keep());
		GridDataFactory.fillDefaults().hint(180, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(name);
		propose = Marked.id(new Button(bar, SWT.CHECK), "split.withProposals");
		propose.setText(Messages.KeepBar_withProposals);
		propose.setSelection(true);
		keep = Marked.button(bar, Messages.KeepBar_keepTheSplit, "split.keep", this::keep);
		says = Marked.line(bar, "split.message", 4);
		work.onChange(this::show);
		show();
	}

	private void show() {
		if (name.isDisposed()) {
			return;
		}
		ArchiveSession session = work.session();
		if (session != of) {
			of = session;
			message = "";
		}
		if (session != null && (name.getText().isBlank() || name.getText().equals(offered)) && !name.isFocusControl()) {
			String next = SplitNames.free(session.archive(), wanted());
			if (!next.equals(offered) || name.getText().isBlank()) {
				offered = next;
				name.setText(next);
			}
		}
		ProposalChoice rule = ProposalChoice.set();
		propose.setToolTipText(
				NLS.bind(Messages.KeepBar_oneProposalForEachNoise, SplitWords.percent(rule.gate()), rule.threshold()));
		String why = problem();
		keep.setEnabled(why.isEmpty() && work.isCurrent() && !keeping.isBusy());
		Marked.say(says, !why.isEmpty() ? "✖ " + why
				: keeping.isBusy() ? Messages.KeepBar_keepingTheSplit
						: !work.problem().isEmpty() ? "✖ " + work.problem() : message);
	}

	private String wanted() {
		if (form.scopeTitle().isEmpty()) {
			return "split";
		}
		Scope scope = form.scope();
		return scope.site() == null ? "archive"
				: scope.level() == null ? scope.site() : scope.site() + "-" + scope.level();
	}

	/** Why it cannot be kept; empty if it can. */
	private String problem() {
		if (work.session() == null) {
			return "";
		}
		if (work.session().readOnlyReason().isPresent()) {
			return NLS.bind(Messages.KeepBar_nothingCanBeKept, work.session().readOnlyReason().get());
		}
		String id = name.getText().strip();
		Archive archive = work.session().archive();
		if (!id.isEmpty() && !SplitNames.areFree(archive, List.of(id))) {
			return NLS.bind(Messages.KeepBar_isTakenOrIsNo, id, SplitNames.free(archive, id));
		}
		return "";
	}

	private void keep() {
		if (!keep.isEnabled()) {
			return;
		}
		ArchiveSession session = work.session();
		Archive still = ArchiveCopy.of(session.archive());
		String id = name.getText().strip();
		SplitForm.Kind kind = form.kind();
		SplitChoice choice = work.choice();
		SplitStudy study = work.study();
		Trial trial = work.trial();
		AutomaticChoice.Choice tried = work.tried();
		AutomaticChoice.Tried taken = work.taken();
		ProposalChoice rule = ProposalChoice.set();
		Duration most = SplitChoice.time();
		boolean wantsProposals = propose.getSelection();
		SplitMaker maker = new SplitMaker(work.studies());
		keeping.start(NLS.bind(Messages.KeepBar_keepingSplit, id), workers -> {
			Kept made;
			if (kind == SplitForm.Kind.ONE) {
				AutomaticChoice.Choice among = taken != null ? tried
						: study.chooseSearch(trial.epsilon(), trial.minPts(), most, SplitWork.SEED, workers);
				AutomaticChoice.Tried one = taken != null ? taken : among.best();
				made = new Kept(List.of(SplitMaker.toModel(id, choice.scope(), study, trial, one.search(),
						SplitMaker.reason(among, one),
						SplitWork.SEED)), new ArrayList<>());
			} else {
				OptionalDouble epsilon = kind == SplitForm.Kind.PER_FLOOR ? OptionalDouble.of(trial.epsilon())
						: OptionalDouble.empty();
				OptionalInt minPts = kind == SplitForm.Kind.PER_FLOOR ? OptionalInt.of(trial.minPts())
						: OptionalInt.empty();
				boolean best = kind == SplitForm.Kind.BEST;
				SplitPlan plan = new SplitPlan(id, choice.scope(), !best, choice.request(epsilon, minPts).within(most));
				SplitMaker.Made all = best ? new MethodSplits().best(still, plan, workers)
						: maker.make(still, plan, workers);
				made = new Kept(all.splits(), new ArrayList<>(all.notes()));
			}
			if (wantsProposals) {
				for (Split split : made.splits()) {
					SplitProposals proposals = SplitProposals.of(SplitOnMap.of(still, split), rule.gate(),
							rule.threshold(), workers);
					new SetProposalsCommand(split, proposals).execute(); // in no archive yet, so nobody hears of it
					made.notes().add(proposalNote(split, proposals));
				}
			}
			return made;
		}, done -> {
			if (work.session() == session && session.run(new AddSplitsCommand(session.archive(), done.splits()))) {
				offered = SplitNames.free(session.archive(), wanted());
				name.setText(offered);
				message = NLS.bind(Messages.KeepBar_kept,
						done.splits().size() == 1 ? done.splits().get(0).getId()
								: NLS.bind(Messages.KeepBar_splits, done.splits().size()),
						done.splits().size() == 1
								? String.join(". ", done.notes().subList(0, Math.min(MOST_NOTES, done.notes().size())))
								: Messages.KeepBar_theirFiguresAreUnderKept);
				kept.accept(done.splits().get(0).getId());
			}
			show();
		}, why -> {
			message = "✖ " + Problems.text(why);
			show();
		});
	}

	/** What came of proposing. */
	static String proposalNote(Split split, SplitProposals proposals) {
		if (!proposals.open()) {
			return NLS.bind(Messages.KeepBar_onlyNoiseSoNoProposals, split.getId(),
					SplitWords.percent(proposals.noiseShare()));
		}
		return NLS.bind(Messages.KeepBar_unplaced, new Object[] { split.getId(),
				SplitWords.count(proposals.made(), "proposal", "proposals"),
				SplitWords.count(proposals.unplaced(), Messages.KeepBar_noiseSample, Messages.KeepBar_noiseSamples) });
	}
}
