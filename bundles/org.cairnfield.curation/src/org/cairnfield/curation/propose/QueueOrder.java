package org.cairnfield.curation.propose;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.cairnfield.model.values.SampleKey;

/** In which order a reviewer meets the noise samples. Ties go by sample, so that an order is always the same. */
public enum QueueOrder {
	/** Proposals that carry a mark, then those whose advice is something else than approving, then the most doubtful. */
	MARKED_FIRST(Messages.QueueOrder_markedFirst,
			Comparator.comparing((Evidence e) -> !e.made()).thenComparingInt(e -> -marks(e))
					.thenComparing(e -> e.advice() == Advice.APPROVE)
					.thenComparing(number(e -> -Math.max(e.placeScore(), e.readingsScore())))
					.thenComparing(number(Evidence::margin))),
	/** The best fit first. */
	STRENGTH(Messages.QueueOrder_strengthR, number(e -> -e.strengthR())),
	/** The tightest first. */
	MARGIN(Messages.QueueOrder_margin, number(Evidence::margin)),
	/** The farthest first, those without a sample of the cluster on their floor before all. */
	FLOOR_DISTANCE(Messages.QueueOrder_distanceOnTheFloor,
			Comparator.comparing((Evidence e) -> !Double.isNaN(e.floorMetres()))
					.thenComparing(number(e -> -e.floorMetres()))),
	/** The most doubtful place first. */
	PLACE(Messages.QueueOrder_place, number(e -> -e.placeScore())),
	/** The most doubtful readings first. */
	READINGS(Messages.QueueOrder_readings, number(e -> -e.readingsScore())),
	/** What would worsen the floor's error most, first. */
	EFFECT(Messages.QueueOrder_effectOnError, number(e -> -e.effect().errorChangeMetres())),
	/** By target cluster. */
	CLUSTER(Messages.QueueOrder_cluster, Comparator.comparingInt(Evidence::cluster)),
	/** By survey and sample. */
	SAMPLE(Messages.QueueOrder_sample, Comparator.comparing(Evidence::sample));

	/** What one number orders by; NaN last. */
	@FunctionalInterface
	private interface Figure {
		double of(Evidence evidence);
	}

	private final String title;
	private final Comparator<Evidence> comparator;

	QueueOrder(String title, Comparator<Evidence> comparator) {
		this.title = title;
		this.comparator = comparator.thenComparing(Evidence::sample, Comparator.<SampleKey>naturalOrder());
	}

	private static Comparator<Evidence> number(Figure figure) {
		return (a, b) -> Double.compare(figure.of(a), figure.of(b));
	}

	/** Counted without a list, for a long queue asks for it often. */
	private static int marks(Evidence evidence) {
		int marks = 0;
		for (Warning warning : evidence.warnings()) {
			marks += warning.isMark() ? 1 : 0;
		}
		return marks;
	}

	/** For a person. */
	public String title() {
		return title;
	}

	public Comparator<Evidence> comparator() {
		return comparator;
	}

	/** A new list in this order. */
	public List<Evidence> sorted(Collection<Evidence> evidence) {
		return evidence.stream().sorted(comparator).toList();
	}
}
