package org.cairnfield.batch.cli;

/** The survey was read, but there is too little in it for what was asked. */
final class NotEnoughException extends Exception {

	private static final long serialVersionUID = 1;

	NotEnoughException(String message) {
		super(message);
	}
}
