package org.cairnfield.curation.internal.rules.device;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String DeviceOffsetRule_15And6Find;
	public static String DeviceOffsetRule_3FindsTheSame0;
	public static String DeviceOffsetRule_5And20FindThe;
	public static String DeviceOffsetRule_95OfTheNormalDistribution;
	public static String DeviceOffsetRule_aDeviceThatReadsToo;
	public static String DeviceOffsetRule_beyondTheDbAlreadyTaken;
	public static String DeviceOffsetRule_noTwoDevicesStoodAt;
	public static String DeviceOffsetRule_offsetFromWhichItIs;
	public static String DeviceOffsetRule_placesWhereBothStood;
	public static String DeviceOffsetRule_readingsOfTwoDevicesSome;
	public static String DeviceOffsetRule_readsDbThanAtWhere;
	public static String DeviceOffsetRule_samplesAreNotOfTwo;
	public static String DeviceOffsetRule_standardDeviationsToEitherSide;
	public static String DeviceOffsetRule_takenForTheSamePlace;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
