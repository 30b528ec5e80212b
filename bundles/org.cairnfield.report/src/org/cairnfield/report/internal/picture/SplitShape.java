package org.cairnfield.report.internal.picture;

import java.util.List;

/**
 * Sizes of the clusters of one split.
 *
 * @param name  of the split
 * @param sizes samples of each cluster, largest first
 * @param noise samples in none
 */
public record SplitShape(String name, List<Integer> sizes, int noise) {

	int samples() {
		return noise + sizes.stream().mapToInt(Integer::intValue).sum();
	}
}
