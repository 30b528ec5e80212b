package org.cairnfield.curation.decide;

import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.propose.Evidence;
import org.cairnfield.curation.propose.EvidenceTable;
import org.cairnfield.curation.propose.QueueOrder;
import org.cairnfield.curation.propose.SetProposalsCommand;
import org.cairnfield.curation.propose.SplitProposals;
import org.cairnfield.curation.run.Threads;
import org.cairnfield.curation.split.SmallArchives;
import org.cairnfield.curation.split.SplitMaker;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.curation.split.SplitStudies;
import org.cairnfield.curation.split.SplitStudy;
import org.cairnfield.curation.split.Trial;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Scope;
import org.eclipse.emf.common.command.BasicCommandStack;

/** How long a reviewer of a large archive waits. No test: run its {@code main}; arguments: samples, share of noise wanted. */
final class ReviewBenchmark {

	private ReviewBenchmark() {
	}

	public static void main(String[] args) throws Exception {
		int samples = args.length > 0 ? Integer.parseInt(args[0]) : 20_000;
		double noise = args.length > 1 ? Double.parseDouble(args[1]) : 0.15;
		CampusSize size = CampusSize.of(3, 4, 520);
		Archive archive = SmallArchives.of(RandomMap.of(3, size, samples, Workers.inline()),
				RandomMap.testOf(3, size, samples / 10, Workers.inline()));
		try (Threads threads = Threads.ofMachine()) {
			Workers workers = threads.workers(Progress.NONE);
			SplitStudies studies = new SplitStudies(2);
			SplitStudy study = timed("study", () -> studies.study(archive, Scope.ARCHIVE, SplitRequest.automatic(1)));
			timed("k-distance curve", () -> study.curve(5, workers));
			timed("sweep 8 × 3", () -> study.sweep(study.gridEpsilons(workers), study.gridMinPts(), workers));
			double epsilon = Arrays.stream(study.gridEpsilons(workers))
					.filter(e -> study.split(e, 5, workers).noiseShare() < noise).findFirst().orElseThrow();
			Trial fresh = timed("split, new ε", () -> study.split(epsilon + 0.5, 5, workers));
			timed("the same again", () -> studies.study(archive, Scope.ARCHIVE, SplitRequest.automatic(1))
					.split(epsilon + 0.5, 5, workers));
			Split split = SplitMaker.toModel("whole", Scope.ARCHIVE, study, fresh, Search.PUBLISHED,
					"the published method", 1);
			archive.getSplits().add(split);
			SplitOnMap onMap = timed("split on the map", () -> SplitOnMap.of(archive, split));
			new SetProposalsCommand(split, timed("proposals", () -> SplitProposals.of(onMap, 0, 0.1, workers)))
					.execute();
			SplitOnMap proposed = SplitOnMap.of(archive, split);
			EvidenceTable table = timed("evidence of all", () -> EvidenceTable.of(proposed, workers));
			timed("copy of the archive", () -> ArchiveCopy.of(archive));
			List<Evidence> queue = timed("queue in order", () -> QueueOrder.MARKED_FIRST.sorted(table.all()));
			System.out.printf(Locale.ROOT, "%d samples, %d noise, %d clusters%n", proposed.size(), queue.size(),
					fresh.clusters());
			review(archive, split, table, queue);
		}
	}

	/** Decides on one sample after the other: verdict, where things stand, evidence of the next. */
	private static void review(Archive archive, Split split, EvidenceTable table, List<Evidence> queue) {
		Review review = new Review(archive, split, "M.Q.", ReviewPolicy.USUAL, RecordedVerdicts.of(archive),
				Clock.systemUTC());
		BasicCommandStack stack = new BasicCommandStack();
		int n = Math.min(200, queue.size() - 1);
		double[] millis = new double[n];
		for (int i = 0; i < n; i++) {
			long begin = System.nanoTime();
			stack.execute(i % 3 == 0 ? review.reject(queue.get(i).sample(), "far", null)
					: review.approve(queue.get(i).sample(), "fits", null));
			Standings standings = review.standings();
			Optional<Evidence> next = table.of(queue.get(i + 1).sample());
			if (standings.open() == 0 || next.isEmpty()) {
				throw new IllegalStateException("nothing is left");
			}
			millis[i] = (System.nanoTime() - begin) / 1e6;
		}
		double first = millis[0];
		Arrays.sort(millis);
		System.out.printf(Locale.ROOT,
				"verdict to next evidence: first %.1f ms, median %.1f ms, 95 %% %.1f ms, longest %.1f ms of %d%n",
				first,
				millis[n / 2], millis[n * 95 / 100], millis[n - 1], n);
	}

	private static <T> T timed(String what, Callable<T> work) throws Exception {
		long begin = System.nanoTime();
		T result = work.call();
		System.out.printf(Locale.ROOT, "%-22s %9.1f ms%n", what, (System.nanoTime() - begin) / 1e6);
		return result;
	}
}
