package org.cairnfield.ui.tests.robot;

import static org.junit.jupiter.api.Assertions.fail;

import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;

import org.cairnfield.ui.work.Work;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Listener;

/** Runs things on the user interface thread, and waits for it and for what works beside it. */
public final class Ui {

	/** Long enough for another workbench to start on a machine that does much else. */
	private static final Duration PATIENCE = Duration.ofSeconds(120);
	private static final Duration WHILE = Duration.ofSeconds(2);
	private static final int LOOK_MILLIS = 25;

	private Ui() {
	}

	/** The value of a question that only the user interface thread may answer. */
	public static <T> T ask(Callable<T> question) {
		AtomicReference<T> answer = new AtomicReference<>();
		AtomicReference<Throwable> problem = new AtomicReference<>();
		Display.getDefault().syncExec(() -> {
			try {
				answer.set(question.call());
			} catch (Throwable e) {
				problem.set(e);
			}
		});
		if (problem.get() != null) {
			throw new AssertionError(problem.get().toString(), problem.get());
		}
		return answer.get();
	}

	/** Likewise without an answer. */
	public static void run(Runnable action) {
		ask(() -> {
			action.run();
			return null;
		});
	}

	/** For what ends only when the person has answered a question. */
	public static void later(Runnable action) {
		Display.getDefault().asyncExec(action);
	}

	/** Waits until something is so; fails after a long while, saying what it waited for. */
	public static void waitUntil(String what, BooleanSupplier test) {
		long end = System.nanoTime() + PATIENCE.toNanos();
		while (!ask(test::getAsBoolean)) {
			if (System.nanoTime() > end) {
				fail("waited in vain until " + what);
			}
			pause();
		}
	}

	/** Waits until something is so, or a while for what as a rule is so but need not be. */
	static void waitAWhile(BooleanSupplier test) {
		long end = System.nanoTime() + WHILE.toNanos();
		while (!ask(test::getAsBoolean) && System.nanoTime() < end) {
			pause();
		}
	}

	/**
	 * Waits until no work of ours runs, none is about to, and the event loop has nothing left to do. It is the program's own
	 * loop, also that of a dialog which came up meanwhile: a loop of the robot's own would not end before the dialog does.
	 */
	public static void waitUntilIdle() {
		waitUntil("all jobs are done", () -> Job.getJobManager().find(Work.FAMILY).length == 0);
		CountDownLatch asleep = new CountDownLatch(1);
		Listener listener = event -> asleep.countDown();
		Display display = Display.getDefault();
		run(() -> display.addListener(SWT.Sleep, listener));
		display.wake();
		try {
			if (!asleep.await(PATIENCE.toSeconds(), TimeUnit.SECONDS)) {
				fail("waited in vain until all events are dealt with");
			}
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
			fail("interrupted");
		} finally {
			run(() -> display.removeListener(SWT.Sleep, listener));
		}
	}

	/** The only place that sleeps. */
	static void pause() {
		try {
			Thread.sleep(LOOK_MILLIS);
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
			fail("interrupted");
		}
	}
}
