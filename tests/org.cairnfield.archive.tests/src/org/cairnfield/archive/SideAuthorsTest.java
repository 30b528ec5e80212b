package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.function.Consumer;

import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.internal.git.GitFolder;
import org.cairnfield.archive.internal.merge.Authors.Author;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Claim;
import org.cairnfield.model.Conflict;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.conflict.Place;
import org.cairnfield.model.conflict.Unit;
import org.cairnfield.model.conflict.UnitText;
import org.cairnfield.model.conflict.Units;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who is named for a claim. It has to be the same in whatever order save points came together. */
class SideAuthorsTest {

	private static final Instant START = Instant.parse("2031-05-01T10:00:00Z");
	private static final Unit NAME = new Unit(Place.ARCHIVE, "name");
	private static final Unit SURVEY = new Unit("site th/survey survey-0", Unit.PRESENCE);

	@TempDir
	Path folder;
	private OpenArchive open;
	private String base;

	@BeforeEach
	void make() throws IOException {
		open = at(0).create(folder, "Marrow Quay");
		SampleArchives.fill(open.archive(), 1, 3, 5);
		open.archive().setName("Marrow Quay");
		Conflict conflict = ModelFactory.eINSTANCE.createConflict();
		conflict.setPlace(NAME.place());
		conflict.setUnit(NAME.name());
		conflict.setBase("Marrow Quay");
		conflict.getClaims().add(claim("Marrow"));
		conflict.getClaims().add(claim("Quay"));
		open.archive().getConflicts().add(conflict);
		base = open.savePoint(Person.named("Dot"), null).orElseThrow().id();
	}

	@AfterEach
	void close() throws IOException {
		open.close();
	}

	private static Claim claim(String value) {
		Claim claim = ModelFactory.eINSTANCE.createClaim();
		claim.setValue(value);
		claim.setPerson("Dot");
		claim.setTime(START);
		return claim;
	}

	private static ArchiveStore at(int second) {
		return new ArchiveStore(Clock.offset(Clock.fixed(START, ZoneOffset.UTC), Duration.ofSeconds(second)));
	}

	private void does(String person, int second, Consumer<Archive> work) throws IOException {
		open.close();
		open = at(second).open(folder, Mode.EDIT);
		work.accept(open.archive());
		open.savePoint(Person.named(person), null).orElseThrow();
	}

	private void assertIsBy(String person, Unit unit, String value) throws IOException {
		try (GitFolder git = GitFolder.open(folder)) {
			Author author = new SideAuthors(git, at(0).migrations(), git.ancestry().since(git.head().id(), base))
					.of(unit, value);
			assertEquals(person, author.person());
		}
	}

	private static Survey survey(Archive archive) {
		return SampleArchives.survey(archive, "survey-0");
	}

	private static void setAside(Archive archive, String reason) {
		survey(archive).getSamples().setTable(survey(archive).table().edit().reason(0, reason).done());
	}

	@Test
	void whoHasChangedASurveyWantsItKeptNotWhoHasWorkedElsewhere() throws IOException {
		does("Ann", 1, archive -> archive.getDevices().get(0).setName("borrowed"));
		does("Ben", 2, archive -> setAside(archive, "on a ladder"));
		does("Cyn", 3, archive -> setAside(archive, "in a lift"));
		assertIsBy("Ben", SURVEY, UnitText.KEPT);
		assertIsBy("Ben", new Unit(Place.ofSample(SURVEY.place(), survey(open.archive()).table().id(0)), Unit.PRESENCE),
				UnitText.KEPT);
	}

	@Test
	void whoClosesAConflictHasDecidedAlsoForTheValueBefore() throws IOException {
		does("Ann", 1, archive -> archive.getDevices().get(0).setName("borrowed"));
		does("Ben", 2, archive -> archive.getConflicts().clear());
		does("Cyn", 3, archive -> setAside(archive, "in a lift"));
		assertIsBy("Ben", NAME, "Marrow Quay");
	}

	@Test
	void whoHasRemovedASurveyHasNotRemovedItsSamplesOneByOne() throws IOException {
		Survey kept = EcoreUtil.copy(survey(open.archive()));
		Unit sample = new Unit(Place.ofSample(SURVEY.place(), kept.table().id(0)), Unit.PRESENCE);
		does("Ann", 1, archive -> EcoreUtil.remove(survey(archive)));
		does("Ben", 2, archive -> {
			kept.setDevice(archive.getDevices().get(0));
			site(archive).getSurveys().add(kept);
		});
		does("Cyn", 3, archive -> Units.set(archive, sample, null));
		assertIsBy("Ann", SURVEY, null);
		assertIsBy("Cyn", sample, null);
	}

	private static Site site(Archive archive) {
		return archive.getSites().stream().filter(site -> site.getId().equals("th")).findFirst().orElseThrow();
	}

	@Test
	void theEarliestByTheirClocksWasFirst() throws IOException {
		does("Ann", 20, archive -> archive.setName("Marrow"));
		does("Ben", 30, archive -> archive.setName("Quay"));
		does("Cyn", 10, archive -> archive.setName("Marrow"));
		assertIsBy("Cyn", NAME, "Marrow");
	}
}
