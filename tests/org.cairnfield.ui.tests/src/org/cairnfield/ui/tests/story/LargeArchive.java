package org.cairnfield.ui.tests.story;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.Person;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.propose.SetProposalsCommand;
import org.cairnfield.curation.propose.SplitProposals;
import org.cairnfield.curation.split.AddSplitsCommand;
import org.cairnfield.curation.split.SplitMaker;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.curation.split.SplitPlan;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.curation.split.SplitStudies;
import org.cairnfield.exchange.WideTable;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Scope;
import org.cairnfield.ui.tests.robot.Batch;

/** An archive as large as those that are in use, with a split to be reviewed. */
final class LargeArchive {

	private static final long SEED = 3;

	private LargeArchive() {
	}

	/**
	 * Three sites of four floors, in one survey each, simulated.
	 *
	 * @param epsilon of the split, in decibels
	 */
	static Path make(Path folder, int samples, double epsilon) throws Exception {
		RadioMap map = RandomMap.of(SEED, CampusSize.of(3, 4, 520), samples, Workers.inline());
		List<String> ids = IntStream.range(0, samples).mapToObj(i -> String.format(Locale.ROOT, "S-%06d", i)).toList();
		Path file = folder.resolve("big.csv");
		WideTable.write(file, map, ids);
		Path archive = folder.resolve("big");
		Batch.run("intake", "-q", "--map", file, "--archive", archive);
		try (OpenArchive open = new ArchiveStore().open(archive, Mode.EDIT)) {
			addSplit(open.archive(), epsilon);
			open.savePoint(Person.named("M.Q."), null);
		}
		return archive;
	}

	/** With proposals, but without the evidence for them, which the window looks for itself. */
	private static void addSplit(Archive archive, double epsilon) {
		SplitPlan plan = new SplitPlan("all", Scope.ARCHIVE, false, SplitRequest.automatic(SEED).published(epsilon, 5));
		Split split = new SplitMaker(new SplitStudies(1)).make(archive, plan, Workers.inline()).splits().get(0);
		new AddSplitsCommand(archive, List.of(split)).execute();
		new SetProposalsCommand(split, SplitProposals.of(SplitOnMap.of(archive, split), 0, 0.1, Workers.inline()))
				.execute();
	}
}
