package org.cairnfield.curation.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.intake.SurveyTaking;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.remedy.RemedyCommands;
import org.cairnfield.exchange.IntakeOptions;
import org.cairnfield.exchange.SurveyIntake;
import org.cairnfield.model.Archive;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.edit.SetSampleStateCommand;
import org.cairnfield.model.values.Scope;
import org.cairnfield.model.values.Sha256;
import org.cairnfield.testkit.OpenSets;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Of each survey of an open set a third of the places plays no part: what is proposed to a map of all surveys before it, by the
 * other places, is judged there.
 */
class AgeRemediesTest {

	private static final Workers WORKERS = Workers.inline();
	private static final LocalDate CHANGED = LocalDate.of(2020, 1, 15);
	/** The months in which doing something would cost most, or is done; all of them where slow tests are wanted. */
	private static final List<String> SOME = List.of("2019-03-25", "2019-07-03", "2019-12-11", "2020-01-15",
			"2020-02-19");
	private static Archive twelve;

	/**
	 * @param plan   made without the places that judge
	 * @param before error there of the map before
	 * @param after  likewise with the best remedy applied; the same where none helps
	 */
	private record Judged(LocalDate day, AgePlan plan, double before, double after) {
	}

	@BeforeAll
	static void takeIn() throws Exception {
		twelve = twelveSurveys();
	}

	/** The open set as one archive; skips the test where the set is absent. */
	static Archive twelveSurveys() throws Exception {
		List<Path> files = OpenSets.files("twelve-surveys", ".csv");
		Map<Path, String> digests = new HashMap<>();
		for (Path file : files) {
			digests.put(file, Sha256.of(file));
		}
		Archive archive = ModelFactory.eINSTANCE.createArchive();
		SurveyTaking.of(archive, SurveyIntake.read(files, IntakeOptions.GUESS, WORKERS), SurveyKind.TRAINING, digests)
				.command().execute();
		return archive;
	}

	private static List<LocalDate> days() {
		return twelve.getSites().get(0).getSurveys().stream().map(Survey::getDate).distinct().sorted().toList();
	}

	private static RadioMap map(Archive archive, Predicate<Survey> wanted) {
		return ArchiveMap.of(archive, Scope.site(archive.getSites().get(0).getId()), wanted).map();
	}

	/** The archive as it was on a day, with the samples at every third place of that day's surveys set aside. */
	private static Archive until(LocalDate day, List<SampleRef> heldOut) {
		Archive archive = ArchiveCopy.of(twelve);
		Site site = archive.getSites().get(0);
		site.getSurveys().removeIf(survey -> survey.getDate().isAfter(day));
		List<List<Double>> places = new ArrayList<>();
		for (Survey survey : site.getSurveys()) {
			for (int row = 0; survey.getDate().equals(day) && row < survey.table().size(); row++) {
				List<Double> place = List.of(survey.table().xMetres(row), survey.table().yMetres(row));
				if (!places.contains(place)) {
					places.add(place);
				}
				if (places.indexOf(place) % 3 == 0) {
					heldOut.add(new SampleRef(survey, row));
				}
			}
		}
		return archive;
	}

	private static Judged judged(LocalDate day) {
		List<SampleRef> heldOut = new ArrayList<>();
		Archive archive = until(day, heldOut);
		RadioMap all = map(archive, survey -> survey.getDate().equals(day));
		SetSampleStateCommand.setAside(heldOut, "judges").execute();
		RadioMap part = map(archive, survey -> survey.getDate().equals(day));
		List<List<Double>> kept = new ArrayList<>();
		for (int s = 0; s < part.size(); s++) {
			kept.add(List.of(part.x(s), part.y(s)));
		}
		RadioMap judges = all.where(s -> !kept.contains(List.of(all.x(s), all.y(s))));
		Predicate<Survey> before = survey -> ArchiveMap.isOfTheMap(survey) && survey.getDate().isBefore(day);
		double then = SurveyError.of(map(archive, before), judges, WORKERS).metres();
		AgePlan plan = AgeRemedies.of(archive, archive.getSites().get(0), day, WORKERS).orElseThrow();
		assertEquals(day, plan.day());
		Optional<AgeRemedy> best = plan.best();
		best.ifPresent(remedy -> remedy.remedies().forEach(new RemedyCommands(archive)::apply));
		return new Judged(day, plan, then,
				best.isEmpty() ? then : SurveyError.of(map(archive, before), judges, WORKERS).metres());
	}

	/** The error that came with the change goes by seven tenths or more; no quiet month's gets worse by more than 3 %. */
	@Test
	void theRemedyTakesMostOfTheStaleErrorAwayAndCostsNothingInQuietMonths() {
		List<Judged> all = days().stream().skip(1)
				.filter(day -> OpenSets.isSlowWanted() || SOME.contains(day.toString())).map(AgeRemediesTest::judged)
				.toList();
		all.forEach(each -> System.out.printf("%s: error %.2f m, with %s %.2f m%n", each.day, each.before,
				each.plan.best().map(AgeRemedy::kind).map(AgeRemedyKind::word).orElse("nothing done"), each.after));
		Judged changed = all.stream().filter(each -> each.day.equals(CHANGED)).findFirst().orElseThrow();
		double usual = all.stream().filter(each -> each.day.isBefore(CHANGED)).max(Comparator.comparing(Judged::day))
				.orElseThrow().before;
		double recovered = (changed.before - changed.after) / (changed.before - usual);
		assertTrue(changed.before > 5 && recovered >= 0.7,
				() -> "recovered " + recovered + " of " + changed.before + " m");
		for (Judged each : all) {
			assertTrue(each.day.equals(CHANGED) || each.after <= 1.03 * each.before, each::toString);
		}
	}

	@Test
	void saysWhatWasMeasuredOfEachRemedyAndWhichDoesNotHelp() {
		AgePlan plan = judged(CHANGED).plan;
		AgeRemedy best = plan.best().orElseThrow();
		assertTrue(best.kind() == AgeRemedyKind.VANISHED || best.kind() == AgeRemedyKind.SUCCESSORS, best::preview);
		assertTrue(best.effect().startsWith("makes positions better: "), best::effect);
		assertTrue(best.preview().contains("not heard on 2020-01-15 where it was before"), best::preview);
		AgeRemedy anew = plan.remedies().stream().filter(each -> each.kind() == AgeRemedyKind.START_ANEW).findFirst()
				.orElseThrow();
		assertTrue(!anew.isGain(), anew::effect);
	}

	/** What was done needs no doing again, and can be undone. */
	@Test
	void proposesNothingTwice() {
		Archive archive = until(CHANGED, new ArrayList<>());
		Site site = archive.getSites().get(0);
		AgeRemedy best = AgeRemedies.of(archive, site, WORKERS).flatMap(AgePlan::best).orElseThrow();
		best.remedies().forEach(new RemedyCommands(archive)::apply);
		AgePlan again = AgeRemedies.of(archive, site, WORKERS).orElseThrow();
		assertEquals(Optional.empty(), again.best());
		assertTrue(again.error().metres() < 2, () -> again.error().toString());
	}
}
