package org.cairnfield.ui.internal.history.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;

import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.signature.Signature;
import org.cairnfield.archive.signature.Signature.State;
import org.junit.jupiter.api.Test;

class SignatureTextTest {

	private static String text(State state, String by, String detail) {
		return SignatureText.of(new SavePoint("0".repeat(40), "R. Reviewer", Instant.EPOCH, "", "", List.of()),
				new Signature(state, by, detail));
	}

	@Test
	void aGoodSignatureIsThatOfWhoMadeTheSavePointOrOfSomebodyElse() {
		assertEquals("Good signature by r. reviewer (SHA256:x)", text(State.GOOD, "r. reviewer", "SHA256:x"));
		assertEquals("Signed by L. Lead, not by R. Reviewer", text(State.GOOD, "L. Lead", ""));
	}

	@Test
	void allOthersProveNothingAndSayWhy() {
		assertEquals("Not signed", text(State.NOT_SIGNED, "", ""));
		assertEquals("✖ Bad signature (incorrect signature)", text(State.BAD, "", "incorrect signature"));
		assertEquals("Signed with a key that is not known here (SHA256:x)", text(State.UNKNOWN_KEY, "", "SHA256:x"));
		assertEquals("Signed, but the signature was not checked (gpg is not installed)",
				text(State.NOT_CHECKED, "", "gpg is not installed"));
	}
}
