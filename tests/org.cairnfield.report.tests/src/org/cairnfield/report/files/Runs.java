package org.cairnfield.report.files;

import java.nio.file.Path;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.run.FileArchive;
import org.cairnfield.curation.run.FileRun;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.exchange.FileReport;
import org.cairnfield.exchange.Intake;
import org.cairnfield.exchange.Layout;
import org.cairnfield.testkit.SmallMaps;

/** What becomes of a small survey file whose samples are called TH-0, TH-1 … */
final class Runs {

	private Runs() {
	}

	static Intake intake(RadioMap map) {
		return intake(map, s -> "TH-" + s);
	}

	static Intake intake(RadioMap map, IntFunction<String> name) {
		FileReport report = new FileReport(Path.of("tide.csv"), Layout.WIDE, "table", map.size(), map.size(), 0, 0,
				map.size(), "100", List.of());
		return new Intake(map, IntStream.range(0, map.size()).mapToObj(name).toList(), List.of(report), List.of(),
				"100", List.of());
	}

	/** {@link SmallMaps#twoGroupsAndAStray} with ε 5 and minPts 3: two clusters, the stray noise. */
	static FileRun proposed(double gate, double threshold) {
		return FileRun.proposed(FileArchive.of(intake(SmallMaps.twoGroupsAndAStray())),
				SplitRequest.automatic(1).published(5, 3),
				new ProposalRule(gate, threshold), Workers.inline());
	}
}
