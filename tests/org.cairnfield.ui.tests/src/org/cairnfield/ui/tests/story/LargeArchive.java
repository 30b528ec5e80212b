package org.cairnfield.ui.tests.story;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.exchange.WideTable;
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
		Batch.run("split", "-q", "--archive", archive, "--name", "all", "--epsilon", epsilon, "--min-pts", "5");
		Batch.run("propose", "-q", "--archive", archive, "--gate", "0");
		return archive;
	}
}
