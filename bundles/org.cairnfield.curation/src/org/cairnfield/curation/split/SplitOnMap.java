package org.cairnfield.curation.split;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Role;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.Proposals;
import org.cairnfield.model.values.SampleKey;

/**
 * A kept split on the map as it is now. Samples that were set aside or taken out since are gone; those that came
 * since take no part. Immutable; refers to nothing of the archive that can change.
 */
public final class SplitOnMap {

	private final String id;
	private final Labels labels;
	private final Proposals proposals;
	private final double threshold;
	private final Search search;
	private final long seed;
	private final RadioMap map;
	private final Signals signals;
	private final Clustering clustering;
	private final List<SampleKey> keys = new ArrayList<>();
	private final Map<SampleKey, Integer> indexOf = new HashMap<>();
	private final int added;

	private SplitOnMap(ArchiveMap whole, Split split) {
		id = split.getId();
		labels = split.getLabels() == null ? Labels.NONE : split.getLabels();
		proposals = split.getProposals() == null ? Proposals.NONE : split.getProposals();
		threshold = split.getThreshold();
		search = searchOf(split);
		seed = split.getSeed();
		int[] label = new int[whole.map().size()];
		Role[] role = new Role[label.length];
		int[] chosen = new int[label.length];
		int n = 0;
		for (int s = 0; s < chosen.length; s++) {
			SampleKey key = whole.key(s);
			int row = labels.row(key);
			if (row >= 0) {
				label[n] = labels.cluster(row);
				role[n] = labels.role(row);
				chosen[n] = s;
				indexOf.put(key, n++);
				keys.add(key);
			}
		}
		added = chosen.length - n;
		map = whole.map().view(Arrays.copyOf(chosen, n));
		clustering = new Clustering(Arrays.copyOf(label, n), Arrays.copyOf(role, n));
		signals = Signals.of(map, Representation.named(split.getRepresentation()), Distance.named(split.getDistance()));
	}

	/** How a split is searched; the usual search where nobody has chosen. */
	static Search searchOf(Split split) {
		return split.getSearch() == null ? Search.USUAL : split.getSearch();
	}

	/**
	 * @param archive a copy, where others go on changing it
	 * @param split   of that archive
	 * @throws UnfitSurveyException where the map has fewer than two of its samples
	 */
	public static SplitOnMap of(Archive archive, Split split) {
		SplitOnMap found = new SplitOnMap(ArchiveMap.of(archive, split.getScope(), SurveyKind.TRAINING), split);
		if (found.map.size() < 2) {
			throw new UnfitSurveyException(Words.bind(Messages.SplitOnMap_theMapHasOnlyOf, found.map.size(),
					found.labels.size(), split.getId()));
		}
		return found;
	}

	/** Of the split. */
	public String id() {
		return id;
	}

	/** As the split has them, also of samples that are gone. */
	public Labels labels() {
		return labels;
	}

	/** As the split has them, below the threshold too. */
	public Proposals proposals() {
		return proposals;
	}

	/** The smallest r for which a proposal is made. */
	public double threshold() {
		return threshold;
	}

	/** How it is searched: as was chosen with the split or, in those made before there was a choice, as usual. */
	public Search search() {
		return search;
	}

	/** Of whatever is drawn for it. */
	public long seed() {
		return seed;
	}

	/** The samples of the split that the map still has. */
	public RadioMap map() {
		return map;
	}

	/** The same in the representation and distance of the split. */
	public Signals signals() {
		return signals;
	}

	/** Labels and roles, by sample of {@link #map}; clusters are numbered as in the split. */
	public Clustering clustering() {
		return clustering;
	}

	/** How many samples of the split the map still has. */
	public int size() {
		return map.size();
	}

	/** Number of the cluster of a sample of the map, −1 for noise. */
	public int cluster(int sample) {
		return clustering.label(sample);
	}

	/** What names a sample of the map in the archive. */
	public SampleKey key(int sample) {
		return keys.get(sample);
	}

	/** A sample of the map, or −1 where it is not there. */
	public int index(SampleKey key) {
		return indexOf.getOrDefault(key, -1);
	}

	/** How many samples of the split the map no longer has. */
	public int gone() {
		return labels.size() - map.size();
	}

	/** How many samples of the scope came after the split. */
	public int added() {
		return added;
	}

	/** The same clusters numbered without gaps, as searching needs it: one whose samples are all gone leaves a gap. */
	public static Clustering dense(Clustering clustering) {
		int[] sizes = clustering.sizes();
		int[] number = new int[sizes.length];
		int next = 0;
		for (int c = 0; c < sizes.length; c++) {
			number[c] = sizes[c] == 0 ? -1 : next++;
		}
		if (next == sizes.length) {
			return clustering;
		}
		int[] labels = clustering.labels();
		Role[] roles = new Role[labels.length];
		for (int s = 0; s < labels.length; s++) {
			roles[s] = clustering.role(s);
			labels[s] = labels[s] == Clustering.NOISE ? Clustering.NOISE : number[labels[s]];
		}
		return new Clustering(labels, roles);
	}
}
