package org.cairnfield.curation.study;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.cairnfield.core.cluster.PointSet;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.reduce.OrthogonalSearch;
import org.cairnfield.core.reduce.PlaceOutputs;
import org.cairnfield.core.reduce.SignalMatrix;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;

/**
 * The access points that tell most of the place, by orthogonal search; then a split on what they say.
 *
 * @param accessPoints how many are kept
 * @param of           how many there are
 * @param then         how it is split
 */
record OrthogonalContender(int accessPoints, int of, Then then, long seed) implements Contender {

	private static final double[] SHARES = { 0.25, 0.5, 0.75 };
	private static final int FEWEST = 3;

	/** Of a map of so many access points; none where there are too few to choose from. */
	static List<Contender> all(int of, long seed) {
		return Arrays.stream(SHARES).mapToInt(share -> (int) Math.max(FEWEST, Math.round(share * of)))
				.filter(wanted -> wanted < of).distinct().boxed()
				.flatMap(wanted -> Then.splits(seed).stream()
						.<Contender>map(then -> new OrthogonalContender(wanted, of, then, seed)))
				.toList();
	}

	@Override
	public String setting() {
		return Words.bind(Messages.OrthogonalContender_ofAccessPoints, accessPoints, of, then.words());
	}

	@Override
	public Optional<Searchable> build(Signals map, Shared shared, Workers workers) {
		Reduced reduced = shared.answer(map, List.of("orthogonal", accessPoints), () -> reduced(map, shared, workers));
		UnaryOperator<RadioMap> heard = asked -> asked
				.hearing(ap -> reduced.names.contains(asked.accessPoints().get(ap)));
		return then
				.cells(new Then.Basis(Messages.OrthogonalContender_accessPoints, reduced.signals,
						PointSet.of(reduced.signals),
						KMeansContender.points(reduced.signals)), shared, workers)
				.map(cells -> new SplitSearchable(reduced.signals, cells.all(), cells.found(), heard, ""));
	}

	/** What some access points say of the samples. */
	private record Reduced(Signals signals, Set<String> names) {
	}

	private Reduced reduced(Signals map, Shared shared, Workers workers) {
		RadioMap whole = map.map();
		int most = shared.isKept() ? (int) Math.round(SHARES[SHARES.length - 1] * of) : accessPoints;
		OrthogonalSearch search = shared.answer(map, List.of(Messages.OrthogonalContender_orthogonalSearch),
				() -> OrthogonalSearch.of(new SignalMatrix(map), PlaceOutputs.of(whole), Math.max(accessPoints, most),
						1, workers));
		Set<Integer> columns = Arrays.stream(search.columns()).limit(accessPoints).boxed().collect(Collectors.toSet());
		return new Reduced(
				Signals.ofPart(whole.hearing(columns::contains), map.representation(), map.distance(),
						map.lowestRssiDbm()),
				columns.stream().map(whole.accessPoints()::get).collect(Collectors.toSet()));
	}
}
