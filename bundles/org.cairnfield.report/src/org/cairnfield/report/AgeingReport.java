package org.cairnfield.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.cairnfield.core.change.Fate;
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
		AgeingReport report = new AgeingReport(archive + ", age of the maps");
		report.page.element("h1", "", archive + ", age of the maps");
		report.page.raw("<p>Content (SHA-256) <code>" + digest + "</code></p>\n");
		int picture = 1;
		for (Map.Entry<String, TimelineStudy> site : sites.entrySet()) {
			report.site(site.getKey(), site.getValue(), picture++);
		}
		report.page.heading("Cautions");
		report.page.raw("<div class=\"caution\">\n");
		Caution.general().forEach(report.page::paragraph);
		report.page.raw("</div>\n");
		return report.page.toString();
	}

	private void site(String name, TimelineStudy study, int number) {
		page.heading(name);
		page.paragraph(TimelineWords.summary(study.timeline()));
		study.plan().ifPresent(plan -> page.paragraph(plan.best()
				.map(best -> "What helps most: " + best.preview() + ". " + best.effect() + ".")
				.orElse("Nothing that was measured helps: leave the map as it is.")));
		AgeingCurves curves = AgeingCurves.of(study);
		if (!curves.curves().isEmpty()) {
			page.picture(
					Pictures.ageing(curves.curves(), curves.start().toString(),
							"Three weighted neighbours; mean of the mean errors at each place."),
					number,
					"A map of the surveys of the date before each survey, of the first survey alone, and of releases, on the surveys that came after.");
		}
		List<List<String>> rows = new ArrayList<>();
		study.timeline().steps().forEach(step -> rows.add(row(step)));
		page.table("Surveys in order of time", List.of("Day", "Survey", "Changed", "Places#", "Gone#", "New#",
				"Replaced#", "Moved#", "Error before (m)#", "95 %#"), rows);
		study.plan().ifPresent(plan -> page.table(
				"Remedies, measured on the survey of " + plan.day()
						+ ": half of its places proposed, the other half judged",
				List.of("Remedy", "What it does", "Before (m)#", "After (m)#", "95 % of the change#", "Measured"),
				plan.remedies().stream().map(AgeingReport::row).toList()));
	}

	private static List<String> row(TimelineStep step) {
		boolean compared = step.change() != null;
		return List.of(step.date().toString(), step.survey(),
				!compared ? "–" : step.isChanged() ? "changed" : "as before",
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
				String.format(Locale.ROOT, "%+.2f to %+.2f", remedy.change().low(), remedy.change().high()),
				remedy.isGain() ? "better" : remedy.change().low() > 0 ? "worse" : "no gain");
	}

	private static String interval(double low, double high) {
		return String.format(Locale.ROOT, "%.2f to %.2f", low, high);
	}
}
