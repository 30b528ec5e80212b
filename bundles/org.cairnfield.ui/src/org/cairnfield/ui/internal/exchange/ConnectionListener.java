package org.cairnfield.ui.internal.exchange;

/** Hears of the connection of the archive on show, on the user interface thread. */
public interface ConnectionListener {

	/** The remote, or what keeps from an exchange, may be another. */
	void connectionChanged();

	/** There was an exchange that did not show the archive again. */
	default void exchanged() {
	}
}
