package org.cairnfield.spark;

import java.io.Serializable;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.apache.spark.api.java.JavaRDD;
import org.cairnfield.core.distance.DisjointSets;
import org.cairnfield.core.map.RadioMap;

/**
 * Which access points are heard together, directly or through others: samples that share none of them are in different
 * components. Each partition joins its own, the driver joins those.
 */
final class Earshot implements Serializable {

	private static final long serialVersionUID = 1;

	private final int[] rootOfAccessPoint;
	private final int[] heardBy;
	private final int lowestRssiDbm;

	private Earshot(int[] rootOfAccessPoint, int[] heardBy, int lowestRssiDbm) {
		this.rootOfAccessPoint = rootOfAccessPoint;
		this.heardBy = heardBy;
		this.lowestRssiDbm = lowestRssiDbm;
	}

	/** What a partition found: of each access point heard there the first that it belongs with, and by how many it is heard. */
	private record Heard(int[] accessPoint, int[] first, int[] samples, int lowestRssiDbm) implements Serializable {
	}

	static Earshot of(JavaRDD<Fingerprint> samples, int accessPoints) {
		List<Heard> parts = samples.mapPartitions(part -> List.of(heard(part, accessPoints)).iterator()).collect();
		DisjointSets sets = new DisjointSets(accessPoints);
		int[] heardBy = new int[accessPoints];
		int lowest = RadioMap.HIGHEST_RSSI_DBM + 1;
		for (Heard part : parts) {
			for (int i = 0; i < part.accessPoint.length; i++) {
				sets.join(part.first[i], part.accessPoint[i]);
				heardBy[part.accessPoint[i]] += part.samples[i];
			}
			lowest = Math.min(lowest, part.lowestRssiDbm);
		}
		int[] root = new int[accessPoints];
		for (int a = 0; a < accessPoints; a++) {
			root[a] = sets.find(a);
		}
		return new Earshot(root, heardBy, lowest > RadioMap.HIGHEST_RSSI_DBM ? RadioMap.LOWEST_RSSI_DBM : lowest);
	}

	private static Heard heard(Iterator<Fingerprint> samples, int accessPoints) {
		DisjointSets sets = new DisjointSets(accessPoints);
		int[] count = new int[accessPoints];
		int lowest = RadioMap.HIGHEST_RSSI_DBM + 1;
		while (samples.hasNext()) {
			Fingerprint sample = samples.next();
			for (int k = 0; k < sample.levels().length; k++) {
				count[sample.accessPoints()[k]]++;
				sets.join(sample.accessPoints()[0], sample.accessPoints()[k]);
				lowest = Math.min(lowest, sample.levels()[k]);
			}
		}
		int n = 0;
		for (int c : count) {
			n += c > 0 ? 1 : 0;
		}
		Heard heard = new Heard(new int[n], new int[n], new int[n], lowest);
		for (int a = 0, i = 0; a < accessPoints; a++) {
			if (count[a] > 0) {
				heard.accessPoint[i] = a;
				heard.first[i] = sets.find(a);
				heard.samples[i++] = count[a];
			}
		}
		return heard;
	}

	/** The component of a sample; one that heard nothing is alone in a component of a negative number. */
	int component(Fingerprint sample) {
		return sample.accessPoints().length == 0 ? -1 - sample.id() : rootOfAccessPoint[sample.accessPoints()[0]];
	}

	/** In dBm, of the whole map; as {@link RadioMap#lowestRssiDbm}. */
	int lowestRssiDbm() {
		return lowestRssiDbm;
	}

	/** Σ of the squares of how many samples heard each access point, by component: what the pairs within it cost. */
	Map<Integer, Double> costs() {
		Map<Integer, Double> costs = new HashMap<>();
		for (int a = 0; a < heardBy.length; a++) {
			if (heardBy[a] > 0) {
				costs.merge(rootOfAccessPoint[a], (double) heardBy[a] * heardBy[a], Double::sum);
			}
		}
		return costs;
	}
}
