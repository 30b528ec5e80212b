package org.cairnfield.curation.internal.rules.place;

import static org.cairnfield.curation.rules.Reason.judged;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.stats.Median;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.Threshold;
import org.cairnfield.curation.internal.rules.evidence.Ints;
import org.cairnfield.curation.internal.rules.evidence.Sequence;

/**
 * Samples of a unit whose signal neighbours lie where the sample would be with x and y exchanged, as runs of
 * consecutive ones. Those found lose their say on others, and all are judged again, until nothing changes.
 */
final class SwappedAxes {

	private static final Threshold VOTERS = new Threshold(Messages.SwappedAxes_neighboursInSignalSpaceThat, 5,
			judged(Messages.SwappedAxes_fewEnoughToBeNear));
	private static final Threshold FEWEST_VOTERS = new Threshold(Messages.SwappedAxes_ofThemAtLeast, 3,
			judged(Messages.SwappedAxes_aMajorityOfFive));
	private static final Threshold ROUNDS = new Threshold(Messages.SwappedAxes_roundsOfJudgingAtMost, 20,
			judged(Messages.SwappedAxes_boundsTheWork));
	private static final Threshold LONGEST_GAP = new Threshold(Messages.SwappedAxes_samplesBetweenTwoOfOne, 15,
			judged(Messages.SwappedAxes_aStretchOfAWalk));
	private static final Threshold FILL_METRES = new Threshold(
			Messages.SwappedAxes_aSampleJoinsItsRun, 2, "m",
			judged(Messages.SwappedAxes_lessThanTheDistanceBetween));
	private static final Threshold LONGEST_STEP = new Threshold(Messages.SwappedAxes_stepsInARunIn, 1.5,
			judged(Messages.SwappedAxes_betweenOnePlaceAndThe));
	private static final Threshold MISFIT = new Threshold(Messages.SwappedAxes_asNotedFartherOffThan, 2.5,
			judged(Messages.SwappedAxes_beyondWhatIsUsualOn));
	private static final Threshold FIT = new Threshold(Messages.SwappedAxes_exchangedFartherOffThanUsual, 2,
			judged(Messages.SwappedAxes_asUsualOnASite));
	private static final Threshold UNLIKE = new Threshold(Messages.SwappedAxes_howManyTimesLessAlike, 1.3,
			judged(Messages.SwappedAxes_asForWrongFloor));

	/** The numbers that it goes by. */
	static final List<Threshold> THRESHOLDS = List.of(VOTERS, FEWEST_VOTERS, ROUNDS, LONGEST_GAP, FILL_METRES,
			LONGEST_STEP,
			MISFIT, FIT, UNLIKE);

	/**
	 * @param samples      in the order of recording
	 * @param asNoted      metres from the samples to their neighbours, by sample
	 * @param exchanged    likewise with x and y exchanged
	 */
	record Group(int[] samples, double[] asNoted, double[] exchanged) {

		/** Whether exchanging makes of a misfit beyond the usual one that is usual. */
		boolean isClear(double usualMetres) {
			return Median.of(asNoted) >= MISFIT.value() * usualMetres
					&& Median.of(exchanged) <= FIT.value() * usualMetres;
		}
	}

	private final double[] asNoted;
	private final double[] exchanged;
	private final List<Group> groups = new ArrayList<>();

	/** @param gainMetres by how much nearer the neighbours must be */
	SwappedAxes(RuleInput input, double gainMetres, int fewestPlaces, Workers workers) {
		RadioMap map = input.map().map();
		Voters voters = new Voters(input, workers);
		asNoted = new double[map.size()];
		exchanged = new double[map.size()];
		boolean[] swapped = new boolean[map.size()];
		for (int round = 0; round < ROUNDS.count(); round++) {
			boolean[] next = judge(map, voters, gainMetres, swapped);
			if (Arrays.equals(next, swapped)) {
				break;
			}
			swapped = next;
			voters.suspect(swapped);
		}
		boolean[] found = swapped;
		double usual = usual(found);
		Unlikeness unlikeness = new Unlikeness(input, voters);
		Sequence sequence = voters.sequence();
		for (int[] run : sequence.runs(s -> found[s], map::floor, LONGEST_GAP.count())) {
			for (int[] part : parts(run, sequence, map)) {
				Group group = places(part, map) < fewestPlaces ? null : group(grown(part, sequence, map));
				if (group != null && group.isClear(usual)
						&& Median.of(Arrays.stream(part).mapToDouble(unlikeness::of).toArray()) >= UNLIKE.value()) {
					groups.add(group);
				}
			}
		}
	}

	private Group group(int[] samples) {
		return new Group(samples, pick(asNoted, samples), pick(exchanged, samples));
	}

	/** How far neighbours are from those not under suspicion. */
	private double usual(boolean[] found) {
		return Median.of(IntStream.range(0, found.length).filter(s -> !found[s] && !Double.isNaN(asNoted[s]))
				.mapToDouble(s -> asNoted[s]).toArray());
	}

	private static int places(int[] part, RadioMap map) {
		Set<String> places = new HashSet<>();
		for (int s : part) {
			places.add(map.x(s) + " " + map.y(s));
		}
		return places.size();
	}

	private boolean[] judge(RadioMap map, Voters voters, double gainMetres, boolean[] before) {
		boolean[] swapped = new boolean[map.size()];
		int[] who = new int[VOTERS.count()];
		double[] scratch = new double[VOTERS.count()];
		for (int s = 0; s < map.size(); s++) {
			int count = voters.ofOthersFirst(s, who, FEWEST_VOTERS.count());
			if (count < FEWEST_VOTERS.count() && before[s]) {
				// All its neighbours are under suspicion too: no reason to think better of it.
				swapped[s] = true;
				continue;
			}
			asNoted[s] = voters.medianMetres(map.x(s), map.y(s), who, count, scratch);
			exchanged[s] = voters.medianMetres(map.y(s), map.x(s), who, count, scratch);
			swapped[s] = count >= FEWEST_VOTERS.count() && asNoted[s] - exchanged[s] >= gainMetres
					&& exchanged[s] <= asNoted[s] / 2;
		}
		return swapped;
	}

	/**
	 * A run with all that lies between its members, cut where the way as noted leaps: where exchanging begins or ends it
	 * does, and in between it does not.
	 */
	private static List<int[]> parts(int[] run, Sequence sequence, RadioMap map) {
		int[] track = sequence.track(sequence.trackOf(run[0]));
		int[] whole = Arrays.copyOfRange(track, sequence.placeInTrack(run[0]),
				sequence.placeInTrack(run[run.length - 1]) + 1);
		double longest = longestStep(whole, map);
		List<int[]> parts = new ArrayList<>();
		Ints open = new Ints();
		double reach = longest;
		for (int i = 0; i < whole.length; i++) {
			int last = open.size() == 0 ? whole[i] : open.get(open.size() - 1);
			if (map.metresApart(last, whole[i]) <= reach) {
				open.add(whole[i]);
				reach = longest;
			} else if (i + 1 == whole.length || map.metresApart(last, whole[i + 1]) > 2 * longest) {
				parts.add(open.toArray());
				open = new Ints();
				open.add(whole[i]);
				reach = longest;
			} else {
				// One sample lies aside for a reason of its own and is left out.
				reach = 2 * longest;
			}
		}
		parts.add(open.toArray());
		return parts;
	}

	private static double longestStep(int[] samples, RadioMap map) {
		return LONGEST_STEP.value() * Median.of(IntStream.range(1, samples.length)
				.mapToDouble(i -> map.metresApart(samples[i - 1], samples[i])).filter(step -> step > 0).toArray());
	}

	private boolean fits(int s, int member, RadioMap map) {
		return map.floor(s) == map.floor(member) && exchanged[s] <= asNoted[s] + FILL_METRES.value();
	}

	/** With those before and after that fit too and are noted a usual step from the one next to them. */
	private int[] grown(int[] part, Sequence sequence, RadioMap map) {
		int[] track = sequence.track(sequence.trackOf(part[0]));
		double longest = longestStep(part, map);
		int[] before = onwards(track, sequence.placeInTrack(part[0]), -1, longest, map);
		int[] after = onwards(track, sequence.placeInTrack(part[part.length - 1]), 1, longest, map);
		IntStream reversed = IntStream.range(0, before.length).map(i -> before[before.length - 1 - i]);
		return IntStream.concat(IntStream.concat(reversed, Arrays.stream(part)), Arrays.stream(after)).toArray();
	}

	/** Those that go on from a member in one direction; a single one that does not fit, or lies aside, ends nothing. */
	private int[] onwards(int[] track, int start, int way, double longest, RadioMap map) {
		Ints found = new Ints();
		int last = track[start];
		double reach = longest;
		for (int at = start + way; at >= 0 && at < track.length; at += way) {
			int next = at + way >= 0 && at + way < track.length ? track[at + way] : -1;
			boolean nextFits = next >= 0 && fits(next, track[start], map);
			if (map.metresApart(last, track[at]) <= reach) {
				reach = longest;
				if (!fits(track[at], track[start], map)
						&& !(nextFits && map.metresApart(track[at], next) <= longest)) {
					break;
				}
				found.add(track[at]);
				last = track[at];
			} else if (reach > longest || !nextFits || map.metresApart(last, next) > 2 * longest) {
				break;
			} else {
				reach = 2 * longest;
			}
		}
		return found.toArray();
	}

	private static double[] pick(double[] values, int[] samples) {
		return Arrays.stream(samples).mapToDouble(s -> values[s]).toArray();
	}

	List<Group> groups() {
		return groups;
	}
}
