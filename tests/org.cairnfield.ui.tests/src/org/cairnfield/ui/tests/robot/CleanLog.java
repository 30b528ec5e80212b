package org.cairnfield.ui.tests.robot;

import static org.junit.jupiter.api.Assertions.fail;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.ILogListener;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Platform;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Fails a story during which the platform logged an error or an exception. Applies to every story: the file
 * {@code META-INF/services/org.junit.jupiter.api.extension.Extension} names it.
 */
public final class CleanLog implements BeforeEachCallback, AfterEachCallback {

	private static final List<IStatus> PROBLEMS = new ArrayList<>();
	private static final ILogListener LISTENER = (status, plugin) -> note(status);

	@Override
	public void beforeEach(ExtensionContext context) {
		listen();
	}

	/** Hears of errors from now on. */
	public static void listen() {
		Platform.addLogListener(LISTENER); // once, however often it is added
	}

	@Override
	public void afterEach(ExtensionContext context) {
		check();
	}

	/** Fails if there was an error since the last check, and gives its stack trace. */
	public static void check() {
		List<IStatus> problems = take();
		if (!problems.isEmpty()) {
			Throwable cause = problems.stream().map(IStatus::getException).filter(each -> each != null).findFirst()
					.orElse(null);
			fail("logged: " + problems, cause);
		}
	}

	/** What was logged since the last check, which then forgets it. */
	public static List<IStatus> take() {
		synchronized (PROBLEMS) {
			List<IStatus> taken = List.copyOf(PROBLEMS);
			PROBLEMS.clear();
			return taken;
		}
	}

	private static void note(IStatus status) {
		if (status.getSeverity() == IStatus.ERROR || status.getException() != null) {
			synchronized (PROBLEMS) {
				PROBLEMS.add(status);
			}
		}
	}
}
