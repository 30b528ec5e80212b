package org.cairnfield.ui.internal.samples.model;

import java.util.Arrays;
import java.util.function.IntPredicate;

import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.samples.FindingMarks;
import org.cairnfield.curation.samples.SampleContent;

/**
 * Which samples a table shows, and in which order. Making one takes long for a million, so it is made beside the user
 * interface; it is immutable, and to look something up in it costs nothing.
 */
public final class Arrangement {

	/** Nothing is shown. */
	public static final Arrangement NONE = new Arrangement(SampleContent.NONE, null, false, new int[0], new int[0]);

	private final SampleContent content;
	private final SampleColumn sortedBy;
	private final boolean descending;
	private final int[] shown;
	private final int[] positions;

	private Arrangement(SampleContent content, SampleColumn sortedBy, boolean descending, int[] shown,
			int[] positions) {
		this.content = content;
		this.sortedBy = sortedBy;
		this.descending = descending;
		this.shown = shown;
		this.positions = positions;
	}

	/**
	 * @param sortedBy null for the order of the list
	 * @param filter   says of an index whether it is shown, on any thread; null to show all
	 * @param workers  whose progress may cancel
	 * @throws java.util.concurrent.CancellationException where it did
	 */
	public static Arrangement of(SampleContent content, SampleColumn sortedBy, boolean descending, IntPredicate filter,
			Workers workers) {
		int[] shown = filter == null ? IndexSort.all(content.size()) : passing(content, filter, workers);
		if (sortedBy != null) {
			IndexSort.Order order = SortKeys.order(content, sortedBy, descending);
			IndexSort.sort(shown, order, workers::checkCancelled);
		}
		int[] positions = new int[content.size()];
		Arrays.fill(positions, -1);
		for (int p = 0; p < shown.length; p++) {
			positions[shown[p]] = p;
		}
		return new Arrangement(content, sortedBy, descending, shown, positions);
	}

	private static int[] passing(SampleContent content, IntPredicate filter, Workers workers) {
		boolean[] passes = new boolean[content.size()];
		workers.progress().begin("filtering", passes.length);
		workers.forRanges(passes.length, () -> (from, to) -> {
			for (int i = from; i < to; i++) {
				passes[i] = filter.test(i);
			}
		});
		int count = 0;
		for (boolean each : passes) {
			count += each ? 1 : 0;
		}
		int[] indices = new int[count];
		for (int i = 0, at = 0; i < passes.length; i++) {
			if (passes[i]) {
				indices[at++] = i;
			}
		}
		return indices;
	}

	public SampleContent content() {
		return content;
	}

	/** The column sorted by, or null for the order of the list. */
	public SampleColumn sortedBy() {
		return sortedBy;
	}

	public boolean isDescending() {
		return descending;
	}

	/** How many samples are shown. */
	public int size() {
		return shown.length;
	}

	/** Index of the sample at a position. */
	public int index(int position) {
		return shown[position];
	}

	/** Position of a sample by its index, or −1 where it is filtered out. */
	public int position(int index) {
		return positions[index];
	}

	/** The same samples in the same places, with other findings. */
	public Arrangement withFindings(FindingMarks findings) {
		return new Arrangement(content.withFindings(findings), sortedBy, descending, shown, positions);
	}
}
