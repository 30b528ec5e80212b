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
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.run.FileArchive;
import org.cairnfield.curation.run.FileRun;
import org.cairnfield.exchange.FileReport;
import org.cairnfield.exchange.Intake;
import org.cairnfield.exchange.Layout;

/** Radio maps for tests. */
public final class SmallMaps {

	private static final long SEED = 11;

	private SmallMaps() {
	}

	/** Samples of one building of two floors. */
	public static RadioMap simulated(int samples) {
		return RandomMap.of(SEED, CampusSize.of(1, 2, 24), samples, Workers.inline());
	}

	/** Another day in the same building. */
	public static RadioMap visit(int samples) {
		return RandomMap.testOf(SEED, CampusSize.of(1, 2, 24), samples, Workers.inline());
	}

	/** Samples a metre apart on a line, each with its levels of access points A, B, C …; 1 for not heard. */
	public static RadioMap of(int[]... levels) {
		RadioMapBuilder builder = new RadioMapBuilder();
		for (int s = 0; s < levels.length; s++) {
			builder.sample("Tide House", 0, s, 0);
			for (int ap = 0; ap < levels[s].length; ap++) {
				int index = builder.accessPoint(Character.toString('A' + ap));
				if (levels[s][ap] <= 0) {
					builder.reading(index, levels[s][ap]);
				}
			}
		}
		return builder.build();
	}

	/**
	 * Two tight groups of five (samples 0 … 4, 5 … 9), far from each other, and a sample (10) that is like
	 * the second group but too far from it for ε = 5.
	 */
	public static RadioMap twoGroupsAndAStray() {
		return of(new int[] { -40, -60, 1 }, new int[] { -41, -60, 1 }, new int[] { -40, -61, 1 }, new int[] { -41, -61, 1 },
				new int[] { -40, -62, 1 }, new int[] { 1, -60, -40 }, new int[] { 1, -60, -41 }, new int[] { 1, -61, -40 },
				new int[] { 1, -61, -41 }, new int[] { 1, -62, -40 }, new int[] { 1, -66, -47 });
	}

	/** A map as if it had been read from one file; its samples are called TH-0, TH-1 … */
	public static Intake intake(RadioMap map) {
		return intake(map, s -> "TH-" + s);
	}

	/** Likewise with other names. */
	public static Intake intake(RadioMap map, IntFunction<String> name) {
		FileReport report = new FileReport(Path.of("tide.csv"), Layout.WIDE, "table", map.size(), map.size(), 0, 0, map.size(), "100", List.of());
		return new Intake(map, IntStream.range(0, map.size()).mapToObj(name).toList(), List.of(report), List.of(), "100", List.of());
	}

	/** Split and proposed for, nothing cleaned away. */
	public static FileRun run(RadioMap map, SplitRequest request, double gate, double threshold) {
		return FileRun.proposed(FileArchive.of(intake(map)), request, new ProposalRule(gate, threshold), Workers.inline());
	}

	/** {@link #twoGroupsAndAStray} with ε 5 and minPts 3: two clusters, the stray noise. */
	public static FileRun run(double gate, double threshold) {
		return run(twoGroupsAndAStray(), SplitRequest.automatic(1).published(5, 3), gate, threshold);
	}

	/** With the components that explain a share of the variance; ε and minPts as given or chosen. */
	public static SplitRequest reduced(double share, OptionalDouble epsilon, OptionalInt minPts) {
		return new SplitRequest(Representation.positive(), Distance.EUCLIDEAN, epsilon, minPts, OptionalDouble.of(share), Optional.empty(), 1);
	}
}
