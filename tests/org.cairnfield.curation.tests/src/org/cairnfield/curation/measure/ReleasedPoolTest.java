package org.cairnfield.curation.measure;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Clock;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Estimates;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.decide.RecordedVerdicts;
import org.cairnfield.curation.decide.Review;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.exchange.pack.DevicePack;
import org.cairnfield.exchange.pack.PackAddresses;
import org.cairnfield.exchange.pack.PackReader;
import org.cairnfield.testkit.SmallArchive;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A noise sample that a reviewer put in the pool. */
class ReleasedPoolTest {

	private static final int NOISE = 12;

	@TempDir
	Path folder;

	private ReleasedMap released(boolean pooled) throws Exception {
		try (OpenArchive open = SmallArchive.create(new ArchiveStore(),
				folder.resolve(pooled ? "pooled" : "left-out"))) {
			if (pooled) {
				new Review(open.archive(), SmallArchive.splitOf(open), "R. Reviewer", ReviewPolicy.USUAL,
						new RecordedVerdicts(), Clock.systemUTC())
						.pool(SmallArchive.noise(), null, null).execute();
			}
			return ReleasedMap.of(open.archive(), ReviewPolicy.USUAL);
		}
	}

	@Test
	void isSearchedByEveryQuery() throws Exception {
		SplitMap without = released(false).searched(Search.PUBLISHED, Workers.inline());
		ReleasedMap pooled = released(true);
		SplitMap with = pooled.searched(Search.PUBLISHED, Workers.inline());
		assertEquals(2, with.cells());
		assertArrayEquals(new int[] { NOISE }, with.members(with.cells()));
		assertEquals(without.samples() + 1, with.samples());
		RadioMap queries = pooled.map();
		Estimates fewer = Estimates.of(Search.PUBLISHED.matcher(without), without.signals().align(queries),
				Workers.inline());
		Estimates more = Estimates.of(Search.PUBLISHED.matcher(with), with.signals().align(queries), Workers.inline());
		for (int q = 0; q < queries.size(); q++) {
			assertEquals(fewer.comparisons(q) + 1, more.comparisons(q));
		}
		assertEquals(queries.x(NOISE), more.x(NOISE), "its own fingerprint finds it");
	}

	@Test
	void isFoundByADevice() throws Exception {
		ReleasedMap released = released(true);
		DevicePack pack = released.pack(PackRequest.USUAL.settings(released), Workers.inline());
		PackReader reader = new PackReader(pack.bytes(null, ""));
		RadioMap queries = pack.packed().queries(released.map());
		Estimates estimates = Estimates.of(pack.matcher(), pack.matcher().signals().align(queries), Workers.inline());
		for (int q = 0; q < queries.size(); q++) {
			long[] addresses = new long[queries.heard(q)];
			int[] levels = new int[addresses.length];
			for (int i = 0; i < levels.length; i++) {
				addresses[i] = PackAddresses
						.of(queries.accessPoints().get(queries.accessPoint(queries.firstReading(q) + i)));
				levels[i] = queries.rssiDbm(queries.firstReading(q) + i);
			}
			assertEquals(estimates.x(q), reader.locate(addresses, levels).xMetres(), "sample " + q);
		}
	}
}
