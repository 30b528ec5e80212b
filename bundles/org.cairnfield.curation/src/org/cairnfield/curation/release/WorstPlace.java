package org.cairnfield.curation.release;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.measure.SideBySide;
import org.cairnfield.curation.measure.SideBySide.Figures;

/**
 * The floor or the site where a map positions worst.
 *
 * @param figure of a gate; NaN where no place has test samples enough
 * @param words  which place it is, and what is not judged
 */
record WorstPlace(double figure, String words) {

	/** With fewer test samples a place is not judged: one bad sample would decide. */
	static final int FEWEST = 10;

	private record Place(String name, int samples, Figures figures) {
	}

	/** @param measured in one way */
	static WorstPlace of(Gate gate, SideBySide measured) {
		boolean bySite = switch (gate) {
		case SITE_MEAN, SITE_P95, SITE_HITS -> true;
		default -> false;
		};
		ToDoubleFunction<Figures> of = switch (gate) {
		case FLOOR_MEAN, SITE_MEAN -> Figures::meanMetres;
		case FLOOR_P95, SITE_P95 -> Figures::p95Metres;
		default -> Figures::rightShare;
		};
		Stream<Place> places = bySite
				? measured.sites().stream().map(s -> new Place(s.site(), s.samples(), s.ways().get(0)))
				: measured.floors().stream()
						.map(f -> new Place(Words.bind(Messages.WorstPlace_floor, f.site(), f.level()), f.samples(),
								f.ways().get(0)));
		List<Place> all = places.toList();
		List<Place> judged = all.stream().filter(place -> place.samples() >= FEWEST).toList();
		String few = all.size() == judged.size() ? ""
				: String.format(Locale.ROOT, Messages.WorstPlace_notJudgedWithFewerThan, FEWEST,
						String.join(", ",
								all.stream().filter(place -> place.samples() < FEWEST).map(Place::name).toList()));
		Comparator<Place> better = Comparator.comparingDouble(place -> of.applyAsDouble(place.figures()));
		return judged.stream().max(gate.atMost() ? better : better.reversed())
				.map(worst -> new WorstPlace(of.applyAsDouble(worst.figures()),
						Words.bind(Messages.WorstPlace_testSamplesTheWorstOf, worst.name(), worst.samples(),
								judged.size(), few)))
				.orElseGet(() -> new WorstPlace(Double.NaN,
						Words.bind(Messages.WorstPlace_noPlaceHasTestSamples, FEWEST, few)));
	}
}
