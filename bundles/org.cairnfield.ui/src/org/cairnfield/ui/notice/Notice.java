package org.cairnfield.ui.notice;

import java.util.List;

/**
 * Something that a person must know about the archive, whatever perspective is open.
 *
 * @param id      tells it from others; a later one of the same id replaces it
 * @param kind    how bad it is
 * @param text    one or two sentences
 * @param actions what can be done about it
 */
public record Notice(String id, Kind kind, String text, List<Action> actions) {

	/** How bad something is. */
	public enum Kind {
		INFORMATION, WARNING, ERROR
	}

	/**
	 * A link behind the text.
	 *
	 * @param label such as "Show"
	 * @param run   what it does, on the user interface thread
	 */
	public record Action(String label, Runnable run) {
	}

	public Notice {
		actions = List.copyOf(actions);
	}
}
