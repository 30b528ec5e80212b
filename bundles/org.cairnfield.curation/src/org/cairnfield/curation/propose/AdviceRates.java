package org.cairnfield.curation.propose;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.cairnfield.core.text.Words;

/**
 * How often each advice is right on the map at hand. It is given from the effects at every other place of the survey, and
 * judged at the places between them, then the other way round: right where positions there are nearer with it than with its
 * alternative, which is leaving the sample out for an approval, and the proposed cluster for the others. Advice that changes
 * no position there is not counted.
 */
public final class AdviceRates {

	private static final int FEWEST = 20;

	/**
	 * Of one advice.
	 *
	 * @param judged pieces of advice that changed a position
	 * @param right  of those, the right ones
	 */
	public record Rate(int judged, int right) {

		/** For a person, after the advice itself. */
		public String text() {
			return judged < FEWEST ? Words.bind(Messages.AdviceRates_tooFewCasesToSay, judged)
					: String.format(Locale.ROOT,
							Messages.AdviceRates_suchAdviceWasRightIn,
							100.0 * right / judged, judged);
		}
	}

	private final Map<Advice, Rate> rates;

	private AdviceRates(Map<Advice, Rate> rates) {
		this.rates = rates;
	}

	static AdviceRates of(List<Evidence> all, Outlooks outlooks) {
		Map<Advice, Rate> rates = new EnumMap<>(Advice.class);
		for (Evidence e : all) {
			for (int half = 0; half < 2; half++) {
				Advice advice = Advice.of(outlooks.ofHalf(half, e.index()), e.made(), e.agrees());
				double gain = gainMetres(advice, outlooks.ofHalf(1 - half, e.index()));
				if (gain != 0 && !Double.isNaN(gain)) {
					rates.merge(advice, new Rate(1, gain > 0 ? 1 : 0),
							(a, b) -> new Rate(a.judged + b.judged, a.right + b.right));
				}
			}
		}
		return new AdviceRates(rates);
	}

	/** By how much positions are nearer than with the alternative. */
	private static double gainMetres(Advice advice, Outlook at) {
		double proposed = at.proposed().errorChangeMetres();
		return switch (advice) {
		case APPROVE -> -proposed;
		case MOVE -> proposed - at.nearest().errorChangeMetres();
		case LEAVE_OUT -> proposed;
		case NONE -> 0;
		};
	}

	/** Of an advice. */
	public Rate of(Advice advice) {
		return rates.getOrDefault(advice, new Rate(0, 0));
	}
}
