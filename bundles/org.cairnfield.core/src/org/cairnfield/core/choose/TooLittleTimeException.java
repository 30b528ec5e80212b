package org.cairnfield.core.choose;

/** There was no time to find out at what distance samples have neighbours. */
public final class TooLittleTimeException extends RuntimeException {

	private static final long serialVersionUID = 1;

	TooLittleTimeException(int samples) {
		super("the time is too short to choose an ε for " + samples + " samples");
	}
}
