package org.cairnfield.archive.remote;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String RemoteUrl_isNotSupported;
	public static String RemoteUrl_leaveItOutItIs;
	public static String RemoteUrl_nameAFolderOrUrl;
	public static String RemoteUrl_noHostIn;
	public static String RemoteUrl_notAPlaceToExchange;
	public static String RemoteUrl_notAUrl;
	public static String RemoteUrl_theUrlHoldsAPassword;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
