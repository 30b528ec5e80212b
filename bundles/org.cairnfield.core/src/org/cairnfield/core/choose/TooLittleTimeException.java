package org.cairnfield.core.choose;

import org.cairnfield.core.text.Words;

/** There was no time to find out at what distance samples have neighbours. */
public final class TooLittleTimeException extends RuntimeException {

	private static final long serialVersionUID = 1;

	TooLittleTimeException(int samples) {
		super(Words.bind(Messages.TooLittleTimeException_theTimeIsTooShort, samples));
	}
}
