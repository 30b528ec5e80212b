package org.cairnfield.curation.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.match.Voting;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.decide.Agreement;
import org.cairnfield.curation.decide.Outcome;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.decide.ReviewState;
import org.cairnfield.curation.decide.Standings;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.curation.split.SplitsInRelease;
import org.cairnfield.curation.split.UnfitSurveyException;
import org.cairnfield.exchange.pack.DevicePack;
import org.cairnfield.exchange.pack.PackSettings;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.Scope;

/**
 * What of an archive a device gets: the cleaned map, the clusters of the splits that count, with the noise samples that
 * reviewers have let in, those that they put in the pool, and how they are searched. Other noise is left out. Where nothing was split all samples
 * are one cluster, which is plain matching.
 *
 * @param map       samples kept, of training surveys, readings of access points kept
 * @param signals   the map as the splits compare it
 * @param labels    cluster of each sample of the map, {@link #POOL} or {@link Clustering#NOISE}; clusters without gaps
 * @param before    the same before review
 * @param splits    ids of the splits that count; none where all is one cluster
 * @param search    how devices search it
 * @param seed      of whatever is drawn for the search
 * @param joined    samples that reviewers let into a cluster
 * @param states    how many noise samples stand where
 * @param awaiting  verdicts that await a second reviewer
 * @param agreement of reviewers, one a split
 * @param notes     what people should know, in words
 */
public record ReleasedMap(RadioMap map, Signals signals, int[] labels, int[] before, List<String> splits, Search search,
		long seed, int joined, Map<ReviewState, Integer> states, int awaiting, List<Agreement> agreement,
		List<String> notes) {

	/** In place of a cluster: the sample is in the pool, which every query searches. */
	public static final int POOL = -2;

	/** Of the splits chosen for the next release. */
	public static ReleasedMap of(Archive archive, ReviewPolicy policy) {
		return of(archive, SplitsInRelease.of(archive), policy);
	}

	/** @param splits of the archive, of scopes that do not overlap */
	public static ReleasedMap of(Archive archive, List<Split> splits, ReviewPolicy policy) {
		return new Making(archive, Scope.ARCHIVE, policy).of(splits);
	}

	/** Of one split, within its own scope. */
	public static ReleasedMap within(Archive archive, Split split, ReviewPolicy policy) {
		return new Making(archive, split.getScope(), policy).of(List.of(split));
	}

	/** As it would be with every proposal of a split approved; nobody has decided anything. */
	public static ReleasedMap approved(Archive archive, Split split) {
		return new Making(archive, split.getScope(), null).of(List.of(split));
	}

	/** Puts splits together. */
	private static final class Making {
		private final Archive archive;
		private final ArchiveMap all;
		/** Null where every proposal counts as approved. */
		private final ReviewPolicy policy;
		private final Map<SampleKey, Integer> row = new HashMap<>();
		private final int[] labels;
		private final int[] before;
		private final Map<ReviewState, Integer> states = new EnumMap<>(ReviewState.class);
		private final List<Agreement> agreement = new ArrayList<>();
		private final List<String> notes = new ArrayList<>();
		private final List<SplitOnMap> used = new ArrayList<>();
		private int awaiting;
		private int joined;
		private int offset;

		Making(Archive archive, Scope scope, ReviewPolicy policy) {
			this.archive = archive;
			this.policy = policy;
			all = ArchiveMap.of(archive, scope, SurveyKind.TRAINING);
			labels = new int[all.map().size()];
			before = new int[labels.length];
			Arrays.fill(labels, Clustering.NOISE);
			Arrays.fill(before, Clustering.NOISE);
			IntStream.range(0, labels.length).forEach(s -> row.put(all.key(s), s));
		}

		ReleasedMap of(List<Split> splits) {
			for (Split split : splits) {
				try {
					add(split, SplitOnMap.of(archive, split));
				} catch (UnfitSurveyException e) {
					notes.add(e.getMessage());
				}
			}
			if (used.isEmpty()) {
				Arrays.fill(labels, 0);
				Arrays.fill(before, 0);
				notes.add(Messages.ReleasedMap_nothingIsSplitDevicesCompare);
			} else if (offset == 0) {
				notes.add(Messages.ReleasedMap_theSplitHasNoCluster);
			} else {
				noteUncovered();
			}
			int[][] dense = dense(labels, before);
			return new ReleasedMap(all.map(), signals(), dense[0], dense[1], used.stream().map(SplitOnMap::id).toList(),
					search(),
					used.isEmpty() ? 1 : used.get(0).seed(), joined, states, awaiting, List.copyOf(agreement),
					List.copyOf(notes));
		}

		private void add(Split split, SplitOnMap on) {
			Outcome outcome;
			if (policy == null) {
				outcome = Outcome.allApproved(on);
			} else {
				Standings standings = Standings.of(archive, split, policy);
				outcome = Outcome.of(on, standings);
				standings.counts().forEach((state, count) -> states.merge(state, count, Integer::sum));
				awaiting += standings.awaitingSecond();
				agreement.add(standings.agreement());
			}
			for (int s = 0; s < on.size(); s++) {
				int at = row.get(on.key(s));
				labels[at] = shifted(outcome.clustering().label(s));
				before[at] = shifted(on.cluster(s));
			}
			for (int s : outcome.pool()) {
				labels[row.get(on.key(s))] = POOL;
			}
			offset += outcome.clustering().clusters();
			joined += outcome.joined();
			used.add(on);
			if (on.gone() > 0) {
				notes.add(Words.bind(Messages.ReleasedMap_samplesOfSplitAreNot, on.gone(), on.id()));
			}
			if (on.added() > 0) {
				notes.add(Words.bind(Messages.ReleasedMap_samplesOfTheMapCame, on.added(), on.id()));
			}
		}

		private int shifted(int label) {
			return label == Clustering.NOISE ? label : label + offset;
		}

		private void noteUncovered() {
			int outside = labels.length - used.stream().mapToInt(on -> on.size() + on.added()).sum();
			if (outside > 0) {
				notes.add(Words.bind(Messages.ReleasedMap_ofSamplesLieOutsideThe, outside, labels.length));
			}
		}

		/** As the splits compare levels, where they agree on it; as usual otherwise. */
		private Signals signals() {
			Signals usual = Signals.of(all.map());
			if (used.isEmpty()) {
				return usual;
			}
			Signals first = used.get(0).signals();
			return used.stream().allMatch(on -> on.signals().representation().equals(first.representation())
					&& on.signals().distance() == first.distance())
							? Signals.of(all.map(), first.representation(), first.distance())
							: usual;
		}

		/** The most thorough of the splits' searches; of voters those of the largest split. */
		private Search search() {
			Search search = used.isEmpty() ? Search.USUAL : used.get(0).search();
			Voting voting = search.voting();
			int largest = 0;
			for (SplitOnMap on : used) {
				Search other = on.search();
				if (on.size() > largest) {
					largest = on.size();
					voting = other.voting();
				}
				search = new Search(search.cut() | other.cut(), Math.max(search.groupProbes(), other.groupProbes()),
						Math.max(search.cellProbes(), other.cellProbes()), search.relative() | other.relative(),
						voting);
			}
			return search;
		}

		/** Numbers without gaps: a cluster whose samples are all gone leaves one. */
		private static int[][] dense(int[] labels, int[] before) {
			int[] number = new int[Arrays.stream(labels).max().orElse(-1) + 1];
			Arrays.stream(labels).filter(label -> label >= 0).forEach(label -> number[label] = 1);
			int next = 0;
			for (int c = 0; c < number.length; c++) {
				number[c] = number[c] == 0 ? -1 : next++;
			}
			return new int[][] { Arrays.stream(labels).map(l -> l < 0 ? l : number[l]).toArray(),
					Arrays.stream(before).map(l -> l < 0 ? l : number[l]).toArray() };
		}
	}

	/** The test samples of an archive. */
	public static RadioMap test(Archive archive) {
		return ArchiveMap.of(archive, Scope.ARCHIVE, SurveyKind.TEST).map();
	}

	/** How many noise samples stand in a state. */
	public int state(ReviewState state) {
		return states.getOrDefault(state, 0);
	}

	/** Proposals of which nobody has said the last word. */
	public int open() {
		return states.entrySet().stream().filter(e -> e.getKey().isOpen()).mapToInt(Map.Entry::getValue).sum();
	}

	/** Number of clusters. */
	public int clusters() {
		return Arrays.stream(labels).max().orElse(-1) + 1;
	}

	/** The map made ready to be searched as a device does, in its own representation and distance. */
	public SplitMap searched(Search by, Workers workers) {
		Signals usual = Signals.of(map);
		Clustering clusters = clusters() == 0 ? new Clustering(new int[labels.length], null) : clustering();
		int[] pool = clusters() == 0 ? new int[0] : pool();
		return by.map(usual, by.cells(usual, clusters, seed, workers), pool, seed, workers);
	}

	/** The cluster of each sample; samples of the pool and those left out have none. */
	public Clustering clustering() {
		return new Clustering(Arrays.stream(labels).map(l -> Math.max(l, Clustering.NOISE)).toArray(), null);
	}

	/** Samples that every query searches, ascending. */
	public int[] pool() {
		return IntStream.range(0, labels.length).filter(s -> labels[s] == POOL).toArray();
	}

	/** The same with another map of the same samples. */
	public ReleasedMap with(RadioMap other) {
		return new ReleasedMap(other, signals, labels, before, splits, search, seed, joined, states, awaiting,
				agreement, notes);
	}

	/** The map as a device gets it. */
	public DevicePack pack(PackSettings settings, Workers workers) {
		return DevicePack.of(searched(settings.search(), workers), settings);
	}
}
