package org.cairnfield.curation.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Effects put in words. */
final class EffectWords {

	private EffectWords() {
	}

	static String of(RemedyEffect effect) {
		MapEffect on = effect.onHoldOuts();
		List<String> touched = new ArrayList<>();
		if (effect.samples() > 0) {
			touched.add(String.format(Locale.ROOT, "%,d sample%s", effect.samples(), effect.samples() == 1 ? "" : "s"));
		}
		if (effect.accessPoints() > 0) {
			touched.add(String.format(Locale.ROOT, "%,d access point%s", effect.accessPoints(),
					effect.accessPoints() == 1 ? "" : "s"));
		}
		if (effect.samples() == 0 && effect.readings() != 0) { // with samples their readings go as well
			touched.add(String.format(Locale.ROOT, "%,d reading%s", Math.abs(effect.readings()),
					Math.abs(effect.readings()) == 1 ? "" : "s"));
		}
		String what = touched.isEmpty() ? "Touches no sample" : "Touches " + String.join(" and ", touched);
		if (!on.isKnown()) {
			return what + "; no sample is left to measure the effect with.";
		}
		String figures = String.format(Locale.ROOT,
				"mean error %.2f m before, %.2f m after (95 %% of the change: %+.2f to %+.2f m); right floor %.1f %% before, %.1f %% after"
						+ " (%+.1f to %+.1f points)",
				on.errorBeforeMetres(), on.errorAfterMetres(), on.errorChange().low(), on.errorChange().high(),
				100 * on.rightFloorBefore(), 100 * on.rightFloorAfter(), 100 * on.floorChange().low(),
				100 * on.floorChange().high());
		return String.format(Locale.ROOT, "%s. %s. On %,d held-out samples: %s.", what, verdict(on), on.questions(),
				figures);
	}

	private static String verdict(MapEffect on) {
		if (on.isWorse()) {
			return on.isBetter() ? "Mixed: one of error and right floor gets better, the other worse"
					: "Makes positions worse";
		}
		return on.isBetter() ? "Makes positions better" : "No measurable change";
	}
}
