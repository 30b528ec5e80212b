package org.cairnfield.curation.samples;

import java.util.Map;

import org.cairnfield.model.values.SampleTable;

/**
 * Samples with what is known of them: findings, clusters, the addresses that they heard. Immutable, for any thread.
 *
 * @param addresses of access points, by their ids
 */
public record SampleContent(SampleRows rows, FindingMarks findings, ClusterMarks clusters,
		Map<String, String> addresses) {

	/** No samples. */
	public static final SampleContent NONE = new SampleContent(SampleRows.NONE, FindingMarks.NONE, ClusterMarks.NONE,
			Map.of());

	public int size() {
		return rows.size();
	}

	public SampleTable table(int index) {
		return rows.table(index);
	}

	/** The same samples with other findings. */
	public SampleContent withFindings(FindingMarks other) {
		return new SampleContent(rows, other, clusters, addresses);
	}

	/** Level (dBm) of the strongest access point, or {@link Integer#MIN_VALUE} where nothing was heard. */
	public int strongestDbm(int index) {
		SampleTable table = table(index);
		int row = rows.row(index);
		int strongest = Integer.MIN_VALUE;
		for (int k = table.heard(row) - 1; k >= 0; k--) {
			strongest = Math.max(strongest, table.rssiDbm(row, k));
		}
		return strongest;
	}

	/** The address of an access point as the archive writes it; its id where the archive does not know it. */
	public String address(String accessPointId) {
		return addresses.getOrDefault(accessPointId, accessPointId);
	}
}
