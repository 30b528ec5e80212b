package org.cairnfield.curation.effect;

import org.cairnfield.core.stats.Interval;

/**
 * What a change of a map does to positions: nearest sample of the whole map, the same questions before and after.
 *
 * @param questions         samples that were asked about
 * @param errorBeforeMetres mean plane error of those put at the right site both times; NaN for none
 * @param errorAfterMetres  likewise
 * @param rightFloorBefore  share of the questions put on the right floor of the right site, 0 … 1; NaN for none
 * @param rightFloorAfter   likewise
 * @param errorChange       95 % interval of the change of the error, paired, in metres; NaN bounds for no questions
 * @param floorChange       likewise of the share on the right floor
 */
public record MapEffect(int questions, double errorBeforeMetres, double errorAfterMetres, double rightFloorBefore,
		double rightFloorAfter,
		Interval errorChange, Interval floorChange) {

	/** Whether error or right floor got worse beyond its interval. */
	public boolean isWorse() {
		return errorChange.low() > 0 || floorChange.high() < 0;
	}

	/** Whether error or right floor got better beyond its interval. */
	public boolean isBetter() {
		return errorChange.high() < 0 || floorChange.low() > 0;
	}

	/** Whether there was anything to ask. */
	public boolean isKnown() {
		return questions > 0;
	}
}
