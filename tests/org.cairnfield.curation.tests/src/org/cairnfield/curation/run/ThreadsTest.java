package org.cairnfield.curation.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicIntegerArray;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.parallel.Isolated;

@Timeout(30)
@Isolated
class ThreadsTest {

	@Test
	void doesEveryIndexOnce() {
		AtomicIntegerArray done = new AtomicIntegerArray(5000);
		try (Threads threads = Threads.ofMachine()) {
			threads.workers(Progress.NONE).forRanges(5000, () -> (from, to) -> {
				for (int i = from; i < to; i++) {
					done.incrementAndGet(i);
				}
			});
		}
		for (int i = 0; i < 5000; i++) {
			assertEquals(1, done.get(i), "index " + i);
		}
	}

	@Test
	void isAsWideAsTheMachine() {
		try (Threads threads = Threads.ofMachine()) {
			assertEquals(Runtime.getRuntime().availableProcessors(), threads.workers(Progress.NONE).width());
		}
	}

	/** All of them but the calling one are daemons of ours, and are gone after close. */
	@Test
	void closeEndsItsThreads() throws InterruptedException {
		int width = Runtime.getRuntime().availableProcessors();
		Assumptions.assumeTrue(width > 1, "skipped: one processor, and the caller works too");
		Set<Thread> seen = ConcurrentHashMap.newKeySet();
		CountDownLatch two = new CountDownLatch(2);
		Threads threads = Threads.ofMachine();
		threads.workers(Progress.NONE).forRanges(1000, () -> {
			if (seen.add(Thread.currentThread())) {
				two.countDown();
			}
			try { // so that a second thread comes at all
				assertTrue(two.await(20, TimeUnit.SECONDS));
			} catch (InterruptedException e) {
				throw new IllegalStateException(e);
			}
			return (from, to) -> {
			};
		});
		threads.close();
		seen.remove(Thread.currentThread());
		assertFalse(seen.isEmpty());
		for (Thread thread : seen) {
			assertTrue(thread.isDaemon(), thread::toString);
			assertEquals("cairnfield-work", thread.getName());
			thread.join(10_000);
			assertFalse(thread.isAlive(), thread::toString);
		}
	}

	@Test
	void takesNoWorkAfterClose() {
		Assumptions.assumeTrue(Runtime.getRuntime().availableProcessors() > 1, "skipped: the caller does all alone");
		Threads threads = Threads.ofMachine();
		Workers workers = threads.workers(Progress.NONE);
		threads.close();
		assertThrows(RejectedExecutionException.class, () -> workers.forRanges(100, () -> (from, to) -> {
		}));
	}

	@Test
	void reportsToTheProgressAndCanBeCancelled() {
		AtomicInteger advanced = new AtomicInteger();
		Progress progress = new Progress() {
			@Override
			public void advance(long units) {
				advanced.addAndGet((int) units);
			}

			@Override
			public boolean isCancelled() {
				return advanced.get() >= 100;
			}
		};
		try (Threads threads = Threads.ofMachine()) {
			Workers workers = threads.workers(progress);
			assertThrows(CancellationException.class, () -> workers.forRanges(100_000, () -> (from, to) -> {
			}));
		}
		assertTrue(advanced.get() >= 100 && advanced.get() < 100_000, "advanced " + advanced);
	}
}
