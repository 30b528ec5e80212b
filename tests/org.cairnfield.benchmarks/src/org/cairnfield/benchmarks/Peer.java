package org.cairnfield.benchmarks;

import java.util.ArrayList;
import java.util.List;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;

/** Another library's DBSCAN. */
interface Peer {

	/** A map in the library's own form; making it is not measured. */
	interface Prepared {
		/** @param minPts the sample itself counted; @return a cluster per sample, −1 for noise */
		int[] labels(double epsilon, int minPts);
	}

	Prepared prepare(Signals signals);

	/**
	 * @param quick whether maps are small; on large ones ELKI's dense scan and k-d-tree, both slower than the scan of
	 *              Commons Math, would take half an hour and are left out
	 */
	static List<Peer> all(boolean quick) {
		List<Peer> peers = new ArrayList<>(
				List.of(ElkiPeer.SPARSE_COVER_TREE, ElkiPeer.DENSE_COVER_TREE, ElkiPeer.SPARSE,
						new CommonsMathPeer()));
		if (quick) {
			peers.add(ElkiPeer.DENSE);
			peers.add(ElkiPeer.DENSE_K_D_TREE);
		}
		return peers;
	}

	/** The sample with 0 for what it did not hear. */
	static double[] dense(Signals signals, int sample) {
		SignalRows rows = signals.rows();
		double[] values = new double[signals.map().accessPointCount()];
		for (int k = rows.start(sample); k < rows.end(sample); k++) {
			values[rows.column(k)] = signals.value(rows.step(k));
		}
		return values;
	}
}
