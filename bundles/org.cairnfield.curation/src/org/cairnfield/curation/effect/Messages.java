package org.cairnfield.curation.effect;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String EffectWords_accessPoint;
	public static String EffectWords_and;
	public static String EffectWords_makesPositionsBetter;
	public static String EffectWords_makesPositionsWorse;
	public static String EffectWords_meanErrorMBeforeM;
	public static String EffectWords_mixedOneOfErrorAnd;
	public static String EffectWords_noMeasurableChange;
	public static String EffectWords_noSampleIsLeftTo;
	public static String EffectWords_onHeldOutSamples;
	public static String EffectWords_reading;
	public static String EffectWords_sample;
	public static String EffectWords_touches;
	public static String EffectWords_touchesNoSample;
	public static String HoldOuts_askingHoldOuts;
	public static String HoldOuts_askingHoldOutsAgain;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
