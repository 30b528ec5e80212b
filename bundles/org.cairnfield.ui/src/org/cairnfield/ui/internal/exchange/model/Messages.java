package org.cairnfield.ui.internal.exchange.model;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String ExchangeText_afterTheExchangeThereWould;
	public static String ExchangeText_aheadBehind;
	public static String ExchangeText_exchanged;
	public static String ExchangeText_note;
	public static String ExchangeText_nothingToExchange;
	public static String ExchangeText_received;
	public static String ExchangeText_receivedFrom;
	public static String ExchangeText_receivedNothing;
	public static String ExchangeText_savePoint;
	public static String ExchangeText_savePoint2;
	public static String ExchangeText_sent;
	public static String ExchangeText_sent2;
	public static String ExchangeText_sentNothing;
	public static String ExchangeText_time;
	public static String ExchangeText_toRead;
	public static String ExchangeText_whatChanged;
	public static String ExchangeText_who;
	public static String ExchangeText_youAndTheOthersHave;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
