package org.cairnfield.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.cairnfield.core.change.Fate;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.timeline.AgeRemedy;
import org.cairnfield.curation.timeline.AgeingCurves;
import org.cairnfield.curation.timeline.TimelineStep;
import org.cairnfield.curation.timeline.TimelineStudy;
import org.cairnfield.curation.timeline.TimelineWords;
import org.cairnfield.exchange.export.Caution;
import org.cairnfield.report.internal.picture.Pictures;

/** One page on how the maps of an archive have aged: what changed when, how far off older maps are, and what helps. */
public final class AgeingReport {

	private final ReportPage page;

	private AgeingReport(String title) {
		page = new ReportPage(title);
	}

	/**
	 * Writes the page.
	 *
	 * @param archive name of the archive
	 * @param digest  of its content
	 * @param sites   by name of the site, in the order of the page
	 * @return HTML; the same for the same arguments
	 */
	public static String html(String archive, String digest, Map<String, TimelineStudy> sites) {
		AgeingReport report = new AgeingReport(Words.bind(Messages.AgeingReport_ageOfTheMaps, archive));
		report.page.element("h1", "", Words.bind(Messages.AgeingReport_ageOfTheMaps, archive));
		report.page.raw("<p>Content (SHA-256) <code>" + digest + "</code></p>\n");
		int picture = 1;
		for (Map.Entry<String, TimelineStudy> site : sites.entrySet()) {
			report.site(site.getKey(), site.getValue(), picture++);
		}
		report.page.heading(Messages.AgeingReport_cautions);
		report.page.raw("<div class=\"caution\">\n");
		Caution.general().forEach(report.page::paragraph);
		report.page.raw("</div>\n");
		return report.page.toString();
	}

	private void site(String name, TimelineStudy study, int number) {
		page.heading(name);
		page.paragraph(TimelineWords.summary(study.timeline()));
		study.plan().ifPresent(plan -> page.paragraph(plan.best()
				.map(best -> Words.bind(Messages.AgeingReport_whatHelpsMost, best.preview(), best.effect()))
				.orElse(Messages.AgeingReport_nothingThatWasMeasuredHelps)));
		AgeingCurves curves = AgeingCurves.of(study);
		if (!curves.curves().isEmpty()) {
			page.picture(
					Pictures.ageing(curves.curves(), curves.start().toString(),
							Messages.AgeingReport_threeWeightedNeighboursMeanOf),
					number,
					Messages.AgeingReport_aMapOfTheSurveys);
		}
		List<List<String>> rows = new ArrayList<>();
		study.timeline().steps().forEach(step -> rows.add(row(step)));
		page.table(Messages.AgeingReport_surveysInOrderOfTime,
				List.of(Messages.AgeingReport_day, Messages.AgeingReport_survey, Messages.AgeingReport_changed,
						"Places#", "Gone#", "New#",
						"Replaced#", "Moved#", Messages.AgeingReport_errorBeforeM, "95 %#"),
				rows);
		study.plan().ifPresent(plan -> page.table(
				Words.bind(Messages.AgeingReport_remediesMeasuredOnTheSurvey, plan.day()),
				List.of(Messages.AgeingReport_remedy, Messages.AgeingReport_whatItDoes, Messages.AgeingReport_beforeM,
						Messages.AgeingReport_afterM, Messages.AgeingReport_95OfTheChange,
						Messages.AgeingReport_measured),
				plan.remedies().stream().map(AgeingReport::row).toList()));
	}

	private static List<String> row(TimelineStep step) {
		boolean compared = step.change() != null;
		return List.of(step.date().toString(), step.survey(),
				!compared ? "–" : step.isChanged() ? "changed" : Messages.AgeingReport_asBefore,
				compared ? Integer.toString(step.change().places()) : "–",
				count(step, Fate.VANISHED), count(step, Fate.APPEARED), count(step, Fate.REPLACED),
				count(step, Fate.MOVED),
				ReportPage.metres(step.error().metres()),
				step.error().isKnown() ? interval(step.error().interval().low(), step.error().interval().high()) : "–");
	}

	private static String count(TimelineStep step, Fate fate) {
		return step.change() == null ? "–" : Integer.toString(step.change().with(fate).size());
	}

	private static List<String> row(AgeRemedy remedy) {
		return List.of(remedy.kind().title(), remedy.preview(), ReportPage.metres(remedy.before().metres()),
				ReportPage.metres(remedy.after().metres()),
				String.format(Locale.ROOT, Messages.AgeingReport_to, remedy.change().low(), remedy.change().high()),
				remedy.isGain() ? "better" : remedy.change().low() > 0 ? "worse" : Messages.AgeingReport_noGain);
	}

	private static String interval(double low, double high) {
		return String.format(Locale.ROOT, Messages.AgeingReport_to2, low, high);
	}
}
