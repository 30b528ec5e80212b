package org.cairnfield.curation.split;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.run.FileArchive;
import org.cairnfield.curation.run.FileRun;
import org.cairnfield.exchange.FileReport;
import org.cairnfield.exchange.Intake;
import org.cairnfield.exchange.Layout;
import org.cairnfield.testkit.SmallMaps;

/** Small maps as survey files would give them, and what becomes of them. */
public final class SmallRuns {

	private SmallRuns() {
	}

	/** A map as if it had been read from one file; its samples are called TH-0, TH-1 … */
	public static Intake intake(RadioMap map) {
		return intake(map, s -> "TH-" + s);
	}

	/** Likewise with other names. */
	public static Intake intake(RadioMap map, IntFunction<String> name) {
		FileReport report = new FileReport(Path.of("tide.csv"), Layout.WIDE, "table", map.size(), map.size(), 0, 0,
				map.size(), "100", List.of());
		return new Intake(map, IntStream.range(0, map.size()).mapToObj(name).toList(), List.of(report), List.of(),
				"100", List.of());
	}

	/** Split and proposed for, nothing cleaned away. */
	public static FileRun run(RadioMap map, SplitRequest request, double gate, double threshold) {
		return FileRun.proposed(FileArchive.of(intake(map)), request, new ProposalRule(gate, threshold),
				Workers.inline());
	}

	/** {@link SmallMaps#twoGroupsAndAStray} with ε 5 and minPts 3: two clusters, the stray noise. */
	public static FileRun run(double gate, double threshold) {
		return run(SmallMaps.twoGroupsAndAStray(), SplitRequest.automatic(1).published(5, 3), gate, threshold);
	}

	/** With the components that explain a share of the variance; ε and minPts as given or chosen. */
	public static SplitRequest reduced(double share, OptionalDouble epsilon, OptionalInt minPts) {
		return new SplitRequest(Representation.positive(), Distance.EUCLIDEAN, epsilon, minPts,
				OptionalDouble.of(share), Optional.empty(), SplitRequest.USUAL_TIME, 1);
	}
}
