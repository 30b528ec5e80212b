package org.cairnfield.curation.filter;

import org.cairnfield.core.text.Words;

/** An expression that cannot be understood. The message says where, what, and what to do. */
public final class FilterException extends Exception {

	private static final long serialVersionUID = 1;

	private final int position;

	FilterException(int position, String what, String remedy) {
		super(Words.bind(Messages.FilterException_atCharacter, position + 1, what, remedy));
		this.position = position;
	}

	/** Where in the text, from 0; its length where something is missing at the end. */
	public int position() {
		return position;
	}
}
