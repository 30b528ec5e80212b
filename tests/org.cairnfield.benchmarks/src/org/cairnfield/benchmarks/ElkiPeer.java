package org.cairnfield.benchmarks;

import elki.clustering.dbscan.DBSCAN;
import elki.data.Cluster;
import elki.data.DoubleVector;
import elki.data.NumberVector;
import elki.data.SparseDoubleVector;
import elki.data.model.Model;
import elki.data.type.TypeUtil;
import elki.data.type.VectorFieldTypeInformation;
import elki.database.Database;
import elki.database.StaticArrayDatabase;
import elki.database.ids.DBIDIter;
import elki.database.ids.DBIDRange;
import elki.database.relation.Relation;
import elki.datasource.bundle.MultipleObjectsBundle;
import elki.distance.Distance;
import elki.distance.minkowski.ManhattanDistance;
import elki.distance.minkowski.SparseManhattanDistance;
import elki.index.IndexFactory;
import elki.index.tree.metrical.covertree.CoverTree;
import elki.index.tree.spatial.kd.MemoryKDTree;
import elki.index.tree.spatial.kd.split.LeastOneDimSSQSplit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;

/** ELKI, with and without an index; building the index is measured, as part of what it takes to cluster. */
enum ElkiPeer implements Peer {

	DENSE("ELKI 0.8.0, dense, linear scan", false),
	/** What ELKI's own optimiser would add. */
	DENSE_K_D_TREE("ELKI 0.8.0, dense, k-d-tree", false),
	DENSE_COVER_TREE("ELKI 0.8.0, dense, cover tree", false),
	SPARSE("ELKI 0.8.0, sparse, linear scan", true),
	SPARSE_COVER_TREE("ELKI 0.8.0, sparse, cover tree", true);

	// the values of its optimiser
	private static final int K_D_TREE_LEAF = 3;
	private static final double COVER_TREE_EXPANSION = 1.3;
	private static final int COVER_TREE_LEAF = 20;

	private final String label;
	private final boolean sparse;

	ElkiPeer(String label, boolean sparse) {
		this.label = label;
		this.sparse = sparse;
	}

	@Override
	public Prepared prepare(Signals signals) {
		int columns = signals.map().accessPointCount();
		int[] samples = IntStream.range(0, signals.size()).toArray();
		if (sparse) {
			List<SparseDoubleVector> vectors = new ArrayList<>();
			for (int s : samples) {
				vectors.add(sparse(signals, s, columns));
			}
			MultipleObjectsBundle bundle = MultipleObjectsBundle
					.makeSimple(new VectorFieldTypeInformation<>(SparseDoubleVector.FACTORY, columns), vectors);
			return (epsilon, minPts) -> labels(relation(bundle, SparseManhattanDistance.STATIC),
					SparseManhattanDistance.STATIC, epsilon, minPts);
		}
		List<DoubleVector> vectors = new ArrayList<>();
		for (int s : samples) {
			vectors.add(DoubleVector.wrap(Peer.dense(signals, s)));
		}
		MultipleObjectsBundle bundle = MultipleObjectsBundle
				.makeSimple(new VectorFieldTypeInformation<>(DoubleVector.FACTORY, columns), vectors);
		return (epsilon, minPts) -> labels(relation(bundle, ManhattanDistance.STATIC), ManhattanDistance.STATIC,
				epsilon, minPts);
	}

	private static SparseDoubleVector sparse(Signals signals, int sample, int columns) {
		SignalRows rows = signals.rows();
		int from = rows.start(sample);
		int[] index = IntStream.range(from, rows.end(sample)).map(rows::column).toArray();
		double[] value = IntStream.range(from, rows.end(sample)).mapToDouble(k -> signals.value(rows.step(k)))
				.toArray();
		return new SparseDoubleVector(index, value, columns);
	}

	@SuppressWarnings("unchecked")
	private <V extends NumberVector> Relation<V> relation(MultipleObjectsBundle bundle, Distance<? super V> distance) {
		List<IndexFactory<?>> indexes = switch (this) {
		case DENSE, SPARSE -> List.of();
		case DENSE_K_D_TREE -> List.of(new MemoryKDTree.Factory<V>(LeastOneDimSSQSplit.STATIC, K_D_TREE_LEAF));
		case DENSE_COVER_TREE, SPARSE_COVER_TREE -> List
				.of(new CoverTree.Factory<V>(distance, COVER_TREE_EXPANSION, COVER_TREE_LEAF));
		};
		Database database = new StaticArrayDatabase(() -> bundle, indexes);
		database.initialize();
		return (Relation<V>) (Relation<?>) database.getRelation(TypeUtil.NUMBER_VECTOR_FIELD);
	}

	private static <V extends NumberVector> int[] labels(Relation<V> relation, Distance<? super V> distance,
			double epsilon, int minPts) {
		DBIDRange ids = (DBIDRange) relation.getDBIDs();
		int[] labels = new int[ids.size()];
		Arrays.fill(labels, -1);
		int label = 0;
		for (Cluster<Model> c : new DBSCAN<V>(distance, epsilon, minPts).run(relation).getAllClusters()) {
			if (!c.isNoise()) {
				for (DBIDIter it = c.getIDs().iter(); it.valid(); it.advance()) {
					labels[ids.getOffset(it)] = label;
				}
				label++;
			}
		}
		return labels;
	}

	@Override
	public String toString() {
		return label;
	}
}
