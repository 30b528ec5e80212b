package org.cairnfield.exchange;

import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/** What a plan may still change once reading has shown more of a file than its beginning. */
final class Fallback {

	/** Reading has changed a plan and must begin again. */
	static final class Amended extends Exception {
		private static final long serialVersionUID = 1;

		Amended() {
			super(null, null, false, false);
		}
	}

	private Fallback() {
	}

	/** Takes a file that turned out not to be UTF-8 for Latin-1, unless the caller said otherwise. */
	static boolean toLatin1(FilePlan plan, IntakeException e, IntakeOptions options) {
		if (!(e.getCause() instanceof CharacterCodingException) || options.charset().isPresent()
				|| plan.dialect.markBytes() > 0 || !plan.dialect.charset().equals(StandardCharsets.UTF_8)) {
			return false;
		}
		plan.dialect = plan.dialect.withCharset(StandardCharsets.ISO_8859_1);
		plan.guess(new Guess(Messages.Fallback_characterSet, "ISO-8859-1", Messages.Fallback_furtherDownTheFileIs));
		return true;
	}
}
