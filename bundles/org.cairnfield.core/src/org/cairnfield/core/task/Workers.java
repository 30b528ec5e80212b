package org.cairnfield.core.task;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * The threads that a caller lends to a computation, with the progress it reports to. The core starts no
 * thread of its own: work is offered as ranges, and whoever owns the executor decides where they run.
 */
public final class Workers {

	private static final int RANGES_PER_WORKER = 16;

	private final Executor executor;
	private final int width;
	private final Progress progress;

	private Workers(Executor executor, int width, Progress progress) {
		this.executor = executor;
		this.width = width;
		this.progress = Objects.requireNonNull(progress);
	}

	/** Everything on the calling thread, in order. */
	public static Workers inline() {
		return new Workers(Runnable::run, 1, Progress.NONE);
	}

	/**
	 * @param width how many ranges may run at once; results never depend on it
	 */
	public static Workers on(Executor executor, int width, Progress progress) {
		if (width < 1) {
			throw new IllegalArgumentException("width must be at least 1, was " + width);
		}
		return new Workers(Objects.requireNonNull(executor), width, progress);
	}

	/** The same threads, reporting elsewhere. */
	public Workers reportingTo(Progress other) {
		return new Workers(executor, width, other);
	}

	/** The same threads and the same cancelling, with no word of the steps: for work inside a larger step. */
	public Workers quietly() {
		return reportingTo(new Progress() {
			@Override
			public boolean isCancelled() {
				return progress.isCancelled();
			}

			@Override
			public void warn(String message) {
				progress.warn(message);
			}
		});
	}

	public int width() {
		return width;
	}

	public Progress progress() {
		return progress;
	}

	/** @throws CancellationException when the caller has cancelled */
	public void checkCancelled() {
		if (progress.isCancelled()) {
			throw new CancellationException("cancelled");
		}
	}

	/** One worker's share: made once per thread, so that it can hold scratch space. */
	@FunctionalInterface
	public interface RangeTask {
		/** @param from first index, inclusive; @param to last index, exclusive */
		void run(int from, int to);
	}

	/** Makes a {@link RangeTask} with scratch space of its own. */
	@FunctionalInterface
	public interface RangeTaskFactory {
		RangeTask create();
	}

	/**
	 * Runs [0, n) in ranges; returns when all are done. Advances the progress by one per index; the caller
	 * has begun the step.
	 *
	 * @throws CancellationException when cancelled; ranges that had begun are finished first
	 */
	public void forRanges(int n, RangeTaskFactory tasks) {
		checkCancelled();
		int workers = Math.min(width, Math.max(1, n));
		int step = Math.max(1, Math.min(4096, n / (workers * RANGES_PER_WORKER)));
		AtomicInteger next = new AtomicInteger();
		AtomicBoolean failed = new AtomicBoolean();
		Runnable loop = () -> {
			RangeTask task = tasks.create();
			while (!failed.get()) {
				int from = next.getAndAdd(step);
				if (from >= n || from < 0) {
					return;
				}
				try {
					checkCancelled();
					int to = Math.min(n, from + step);
					task.run(from, to);
					progress.advance(to - from);
				} catch (RuntimeException | Error e) {
					failed.set(true);
					throw e;
				}
			}
		};
		List<Other> others = new ArrayList<>();
		for (int w = 1; w < workers; w++) {
			AtomicBoolean claimed = new AtomicBoolean();
			others.add(new Other(claimed, CompletableFuture.runAsync(() -> {
				if (claimed.compareAndSet(false, true)) {
					loop.run();
				}
			}, executor)));
		}
		try {
			loop.run();
		} finally {
			await(others);
		}
	}

	/** Claimed by the thread that runs it, or by the caller if none has come when all is done. */
	private record Other(AtomicBoolean claimed, CompletableFuture<Void> end) {
	}

	/** Waits only for those that have begun: the caller may itself hold up the thread of the rest. */
	private static void await(List<Other> others) {
		RuntimeException failure = null;
		for (Other other : others) {
			if (other.claimed().compareAndSet(false, true)) {
				continue;
			}
			try {
				other.end().join();
			} catch (CompletionException e) {
				failure = e.getCause() instanceof RuntimeException r ? r : e;
			}
		}
		if (failure != null) {
			throw failure;
		}
	}
}
