package org.cairnfield.curation.release;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.Person;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.measure.PackRequest;
import org.cairnfield.curation.measure.ReleasedMap;
import org.cairnfield.curation.measure.SideBySide;
import org.cairnfield.curation.measure.Way;
import org.cairnfield.model.edit.MoveSampleCommand;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.testkit.SmallArchive;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SideBySideTest {

	private static final int TEST_SAMPLES = 6;

	@TempDir
	Path folder;
	private OpenArchive open;
	private ReleaseBook book;

	@BeforeEach
	void makeAnArchive() throws Exception {
		open = SmallArchive.create(new ArchiveStore(), folder.resolve("quay"));
		book = new ReleaseBook(open, Clock.systemUTC(), new KnownReleases(null));
	}

	@AfterEach
	void close() throws Exception {
		open.close();
	}

	private SideBySide measure(List<String> versions) throws Exception {
		return book.measure(ArchiveCopy.of(open.archive()), null, versions, PackRequest.USUAL, Workers.inline());
	}

	private static Way column(SideBySide side, String name) {
		return side.ways().stream().filter(way -> way.name().equals(name)).findFirst().orElseThrow();
	}

	@Test
	void comparesEachWayWithPlainMatching() throws Exception {
		SideBySide side = measure(List.of());
		assertEquals(List.of("plain", "plain-3w", "split", "split+approved", "released"),
				side.ways().stream().map(Way::name).toList());
		Way plain = side.ways().get(0);
		assertEquals(1, plain.ratio());
		assertEquals(1, plain.ratioInterval().low());
		assertEquals(1, plain.comparisonShare());
		assertEquals(1, plain.byteShare());
		assertEquals(24, plain.comparisons());
		// the record of a sample is 12 bytes and 3 a reading, as docs/device-pack.md has it
		assertEquals(
				12 * 24 + 3 * ReleasedMap.of(open.archive(), book.gates().policy(open.archive())).map().readingCount(),
				plain.bytes());
		Way split = column(side, "split");
		assertEquals(split.errors().meanMetres() / plain.errors().meanMetres(), split.ratio());
		assertTrue(split.comparisonShare() < 1, split::toString);
		assertTrue(split.ratioInterval().low() <= split.ratio() && split.ratio() <= split.ratioInterval().high());
	}

	@Test
	void sortsTestSamplesByFloorAndByError() throws Exception {
		SideBySide side = measure(List.of());
		List<SideBySide.OnFloor> floors = side.floors();
		assertEquals(1, floors.size());
		assertEquals(TEST_SAMPLES, floors.get(0).samples());
		for (int c = 0; c < side.ways().size(); c++) {
			assertEquals(side.ways().get(c).errors().meanMetres(), floors.get(0).ways().get(c).meanMetres(), 1e-12);
			assertEquals(side.ways().get(c).errors().p95Metres(), floors.get(0).ways().get(c).p95Metres(), 1e-12);
			assertEquals(1, floors.get(0).ways().get(c).rightShare());
			assertEquals(floors.get(0).ways(), side.sites().get(0).ways(), "the site has one floor");
		}
		Way plain = side.ways().get(0);
		double[] errors = side.worst(plain, 100).stream().mapToDouble(SideBySide.Placed::errorMetres).toArray();
		double[] expected = plain.errors().errorsMetres().clone();
		Arrays.sort(expected);
		assertEquals(TEST_SAMPLES, errors.length);
		for (int i = 0; i < errors.length; i++) {
			assertEquals(expected[errors.length - 1 - i], errors[i], 1e-12);
		}
		assertEquals(2, side.worst(plain, 2).size());
		assertEquals("th-test", side.worst(plain, 1).get(0).sample().survey());
	}

	@Test
	void measuresAnEarlierReleaseByItsOwnMapOnTheSameTestSamples() throws Exception {
		open.savePoint(Person.named("M.Q."), null);
		GateCheck check = book.ask(PackRequest.USUAL, Workers.inline());
		for (GateResult held : check.holding()) {
			check = check.overruled(Map.of(held.gate(), new GateResult.Overrule("L. Lead", "small")));
		}
		book.prepare(SemanticVersion.parse("1.0.0"), check, Person.named("L. Lead"), "");
		assertEquals(List.of("1.0.0"), book.prepared().stream().map(ReleaseManifest::version).toList());
		book.sign("1.0.0", Person.named("L. Lead"), null);
		assertEquals(List.of(), book.prepared());
		assertEquals(List.of(), book.changes());
		SideBySide same = measure(List.of("1.0.0"));
		assertEquals(column(same, "released").errors().meanMetres(),
				column(same, "release 1.0.0").errors().meanMetres());
		var survey = open.archive().getSites().get(0).getSurveys().get(0);
		for (int row = 0; row < survey.table().size(); row++) {
			new MoveSampleCommand(new SampleRef(survey, row), survey.table().xMetres(row),
					survey.table().yMetres(row) + 4).execute();
		}
		SideBySide moved = measure(List.of("1.0.0"));
		assertEquals(column(same, "release 1.0.0").errors().meanMetres(),
				column(moved, "release 1.0.0").errors().meanMetres());
		assertTrue(column(moved, "released").ratio() < 1.5 && column(moved, "release 1.0.0").ratio() < 1,
				"all moved by 4 m, so the old map is better");
		open.save();
		assertEquals(List.of("24 samples moved"), book.changes());
	}
}
