package org.cairnfield.curation.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.cairnfield.core.text.Words;

/** Effects put in words. */
final class EffectWords {

	private EffectWords() {
	}

	static String of(RemedyEffect effect) {
		MapEffect on = effect.onHoldOuts();
		List<String> touched = new ArrayList<>();
		if (effect.samples() > 0) {
			touched.add(String.format(Locale.ROOT, Messages.EffectWords_sample, effect.samples(),
					effect.samples() == 1 ? "" : "s"));
		}
		if (effect.accessPoints() > 0) {
			touched.add(String.format(Locale.ROOT, Messages.EffectWords_accessPoint, effect.accessPoints(),
					effect.accessPoints() == 1 ? "" : "s"));
		}
		if (effect.samples() == 0 && effect.readings() != 0) { // with samples their readings go as well
			touched.add(String.format(Locale.ROOT, Messages.EffectWords_reading, Math.abs(effect.readings()),
					Math.abs(effect.readings()) == 1 ? "" : "s"));
		}
		String what = touched.isEmpty() ? Messages.EffectWords_touchesNoSample
				: Words.bind(Messages.EffectWords_touches, String.join(Messages.EffectWords_and, touched));
		if (!on.isKnown()) {
			return Words.bind(Messages.EffectWords_noSampleIsLeftTo, what);
		}
		String figures = String.format(Locale.ROOT,
				Messages.EffectWords_meanErrorMBeforeM,
				on.errorBeforeMetres(), on.errorAfterMetres(), on.errorChange().low(), on.errorChange().high(),
				100 * on.rightFloorBefore(), 100 * on.rightFloorAfter(), 100 * on.floorChange().low(),
				100 * on.floorChange().high());
		return String.format(Locale.ROOT, Messages.EffectWords_onHeldOutSamples, what, verdict(on), on.questions(),
				figures);
	}

	private static String verdict(MapEffect on) {
		if (on.isWorse()) {
			return on.isBetter() ? Messages.EffectWords_mixedOneOfErrorAnd
					: Messages.EffectWords_makesPositionsWorse;
		}
		return on.isBetter() ? Messages.EffectWords_makesPositionsBetter : Messages.EffectWords_noMeasurableChange;
	}
}
