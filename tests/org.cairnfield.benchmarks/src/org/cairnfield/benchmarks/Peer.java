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

	/** @param quick whether maps are small: the k-d-tree, no faster than the scan, is left out of large ones */
	static List<Peer> all(boolean quick) {
		List<Peer> peers = new ArrayList<>(List.of(new CommonsMathPeer(), ElkiPeer.DENSE, ElkiPeer.DENSE_COVER_TREE,
				ElkiPeer.SPARSE, ElkiPeer.SPARSE_COVER_TREE));
		if (quick) {
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
