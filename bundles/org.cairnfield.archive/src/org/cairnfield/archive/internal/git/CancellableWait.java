package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

import org.cairnfield.core.task.Progress;

/**
 * Waits for another computer, which may never answer, until the answer is there or somebody cancels. Reading from a connection
 * cannot be interrupted, so it is left to itself then, and ends when its own time is over.
 */
final class CancellableWait {

	private static final int LOOK_MILLIS = 100;
	/** A repository in a folder is served by threads of JGit, whose failures come back to the caller: no need to print them too. */
	private static final ThreadGroup OTHER_SIDE = new ThreadGroup(Messages.CancellableWait_exchange) {
		@Override
		public void uncaughtException(Thread thread, Throwable e) {
			if (!thread.getName().startsWith("JGit-")) {
				super.uncaughtException(thread, e);
			}
		}
	};

	private CancellableWait() {
	}

	/** @throws CancellationException once the progress is cancelled */
	static <T> T on(Progress progress, Callable<T> call) throws IOException {
		CompletableFuture<T> answer = new CompletableFuture<>();
		Thread thread = new Thread(OTHER_SIDE, () -> {
			try {
				answer.complete(call.call());
			} catch (Throwable e) {
				answer.completeExceptionally(e);
			}
		}, Messages.CancellableWait_exchange);
		thread.setDaemon(true);
		thread.start();
		while (true) {
			try {
				return answer.get(LOOK_MILLIS, TimeUnit.MILLISECONDS);
			} catch (TimeoutException e) {
				if (progress.isCancelled()) {
					throw new CancellationException();
				}
			} catch (InterruptedException e) {
				Thread.currentThread().interrupt();
				throw new CancellationException();
			} catch (ExecutionException e) {
				throw thrown(e.getCause());
			}
		}
	}

	private static IOException thrown(Throwable problem) {
		if (problem instanceof RuntimeException unchecked) {
			throw unchecked;
		}
		if (problem instanceof Error error) {
			throw error;
		}
		return problem instanceof IOException known ? known : new IOException(problem);
	}
}
