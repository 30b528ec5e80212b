package org.cairnfield.curation.run;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import org.cairnfield.core.series.Curve;
import org.cairnfield.curation.measure.Variant;
import org.cairnfield.curation.picture.ClusterSizes;
import org.cairnfield.curation.picture.ErrorCurve;
import org.cairnfield.curation.picture.Pictures;
import org.cairnfield.curation.split.Split;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.TextFile;

/** What a run leaves in a folder: the split map, the proposals, the figures and three pictures. */
public final class RunFiles {

	private RunFiles() {
	}

	/**
	 * Makes the folder where there is none; files of an earlier run are replaced one by one.
	 *
	 * @param id names of the samples of the split's map
	 * @return the files written
	 * @throws IntakeException where the folder cannot be written to
	 */
	public static List<Path> write(Path folder, SurveyRun run, IntFunction<String> id) throws IntakeException {
		OutputFolder.make(folder);
		Path map = folder.resolve("split-map.csv");
		Path proposals = folder.resolve("proposals.csv");
		Path measures = folder.resolve("measures.csv");
		Path tried = folder.resolve("choice.csv");
		Tables.splitMap(map, run.proposals(), id);
		Tables.proposals(proposals, run.proposals(), id);
		Tables.measures(measures, run.measured());
		Tables.tried(tried, run.measured().choice());
		Path curve = folder.resolve("k-distance.svg");
		Path sizes = folder.resolve("cluster-sizes.svg");
		Path errors = folder.resolve("error-distribution.svg");
		TextFile.write(curve, kDistance(run.split()));
		TextFile.write(sizes, clusterSizes(run));
		TextFile.write(errors, errorDistribution(run));
		return List.of(map, proposals, measures, tried, curve, sizes, errors);
	}

	private static String kDistance(Split split) {
		return Pictures.kDistance(Curve.ascending("k-distance", split.curve()), split.minPts(), split.elbow(),
				split.epsilon(), unit(split), source(split) + ".");
	}

	private static String unit(Split split) {
		boolean decibels = split.signals().representation().toString().equals("positive") && split.pcaComponents() == 0;
		return decibels ? "dB" : split.signals().representation().toString();
	}

	private static String source(Split split) {
		return String.format(Locale.ROOT, "%d samples, %d access points, %s representation, %s distance%s",
				split.map().size(), split.map().accessPointCount(), split.signals().representation(),
				split.signals().distance(),
				split.pcaComponents() > 0 ? ", " + split.pcaComponents() + " principal components" : "");
	}

	private static String clusterSizes(SurveyRun run) {
		return Pictures.clusterSizes(
				ClusterSizes.of(run.split().clustering().labels(), run.proposals().approved().labels()),
				String.format(Locale.ROOT, "%s; DBSCAN, ε %.6g, minPts %d.", source(run.split()), run.split().epsilon(),
						run.split().minPts()));
	}

	private static String errorDistribution(SurveyRun run) {
		// where all is noise a split has nothing to search, and no error either
		List<Variant> silent = run.measured().variants().stream().filter(v -> v.errors().n() == 0).toList();
		List<ErrorCurve> curves = run.measured().variants().stream().filter(v -> !silent.contains(v))
				.map(v -> ErrorCurve.of(v.name(), v.errors().errorsMetres())).toList();
		String missing = silent.stream().map(Variant::name).collect(Collectors.joining(", "));
		return Pictures.errorDistribution(curves, run.test().size() + (run.heldOut() ? " held-out" : " test")
				+ " samples against a map of " + run.split().map().size()
				+ (missing.isEmpty() ? "." : "; no position by " + missing + "."));
	}
}
