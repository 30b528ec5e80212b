package org.cairnfield.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;

import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.Readings;
import org.cairnfield.model.values.SampleTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A small archive with its first save point. */
abstract class HistoryFixture {

	static final Person PERSON = new Person("M.Q.", "mq@example.org");
	static final Instant NOW = Instant.parse("2031-05-01T10:00:00Z");

	final ArchiveStore store = new ArchiveStore(Clock.fixed(NOW, ZoneOffset.UTC));

	@TempDir
	Path folder;
	OpenArchive open;
	History history;
	SavePoint first;

	@BeforeEach
	final void makeArchive() throws IOException {
		open = store.create(folder.resolve("archive"), "n");
		SampleArchives.fill(open.archive(), 1, 3, 40);
		SampleTable table = survey("survey-0").table();
		survey("survey-0").getSamples()
				.setTable(table.edit().reason(0, null).reason(1, "early").reason(2, null).reason(3, null)
						.readings(3, Readings.of(Map.of("00005e005301", -60, "00005e005302", -70))).done());
		first = open.savePoint(PERSON, "the beginning").orElseThrow();
		history = open.history();
	}

	@AfterEach
	final void close() throws IOException {
		history.close();
		open.close();
	}

	Survey survey(String id) {
		return SampleArchives.survey(open.archive(), id);
	}

	SavePoint savePoint() throws IOException {
		return open.savePoint(PERSON, null).orElseThrow();
	}
}
