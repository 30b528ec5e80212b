package org.cairnfield.curation.effect;

/**
 * What remedies would do, computed by {@link HoldOuts} before they are applied.
 *
 * @param samples      that would be left out, moved, or lose readings
 * @param accessPoints that would be set aside, grouped, or lose readings
 * @param readings     how many fewer the map holds, by which its size and the work of a query shrink; below 0 for more
 * @param onHoldOuts   what it does to positions
 */
public record RemedyEffect(int samples, int accessPoints, int readings, MapEffect onHoldOuts) {

	/** What it does, for a person. */
	public String words() {
		return EffectWords.of(this);
	}
}
