package org.cairnfield.curation.decide;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.Scope;

/**
 * A split from which verdicts can be carried over to another.
 *
 * @param samples how many of its samples have verdicts that were not taken back
 */
public record CarrySource(Split split, int samples) {

	/**
	 * Splits of the archive with verdicts, whose scope overlaps. The most natural comes first: of the same scope, made
	 * before the other split, and the latest of those.
	 *
	 * @param to a split of the archive
	 */
	public static List<CarrySource> of(Archive archive, Split to) {
		List<Split> all = archive.getSplits();
		int at = all.indexOf(to);
		return all.stream().filter(from -> from != to && overlap(from.getScope(), to.getScope()))
				.map(from -> new CarrySource(from, decided(archive, from))).filter(source -> source.samples > 0)
				.sorted(Comparator.comparing((CarrySource source) -> !source.split.getScope().equals(to.getScope()))
						.thenComparing(source -> all.indexOf(source.split) > at)
						.thenComparing(source -> -all.indexOf(source.split)))
				.toList();
	}

	private static int decided(Archive archive, Split split) {
		List<LedgerEntry> entries = Standings.entries(archive, split);
		Set<String> gone = Standings.takenBack(entries);
		Set<SampleKey> samples = entries.stream().filter(entry -> !entry.takesBack() && !gone.contains(entry.id()))
				.map(LedgerEntry::sample).collect(Collectors.toSet());
		return samples.size();
	}

	private static boolean overlap(Scope a, Scope b) {
		return isEither(a.site(), b.site()) && isEither(a.level(), b.level());
	}

	/** Null is all of them. */
	private static boolean isEither(Object a, Object b) {
		return a == null || b == null || a.equals(b);
	}
}
