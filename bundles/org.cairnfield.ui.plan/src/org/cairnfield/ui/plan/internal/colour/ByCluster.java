package org.cairnfield.ui.plan.internal.colour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.ui.charts.colour.Categorical;
import org.cairnfield.ui.plan.PlanLegend;
import org.cairnfield.ui.plan.SampleColouring;
import org.cairnfield.ui.plan.SampleColours;
import org.cairnfield.ui.plan.SampleLook;
import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.RGB;

/**
 * Which cluster of a split a sample is in: of the one selected in the archive, else of the latest. Noise is a hollow ring, a
 * proposal a ring with a dot in its cluster's colour.
 */
public final class ByCluster implements SampleColouring {

	private static final int STYLES = 64;
	private static final int MOST_IN_LEGEND = 7;

	/** What is drawn alike: members of a cluster, or proposals for one. */
	private record Kind(int cluster, boolean proposed) {
		static final int NOISE = -1;
		static final int NOWHERE = -2;
	}

	@Override
	public String name() {
		return Messages.ByCluster_cluster;
	}

	private static Optional<Split> split(ArchiveSession session) {
		List<Split> all = session.archive().getSplits();
		return session.selection().scope() instanceof Split chosen ? Optional.of(chosen)
				: all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
	}

	@Override
	public boolean changesWith(ArchiveSelection before, ArchiveSelection now) {
		return before.scope() != now.scope() && (before.scope() instanceof Split || now.scope() instanceof Split);
	}

	@Override
	public SampleColours colours(SampleRows samples, ArchiveSession session, RGB background) {
		return of(samples, split(session).filter(s -> s.getLabels() != null).orElse(null), background);
	}

	/** @param split null for none */
	static SampleColours of(SampleRows samples, Split split, RGB background) {
		List<SampleLook> looks = new ArrayList<>();
		Map<Kind, Integer> places = new LinkedHashMap<>();
		int[] lookOf = new int[samples.size()];
		int[] counts = new int[2 * samples.size() + 2];
		for (int i = 0; i < lookOf.length; i++) {
			Kind kind = split == null ? new Kind(Kind.NOWHERE, false) : kind(split, samples, i);
			Integer place = places.get(kind);
			if (place == null) {
				place = looks.size();
				places.put(kind, place);
				looks.add(look(kind, background));
			}
			lookOf[i] = place;
			counts[place]++;
		}
		String title = split == null ? Messages.ByCluster_clusterThereIsNoSplit
				: NLS.bind(Messages.ByCluster_clusterOf, split.getId());
		return new SampleColours(looks, lookOf, new PlanLegend(title, legend(places, looks, counts), null));
	}

	private static Kind kind(Split split, SampleRows samples, int i) {
		Labels labels = split.getLabels();
		SampleKey key = samples.ref(i).key();
		int row = labels.row(key);
		if (row < 0) {
			return new Kind(Kind.NOWHERE, false);
		}
		int cluster = labels.cluster(row);
		if (cluster >= 0) {
			return new Kind(cluster, false);
		}
		Optional<Proposal> made = Optional.ofNullable(split.getProposals()).flatMap(all -> all.of(key))
				.filter(proposal -> proposal.strengthR() >= split.getThreshold());
		return made.map(proposal -> new Kind(proposal.cluster(), true)).orElse(new Kind(Kind.NOISE, false));
	}

	private static SampleLook look(Kind kind, RGB background) {
		if (kind.cluster() < 0) {
			Categorical.Style any = Categorical.style(0);
			return new SampleLook(Categories.grey(background), any.marker(),
					kind.cluster() == Kind.NOISE ? SampleLook.Fill.HOLLOW : SampleLook.Fill.SOLID);
		}
		SampleLook own = Categories.look(kind.cluster() % STYLES, background);
		return kind.proposed() ? new SampleLook(own.rgb(), own.marker(), SampleLook.Fill.DOTTED) : own;
	}

	/**
	 * The largest clusters on the floor, then proposals, first those for clusters that have no sample on it, noise, and what is in
	 * no split.
	 */
	private static List<PlanLegend.Entry> legend(Map<Kind, Integer> places, List<SampleLook> looks, int[] counts) {
		List<PlanLegend.Entry> entries = new ArrayList<>();
		places.entrySet().stream().filter(e -> e.getKey().cluster() >= 0 && !e.getKey().proposed())
				.sorted(Comparator.comparingInt(e -> -counts[e.getValue()])).limit(MOST_IN_LEGEND)
				.forEach(e -> entries.add(new PlanLegend.Entry(looks.get(e.getValue()), "C" + e.getKey().cluster(),
						counts[e.getValue()])));
		List<Map.Entry<Kind, Integer>> proposed = places.entrySet().stream().filter(e -> e.getKey().proposed())
				.sorted(Comparator.comparingInt(e -> -counts[e.getValue()])).toList();
		List<Map.Entry<Kind, Integer>> absent = proposed.stream()
				.filter(e -> !places.containsKey(new Kind(e.getKey().cluster(), false))).toList();
		absent.stream().limit(MOST_IN_LEGEND).forEach(e -> entries.add(new PlanLegend.Entry(looks.get(e.getValue()),
				NLS.bind(Messages.ByCluster_proposedForCNotOn, e.getKey().cluster()), counts[e.getValue()])));
		List<Map.Entry<Kind, Integer>> others = proposed.stream()
				.filter(e -> absent.indexOf(e) < 0 || absent.indexOf(e) >= MOST_IN_LEGEND).toList();
		others.stream().findFirst().ifPresent(e -> entries.add(new PlanLegend.Entry(looks.get(e.getValue()),
				absent.isEmpty() ? "proposed" : Messages.ByCluster_proposedForOthers,
				others.stream().mapToInt(o -> counts[o.getValue()]).sum())));
		places.entrySet().stream().filter(e -> e.getKey().cluster() < 0).forEach(e -> entries.add(new PlanLegend.Entry(
				looks.get(e.getValue()), e.getKey().cluster() == Kind.NOISE ? "noise" : Messages.ByCluster_inNoSplit,
				counts[e.getValue()])));
		return entries;
	}
}
