package org.cairnfield.ui.review.internal.evidence;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.cairnfield.curation.decide.LedgerEntry;
import org.cairnfield.curation.decide.ReasonCode;
import org.cairnfield.curation.decide.Standing;
import org.cairnfield.curation.propose.Advice;
import org.cairnfield.curation.propose.AdviceRates;
import org.cairnfield.curation.propose.Evidence;
import org.cairnfield.curation.propose.Warning;
import org.cairnfield.ui.charts.scale.ShownNumbers;
import org.eclipse.osgi.util.NLS;

/** The evidence on a sample as lines: advice, three questions with their answers in figures, verdicts. */
final class EvidenceText {

	/** How a line is written. */
	enum Style {
		TITLE, QUESTION, PLAIN, WARNING, STRUCK
	}

	/** A line. */
	record Line(Style style, String text) {
	}

	private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ROOT);

	private final List<Line> lines = new ArrayList<>();

	private EvidenceText() {
	}

	/**
	 * @param place    where the sample is said to be, for a person
	 * @param standing may be null
	 * @param basis    what the effects are computed from
	 * @param rate     how often such advice is right
	 */
	static List<Line> of(Evidence e, String place, Standing standing, String basis, AdviceRates.Rate rate,
			ZoneId zone) {
		EvidenceText text = new EvidenceText();
		text.add(Style.TITLE, e.sample().sample() + "  " + place);
		text.add(Style.PLAIN, NLS.bind(Messages.EvidenceText_ofSurvey, e.sample().survey()));
		text.add(Style.QUESTION, NLS.bind(Messages.EvidenceText_advice, e.advice().text(e)));
		if (e.advice() != Advice.NONE) {
			text.plain("%s", rate.text());
		}
		if (!basis.isBlank()) {
			text.plain(Messages.EvidenceText_theEffectsOfHomesAre, basis);
		}
		text.belongs(e);
		text.place(e);
		text.readings(e);
		text.verdicts(standing, zone);
		return text.lines;
	}

	private void add(Style style, String line) {
		lines.add(new Line(style, line));
	}

	private void plain(String format, Object... values) {
		add(Style.PLAIN, String.format(Locale.ROOT, format, values));
	}

	private void question(String question, Evidence e, Warning... about) {
		boolean doubt = List.of(about).stream().anyMatch(e.marks()::contains);
		add(Style.QUESTION,
				question + (!e.made() && about[0] == Warning.NEAREST_DIFFERS ? Messages.EvidenceText_noProposal
						: doubt ? Messages.EvidenceText_lookCloser : Messages.EvidenceText_nothingAgainstIt));
		for (Warning warning : about) {
			if (e.warnings().contains(warning)) {
				add(warning.isMark() ? Style.WARNING : Style.PLAIN, (warning.isMark() ? "▲ " : "") + warning.text(e));
			}
		}
	}

	private void belongs(Evidence e) {
		question(Messages.EvidenceText_doesItBelongThere, e, Warning.NEAREST_DIFFERS, Warning.TIGHT_MARGIN);
		if (e.carrier() == null) {
			plain(Messages.EvidenceText_itCorrelatesWithNoLabelled);
			return;
		}
		plain(e.made() ? Messages.EvidenceText_clusterStrengthRMargin : Messages.EvidenceText_bestClusterWithRBelow,
				e.cluster(),
				number(e.strengthR(), 2, ""), number(e.margin(), 3, ""));
		plain(Messages.EvidenceText_carrier, e.carrier().sample(),
				e.carrierOnFloor() ? Messages.EvidenceText_onThisFloor : Messages.EvidenceText_onAnotherFloor);
		if (e.nearest() != null) {
			plain(Messages.EvidenceText_nearestLabelledSampleCluster, e.nearest().sample(), e.nearestCluster(),
					e.agrees() ? "agrees" : "differs");
		}
		plain(Messages.EvidenceText_rSaysWhereItFits);
	}

	private void place(Evidence e) {
		question(Messages.EvidenceText_isItsPlaceRight, e, Warning.OTHER_FLOOR, Warning.FAR, Warning.PLACE_DOUBTFUL);
		if (e.made()) {
			plain(Messages.EvidenceText_toTheClusterOnThis,
					Double.isNaN(e.floorMetres()) ? Messages.EvidenceText_noneOfItIsHere
							: number(e.floorMetres(), 1, " m"));
			plain(Messages.EvidenceText_ofTheClusterOnThis, number(100 * e.clusterFloorShare(), 0, " %"));
		}
		plain(Messages.EvidenceText_whatHearsTheSameOf, e.floorVotes(), e.floorVoters(),
				number(e.placeErrorMetres(), 1, " m"));
		plain(Messages.EvidenceText_doubtOfAllSamplesAre, number(100 * e.placeScore(), 0, " %"));
	}

	private void readings(Evidence e) {
		question(Messages.EvidenceText_areItsReadingsSound, e, Warning.READINGS_DOUBTFUL);
		plain(Messages.EvidenceText_overlapOfAccessPointsWith, number(e.overlap(), 2, ""));
		plain(Messages.EvidenceText_levelDeficitToThemScatter, number(e.levelDeficitDb(), 1, Messages.EvidenceText_db),
				number(e.levelScatterDb(), 1, Messages.EvidenceText_db));
		plain(Messages.EvidenceText_doubtOfAllSamplesAre2, number(100 * e.readingsScore(), 0, " %"));
	}

	private void verdicts(Standing standing, ZoneId zone) {
		if (standing == null) {
			return;
		}
		if (standing.hidden()) {
			add(Style.QUESTION, Messages.EvidenceText_secondReview);
			plain(Messages.EvidenceText_somebodyElseHasDecidedTheir);
			return;
		}
		if (standing.entries().isEmpty()) {
			return;
		}
		add(Style.QUESTION, NLS.bind(Messages.EvidenceText_verdicts, standing.state()));
		for (LedgerEntry entry : standing.entries()) {
			add(isSuperseded(standing, entry) ? Style.STRUCK : Style.PLAIN, line(entry, zone));
		}
		if (standing.stale()) {
			add(Style.WARNING, Messages.EvidenceText_sampleOrEvidenceHasChanged);
		}
	}

	/** Whatever does not count any more, the lines that take others back included. */
	static boolean isSuperseded(Standing standing, LedgerEntry entry) {
		return entry.takesBack() || standing.stale() || !standing.first().filter(entry::equals).isPresent()
				&& !standing.second().filter(entry::equals).isPresent()
				&& !standing.resolution().filter(entry::equals).isPresent();
	}

	/** A verdict in words. */
	static String line(LedgerEntry entry, ZoneId zone) {
		StringBuilder text = new StringBuilder();
		text.append(entry.takesBack() ? Messages.EvidenceText_tookItBack : switch (entry.decision()) {
		case APPROVE -> "approve";
		case MOVE -> NLS.bind(Messages.EvidenceText_moveToCluster, entry.cluster());
		case POOL -> Messages.EvidenceText_toThePool;
		case REJECT -> Messages.EvidenceText_outOfTheMap;
		case FAULTY -> "faulty";
		default -> "defer";
		});
		switch (entry.round()) {
		case SECOND -> text.append(Messages.EvidenceText_secondReview2);
		case RESOLUTION -> text.append(Messages.EvidenceText_settlingTheTwo);
		default -> {}
		}
		if (entry.reasonCode() != null && !entry.takesBack()) {
			text.append(": ")
					.append(ReasonCode.named(entry.reasonCode()).map(ReasonCode::title).orElse(entry.reasonCode()));
		}
		if (entry.text() != null) {
			text.append(" \"").append(entry.text()).append('"');
		}
		text.append("  ").append(entry.person());
		if (entry.enteredBy() != null) {
			text.append(Messages.EvidenceText_enteredBy).append(entry.enteredBy());
		}
		return text.append(", ").append(TIME.format(entry.time().atZone(zone))).toString();
	}

	static String number(double value, int decimals, String unit) {
		return Double.isNaN(value) ? "unknown" : ShownNumbers.text(value, decimals) + unit;
	}

	/** With its sign, a real minus; what rounds to nothing has none. */
	static String signed(double value, int decimals) {
		String digits = String.format(Locale.ROOT, "%." + decimals + "f", Math.abs(value));
		boolean zero = digits.chars().allMatch(c -> c == '0' || c == '.');
		return zero ? "±" + digits : (value < 0 ? "−" : "+") + digits;
	}
}
