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
import org.cairnfield.core.text.Words;
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
		String name = archive.getName() == null || archive.getName().isBlank() ? Messages.ReleaseReport_radioMap
				: archive.getName();
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
		page.element("h1", "",
				name + (manifest == null ? "" : Words.bind(Messages.ReleaseReport_release, manifest.version())));
		page.element("p", "class=\"sub\"", manifest == null ? Messages.ReleaseReport_workingStateNotARelease
				: Words.bind(Messages.ReleaseReport_preparedByOn, manifest.preparedBy(), manifest.preparedAt(),
						manifest.isSigned()
								? Words.bind(Messages.ReleaseReport_signedByOn, manifest.signedBy(),
										manifest.signedAt())
								: Messages.ReleaseReport_notSignedYet));
		page.raw("<p>Content (SHA-256) <code>" + digest + "</code></p>\n");
		if (manifest != null && !manifest.notes().isBlank()) {
			page.paragraph(manifest.notes());
		}
	}

	private void damages(List<Damage> damages) {
		if (!damages.isEmpty()) {
			page.heading(Messages.ReleaseReport_theArchiveIsDamaged);
			page.paragraph(Messages.ReleaseReport_itCouldNotBeRead);
			page.table(Messages.ReleaseReport_damage,
					List.of(Messages.ReleaseReport_file, "Line#", Messages.ReleaseReport_whatIsWrong,
							Messages.ReleaseReport_whatToDo),
					damages.stream()
							.map(d -> List.of(d.file(), d.line() > 0 ? Long.toString(d.line()) : "–", d.reason(),
									d.remedy()))
							.toList());
		}
	}

	private void map() {
		page.heading(Messages.ReleaseReport_whatTheMapIs);
		RadioMap map = check.released().map();
		page.paragraph(Words.bind(Messages.ReleaseReport_samplesAndReadingsAtSites, map.size(), map.readingCount(),
				archive.getSites().size()));
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
								? Messages.ReleaseReport_leftOutOfTheMap
								: survey.getKind().getName().toLowerCase(Locale.ROOT),
						Integer.toString(survey.table().size()),
						Integer.toString(survey.table().size() - kept)));
			}
		}
		page.table(Messages.ReleaseReport_surveys,
				List.of(Messages.ReleaseReport_site, Messages.ReleaseReport_survey, Messages.ReleaseReport_day,
						Messages.ReleaseReport_device, Messages.ReleaseReport_kind, "Samples#",
						Messages.ReleaseReport_setAside),
				rows);
		List<String> ages = manifest == null ? check.ages().stream().map(MapAge::words).toList() : manifest.ages();
		if (!ages.isEmpty()) {
			page.paragraph(Messages.ReleaseReport_howOldTheMapIs);
			page.list(ages);
		}
	}

	private static String or(String text, String otherwise) {
		return text == null || text.isBlank() ? otherwise : text;
	}

	private void cleaning() {
		page.heading(Messages.ReleaseReport_howItWasCleaned);
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
			rows.add(List.of(Messages.ReleaseReport_accessPoints, Messages.ReleaseReport_countAsOthersReplacedOr,
					Long.toString(others)));
		}
		samples.forEach((reason, count) -> rows.add(List.of("samples", reason, count.toString())));
		accessPoints.forEach(
				(reason, count) -> rows.add(List.of(Messages.ReleaseReport_accessPoints, reason, count.toString())));
		for (Device device : archive.getDevices()) {
			if (device.getMapSlope() != null && device.getMapShiftDb() != null) {
				rows.add(List.of(Words.bind(Messages.ReleaseReport_device2, or(device.getName(), device.getId())),
						Messages.ReleaseReport_levelsCorrectedInTheMap,
						String.format(Locale.ROOT, Messages.ReleaseReport_ofEachDb, device.getMapSlope(),
								device.getMapShiftDb())));
			} else if (device.isCalibrated()) {
				rows.add(List.of(Words.bind(Messages.ReleaseReport_device2, or(device.getName(), device.getId())),
						"calibrated",
						String.format(Locale.ROOT, Messages.ReleaseReport_db, device.getOffsetDb())));
			}
		}
		if (rows.isEmpty()) {
			page.paragraph(Messages.ReleaseReport_nothingWasSetAside);
		} else {
			page.table(Messages.ReleaseReport_setAsideKeptInThe,
					List.of(Messages.ReleaseReport_what, Messages.ReleaseReport_why, Messages.ReleaseReport_howMany),
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
			page.paragraph(Messages.ReleaseReport_theseRulesDifferFromTheir);
			page.list(told);
		}
		if (findings.isEmpty()) {
			page.paragraph(Messages.ReleaseReport_theRulesFindNothing);
		} else {
			page.table(Messages.ReleaseReport_whatTheRulesStillFind,
					List.of(Messages.ReleaseReport_rule, "Open#", "Waived#"), findings.entrySet().stream()
							.map(e -> List.of(e.getKey(), Integer.toString(e.getValue()[0]),
									Integer.toString(e.getValue()[1])))
							.toList());
		}
		if (!archive.getWaivers().isEmpty()) {
			page.table(Messages.ReleaseReport_waivers,
					List.of(Messages.ReleaseReport_rule, Messages.ReleaseReport_reason, "By",
							Messages.ReleaseReport_when),
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
				rows.add(List.of("before", "",
						Words.bind(Messages.ReleaseReport_andMoreInTheHistory, steps.size() - MOST_STEPS)));
			}
			page.table(Messages.ReleaseReport_whatWasDoneToIt,
					List.of(Messages.ReleaseReport_when, "By", Messages.ReleaseReport_what), rows);
		}
	}

	private void split() {
		page.heading(Messages.ReleaseReport_howItWasSplit);
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
			page.table(Messages.ReleaseReport_minptsCountsTheSampleItself,
					List.of(Messages.ReleaseReport_split, Messages.ReleaseReport_scope, Messages.ReleaseReport_method,
							"ε#", "minPts#", "Clusters#", "Samples#", "Noise#"),
					rows);
			page.picture(Pictures.clusterSizes(ClusterSizes.of(check.released().before(), check.released().labels()),
					Messages.ReleaseReport_samplesOfEachClusterBefore), 1,
					Messages.ReleaseReport_largestClustersBeforeAndAfter);
		}
		page.list(check.released().notes());
	}

	private void review() {
		page.heading(Messages.ReleaseReport_howItWasReviewed);
		List<List<String>> rows = new ArrayList<>();
		for (ReviewState state : ReviewState.values()) {
			if (check.released().state(state) > 0) {
				rows.add(List.of(state.toString(), Integer.toString(check.released().state(state))));
			}
		}
		if (rows.isEmpty()) {
			page.paragraph(Messages.ReleaseReport_thereWasNothingToReview);
			return;
		}
		page.table(Messages.ReleaseReport_noiseSamples,
				List.of(Messages.ReleaseReport_state, Messages.ReleaseReport_howMany), rows);
		ReviewPolicy policy = check.gates().policy(archive);
		page.paragraph(String.format(Locale.ROOT,
				Messages.ReleaseReport_bandsOfStrengthAnAudit,
				policy.bands(), policy.secondBands().isEmpty() ? Messages.ReleaseReport_noBandNeedsASecond
						: Words.bind(Messages.ReleaseReport_aSecondReviewerIsNeeded,
								String.join(", ", new TreeSet<>(policy.secondBands()))),
				100 * policy.limitShare(), 100 * policy.confidence()));
		for (Agreement agreement : check.released().agreement()) {
			if (agreement.kappa().items() > 0) {
				page.paragraph(String.format(Locale.ROOT,
						Messages.ReleaseReport_samplesWereLookedAtBy,
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
				.forEach(verdict -> approved.merge(
						Words.bind(Messages.ReleaseReport_theRestApprovedBy, verdict.getText(), verdict.getPerson()),
						1, Integer::sum));
		if (!approved.isEmpty()) {
			page.table(Messages.ReleaseReport_bandsApprovedAfterAnAudit,
					List.of(Messages.ReleaseReport_audit, Messages.ReleaseReport_approvedUnseen),
					approved.entrySet().stream().map(e -> List.of(e.getKey(), e.getValue().toString())).toList());
		}
	}

	private void measures() {
		page.heading(Messages.ReleaseReport_howItPositions);
		List<Way> ways = check.measures().ways();
		if (ways.isEmpty()) {
			page.paragraph(Messages.ReleaseReport_itWasNotMeasuredThere);
			return;
		}
		double plain = check.measures().way(TestRun.PLAIN).comparisons();
		List<List<String>> rows = new ArrayList<>();
		for (Way w : ways) {
			rows.add(List.of(w.name(), ReportPage.metres(w.errors().meanMetres()),
					Words.bind(Messages.ReleaseReport_to, ReportPage.metres(w.mean().low()),
							ReportPage.metres(w.mean().high())),
					ReportPage.metres(w.errors().medianMetres()),
					ReportPage.metres(w.errors().p75Metres()), ReportPage.metres(w.errors().p95Metres()),
					ReportPage.percent((double) w.errors().siteAndFloorHits() / w.errors().points()),
					ReportPage.percent(w.comparisons() / plain)));
		}
		page.table(
				Words.bind(Messages.ReleaseReport_horizontalErrorInMetresOn, check.measures().test()),
				List.of(Messages.ReleaseReport_way, "Mean#", Messages.ReleaseReport_95OfMean, "Median#", "75 %#",
						"95 %#", Messages.ReleaseReport_rightFloor,
						Messages.ReleaseReport_costOfPlain),
				rows);
		page.list(ways.stream().map(w -> w.name() + ": " + w.how()).toList());
		floors();
		List<ErrorCurve> curves = ways.stream().filter(w -> w.errors().n() > 0)
				.map(w -> ErrorCurve.of(w.name(), w.errors().errorsMetres())).toList();
		if (!curves.isEmpty()) {
			page.picture(
					Pictures.errorDistribution(curves, Words.bind(Messages.ReleaseReport_testSamplesAgainstAMap,
							check.measures().test(), check.released().map().size())),
					2, Messages.ReleaseReport_shareOfTestSamplesWith);
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
				Messages.ReleaseReport_theSameByFloorPlain,
				List.of(Messages.ReleaseReport_site, "Floor#", Messages.ReleaseReport_testSamples,
						Messages.ReleaseReport_plainMean, Messages.ReleaseReport_plain95,
						Messages.ReleaseReport_plainRight,
						Messages.ReleaseReport_releasedMean, Messages.ReleaseReport_released95,
						Messages.ReleaseReport_releasedRight),
				rows);
	}

	private void gates() {
		page.heading(Messages.ReleaseReport_gates);
		List<List<String>> rows = new ArrayList<>();
		if (manifest == null) {
			check.results().forEach(r -> rows
					.add(List.of(r.gate().title(), r.shownFigure(), r.shownBound(), r.verdict(), r.evidence())));
		} else {
			manifest.gates().forEach(g -> rows.add(List.of(g.title(), g.figure(), g.bound(), g.met() ? "met"
					: g.overruledBy().isEmpty() ? Messages.ReleaseReport_notMet
							: Words.bind(Messages.ReleaseReport_notMetOverriddenBy, g.overruledBy(), g.reason()),
					g.evidence())));
		}
		if (rows.isEmpty()) {
			page.paragraph(Messages.ReleaseReport_theArchiveAsksForNone);
		} else {
			page.table(manifest == null ? Messages.ReleaseReport_asTheyStand : Messages.ReleaseReport_asTheyStoodWhenIt,
					List.of(Messages.ReleaseReport_gate, "Figure#", Messages.ReleaseReport_bound,
							Messages.ReleaseReport_verdict, Messages.ReleaseReport_evidence),
					rows);
		}
	}

	private void changes() {
		page.heading(Messages.ReleaseReport_whatChanged);
		if (manifest == null) {
			page.paragraph(Messages.ReleaseReport_notComparedThisIsA);
		} else if (manifest.previous().isEmpty()) {
			page.paragraph(Messages.ReleaseReport_thisIsTheFirstRelease);
		} else {
			page.paragraph(
					Words.bind(Messages.ReleaseReport_sinceWhyThisVersion, manifest.previous(),
							String.join("; ", manifest.bump())));
			page.list(manifest.changes().isEmpty() ? List.of("nothing") : manifest.changes());
		}
	}

	private void cautions() {
		page.heading(Messages.ReleaseReport_cautions);
		page.raw("<div class=\"caution\">\n");
		Caution.general().forEach(page::paragraph);
		page.raw("</div>\n");
	}
}
