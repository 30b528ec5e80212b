package org.cairnfield.core.task;

/**
 * What long work tells its caller, and how the caller stops it. Implementations must be safe to call
 * from several threads; work calls {@link #advance} often, so it must be cheap.
 */
public interface Progress {

	/** Hears nothing and never cancels. */
	Progress NONE = new Progress() {
	};

	/** A step begins that will {@link #advance} by {@code units} in all. */
	default void begin(String step, long units) {
	}

	/** {@code units} of the current step are done. */
	default void advance(long units) {
	}

	/** Something a person should know about the result, though the work goes on. */
	default void warn(String message) {
	}

	/** True once the work should stop; it then ends with a {@link java.util.concurrent.CancellationException}. */
	default boolean isCancelled() {
		return false;
	}
}
