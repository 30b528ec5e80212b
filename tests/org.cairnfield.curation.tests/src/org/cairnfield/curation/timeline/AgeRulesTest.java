package org.cairnfield.curation.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.cairnfield.core.change.AccessPointFate;
import org.cairnfield.core.change.Fate;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.check.RuleCheck;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.RuleRun;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the rules say of an open set of twelve surveys, survey by survey, is what its timeline says. */
class AgeRulesTest {

	private static final Workers WORKERS = Workers.inline();
	private static final LocalDate MANY_NEW = LocalDate.of(2019, 9, 11);
	private static final LocalDate GONE_AGAIN = LocalDate.of(2019, 10, 9);
	private static final LocalDate CHANGED = LocalDate.of(2020, 1, 15);
	/** Access points of a quiet month at most, of some 150 that are steady; 29 in the change of January, in the autumn 134. */
	private static final int QUIET = 17;

	private static Timeline timeline;
	private static final Map<LocalDate, Map<String, Set<String>>> FOUND = new TreeMap<>();

	@BeforeAll
	static void check() throws Exception {
		Archive twelve = AgeRemediesTest.twelveSurveys();
		timeline = Timeline.of(twelve, twelve.getSites().get(0), WORKERS);
		RuleRun rules = new RuleRun(CleaningRules.registry().all().stream()
				.filter(rule -> rule.id().endsWith("-access-point")).toList());
		for (TimelineStep step : timeline.steps()) {
			Archive then = ArchiveCopy.of(twelve);
			Site site = then.getSites().get(0);
			site.getSurveys().removeIf((Survey survey) -> survey.getDate().isAfter(step.date()));
			Map<String, Set<String>> found = new TreeMap<>();
			for (Finding finding : RuleCheck.of(then, rules, WORKERS).findings()) {
				finding.subjects().stream().filter(Subject.OfAccessPoint.class::isInstance)
						.forEach(each -> found.computeIfAbsent(finding.rule(), rule -> new TreeSet<>())
								.add(each.label()));
			}
			FOUND.put(step.date(), found);
		}
	}

	private static Set<String> found(LocalDate day, String rule) {
		return FOUND.get(day).getOrDefault(rule, Set.of());
	}

	private static Set<String> told(TimelineStep step, Fate... fates) {
		return step.change() == null ? Set.of()
				: step.change().with(fates).stream().map(AccessPointFate::address)
						.collect(Collectors.toCollection(TreeSet::new));
	}

	/** But for those that come and go within a survey, which another rule names. */
	@Test
	void nameWhatTheTimelineNames() {
		for (TimelineStep step : timeline.steps()) {
			Set<String> gone = told(step, Fate.VANISHED, Fate.REPLACED);
			Set<String> come = told(step, Fate.APPEARED);
			assertTrue(gone.containsAll(found(step.date(), "vanished-access-point")), step::toString);
			assertTrue(come.containsAll(found(step.date(), "new-access-point")), step::toString);
			assertTrue(found(step.date(), "vanished-access-point").size() >= 0.9 * gone.size(), step::toString);
			assertTrue(found(step.date(), "new-access-point").size() >= 0.9 * come.size(), step::toString);
		}
	}

	@Test
	void tellTheThreeChangesAndAreQuietOtherwise() {
		FOUND.forEach((day, found) -> System.out.println(day + " " + found.entrySet().stream()
				.map(each -> each.getKey() + " " + each.getValue().size()).collect(Collectors.joining(", "))));
		assertTrue(found(MANY_NEW, "new-access-point").size() > 100);
		assertTrue(found(GONE_AGAIN, "vanished-access-point").size() > 100);
		assertTrue(found(CHANGED, "vanished-access-point").size() > QUIET);
		Set<String> again = new TreeSet<>(found(MANY_NEW, "new-access-point"));
		again.retainAll(found(GONE_AGAIN, "vanished-access-point"));
		assertTrue(again.size() > 100, () -> again.size() + " that were new in September are gone in October");
		for (LocalDate day : FOUND.keySet()) {
			assertTrue(day.equals(GONE_AGAIN) || day.equals(CHANGED)
					|| found(day, "vanished-access-point").size() <= QUIET, () -> "gone on " + day);
			assertTrue(day.equals(MANY_NEW) || day.equals(CHANGED) || found(day, "new-access-point").size() <= QUIET,
					() -> "new on " + day);
		}
		assertEquals(List.of(MANY_NEW, GONE_AGAIN, CHANGED),
				timeline.steps().stream().filter(TimelineStep::isChanged).map(TimelineStep::date).toList());
	}
}
