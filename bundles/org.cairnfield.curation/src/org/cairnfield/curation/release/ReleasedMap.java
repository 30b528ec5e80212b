package org.cairnfield.curation.release;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.curation.decide.Agreement;
import org.cairnfield.curation.decide.Outcome;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.decide.ReviewState;
import org.cairnfield.curation.decide.Standings;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.curation.split.UnfitSurveyException;
import org.cairnfield.exchange.pack.DevicePack;
import org.cairnfield.exchange.pack.PackSettings;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.Scope;

/**
 * What of an archive a device gets: the cleaned map, and the clusters of the splits that count, with the noise samples that
 * reviewers have let in. Noise that they have not is left out. Where nothing was split all samples are one cluster, which is
 * plain matching.
 *
 * @param map       samples kept, of training surveys, readings of access points kept
 * @param ids       names of the samples, {@code survey/sample}
 * @param labels    cluster of each sample of the map, or {@link Clustering#NOISE}; clusters without gaps
 * @param before    the same before review
 * @param splits    ids of the splits that count; none where all is one cluster
 * @param states    how many noise samples stand where
 * @param awaiting  verdicts that await a second reviewer
 * @param agreement of reviewers, one a split
 * @param notes     what people should know, in words
 */
public record ReleasedMap(RadioMap map, List<String> ids, int[] labels, int[] before, List<String> splits,
		Map<ReviewState, Integer> states, int awaiting, List<Agreement> agreement, List<String> notes) {

	/**
	 * Of the split of the whole archive that comes last or, where there is none, of all splits of sites and floors; of
	 * several of one scope the last one counts.
	 */
	public static ReleasedMap of(Archive archive, ReviewPolicy policy) {
		List<Split> counted = new ArrayList<>();
		Split whole = null;
		for (Split split : archive.getSplits()) {
			if (split.getScope().equals(Scope.ARCHIVE)) {
				whole = split;
			}
			counted.removeIf(other -> overlap(other.getScope(), split.getScope()));
			counted.add(split);
		}
		return of(archive, whole != null ? List.of(whole) : counted, policy);
	}

	private static boolean overlap(Scope one, Scope other) {
		boolean sites = one.site() == null || other.site() == null || one.site().equals(other.site());
		return sites && (one.level() == null || other.level() == null || one.level().equals(other.level()));
	}

	/** @param splits of the archive, of scopes that do not overlap */
	public static ReleasedMap of(Archive archive, List<Split> splits, ReviewPolicy policy) {
		ArchiveMap all = ArchiveMap.of(archive);
		int n = all.map().size();
		List<String> ids = new ArrayList<>();
		Map<SampleKey, Integer> row = new java.util.HashMap<>();
		for (int s = 0; s < n; s++) {
			ids.add(all.surveyed().sampleId(s));
			row.put(all.key(s), s);
		}
		int[] labels = new int[n];
		int[] before = new int[n];
		Arrays.fill(labels, Clustering.NOISE);
		Arrays.fill(before, Clustering.NOISE);
		Map<ReviewState, Integer> states = new EnumMap<>(ReviewState.class);
		List<Agreement> agreement = new ArrayList<>();
		List<String> notes = new ArrayList<>();
		List<String> used = new ArrayList<>();
		int awaiting = 0;
		int offset = 0;
		for (Split split : splits) {
			try {
				SplitOnMap on = SplitOnMap.of(archive, split);
				Standings standings = Standings.of(archive, split, policy);
				Clustering approved = Outcome.of(on, standings).clustering();
				for (int s = 0; s < on.size(); s++) {
					int at = row.get(on.key(s));
					labels[at] = approved.label(s) == Clustering.NOISE ? Clustering.NOISE : approved.label(s) + offset;
					before[at] = on.cluster(s) == Clustering.NOISE ? Clustering.NOISE : on.cluster(s) + offset;
				}
				offset += approved.clusters();
				standings.counts().forEach((state, count) -> states.merge(state, count, Integer::sum));
				awaiting += standings.awaitingSecond();
				agreement.add(standings.agreement());
				used.add(split.getId());
				note(notes, on);
			} catch (UnfitSurveyException e) {
				notes.add(e.getMessage());
			}
		}
		if (used.isEmpty()) {
			Arrays.fill(labels, 0);
			Arrays.fill(before, 0);
			notes.add("nothing is split: devices compare with every sample");
		}
		int[][] dense = dense(labels, before);
		return new ReleasedMap(all.map(), List.copyOf(ids), dense[0], dense[1], List.copyOf(used), states, awaiting,
				List.copyOf(agreement), List.copyOf(notes));
	}

	private static void note(List<String> notes, SplitOnMap on) {
		if (on.gone() > 0) {
			notes.add(on.gone() + " samples of split " + on.id() + " are not in the map any more");
		}
		if (on.added() > 0) {
			notes.add(on.added() + " samples of the map came after split " + on.id() + " and are left out: split anew");
		}
	}

	/** Numbers without gaps: a cluster whose samples are all gone leaves one. */
	private static int[][] dense(int[] labels, int[] before) {
		int top = Arrays.stream(labels).max().orElse(-1);
		int[] number = new int[top + 1];
		Arrays.fill(number, -1);
		int next = 0;
		for (int label : labels) {
			if (label >= 0 && number[label] < 0) {
				number[label] = 0;
			}
		}
		for (int c = 0; c <= top; c++) {
			number[c] = number[c] < 0 ? -1 : next++;
		}
		return new int[][] {Arrays.stream(labels).map(l -> l < 0 ? l : number[l]).toArray(),
				Arrays.stream(before).map(l -> l < 0 ? l : number[l]).toArray()};
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

	/** The map as a device gets it. */
	public DevicePack pack(PackSettings settings) {
		return DevicePack.of(map, labels, false, settings);
	}
}
