package org.cairnfield.curation.run;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cairnfield.core.choose.AutomaticChoice;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.correlate.Placement;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.measure.PositionErrors;
import org.cairnfield.curation.measure.Measurement;
import org.cairnfield.curation.measure.Variant;
import org.cairnfield.curation.propose.Proposals;
import org.cairnfield.curation.split.Split;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.ResultTable;

/** Results as tables that other programs read. Column names are a contract. */
public final class Tables {

	private Tables() {
	}

	/** A line a sample: {@code sample,cluster,role}; cluster −1 for noise. */
	public static void labels(Path file, Split split, IntFunction<String> id) throws IntakeException {
		Clustering c = split.clustering();
		ResultTable.write(file, List.of("sample", "cluster", "role"), IntStream.range(0, c.size())
				.mapToObj(s -> List.of(id.apply(s), c.label(s), c.role(s).toString())));
	}

	/**
	 * A line a noise sample: {@code sample,cluster,strength,margin,carrier,runnerUp}. The cluster is empty where no proposal is made; strength is
	 * empty too where the gate kept correlation from running, or no correlation is defined.
	 */
	public static void proposals(Path file, Proposals proposals, IntFunction<String> id) throws IntakeException {
		List<String> header = List.of("sample", "cluster", "strength", "margin", "carrier", "runnerUp");
		if (proposals.open()) {
			ResultTable.write(file, header, proposals.placements().stream().map(p -> row(p, proposals, id)));
			return;
		}
		Clustering c = proposals.split().clustering();
		ResultTable.write(file, header, IntStream.range(0, c.size()).filter(c::isNoise)
				.mapToObj(s -> Arrays.<Object>asList(id.apply(s), null, null, null, null, null)));
	}

	private static List<Object> row(Placement p, Proposals proposals, IntFunction<String> id) {
		String carrier = p.carrier() < 0 ? null : id.apply(p.carrier());
		return Arrays.<Object>asList(id.apply(p.sample()), proposals.isMade(p) ? p.cluster() : null, p.strength(),
				p.margin(), carrier, p.runnerUp() == Clustering.NOISE ? null : p.runnerUp());
	}

	/** The split map: where each sample is, its cluster by DBSCAN, and the one it has with every proposal approved. */
	public static void splitMap(Path file, Proposals proposals, IntFunction<String> id) throws IntakeException {
		Clustering before = proposals.split().clustering();
		Clustering after = proposals.approved();
		RadioMap map = proposals.split().map();
		ResultTable.write(file, List.of("sample", "site", "floor", "x", "y", "cluster", "role", "clusterWithProposals"),
				IntStream.range(0, map.size())
						.mapToObj(s -> List.of(id.apply(s), map.sites().get(map.site(s)), map.floor(s), map.x(s), map.y(s),
								before.label(s), before.role(s).toString(), after.label(s))));
	}

	/** A line a way of matching. */
	public static void measures(Path file, Measurement measured) throws IntakeException {
		ResultTable.write(file,
				List.of("name", "meanErrorM", "meanLowM", "meanHighM", "medianErrorM", "rmseM", "p75M", "p90M", "p95M",
						"ce50M", "ce95M", "floorHitRate", "siteHitRate", "comparisonsPerQuery", "matchTimeRatio", "how"),
				measured.variants().stream().map(Tables::row));
	}

	private static List<Object> row(Variant v) {
		PositionErrors e = v.errors();
		return List.of(v.name(), e.meanMetres(), v.meanInterval().low(), v.meanInterval().high(), e.medianMetres(),
				e.rmseMetres(), e.p75Metres(), e.p90Metres(), e.p95Metres(), e.ce50Metres(), e.ce95Metres(),
				e.floorHitRate(), e.siteHitRate(), v.comparisonsPerQuery(), v.matchTimeRatio(), v.how());
	}

	/** A line for each of what the automatic choice tried, best first. */
	public static void tried(Path file, AutomaticChoice.Choice choice) throws IntakeException {
		Stream<List<?>> rows = choice.tried().stream().map(t -> List.of(t.splitting().toString(), t.plan().toString(),
				t.voting().toString(), t.meanErrorMetres(), t.comparisonShare()));
		ResultTable.write(file, List.of("splitting", "search", "voting", "heldOutMeanErrorM", "comparisonShare"), rows);
	}
}
