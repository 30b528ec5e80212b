package org.cairnfield.spark;

import java.io.IOException;
import java.io.OutputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.Path;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.util.SerializableConfiguration;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.match.Search;
import org.cairnfield.exchange.pack.PackLimitException;

/** A device pack for each site: its samples in the clusters that they have in the split with proposals. */
final class Packs {

	/** What became of a site. */
	record Written(String site, String file, long bytes, String problem) implements Serializable {
	}

	private Packs() {
	}

	/**
	 * @param labels of the whole map, {@link Clustering#NOISE} for samples left out
	 * @param folder by any path that Spark can write to
	 * @return by site
	 */
	static List<Written> write(JavaSparkContext spark, SpreadMap map, int[] labels, Search search, long seed,
			String folder) {
		Broadcast<int[]> clusters = spark.broadcast(labels);
		Broadcast<SerializableConfiguration> configuration = spark
				.broadcast(new SerializableConfiguration(spark.hadoopConfiguration()));
		List<String> sites = new ArrayList<>(map.sites());
		Broadcast<List<String>> accessPoints = spark.broadcast(new ArrayList<>(map.accessPoints()));
		Map<Integer, String> files = fileNames(sites);
		List<Written> written = new ArrayList<>(
				map.samples().keyBy(Fingerprint::site).groupByKey(Math.max(1, Math.min(sites.size(), map.tasks())))
						.map(group -> write(sites.get(group._1), folder + "/" + files.get(group._1), group._2,
								accessPoints.value(), clusters.value(), search,
								seed, configuration.value().value()))
						.collect());
		written.sort(Comparator.comparing(Written::site));
		return written;
	}

	/** Letters, digits and dashes of the site's name, with a number behind it where another site has the same. */
	private static Map<Integer, String> fileNames(List<String> sites) {
		Map<Integer, String> names = new TreeMap<>();
		for (int s = 0; s < sites.size(); s++) {
			String plain = sites.get(s).replaceAll("[^\\p{L}\\p{N}._]+", "-");
			String tried = plain;
			for (int n = 2; names.values().stream().anyMatch((tried + ".pack")::equalsIgnoreCase); n++) {
				tried = plain + "-" + n;
			}
			names.put(s, tried + ".pack");
		}
		return names;
	}

	private static Written write(String site, String file, Iterable<Fingerprint> samples, List<String> accessPoints,
			int[] labels, Search search,
			long seed, Configuration configuration) throws IOException {
		List<Fingerprint> members = new ArrayList<>();
		samples.forEach(members::add);
		members.sort(Comparator.comparingInt(Fingerprint::id));
		byte[] bytes;
		try {
			bytes = Matching
					.pack(Fingerprint.map(members, s -> site, accessPoints::get), dense(members, labels), search, seed)
					.bytes(null, "");
		} catch (PackLimitException e) {
			return new Written(site, null, 0, e.getMessage());
		}
		Path path = new Path(file);
		// a task that is repeated writes the same once more; nobody meets half a pack
		Path beside = path.suffix("." + UUID.randomUUID());
		try (OutputStream out = path.getFileSystem(configuration).create(beside, true)) {
			out.write(bytes);
		}
		path.getFileSystem(configuration).delete(path, false);
		if (!path.getFileSystem(configuration).rename(beside, path)) {
			throw new IOException("cannot write " + file);
		}
		return new Written(site, file, bytes.length, null);
	}

	private static int[] dense(List<Fingerprint> members, int[] labels) {
		Map<Integer, Integer> number = new HashMap<>();
		return members.stream().mapToInt(f -> labels[f.id()])
				.map(l -> l == Clustering.NOISE ? l : number.computeIfAbsent(l, k -> number.size())).toArray();
	}
}
