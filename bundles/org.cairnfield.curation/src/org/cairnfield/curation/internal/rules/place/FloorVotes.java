package org.cairnfield.curation.internal.rules.place;

import static org.cairnfield.curation.rules.Reason.judged;
import static org.cairnfield.curation.rules.Reason.standard;

import java.util.Arrays;
import java.util.List;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.Threshold;

/**
 * What floor the signal neighbours of each sample are on. Samples whose neighbours are mostly elsewhere lose their say
 * on others, and all are judged again, until nothing changes: a stretch of samples with the same wrong floor would
 * otherwise vote for itself.
 */
final class FloorVotes {

	static final Threshold VOTERS = new Threshold(Messages.FloorVotes_neighboursInSignalSpaceThat, 7,
			judged(Messages.FloorVotes_oddAndEnoughForSix));
	private static final Threshold MAJORITY = new Threshold(Messages.FloorVotes_votesForAnotherFloorBy,
			4,
			standard(Messages.FloorVotes_moreThanHalfOfSeven));
	private static final Threshold ROUNDS = new Threshold(Messages.FloorVotes_roundsOfJudgingAtMost, 20,
			judged(Messages.FloorVotes_boundsTheWork));

	/** The numbers that it goes by. */
	static final List<Threshold> THRESHOLDS = List.of(VOTERS, MAJORITY, ROUNDS);

	private final int[] winner;
	private final int[] forWinner;
	private final int[] forOwn;
	private final int[] cast;
	private final Voters voters;

	FloorVotes(RuleInput input, Workers workers) {
		RadioMap map = input.map().map();
		int n = map.size();
		winner = new int[n];
		forWinner = new int[n];
		forOwn = new int[n];
		cast = new int[n];
		voters = new Voters(input, workers);
		boolean[] suspects = new boolean[n];
		for (int round = 0; round < ROUNDS.count(); round++) {
			boolean[] next = new boolean[n];
			int[] who = new int[VOTERS.count()];
			int[] floors = new int[VOTERS.count()];
			for (int s = 0; s < n; s++) {
				count(map, s, who, floors);
				next[s] = winner[s] != map.floor(s) && forWinner[s] >= MAJORITY.count();
			}
			if (Arrays.equals(next, suspects)) {
				break;
			}
			suspects = next;
			voters.suspect(suspects);
		}
	}

	private void count(RadioMap map, int s, int[] who, int[] floors) {
		cast[s] = voters.of(s, who);
		for (int i = 0; i < cast[s]; i++) {
			floors[i] = voters.spotMap().floor(who[i]);
		}
		Arrays.sort(floors, 0, cast[s]);
		winner[s] = map.floor(s);
		forWinner[s] = 0;
		forOwn[s] = 0;
		for (int i = 0; i < cast[s];) {
			int end = i;
			while (end < cast[s] && floors[end] == floors[i]) {
				end++;
			}
			if (floors[i] == map.floor(s)) {
				forOwn[s] = end - i;
			}
			if (end - i > forWinner[s] || end - i == forWinner[s] && floors[i] == map.floor(s)) {
				winner[s] = floors[i];
				forWinner[s] = end - i;
			}
			i = end;
		}
	}

	/** Those who had a say in the end. */
	Voters voters() {
		return voters;
	}

	/** The floor with most votes; the sample's own where it has as many. */
	int winner(int sample) {
		return winner[sample];
	}

	int forWinner(int sample) {
		return forWinner[sample];
	}

	int forOwn(int sample) {
		return forOwn[sample];
	}

	/** Votes in all. */
	int cast(int sample) {
		return cast[sample];
	}
}
