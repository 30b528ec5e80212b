package org.cairnfield.curation.run;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cairnfield.curation.measure.SplitMeasurement;
import org.cairnfield.curation.propose.Evidence;
import org.cairnfield.curation.propose.Warning;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.ResultTable;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.SampleKey;

/** What an archive keeps of splits and what follows from it, as tables. Column names are a contract. */
public final class KeptTables {

	private KeptTables() {
	}

	/** A line a sample: {@code split,sample,cluster,role}; cluster −1 for noise. */
	public static void labels(Path file, List<Split> splits) throws IntakeException {
		ResultTable.write(file, List.of("split", "sample", "cluster", "role"), splits.stream().flatMap(split -> IntStream
				.range(0, split.getLabels().size()).mapToObj(row -> List.of(split.getId(), split.getLabels().key(row).toString(),
						split.getLabels().cluster(row), split.getLabels().role(row).toString()))));
	}

	/** A line a noise sample with all its evidence, in the order given; {@code made} is "no" for unplaced ones. */
	public static void evidence(Path file, List<Evidence> evidence) throws IntakeException {
		ResultTable.write(file,
				List.of("sample", "made", "cluster", "strength", "margin", "carrier", "nearest", "nearestCluster", "nearestAgrees",
						"floorM", "carrierOnFloor", "clusterOnFloor", "floorVotes", "placeErrorM", "placeDoubt", "overlap",
						"levelDeficitDb", "levelScatterDb", "readingsDoubt", "errorChangeM", "queriesAffected", "queries",
						"comparisonsAdded", "warnings"),
				evidence.stream().map(KeptTables::row));
	}

	private static List<?> row(Evidence e) {
		return Arrays.asList(e.sample().toString(), yes(e.made()), number(e.cluster()), e.strengthR(), e.margin(), name(e.carrier()),
				name(e.nearest()), number(e.nearestCluster()), yes(e.agrees()), e.floorMetres(), yes(e.carrierOnFloor()),
				e.clusterFloorShare(), e.floorVotes(), e.placeErrorMetres(), e.placeScore(), e.overlap(), e.levelDeficitDb(),
				e.levelScatterDb(), e.readingsScore(), e.effect().errorChangeMetres(), e.effect().affected(), e.effect().queries(),
				e.effect().comparisonsAdded(), e.warnings().stream().map(Warning::name).collect(Collectors.joining(" ")));
	}

	private static String yes(boolean is) {
		return is ? "yes" : "no";
	}

	private static Integer number(int cluster) {
		return cluster < 0 ? null : cluster;
	}

	private static String name(SampleKey key) {
		return key == null ? null : key.toString();
	}

	/** A line a way of matching. */
	public static void measures(Path file, SplitMeasurement measured) throws IntakeException {
		Stream<List<?>> rows = measured.columns().stream().map(c -> List.of(c.name(), c.errors().meanMetres(), c.meanInterval().low(),
				c.meanInterval().high(), c.errors().medianMetres(), c.errors().p75Metres(), c.errors().p95Metres(), c.ratio(),
				c.ratioInterval().low(), c.ratioInterval().high(), c.comparisons(), c.comparisonShare(), c.how()));
		ResultTable.write(file, List.of("name", "meanErrorM", "meanLowM", "meanHighM", "medianErrorM", "p75M", "p95M", "toPlain",
				"toPlainLow", "toPlainHigh", "comparisonsPerQuery", "comparisonShare", "how"), rows);
	}
}
