package org.cairnfield.ui.review.internal.split;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import java.util.function.Function;

import org.cairnfield.curation.decide.Home;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.propose.SetProposalsCommand;
import org.cairnfield.curation.propose.SplitProposals;
import org.cairnfield.curation.split.RemoveSplitCommand;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.curation.split.SplitScopes;
import org.cairnfield.curation.split.SplitsInRelease;
import org.cairnfield.curation.split.TriedSearches;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.Proposals;
import org.cairnfield.ui.charts.BarChart;
import org.cairnfield.ui.charts.scale.Axis;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.review.internal.desk.DeskListener;
import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.cairnfield.ui.review.internal.exchange.CarryOverDialog;
import org.cairnfield.ui.review.internal.exchange.OfferBar;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.show.Marked;
import org.cairnfield.ui.work.LatestWork;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Text;

/** The splits that were kept: what they are, and the sizes of their clusters before and after what was approved. */
final class KeptPane implements DeskListener {

	private static final int MOST_BARS = 40;

	private final ReviewDesk desk;
	private final SashForm page;
	private final TableViewer splits;
	private final Text facts;
	private final BarChart sizes;
	private final Button propose;
	private final Button release;
	private final Button remove;
	private final Button search;
	private final Button carry;
	private final OfferBar offer;
	private final Label says;
	private final LatestWork proposing = new LatestWork(this::enable);
	private boolean showing;
	private boolean outdated;

	KeptPane(Composite parent, ReviewDesk desk) {
		this.desk = desk;
		page = new SashForm(parent, SWT.HORIZONTAL | SWT.SMOOTH);
		Composite left = new Composite(page, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(4, 4).applyTo(left);
		splits = new TableViewer(left, SWT.SINGLE | SWT.FULL_SELECTION | SWT.BORDER);
		Marked.named(Marked.id(splits.getTable(), "split.kept"), Messages.KeptPane_keptSplits);
		splits.getTable().setHeaderVisible(true);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(splits.getTable());
		column(Messages.KeptPane_split, 130, SWT.LEFT, Split::getId);
		column(Messages.KeptPane_nextRelease, 92, SWT.CENTER,
				split -> SplitsInRelease.of(desk.session().archive()).contains(split) ? "✔" : "");
		column("Of", 150, SWT.LEFT, this::scope);
		column("ε", 60, SWT.RIGHT,
				split -> split.getMethod() == null ? SplitWords.epsilon(split.getEpsilon(), "") : "–");
		column("minPts", 60, SWT.RIGHT, split -> split.getMethod() == null ? String.valueOf(split.getMinPts()) : "–");
		column(Messages.KeptPane_clusters, 70, SWT.RIGHT, split -> String.valueOf(split.getClusters().size()));
		column(Messages.KeptPane_noise, 70, SWT.RIGHT, split -> SplitWords.percent(noiseShare(split)));
		column(Messages.KeptPane_proposals, 80, SWT.RIGHT, split -> String.valueOf(proposals(split)));
		splits.setContentProvider(ArrayContentProvider.getInstance());
		splits.addSelectionChangedListener(event -> selected());
		Composite bar = new Composite(left, SWT.NONE);
		RowLayout row = new RowLayout(SWT.HORIZONTAL);
		row.marginLeft = row.marginRight = row.marginTop = row.marginBottom = 0;
		bar.setLayout(row);
		GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).applyTo(bar);
		propose = Marked.button(bar, Messages.KeptPane_makeProposalsAnew, "split.propose", this::propose);
		carry = Marked.button(bar, Messages.KeptPane_carryVerdictsOver, "split.carry",
				() -> CarryOverDialog.open(page.getShell(), desk));
		carry.setToolTipText(Messages.KeptPane_takesOverVerdictsOfAnother);
		release = Marked.button(bar, Messages.KeptPane_takeForTheNextRelease, "split.release", this::release);
		release.setToolTipText(Messages.KeptPane_gatesMeasuresExportsAndThe);
		search = Marked.button(bar, Messages.KeptPane_setTheSearch, "split.search",
				() -> SearchDialog.open(page.getShell(), desk));
		search.setToolTipText(Messages.KeptPane_howDevicesSearchTheSplit);
		remove = Marked.button(bar, Messages.KeptPane_removeTheSplit, "split.remove", this::remove);
		remove.setToolTipText(Messages.KeptPane_itsLedgerOfVerdictsStays);
		says = Marked.line(left, "split.kept.message", 1);
		offer = new OfferBar(left, desk, "split.offer", 1);
		Composite right = new Composite(page, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(6, 4).applyTo(right);
		facts = Marked.named(Marked.id(new Text(right, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY), "split.kept.facts"),
				Messages.KeptPane_factsOfTheSplit);
		GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).applyTo(facts);
		sizes = Marked.id(new BarChart(right, SWT.NONE), "split.kept.sizes");
		sizes.setName(Messages.KeptPane_clusterSizesBeforeAndAfter);
		sizes.setEmptyText(Messages.KeptPane_selectASplitToSee);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(sizes);
		page.setWeights(50, 50);
		desk.add(this);
		// bars that nobody sees must not keep the reviewer waiting
		Listener seen = event -> {
			if (outdated) {
				outdated = false;
				page.getDisplay().asyncExec(() -> {
					if (!page.isDisposed()) {
						showFacts();
					}
				});
			}
		};
		page.addListener(SWT.Show, seen);
		facts.addListener(SWT.Paint, seen);
		sizes.addListener(SWT.Paint, seen);
		page.addListener(SWT.Dispose, event -> {
			desk.remove(this);
			proposing.cancel();
		});
		show();
	}

	private void column(String title, int width, int alignment, Function<Split, String> text) {
		TableViewerColumn column = new TableViewerColumn(splits, alignment);
		column.getColumn().setText(title);
		column.getColumn().setWidth(width);
		column.setLabelProvider(ColumnLabelProvider.createTextProvider(element -> text.apply((Split) element)));
	}

	Control control() {
		return page;
	}

	private static Labels labels(Split split) {
		return split.getLabels() == null ? Labels.NONE : split.getLabels();
	}

	private static double noiseShare(Split split) {
		Labels labels = labels(split);
		return labels.size() == 0 ? 0 : (double) labels.noise() / labels.size();
	}

	private static long proposals(Split split) {
		Proposals all = split.getProposals() == null ? Proposals.NONE : split.getProposals();
		return all.all().stream().filter(proposal -> proposal.strengthR() >= split.getThreshold()).count();
	}

	private String scope(Split split) {
		ArchiveSession session = desk.session();
		return session == null ? ""
				: SplitScopes.of(session.archive()).stream().filter(entry -> entry.scope().equals(split.getScope()))
						.map(SplitScopes.Entry::title).findFirst().orElse(split.getScope().toString());
	}

	/** All anew. */
	void show() {
		if (page.isDisposed()) {
			return;
		}
		showing = true;
		splits.setInput(desk.session() == null ? List.of() : new ArrayList<>(desk.session().archive().getSplits()));
		splits.setSelection(desk.split() == null ? StructuredSelection.EMPTY : new StructuredSelection(desk.split()));
		showing = false;
		showFacts();
	}

	private void selected() {
		if (!showing) {
			Split split = (Split) splits.getStructuredSelection().getFirstElement();
			if (split != null) {
				desk.choose(split.getId());
			}
			showFacts();
		}
	}

	@Override
	public void splitChanged() {
		show();
	}

	@Override
	public void verdictsChanged() {
		if (!page.isDisposed()) {
			outdated = true;
			sizes.redraw();
		}
	}

	private void showFacts() {
		Split split = desk.split();
		if (split == null) {
			facts.setText(desk.session() == null ? "" : Messages.KeptPane_noSplitIsKeptYet);
			sizes.setBars(ClusterBars.NONE.bars(), Axis.linear(Messages.KeptPane_samples, ""), 0);
		} else {
			Labels labels = labels(split);
			ClusterBars.State before = new ClusterBars.State(Messages.KeptPane_asSplit, labels.clusterSizes(),
					labels.noise());
			ClusterBars bars = ClusterBars.of(MOST_BARS, before, after(before));
			sizes.setBars(bars.bars(), Axis.linear(Messages.KeptPane_samples, ""), 0);
			sizes.setHollow(place -> place == bars.noisePlace());
			facts.setText(describe(split, labels));
		}
		facts.requestLayout();
		enable();
	}

	/** With each approved sample, and each that was moved, in its cluster. */
	private ClusterBars.State after(ClusterBars.State before) {
		int[] after = before.sizes().clone();
		int noise = before.noise();
		for (Home home : desk.review().standings().homes()) {
			if (home.kind() == Home.Kind.CLUSTER && home.cluster() < after.length) {
				after[home.cluster()]++;
				noise--;
			}
		}
		return new ClusterBars.State(Messages.KeptPane_withApproved, after, noise);
	}

	private String describe(Split split, Labels labels) {
		StringJoiner text = new StringJoiner("\n");
		text.add(NLS.bind(Messages.KeptPane_noiseSamples,
				new Object[] { split.getId(), SplitWords.count(split.getClusters().size(), "cluster", "clusters"),
						SplitWords.percent(noiseShare(split)),
						String.format(Locale.ROOT, Messages.KeptPane_of, labels.noise(), labels.size()) }));
		text.add(
				NLS.bind(Messages.KeptPane_distanceOfLevels, new Object[] {
						split.getMethod() != null ? NLS.bind(Messages.KeptPane_by, split.getMethod())
								: NLS.bind(Messages.KeptPane_dbscanWithMinpts,
										SplitWords.epsilon(split.getEpsilon(), ""), split.getMinPts()),
						split.getDistance(), split.getRepresentation() }));
		text.add(NLS.bind(Messages.KeptPane_search, TriedSearches.words(split)));
		text.add(proposals(split) == 0 ? Messages.KeptPane_itHasNoProposals
				: NLS.bind(Messages.KeptPane_rFrom,
						new Object[] { SplitWords.count(proposals(split), "proposal", "proposals"),
								split.getThreshold(), desk.review().countText() }));
		if (desk.review().evidence().onMap() != null
				&& desk.review().evidence().onMap().gone() + desk.review().evidence().onMap().added() > 0) {
			text.add(NLS.bind(Messages.KeptPane_theMapHasChangedSince,
					SplitWords.count(desk.review().evidence().onMap().gone(), "sample", "samples"),
					desk.review().evidence().onMap().added()));
		}
		return text.toString();
	}

	private void enable() {
		if (page.isDisposed()) {
			return;
		}
		if (desk.split() == null) {
			Marked.say(says, "");
		}
		boolean may = desk.split() != null && desk.session().readOnlyReason().isEmpty() && !proposing.isBusy();
		propose.setEnabled(may);
		propose.setText(desk.split() != null && proposals(desk.split()) == 0 ? Messages.KeptPane_makeProposals
				: Messages.KeptPane_makeProposalsAnew);
		release.setEnabled(may && takeForRelease().canExecute());
		remove.setEnabled(may);
		search.setEnabled(may);
		carry.setEnabled(may && desk.exchange().canCarry());
		offer.show();
		if (proposing.isBusy()) {
			Marked.say(says, Messages.KeptPane_lookingForTheBestCluster);
		}
	}

	private void propose() {
		ArchiveSession session = desk.session();
		String id = desk.split().getId();
		ProposalChoice rule = ProposalChoice.set();
		Archive still = ArchiveCopy.of(session.archive());
		proposing
				.start(NLS.bind(Messages.KeptPane_proposalsForSplit, id), workers -> SplitProposals.of(
						SplitOnMap.of(still,
								still.getSplits().stream().filter(split -> split.getId().equals(id)).findFirst()
										.orElseThrow()),
						rule.gate(),
						rule.threshold(), workers), made -> {
							Split split = session.archive().getSplits().stream().filter(each -> each.getId().equals(id))
									.findFirst().orElse(null);
							if (split != null && desk.session() == session) {
								boolean changed = session.run(new SetProposalsCommand(split, made));
								Marked.say(says, KeepBar.proposalNote(split, made)
										+ (changed ? "." : Messages.KeptPane_theSameAsBefore));
							}
						}, why -> Marked.say(says, "✖ " + Problems.text(why)));
	}

	private SplitsInRelease.Choose takeForRelease() {
		Archive archive = desk.session().archive();
		List<Split> others = SplitsInRelease.of(archive).stream()
				.filter(other -> !SplitsInRelease.overlap(other, desk.split())).toList();
		List<Split> chosen = new ArrayList<>(others);
		chosen.add(desk.split());
		return new SplitsInRelease.Choose(archive, chosen);
	}

	private void release() {
		if (desk.session().run(takeForRelease())) {
			Marked.say(says, NLS.bind(Messages.KeptPane_theNextReleaseTakes, desk.split().getId()));
		}
	}

	private void remove() {
		String id = desk.split().getId();
		if (desk.session().run(new RemoveSplitCommand(desk.session().archive(), desk.split()))) {
			Marked.say(says, NLS.bind(Messages.KeptPane_removedUndoBringsItBack, id));
		}
	}
}
