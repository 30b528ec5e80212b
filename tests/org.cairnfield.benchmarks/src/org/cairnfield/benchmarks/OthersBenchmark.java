package org.cairnfield.benchmarks;

import java.util.ArrayList;
import java.util.List;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.health.SampleHealth;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.reduce.Pca;
import org.cairnfield.core.reduce.SparseRows;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Workers;

/** Work without an aim of its own, for information. */
final class OthersBenchmark implements Benchmark {

	@Override
	public void run(Harness harness) throws Exception {
		int samples = harness.quick() ? 5000 : 20_000;
		RadioMap map = harness.maps().of(Maps.MANY, samples);
		Workers both = harness.workers(Machine.cores());
		SparseRows rows = sparse(Signals.of(map));
		List<Subject<?>> subjects = new ArrayList<>();
		subjects.add(new Subject<>("making ready for distances", () -> Signals.of(map)));
		subjects.add(new Subject<>("simulating the survey", () -> RandomMap.of(1, Maps.MANY, samples, both)));
		subjects.add(new Subject<>("health of all samples", () -> SampleHealth.of(map, both)));
		subjects.add(new Subject<>("principal components of 520 columns",
				() -> Pca.of(rows, Pca.Scaling.CENTRED, both)));
		harness.measure(3, subjects);
		harness.times(Maps.describe(map) + ", " + Machine.cores() + " threads", subjects, subjects.get(0));
	}

	private static SparseRows sparse(Signals signals) {
		SignalRows rows = signals.rows();
		return new SparseRows() {
			@Override
			public int size() {
				return rows.size();
			}

			@Override
			public int columns() {
				return signals.map().accessPointCount();
			}

			@Override
			public int start(int row) {
				return rows.start(row);
			}

			@Override
			public int end(int row) {
				return rows.end(row);
			}

			@Override
			public int column(int entry) {
				return rows.column(entry);
			}

			@Override
			public double value(int entry) {
				return signals.value(rows.step(entry));
			}
		};
	}
}
