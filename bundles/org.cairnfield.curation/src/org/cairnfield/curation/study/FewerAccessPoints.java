package org.cairnfield.curation.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cairnfield.core.choose.HeldOut;
import org.cairnfield.core.choose.TrialScore;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.reduce.OrthogonalSearch;
import org.cairnfield.core.reduce.PlaceOutputs;
import org.cairnfield.core.reduce.SignalMatrix;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.measure.PackCost;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.split.UnfitSurveyException;
import org.cairnfield.curation.study.DbscanContender.Noise;
import org.cairnfield.model.Archive;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Scope;

/**
 * How few access points will do: those that explain the place best, by orthogonal search, and what it costs to leave the others out.
 * Each number is judged on held-out training positions, in the split and search that win there.
 *
 * @param steps all access points first, then fewer and fewer
 */
public record FewerAccessPoints(List<Step> steps) {

	/** Held-out errors so close are not told apart. */
	private static final double TOLERANCE = 1.03;
	private static final int FEWEST_SAMPLES = 10;

	/**
	 * @param kept            access points that stay
	 * @param others          addresses of those that would be set aside
	 * @param errorM          mean on held-out positions, in metres
	 * @param comparisonShare fingerprints compared a query, as a share of plain matching
	 * @param bytes           of all samples in a device pack
	 */
	public record Step(int kept, List<String> others, double errorM, double comparisonShare, double bytes) {

		/** What the archive would do; can be undone. */
		public Remedy remedy() {
			return new Remedy.SetAsideAccessPoints(others,
					Words.bind(Messages.FewerAccessPoints_tellsLittleThatOthersDo, kept));
		}

		@Override
		public String toString() {
			return String.format(Locale.ROOT, Messages.FewerAccessPoints_accessPointsMComparedBytes, kept, errorM,
					100 * comparisonShare, bytes);
		}
	}

	public FewerAccessPoints {
		steps = List.copyOf(steps);
	}

	/**
	 * Judges them on the map of an archive.
	 *
	 * @param archive that nobody changes meanwhile
	 * @throws UnfitSurveyException where there is too little to judge by
	 */
	public static FewerAccessPoints of(Archive archive, long seed, Workers workers) {
		RadioMap map = ArchiveMap.of(archive, Scope.ARCHIVE, SurveyKind.TRAINING).map();
		if (map.size() < FEWEST_SAMPLES) {
			throw new UnfitSurveyException(
					Words.bind(Messages.FewerAccessPoints_thereAreSamplesToJudge, map.size(), FEWEST_SAMPLES));
		}
		Signals signals = Signals.of(map);
		int all = (int) IntStream.range(0, map.accessPointCount()).filter(heard(map)::contains).count();
		List<HeldOut> heldOuts = HeldOut.several(signals, seed);
		Shared shared = Shared.kept();
		Contest whole = Contest.of(heldOuts,
				Stream.concat(DbscanContender.all(Noise.CORRELATED).stream(),
						KMeansContender.all(map.size(), seed).stream()).toList(),
				map.size(), seed, shared, workers);
		Contest fewer = Contest.of(heldOuts, OrthogonalContender.all(map.accessPointCount(), seed), map.size(), seed,
				shared, workers);
		if (whole.best().isEmpty()) {
			throw new UnfitSurveyException(Messages.FewerAccessPoints_noSamplesAreCloseEnough);
		}
		List<Step> steps = new ArrayList<>(List.of(step(all, List.of(), whole.best().get(0).score(), map)));
		int[] kept = fewer.best().stream().mapToInt(entry -> accessPoints(entry.contender())).distinct().sorted()
				.toArray();
		if (kept.length > 0) {
			OrthogonalSearch search = OrthogonalSearch.of(new SignalMatrix(signals), PlaceOutputs.of(map),
					kept[kept.length - 1], 1, workers);
			for (int k = kept.length - 1; k >= 0; k--) {
				int number = kept[k];
				Set<Integer> columns = Arrays.stream(search.columns()).limit(number).boxed()
						.collect(Collectors.toSet());
				List<String> others = heard(map).stream().filter(a -> !columns.contains(a)).map(map.accessPoints()::get)
						.sorted().toList();
				TrialScore score = fewer.best().stream().filter(entry -> accessPoints(entry.contender()) == number)
						.findFirst().orElseThrow().score();
				steps.add(step(columns.size(), others, score, map.hearing(columns::contains)));
			}
		}
		return new FewerAccessPoints(steps);
	}

	private static Step step(int kept, List<String> others, TrialScore score, RadioMap map) {
		return new Step(kept, others, score.meanErrorMetres(), score.comparisonShare(), PackCost.plain(map));
	}

	private static int accessPoints(Contender contender) {
		return ((OrthogonalContender) contender).accessPoints();
	}

	private static Set<Integer> heard(RadioMap map) {
		return IntStream.range(0, map.size()).flatMap(s -> IntStream.range(map.firstReading(s), map.endReading(s)))
				.map(map::accessPoint).boxed()
				.collect(Collectors.toSet());
	}

	/** The fewest with which positions are no worse; empty where all are needed. */
	public Optional<Step> proposed() {
		double most = TOLERANCE * steps.get(0).errorM;
		return steps.stream().skip(1).filter(step -> step.errorM <= most).reduce((first, second) -> second);
	}
}
