package org.cairnfield.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.TreeMap;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.curation.check.RuleSettings;
import org.cairnfield.curation.decide.Agreement;
import org.cairnfield.curation.decide.ReasonCode;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.decide.ReviewState;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.measure.Measures;
import org.cairnfield.curation.measure.SideBySide;
import org.cairnfield.curation.measure.TestRun;
import org.cairnfield.curation.measure.Way;
import org.cairnfield.curation.release.GateCheck;
import org.cairnfield.curation.release.ReleaseManifest;
import org.cairnfield.exchange.export.Caution;
import org.cairnfield.curation.timeline.MapAge;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.Waiver;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Scope;
import org.cairnfield.report.internal.picture.ClusterSizes;
import org.cairnfield.report.internal.picture.ErrorCurve;
import org.cairnfield.report.internal.picture.Pictures;

/**
 * One page on a map, for people who decide about it: what it is, how it was cleaned, split and reviewed, how it positions,
 * which gates it meets, what has changed, and what to mind. A file of its own that can be printed and needs no network.
 */
public final class ReleaseReport {

	private static final int MOST_STEPS = 30;

	private final Archive archive;
	private final ReleaseManifest manifest;
	private final GateCheck check;
	private final ReportPage page;

	private ReleaseReport(Archive archive, ReleaseManifest manifest, GateCheck check, String title) {
		this.archive = archive;
		this.manifest = manifest;
		this.check = check;
		this.page = new ReportPage(title);
	}

	/** As the other, of an archive without damage. */
	public static String html(Archive archive, ReleaseManifest manifest, GateCheck check, String digest,
			List<SavePoint> steps) {
		return html(archive, manifest, check, digest, steps, List.of());
	}

	/**
	 * @param archive  the content, of the working state or of a release
	 * @param manifest of the release, or null for content that is none
	 * @param check    of that content
	 * @param digest   of that content
	 * @param steps    save points that led to it, the latest first
	 * @param damages  what could not be read of the archive: the page begins with it
	 * @return HTML; the same for the same arguments
	 */
	public static String html(Archive archive, ReleaseManifest manifest, GateCheck check, String digest,
			List<SavePoint> steps,
			List<Damage> damages) {
		String name = archive.getName() == null || archive.getName().isBlank() ? "Radio map" : archive.getName();
		ReleaseReport report = new ReleaseReport(archive, manifest, check,
				name + (manifest == null ? "" : " " + manifest.version()));
		report.head(name, digest);
		report.damages(damages);
		report.map();
		report.cleaning();
		report.steps(steps);
		report.split();
		report.review();
		report.measures();
		report.gates();
		report.changes();
		report.cautions();
		return report.page.toString();
	}

	private void head(String name, String digest) {
		page.element("h1", "", name + (manifest == null ? "" : ", release " + manifest.version()));
		page.element("p", "class=\"sub\"", manifest == null ? "Working state, not a release"
				: "Prepared by " + manifest.preparedBy() + " on " + manifest.preparedAt() + (manifest.isSigned()
						? ", signed by " + manifest.signedBy() + " on " + manifest.signedAt()
						: ", not signed yet"));
		page.raw("<p>Content (SHA-256) <code>" + digest + "</code></p>\n");
		if (manifest != null && !manifest.notes().isBlank()) {
			page.paragraph(manifest.notes());
		}
	}

	private void damages(List<Damage> damages) {
		if (!damages.isEmpty()) {
			page.heading("The archive is damaged");
			page.paragraph("It could not be read whole. All figures on this page rest on what is left of it.");
			page.table("Damage", List.of("File", "Line#", "What is wrong", "What to do"), damages.stream()
					.map(d -> List.of(d.file(), d.line() > 0 ? Long.toString(d.line()) : "–", d.reason(), d.remedy()))
					.toList());
		}
	}

	private void map() {
		page.heading("What the map is");
		RadioMap map = check.released().map();
		page.paragraph(map.size() + " samples and " + map.readingCount() + " readings at " + archive.getSites().size()
				+ " sites. A sample is what was heard at a known place.");
		List<List<String>> rows = new ArrayList<>();
		for (Site site : archive.getSites()) {
			for (Survey survey : site.getSurveys()) {
				int kept = 0;
				for (int row = 0; row < survey.table().size(); row++) {
					kept += survey.table().isKept(row) ? 1 : 0;
				}
				rows.add(List.of(ArchiveMap.nameOf(site), or(survey.getName(), survey.getId()),
						survey.getDate() == null ? "–" : survey.getDate().toString(),
						survey.getDevice() == null ? "–" : or(survey.getDevice().getName(), "–"),
						survey.getKind() == SurveyKind.TRAINING && !ArchiveMap.isOfTheMap(survey)
								? "left out of the map"
								: survey.getKind().getName().toLowerCase(Locale.ROOT),
						Integer.toString(survey.table().size()),
						Integer.toString(survey.table().size() - kept)));
			}
		}
		page.table("Surveys", List.of("Site", "Survey", "Day", "Device", "Kind", "Samples#", "Set aside#"), rows);
		List<String> ages = manifest == null ? check.ages().stream().map(MapAge::words).toList() : manifest.ages();
		if (!ages.isEmpty()) {
			page.paragraph("How old the map is, and what the latest survey of each site says of it:");
			page.list(ages);
		}
	}

	private static String or(String text, String otherwise) {
		return text == null || text.isBlank() ? otherwise : text;
	}

	private void cleaning() {
		page.heading("How it was cleaned");
		Map<String, Integer> samples = new TreeMap<>();
		for (Site site : archive.getSites()) {
			for (Survey survey : site.getSurveys()) {
				for (int row = 0; row < survey.table().size(); row++) {
					if (!survey.table().isKept(row)) {
						samples.merge(survey.table().reason(row), 1, Integer::sum);
					}
				}
			}
		}
		Map<String, Integer> accessPoints = new TreeMap<>();
		for (AccessPoint accessPoint : archive.getAccessPoints()) {
			if (!accessPoint.isKept()) {
				accessPoints.merge(accessPoint.getReason(), 1, Integer::sum);
			}
		}
		long others = archive.getAccessPoints().stream().filter(accessPoint -> accessPoint.getCountsAs() != null)
				.count();
		List<List<String>> rows = new ArrayList<>();
		if (others > 0) {
			rows.add(List.of("access points", "count as others: replaced, or of one radio", Long.toString(others)));
		}
		samples.forEach((reason, count) -> rows.add(List.of("samples", reason, count.toString())));
		accessPoints.forEach((reason, count) -> rows.add(List.of("access points", reason, count.toString())));
		for (Device device : archive.getDevices()) {
			if (device.getMapSlope() != null && device.getMapShiftDb() != null) {
				rows.add(List.of("device " + or(device.getName(), device.getId()), "levels corrected in the map",
						String.format(Locale.ROOT, "%.2f of each, %+.1f dB", device.getMapSlope(),
								device.getMapShiftDb())));
			} else if (device.isCalibrated()) {
				rows.add(List.of("device " + or(device.getName(), device.getId()), "calibrated",
						String.format(Locale.ROOT, "%+.1f dB", device.getOffsetDb())));
			}
		}
		if (rows.isEmpty()) {
			page.paragraph("Nothing was set aside.");
		} else {
			page.table("Set aside: kept in the archive, left out of the map", List.of("What", "Why", "How many#"),
					rows);
		}
		Map<String, int[]> findings = new TreeMap<>();
		check.check().open().forEach(
				f -> findings.computeIfAbsent(f.rule() + " (" + f.severity().name().toLowerCase(Locale.ROOT) + ")",
						r -> new int[2])[0]++);
		check.check().waived().forEach(
				f -> findings.computeIfAbsent(f.rule() + " (" + f.severity().name().toLowerCase(Locale.ROOT) + ")",
						r -> new int[2])[1]++);
		List<String> told = manifest == null ? RuleSettings.of(archive).rules().words() : manifest.rules();
		if (!told.isEmpty()) {
			page.paragraph("These rules differ from their defaults:");
			page.list(told);
		}
		if (findings.isEmpty()) {
			page.paragraph("The rules find nothing.");
		} else {
			page.table("What the rules still find", List.of("Rule", "Open#", "Waived#"), findings.entrySet().stream()
					.map(e -> List.of(e.getKey(), Integer.toString(e.getValue()[0]), Integer.toString(e.getValue()[1])))
					.toList());
		}
		if (!archive.getWaivers().isEmpty()) {
			page.table("Waivers", List.of("Rule", "Reason", "By", "When"),
					archive.getWaivers().stream().map(ReleaseReport::waiver).toList());
		}
	}

	private static List<String> waiver(Waiver w) {
		return List.of(or(w.getRule(), "–"), or(w.getReason(), "–"), or(w.getPerson(), "–"),
				w.getTime() == null ? "–" : w.getTime().toString());
	}

	/** Remedies, among the rest: each is told in the save point that has it. */
	private void steps(List<SavePoint> steps) {
		if (!steps.isEmpty()) {
			List<List<String>> rows = new ArrayList<>(steps.stream().limit(MOST_STEPS)
					.map(step -> List.of(step.time().toString(), step.person(), step.summary())).toList());
			if (steps.size() > MOST_STEPS) {
				rows.add(List.of("before", "", "and " + (steps.size() - MOST_STEPS) + " more in the history"));
			}
			page.table("What was done to it, the latest first", List.of("When", "By", "What"), rows);
		}
	}

	private void split() {
		page.heading("How it was split");
		List<List<String>> rows = new ArrayList<>();
		for (Split split : archive.getSplits()) {
			if (check.released().splits().contains(split.getId()) && split.getLabels() != null) {
				boolean dbscan = split.getMethod() == null;
				rows.add(List.of(split.getId(), String.valueOf(split.getScope()), dbscan ? "DBSCAN" : split.getMethod(),
						dbscan ? String.format(Locale.ROOT, "%.4g", split.getEpsilon()) : "–",
						dbscan ? Integer.toString(split.getMinPts()) : "–",
						Integer.toString(split.getLabels().clusterSizes().length),
						Integer.toString(split.getLabels().size()), Integer.toString(split.getLabels().noise())));
			}
		}
		if (!rows.isEmpty()) {
			page.table("minPts counts the sample itself",
					List.of("Split", "Scope", "Method", "ε#", "minPts#", "Clusters#", "Samples#", "Noise#"), rows);
			page.picture(Pictures.clusterSizes(ClusterSizes.of(check.released().before(), check.released().labels()),
					"Samples of each cluster before and after review."), 1, "Largest clusters before and after review");
		}
		page.list(check.released().notes());
	}

	private void review() {
		page.heading("How it was reviewed");
		List<List<String>> rows = new ArrayList<>();
		for (ReviewState state : ReviewState.values()) {
			if (check.released().state(state) > 0) {
				rows.add(List.of(state.toString(), Integer.toString(check.released().state(state))));
			}
		}
		if (rows.isEmpty()) {
			page.paragraph("There was nothing to review.");
			return;
		}
		page.table("Noise samples", List.of("State", "How many#"), rows);
		ReviewPolicy policy = check.gates().policy(archive);
		page.paragraph(String.format(Locale.ROOT,
				"Bands of strength: %s. %s An audit stops a band with more than %.3g %% wrong, at %.3g %%.",
				policy.bands(), policy.secondBands().isEmpty() ? "No band needs a second reviewer."
						: "A second reviewer is needed in " + String.join(", ", new TreeSet<>(policy.secondBands()))
								+ ".",
				100 * policy.limitShare(), 100 * policy.confidence()));
		for (Agreement agreement : check.released().agreement()) {
			if (agreement.kappa().items() > 0) {
				page.paragraph(String.format(Locale.ROOT,
						"%d samples were looked at by two people; they agreed on %.0f %%. %s.",
						agreement.kappa().items(),
						100 * agreement.kappa().observed(), agreement.kappaText()));
			}
		}
		audits();
	}

	/** Bands that were approved unseen but for the samples drawn; what was found is in the words of each verdict. */
	private void audits() {
		Map<String, Integer> approved = new LinkedHashMap<>();
		archive.getLedgers().stream().filter(ledger -> check.released().splits().contains(ledger.getId()))
				.flatMap(ledger -> ledger.getVerdicts().stream())
				.filter(verdict -> ReasonCode.BAND_AUDITED.code().equals(verdict.getReasonCode())
						&& verdict.getText() != null)
				.forEach(verdict -> approved.merge(verdict.getText() + "; the rest approved by " + verdict.getPerson(),
						1, Integer::sum));
		if (!approved.isEmpty()) {
			page.table("Bands approved after an audit of samples drawn by lot", List.of("Audit", "Approved unseen#"),
					approved.entrySet().stream().map(e -> List.of(e.getKey(), e.getValue().toString())).toList());
		}
	}

	private void measures() {
		page.heading("How it positions");
		List<Way> ways = check.measures().ways();
		if (ways.isEmpty()) {
			page.paragraph("It was not measured: there is no test survey, or no map.");
			return;
		}
		double plain = check.measures().way(TestRun.PLAIN).comparisons();
		List<List<String>> rows = new ArrayList<>();
		for (Way w : ways) {
			rows.add(List.of(w.name(), ReportPage.metres(w.errors().meanMetres()),
					ReportPage.metres(w.mean().low()) + " to " + ReportPage.metres(w.mean().high()),
					ReportPage.metres(w.errors().medianMetres()),
					ReportPage.metres(w.errors().p75Metres()), ReportPage.metres(w.errors().p95Metres()),
					ReportPage.percent((double) w.errors().siteAndFloorHits() / w.errors().points()),
					ReportPage.percent(w.comparisons() / plain)));
		}
		page.table(
				"Horizontal error in metres on " + check.measures().test()
						+ " test samples; 95 % bootstrap interval of the mean",
				List.of("Way", "Mean#", "95 % of mean#", "Median#", "75 %#", "95 %#", "Right floor %#",
						"Cost % of plain#"),
				rows);
		page.list(ways.stream().map(w -> w.name() + ": " + w.how()).toList());
		floors();
		List<ErrorCurve> curves = ways.stream().filter(w -> w.errors().n() > 0)
				.map(w -> ErrorCurve.of(w.name(), w.errors().errorsMetres())).toList();
		if (!curves.isEmpty()) {
			page.picture(Pictures.errorDistribution(curves, check.measures().test() + " test samples against a map of "
					+ check.released().map().size() + "."), 2, "Share of test samples with at most that error");
		}
	}

	private void floors() {
		SideBySide measured = SideBySide.of(ArchiveMap.of(archive, Scope.ARCHIVE, SurveyKind.TEST),
				List.of(check.measures().way(TestRun.PLAIN), check.measures().way(Measures.RELEASED)));
		List<List<String>> rows = new ArrayList<>();
		for (SideBySide.OnFloor floor : measured.floors()) {
			List<String> row = new ArrayList<>(
					List.of(floor.site(), Integer.toString(floor.level()), Integer.toString(floor.samples())));
			for (SideBySide.Figures way : floor.ways()) {
				row.addAll(List.of(ReportPage.metres(way.meanMetres()), ReportPage.metres(way.p95Metres()),
						ReportPage.percent(way.rightShare())));
			}
			rows.add(row);
		}
		page.table(
				"The same by floor, plain and released: mean and 95 % of the errors in metres, share put on the right floor",
				List.of("Site", "Floor#", "Test samples#", "Plain mean#", "Plain 95 %#", "Plain right %#",
						"Released mean#", "Released 95 %#",
						"Released right %#"),
				rows);
	}

	private void gates() {
		page.heading("Gates");
		List<List<String>> rows = new ArrayList<>();
		if (manifest == null) {
			check.results().forEach(r -> rows
					.add(List.of(r.gate().title(), r.shownFigure(), r.shownBound(), r.verdict(), r.evidence())));
		} else {
			manifest.gates().forEach(g -> rows.add(List.of(g.title(), g.figure(), g.bound(), g.met() ? "met"
					: g.overruledBy().isEmpty() ? "NOT MET"
							: "NOT MET, overridden by " + g.overruledBy() + ": " + g.reason(),
					g.evidence())));
		}
		if (rows.isEmpty()) {
			page.paragraph("The archive asks for none.");
		} else {
			page.table(manifest == null ? "As they stand" : "As they stood when it was prepared",
					List.of("Gate", "Figure#", "Bound", "Verdict", "Evidence"), rows);
		}
	}

	private void changes() {
		page.heading("What changed");
		if (manifest == null) {
			page.paragraph("Not compared: this is a working state.");
		} else if (manifest.previous().isEmpty()) {
			page.paragraph("This is the first release.");
		} else {
			page.paragraph(
					"Since " + manifest.previous() + "; why this version: " + String.join("; ", manifest.bump()) + ".");
			page.list(manifest.changes().isEmpty() ? List.of("nothing") : manifest.changes());
		}
	}

	private void cautions() {
		page.heading("Cautions");
		page.raw("<div class=\"caution\">\n");
		Caution.general().forEach(page::paragraph);
		page.raw("</div>\n");
	}
}
