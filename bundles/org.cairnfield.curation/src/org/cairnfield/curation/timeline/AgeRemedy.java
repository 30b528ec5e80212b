package org.cairnfield.curation.timeline;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import org.cairnfield.core.stats.Interval;
import org.cairnfield.curation.rules.Remedy;

/**
 * A remedy for a map that has aged, measured before anybody applies it. Each half of the newer survey's places judged what the
 * other half proposed.
 *
 * @param remedies what it does, as proposed by the whole survey
 * @param places   that judged
 * @param before   error of the map at these without the remedy
 * @param after    with it
 * @param change   interval of 95 % of the change of the error, paired by place, in metres
 */
public record AgeRemedy(AgeRemedyKind kind, List<Remedy> remedies, int places, SurveyError before, SurveyError after,
		Interval change) {

	private static final double LARGEST_SHARE = 0.9;

	public AgeRemedy {
		remedies = List.copyOf(remedies);
	}

	/**
	 * Whether it makes the map better beyond the interval; where it gives older samples up, by a tenth or more as well: what judges
	 * is of one day, and what suits that day a little better may suit the next one worse.
	 */
	public boolean isGain() {
		return change.high() < 0 && (!kind.givesSamplesUp() || after.metres() <= LARGEST_SHARE * before.metres());
	}

	/** What was measured, for a person. */
	public String effect() {
		return String.format(Locale.ROOT,
				Messages.AgeRemedy_mBeforeMAfter95,
				isGain() ? Messages.AgeRemedy_makesPositionsBetter
						: change.low() > 0 ? Messages.AgeRemedy_makesPositionsWorse : Messages.AgeRemedy_measuredNoGain,
				before.metres(), after.metres(),
				change.low(), change.high(), places);
	}

	/** What it does, for a person, in one line. */
	public String preview() {
		return remedies.stream().map(Remedy::preview).collect(Collectors.joining("; "));
	}
}
