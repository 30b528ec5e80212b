package org.cairnfield.ui.internal.history.model;

import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.signature.Signature;
import org.eclipse.osgi.util.NLS;

/** What the signature of a save point says, in one line. */
public final class SignatureText {

	private SignatureText() {
	}

	/** Of a save point, by whose key it carries. */
	public static String of(SavePoint point, Signature signature) {
		String detail = signature.detail().isEmpty() ? "" : " (" + signature.detail() + ")";
		return switch (signature.state()) {
		case NOT_SIGNED -> Messages.SignatureText_notSigned;
		case GOOD ->
			signature.isOf(point.person()) ? NLS.bind(Messages.SignatureText_goodSignatureBy, signature.by(), detail)
					: NLS.bind(Messages.SignatureText_signedByNotBy,
							new Object[] { signature.by(), point.person(), detail });
		case BAD -> NLS.bind(Messages.SignatureText_badSignature, detail);
		case UNKNOWN_KEY -> NLS.bind(Messages.SignatureText_signedWithAKeyThat, detail);
		case NOT_CHECKED -> NLS.bind(Messages.SignatureText_signedButTheSignatureWas, detail);
		};
	}
}
