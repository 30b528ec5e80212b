package org.cairnfield.ui.internal.history.model;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String SignatureText_badSignature;
	public static String SignatureText_goodSignatureBy;
	public static String SignatureText_notSigned;
	public static String SignatureText_signedButTheSignatureWas;
	public static String SignatureText_signedByNotBy;
	public static String SignatureText_signedWithAKeyThat;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
