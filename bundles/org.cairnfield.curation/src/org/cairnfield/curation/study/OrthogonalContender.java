package org.cairnfield.curation.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.PointSet;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.reduce.OrthogonalSearch;
import org.cairnfield.core.reduce.PlaceOutputs;
import org.cairnfield.core.reduce.SignalMatrix;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.study.DbscanContender.Noise;
import org.cairnfield.curation.study.DbscanContender.Place;

/**
 * The access points that tell most of the place, by orthogonal search; then DBSCAN on what they say, correlated noise given back.
 *
 * @param share of the access points that are kept
 * @param place of ε
 */
record OrthogonalContender(double share, Place place) implements Contender {

	private static final double[] SHARES = { 0.125, 0.25, 0.5, 0.75 };
	private static final int FEWEST = 4;

	static List<Contender> all() {
		List<Contender> all = new ArrayList<>();
		for (double share : SHARES) {
			Place.FEW.forEach(place -> all.add(new OrthogonalContender(share, place)));
		}
		return all;
	}

	@Override
	public String setting() {
		return String.format(Locale.ROOT, "%.0f %% of the access points, %s", 100 * share, place);
	}

	@Override
	public Optional<Searchable> build(Signals map, Shared shared, Workers workers) {
		Reduced reduced = shared.answer(map, List.of("orthogonal", share), () -> reduced(map, shared, workers));
		Map<Place, Clustering> found = shared.answer(map, List.of("orthogonal dbscan", share),
				() -> Place.clusters(PointSet.of(reduced.signals), shared.isKept() ? Place.FEW : List.of(place), workers));
		UnaryOperator<RadioMap> heard = asked -> asked.hearing(ap -> reduced.names.contains(asked.accessPoints().get(ap)));
		return Optional.ofNullable(found.get(place)).map(clusters -> new SplitSearchable(reduced.signals,
				Noise.CORRELATED.treated(reduced.signals, clusters, workers), clusters, heard, reduced.names.size() + " access points"));
	}

	/** What some access points say of the samples. */
	private record Reduced(Signals signals, Set<String> names) {
	}

	private Reduced reduced(Signals map, Shared shared, Workers workers) {
		RadioMap whole = map.map();
		int most = Math.max(FEWEST, (int) Math.round(SHARES[SHARES.length - 1] * whole.accessPointCount()));
		int wanted = Math.max(FEWEST, (int) Math.round(share * whole.accessPointCount()));
		OrthogonalSearch search = shared.answer(map, List.of("orthogonal search"),
				() -> OrthogonalSearch.of(new SignalMatrix(map), PlaceOutputs.of(whole), shared.isKept() ? most : wanted, 1, workers));
		Set<Integer> columns = Arrays.stream(search.columns()).limit(wanted).boxed().collect(Collectors.toCollection(HashSet::new));
		RadioMap some = whole.hearing(columns::contains);
		return new Reduced(Signals.ofPart(some, map.representation(), map.distance(), map.lowestRssiDbm()),
				columns.stream().map(whole.accessPoints()::get).collect(Collectors.toSet()));
	}
}
