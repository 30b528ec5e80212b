package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
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

	private CancellableWait() {
	}

	/** @throws CancellationException once the progress is cancelled */
	static <T> T on(Progress progress, Callable<T> call) throws IOException {
		CompletableFuture<T> answer = CompletableFuture.supplyAsync(() -> {
			try {
				return call.call();
			} catch (Exception e) {
				throw new CompletionException(e);
			}
		});
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
