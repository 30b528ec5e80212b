package org.cairnfield.ui.tests.robot;

import static org.junit.jupiter.api.Assertions.fail;

import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;

import org.cairnfield.ui.save.Saving;
import org.cairnfield.ui.work.Soon;
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
	private static final Duration MOMENT = Duration.ofMillis(200);
	private static final int LOOK_MILLIS = 10;
	/** Each look wakes the program, so what takes long is looked at more and more rarely. */
	private static final int MOST_MILLIS = 80;
	/** Looks at least before what need not be so is given up. */
	private static final int LOOKS = 100;

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
		for (int looks = 1; !ask(test::getAsBoolean); looks++) {
			if (System.nanoTime() > end) {
				fail("waited in vain until " + what);
			}
			pause(millisAfter(looks));
		}
	}

	/**
	 * Waits until something is so, or a while for what as a rule is so but need not be. However slow the machine, the program
	 * gets to handle its events between many looks before this gives up.
	 *
	 * @return whether it is so
	 */
	static boolean waitAWhile(BooleanSupplier test) {
		return wait(WHILE, LOOKS, test);
	}

	/** Likewise for a moment only, where nothing depends on it. */
	static void waitAMoment(BooleanSupplier test) {
		wait(MOMENT, 1, test);
	}

	private static boolean wait(Duration time, int least, BooleanSupplier test) {
		long end = System.nanoTime() + time.toNanos();
		for (int looks = 1; !ask(test::getAsBoolean); looks++) {
			if (looks > least && System.nanoTime() > end) {
				return false;
			}
			pause();
		}
		return true;
	}

	/**
	 * Waits until the program is at rest: no work of ours runs or is due soon, nothing is being saved, and the event loop has
	 * nothing left to do, all at the same moment.
	 */
	public static void waitUntilIdle() {
		waitUntilAsleep("the program is at rest", () -> !isWorking() && !Soon.isAnyDue() && !Saving.isBusy());
	}

	/** Likewise, but for what is due soon: a quick hand does not wait for it either. */
	static void waitForWork() {
		waitUntilAsleep("all work is done", () -> !isWorking());
	}

	private static boolean isWorking() {
		return Job.getJobManager().find(Work.FAMILY).length > 0;
	}

	/**
	 * Waits until the event loop has nothing left to do and something is so. It is the program's own loop, also that of a
	 * dialog which came up meanwhile: a loop of the robot's own would not end before the dialog does.
	 */
	private static void waitUntilAsleep(String what, BooleanSupplier test) {
		CountDownLatch asleep = new CountDownLatch(1);
		Listener listener = event -> {
			if (test.getAsBoolean()) {
				asleep.countDown();
			}
		};
		Display display = Display.getDefault();
		run(() -> display.addListener(SWT.Sleep, listener));
		try {
			long end = System.nanoTime() + PATIENCE.toNanos();
			int looks = 0;
			do {
				if (System.nanoTime() > end) {
					fail("waited in vain until " + what);
				}
				display.wake(); // the end of a job need not wake it
			} while (!asleep.await(millisAfter(++looks), TimeUnit.MILLISECONDS));
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
			fail("interrupted");
		} finally {
			run(() -> display.removeListener(SWT.Sleep, listener));
		}
	}

	private static int millisAfter(int looks) {
		return Math.min(MOST_MILLIS, LOOK_MILLIS * (1 + looks / 4));
	}

	static void pause() {
		pause(LOOK_MILLIS);
	}

	/** The only place that sleeps. */
	private static void pause(int millis) {
		try {
			Thread.sleep(millis);
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
			fail("interrupted");
		}
	}
}
