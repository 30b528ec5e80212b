package org.cairnfield.curation.run;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.task.Workers;

/** The threads that workbench and batch lend to the core: the only place that makes any. */
public final class Threads implements AutoCloseable {

	private static final long PATIENCE_SECONDS = 10;

	private final ExecutorService executor;
	private final int width;

	private Threads(int width) {
		this.width = width;
		executor = Executors.newFixedThreadPool(width, task -> {
			Thread thread = new Thread(task, "cairnfield-work");
			thread.setDaemon(true);
			return thread;
		});
	}

	/** One a processor. */
	public static Threads ofMachine() {
		return new Threads(Math.max(1, Runtime.getRuntime().availableProcessors()));
	}

	/** Has something done when this program is ended, also by a signal; it must be short. */
	public static void atEnd(String name, Runnable last) {
		Runtime.getRuntime().addShutdownHook(new Thread(last, name));
	}

	public Workers workers(Progress progress) {
		return Workers.on(executor, width, progress);
	}

	/** Ends the threads once what runs has noticed. */
	@Override
	public void close() {
		executor.shutdownNow();
		try {
			executor.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS);
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
		}
	}
}
