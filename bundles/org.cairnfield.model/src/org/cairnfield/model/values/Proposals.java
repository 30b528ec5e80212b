package org.cairnfield.model.values;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Proposals of a split, sorted by sample, at most one for each. Immutable. */
public final class Proposals {

	/** No proposals. */
	public static final Proposals NONE = new Proposals(List.of());

	private final List<Proposal> sorted;

	private Proposals(List<Proposal> sorted) {
		this.sorted = sorted;
	}

	/** @throws IllegalArgumentException where a sample has two */
	public static Proposals of(Collection<Proposal> proposals) {
		List<Proposal> sorted = proposals.stream().sorted(Comparator.comparing(Proposal::sample)).toList();
		for (int i = 1; i < sorted.size(); i++) {
			if (sorted.get(i).sample().equals(sorted.get(i - 1).sample())) {
				throw new IllegalArgumentException("two proposals for sample " + sorted.get(i).sample());
			}
		}
		return new Proposals(sorted);
	}

	/** All of them, by sample; cannot be changed. */
	public List<Proposal> all() {
		return sorted;
	}

	/** The one for a sample. */
	public Optional<Proposal> of(SampleKey sample) {
		int low = 0;
		int high = sorted.size() - 1;
		while (low <= high) {
			int middle = (low + high) >>> 1;
			int order = sorted.get(middle).sample().compareTo(sample);
			if (order == 0) {
				return Optional.of(sorted.get(middle));
			} else if (order < 0) {
				low = middle + 1;
			} else {
				high = middle - 1;
			}
		}
		return Optional.empty();
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof Proposals p && sorted.equals(p.sorted);
	}

	@Override
	public int hashCode() {
		return sorted.hashCode();
	}

	/** The number of proposals. */
	@Override
	public String toString() {
		return sorted.size() + " proposals";
	}
}
