package org.cairnfield.exchange.pack;

/** A map has more, or reaches farther, than a device pack can hold; the message names what. */
public final class PackLimitException extends IllegalArgumentException {

	private static final long serialVersionUID = 1;

	PackLimitException(String message) {
		super(message);
	}
}
