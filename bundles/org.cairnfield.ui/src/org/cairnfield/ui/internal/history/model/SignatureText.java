package org.cairnfield.ui.internal.history.model;

import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.signature.Signature;

/** What the signature of a save point says, in one line. */
public final class SignatureText {

	private SignatureText() {
	}

	/** Of a save point, by whose key it carries. */
	public static String of(SavePoint point, Signature signature) {
		String detail = signature.detail().isEmpty() ? "" : " (" + signature.detail() + ")";
		return switch (signature.state()) {
			case NOT_SIGNED -> "Not signed";
			case GOOD -> signature.isOf(point.person()) ? "Good signature by " + signature.by() + detail
					: "Signed by " + signature.by() + ", not by " + point.person() + detail;
			case BAD -> "✖ Bad signature" + detail;
			case UNKNOWN_KEY -> "Signed with a key that is not known here" + detail;
			case NOT_CHECKED -> "Signed, but the signature was not checked" + detail;
		};
	}
}
