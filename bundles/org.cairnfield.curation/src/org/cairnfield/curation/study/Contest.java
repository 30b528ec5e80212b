package org.cairnfield.curation.study;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.cairnfield.core.choose.HeldOut;
import org.cairnfield.core.choose.TrialScore;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.task.Workers;

/**
 * The settings of one method, each searched as published and in all ways in which a device may, on the hold-outs of one map.
 *
 * @param published with the published search, best first
 * @param best      with every search, best first, of what a device pack holds
 * @param seconds   that it took
 */
record Contest(List<Entry> published, List<Entry> best, double seconds) {

	/** What was tried, mean over the hold-outs. */
	record Entry(Contender contender, Search search, TrialScore score) {

		StudyRow.Tried tried(StudyMethod method) {
			return new StudyRow.Tried(method.code(), contender.setting(), search.code(), score.meanErrorMetres(),
					score.comparisonShare(), score.sampleShare());
		}
	}

	private record Key(Contender contender, Search search) {
	}

	/**
	 * Tries them.
	 *
	 * @param samples of the whole map
	 */
	static Contest of(List<HeldOut> heldOuts, List<Contender> contenders, int samples, long seed, Shared shared,
			Workers workers) {
		long begin = System.nanoTime();
		Map<Key, List<TrialScore>> scores = new LinkedHashMap<>();
		Set<Contender> notForDevices = new HashSet<>();
		for (HeldOut heldOut : heldOuts) {
			for (Contender contender : contenders) {
				workers.checkCancelled();
				contender.build(heldOut.signals(), shared, workers).ifPresent(built -> {
					built.tried(heldOut, samples, seed, workers)
							.forEach((search, score) -> scores
									.computeIfAbsent(new Key(contender, search), key -> new ArrayList<>()).add(score));
					if (!built.isForDevices()) {
						notForDevices.add(contender);
					}
				});
			}
		}
		List<Entry> entries = new ArrayList<>();
		scores.forEach((key, each) -> {
			TrialScore mean = TrialScore.mean(each);
			if (each.size() == heldOuts.size() && Double.isFinite(mean.meanErrorMetres())) { // what found nothing somewhere is no way to find positions
				entries.add(new Entry(key.contender, key.search, mean));
			}
		});
		return new Contest(
				TrialScore.ranked(entries.stream().filter(e -> e.search.equals(Search.PUBLISHED)).toList(),
						Entry::score, samples),
				TrialScore.ranked(entries.stream().filter(e -> !notForDevices.contains(e.contender)).toList(),
						Entry::score, samples),
				(System.nanoTime() - begin) / 1e9);
	}
}
