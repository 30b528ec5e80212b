package org.cairnfield.curation.internal.rules.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.function.IntUnaryOperator;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.SurveyedMap;

/**
 * In which order samples were recorded: track by track, a track being what one device recorded in one survey. By time
 * where every sample of the track has one, by row otherwise.
 */
public final class Sequence {

	private final List<int[]> tracks = new ArrayList<>();
	private final List<Boolean> timed = new ArrayList<>();
	private final int[] trackOf;
	private final int[] placeInTrack;

	private Sequence(SurveyedMap map) {
		Map<Long, Ints> members = new TreeMap<>();
		for (int s = 0; s < map.size(); s++) {
			long key = (long) map.survey(s) << 32 | map.map().device(s) + 1;
			members.computeIfAbsent(key, k -> new Ints()).add(s);
		}
		trackOf = new int[map.size()];
		placeInTrack = new int[map.size()];
		for (Ints each : members.values()) {
			int[] track = each.toArray();
			boolean all = true;
			for (int s : track) {
				all &= map.map().timeMillis(s) != RadioMap.NO_TIME;
			}
			if (all) {
				Integer[] order = new Integer[track.length];
				Arrays.setAll(order, i -> track[i]);
				Arrays.sort(order, Comparator.comparingLong((Integer s) -> map.map().timeMillis(s)));
				Arrays.setAll(track, i -> order[i]);
			}
			for (int i = 0; i < track.length; i++) {
				trackOf[track[i]] = tracks.size();
				placeInTrack[track[i]] = i;
			}
			tracks.add(track);
			timed.add(all);
		}
	}

	public static Sequence of(RuleInput input) {
		return input.shared(Sequence.class, () -> new Sequence(input.map()));
	}

	public int tracks() {
		return tracks.size();
	}

	/** The samples of a track in the order of recording; not to be changed. */
	public int[] track(int track) {
		return tracks.get(track);
	}

	/** Whether the order is that of times. */
	public boolean isTimed(int track) {
		return timed.get(track);
	}

	public int trackOf(int sample) {
		return trackOf[sample];
	}

	/** The how-many-th of its track it is. */
	public int placeInTrack(int sample) {
		return placeInTrack[sample];
	}

	/**
	 * The marked samples as runs: those of one track with at most {@code gap} others between one and the next, and
	 * equal {@code kind}. Runs in the order of recording; what lies in a gap is not in the run.
	 */
	public List<int[]> runs(IntPredicate marked, IntUnaryOperator kind, int gap) {
		List<int[]> runs = new ArrayList<>();
		for (int[] track : tracks) {
			Ints open = new Ints();
			int last = -1;
			for (int i = 0; i < track.length; i++) {
				if (!marked.test(track[i])) {
					continue;
				}
				boolean joins = open.size() > 0 && i - last - 1 <= gap
						&& kind.applyAsInt(track[i]) == kind.applyAsInt(track[last]);
				if (!joins && open.size() > 0) {
					runs.add(open.toArray());
					open = new Ints();
				}
				open.add(track[i]);
				last = i;
			}
			if (open.size() > 0) {
				runs.add(open.toArray());
			}
		}
		return runs;
	}
}
