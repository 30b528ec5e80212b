package org.cairnfield.report.files;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.cairnfield.core.series.Curve;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.decide.Outcome;
import org.cairnfield.curation.measure.Way;
import org.cairnfield.curation.run.FileRun;
import org.cairnfield.report.internal.picture.ClusterSizes;
import org.cairnfield.report.internal.picture.ErrorCurve;
import org.cairnfield.report.internal.picture.Pictures;
import org.cairnfield.curation.split.KDistanceCurve;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.TextFile;

/** What a run leaves in a folder: the split map, the proposals, the figures and three pictures. */
public final class RunFiles {

	private RunFiles() {
	}

	/**
	 * Makes the folder where there is none; files of an earlier run are replaced one by one.
	 *
	 * @return the files written
	 * @throws IntakeException where the folder cannot be written to
	 */
	public static List<Path> write(Path folder, FileRun run, Workers workers) throws IntakeException {
		OutputFolder.make(folder);
		Path map = folder.resolve("split-map.csv");
		Path proposals = folder.resolve("proposals.csv");
		Path measures = folder.resolve("measures.csv");
		Path tried = folder.resolve("choice.csv");
		Tables.splitMap(map, run);
		Tables.proposals(proposals, run);
		Tables.measures(measures, run);
		Tables.tried(tried, run.tried());
		Path curve = folder.resolve("k-distance.svg");
		Path sizes = folder.resolve("cluster-sizes.svg");
		Path errors = folder.resolve("error-distribution.svg");
		TextFile.write(curve, kDistance(run, workers));
		TextFile.write(sizes, clusterSizes(run, workers));
		TextFile.write(errors, errorDistribution(run));
		return List.of(map, proposals, measures, tried, curve, sizes, errors);
	}

	private static String kDistance(FileRun run, Workers workers) {
		KDistanceCurve curve = run.curve(workers);
		boolean decibels = run.split().getRepresentation().equals("positive") && run.study().pcaShare().isEmpty();
		return Pictures.kDistance(Curve.ascending("k-distance", curve.ascending()), curve.minPts(), curve.elbow(),
				run.split().getEpsilon(),
				decibels ? "dB" : run.split().getRepresentation(), source(run, workers) + ".");
	}

	private static String source(FileRun run, Workers workers) {
		int components = run.study().components(workers);
		return String.format(Locale.ROOT, Messages.RunFiles_samplesAccessPointsRepresentation,
				run.onMap().size(),
				run.files().intake().map().accessPointCount(), run.split().getRepresentation(),
				run.split().getDistance(),
				components > 0 ? Words.bind(Messages.RunFiles_principalComponents, components) : "");
	}

	private static String clusterSizes(FileRun run, Workers workers) {
		return Pictures.clusterSizes(
				ClusterSizes.of(run.onMap().clustering().labels(),
						Outcome.allApproved(run.onMap()).clustering().labels()),
				String.format(Locale.ROOT, Messages.RunFiles_dbscanMinpts, source(run, workers),
						run.split().getEpsilon(),
						run.split().getMinPts()));
	}

	private static String errorDistribution(FileRun run) {
		// where all is noise a split has nothing to search, and no error either
		List<Way> silent = run.measured().ways().stream().filter(w -> w.errors().n() == 0).toList();
		List<ErrorCurve> curves = run.measured().ways().stream().filter(w -> !silent.contains(w))
				.map(w -> ErrorCurve.of(FileRun.nameOf(w), w.errors().errorsMetres())).toList();
		String missing = silent.stream().map(FileRun::nameOf).collect(Collectors.joining(", "));
		return Pictures.errorDistribution(curves,
				Words.bind(Messages.RunFiles_samplesAgainstAMapOf, run.measured().test(),
						run.files().isHeldOut() ? Messages.RunFiles_heldOut : Messages.RunFiles_test,
						run.onMap().size(),
						missing.isEmpty() ? "." : Words.bind(Messages.RunFiles_noPositionBy, missing)));
	}
}
