package org.cairnfield.report.files;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cairnfield.core.choose.AutomaticChoice;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.correlate.NoisePlacement;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.measure.PositionErrors;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.decide.Outcome;
import org.cairnfield.curation.measure.Measures;
import org.cairnfield.curation.measure.Way;
import org.cairnfield.curation.propose.Evidence;
import org.cairnfield.curation.propose.Warning;
import org.cairnfield.curation.run.FileRun;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.ResultTable;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.SampleKey;

/** Results as tables that other programs read, of archives and of files. Column names are a contract. */
public final class Tables {

	private Tables() {
	}

	/** Samples of a run's map in the order of the files, by their place in the cleaned map and by their name. */
	private static Stream<Named> inOrder(FileRun run) {
		SampleKey[] keys = run.files().keys();
		return IntStream.range(0, keys.length).filter(s -> keys[s] != null && run.onMap().index(keys[s]) >= 0)
				.mapToObj(s -> new Named(run.onMap().index(keys[s]), run.files().intake().sampleIds().get(s)));
	}

	private record Named(int sample, String id) {
	}

	/** A line a sample: {@code sample,cluster,role}; cluster −1 for noise. */
	public static void labels(Path file, FileRun run) throws IntakeException {
		Clustering c = run.onMap().clustering();
		ResultTable.write(file, List.of("sample", "cluster", "role"),
				inOrder(run).map(n -> List.of(n.id, c.label(n.sample), c.role(n.sample).toString())));
	}

	/** A line a sample: {@code split,sample,cluster,role}; cluster −1 for noise. */
	public static void labels(Path file, List<Split> splits) throws IntakeException {
		ResultTable.write(file, List.of("split", "sample", "cluster", "role"),
				splits.stream().flatMap(split -> IntStream
						.range(0, split.getLabels().size())
						.mapToObj(row -> List.of(split.getId(), split.getLabels().key(row).toString(),
								split.getLabels().cluster(row), split.getLabels().role(row).toString()))));
	}

	/**
	 * A line a noise sample: {@code sample,cluster,strength,margin,carrier,runnerUp}. The cluster is empty where no proposal is made; strength is
	 * empty too where the gate kept correlation from running, or no correlation is defined.
	 */
	public static void proposals(Path file, FileRun run) throws IntakeException {
		String[] ids = new String[run.onMap().size()];
		inOrder(run).forEach(n -> ids[n.sample] = n.id);
		NoisePlacement[] placed = new NoisePlacement[ids.length];
		run.proposals().placements().forEach(p -> placed[p.sample()] = p);
		ResultTable.write(file, List.of("sample", "cluster", "strength", "margin", "carrier", "runnerUp"),
				inOrder(run).filter(n -> run.onMap().clustering().isNoise(n.sample))
						.map(n -> row(n.id, placed[n.sample], run, ids)));
	}

	private static List<Object> row(String id, NoisePlacement p, FileRun run, String[] ids) {
		return p == null ? Arrays.<Object>asList(id, null, null, null, null, null)
				: Arrays.<Object>asList(id, run.proposals().isMade(p) ? p.cluster() : null, p.strength(), p.margin(),
						p.carrier() < 0 ? null : ids[p.carrier()],
						p.runnerUp() == Clustering.NOISE ? null : p.runnerUp());
	}

	/** The split map: where each sample is, its cluster by DBSCAN, and the one it has with every proposal approved. */
	public static void splitMap(Path file, FileRun run) throws IntakeException {
		SplitOnMap split = run.onMap();
		Clustering after = Outcome.allApproved(split).clustering();
		RadioMap map = split.map();
		ResultTable.write(file, List.of("sample", "site", "floor", "x", "y", "cluster", "role", "clusterWithProposals"),
				inOrder(run).map(n -> List.of(n.id, map.sites().get(map.site(n.sample)), map.floor(n.sample),
						map.x(n.sample), map.y(n.sample),
						split.cluster(n.sample), split.clustering().role(n.sample).toString(), after.label(n.sample))));
	}

	/** A line a way of matching. */
	public static void measures(Path file, FileRun run) throws IntakeException {
		ResultTable.write(file,
				List.of("name", "meanErrorM", "meanLowM", "meanHighM", "medianErrorM", "rmseM", "p75M", "p90M", "p95M",
						"ce50M", "ce95M", "floorHitRate", "siteHitRate", "comparisonsPerQuery", "matchTimeRatio",
						"how"),
				run.measured().ways().stream().map(way -> row(way, run.measured())));
	}

	private static List<Object> row(Way way, Measures measured) {
		PositionErrors e = way.errors();
		return List.of(FileRun.nameOf(way), e.meanMetres(), way.mean().low(), way.mean().high(), e.medianMetres(),
				e.rmseMetres(),
				e.p75Metres(), e.p90Metres(), e.p95Metres(), e.ce50Metres(), e.ce95Metres(), e.floorHitRate(),
				e.siteHitRate(),
				way.comparisons(), measured.timeRatios().get(way.name()), way.how());
	}

	/** A line for each of what the automatic choice tried, best first. */
	public static void tried(Path file, List<AutomaticChoice.Tried> tried) throws IntakeException {
		Stream<List<?>> rows = tried.stream()
				.map(t -> List.of(String.format(Locale.ROOT, Messages.Tables_dbscanMinpts, t.epsilon(), t.minPts(),
						t.search().cut() ? Messages.Tables_largeClustersCut : ""), probes(t.search()),
						t.search().voting().toString(), t.meanErrorMetres(),
						t.comparisonShare()));
		ResultTable.write(file, List.of("splitting", "search", "voting", "heldOutMeanErrorM", "comparisonShare"), rows);
	}

	private static String probes(Search search) {
		String cells = search.cellProbes() == 1 ? Messages.Tables_1Cell
				: Words.bind(Messages.Tables_cells, search.cellProbes());
		return search.twoLevels() ? Words.bind(Messages.Tables_twoLevelsGroups, search.groupProbes(), cells) : cells;
	}

	/** A line a noise sample with all its evidence, in the order given; {@code made} is "no" for unplaced ones. */
	public static void evidence(Path file, List<Evidence> evidence) throws IntakeException {
		ResultTable.write(file,
				List.of("sample", "made", "cluster", "strength", "margin", "carrier", "nearest", "nearestCluster",
						"nearestAgrees",
						"floorM", "carrierOnFloor", "clusterOnFloor", "floorVotes", "placeErrorM", "placeDoubt",
						"overlap",
						"levelDeficitDb", "levelScatterDb", "readingsDoubt", "errorChangeM", "queriesAffected",
						"queries",
						"comparisonsAdded", "warnings", "nearestErrorChangeM", "poolErrorChangeM", "advice"),
				evidence.stream().map(Tables::row));
	}

	private static List<?> row(Evidence e) {
		return Arrays.asList(e.sample().toString(), yes(e.made()), number(e.cluster()), e.strengthR(), e.margin(),
				name(e.carrier()),
				name(e.nearest()), number(e.nearestCluster()), yes(e.agrees()), e.floorMetres(),
				yes(e.carrierOnFloor()),
				e.clusterFloorShare(), e.floorVotes(), e.placeErrorMetres(), e.placeScore(), e.overlap(),
				e.levelDeficitDb(),
				e.levelScatterDb(), e.readingsScore(), e.effect().errorChangeMetres(), e.effect().affected(),
				e.effect().queries(),
				e.effect().comparisonsAdded(),
				e.warnings().stream().map(Warning::name).collect(Collectors.joining(" ")),
				e.outlook().nearest().errorChangeMetres(), e.outlook().pool().errorChangeMetres(),
				e.advice().word());
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
}
