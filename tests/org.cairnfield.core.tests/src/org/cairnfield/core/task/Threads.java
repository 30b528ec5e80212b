package org.cairnfield.core.task;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** A few threads to lend, gone when closed. */
public final class Threads implements AutoCloseable {

	private final ExecutorService executor;
	private final int count;

	public Threads(int count) {
		this.count = count;
		executor = Executors.newFixedThreadPool(count);
	}

	public Workers workers() {
		return workers(Progress.NONE);
	}

	/** As wide as there are threads; the caller is one of the workers, so one thread stays idle. */
	public Workers workers(Progress progress) {
		return Workers.on(executor, count, progress);
	}

	public ExecutorService executor() {
		return executor;
	}

	@Override
	public void close() {
		executor.shutdownNow();
	}
}
