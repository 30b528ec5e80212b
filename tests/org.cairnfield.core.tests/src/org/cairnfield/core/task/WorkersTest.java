package org.cairnfield.core.task;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WorkersTest {

	@ParameterizedTest
	@CsvSource({ "1, 0", "1, 1", "1, 1000", "2, 1", "2, 33", "3, 2", "3, 100000", "8, 5" })
	void visitsEveryIndexOnce(int width, int n) {
		try (Threads threads = new Threads(width)) {
			Tally tally = Tally.neverCancelling();
			AtomicIntegerArray visits = new AtomicIntegerArray(n);
			threads.workers(tally).forRanges(n, () -> (from, to) -> {
				for (int i = from; i < to; i++) {
					visits.incrementAndGet(i);
				}
			});
			for (int i = 0; i < n; i++) {
				assertEquals(1, visits.get(i), "index " + i);
			}
			assertEquals(n, tally.advanced());
		}
	}

	@Test
	void makesScratchSpaceForEachThreadOnce() {
		try (Threads threads = new Threads(3)) {
			AtomicInteger made = new AtomicInteger();
			Set<Thread> seen = ConcurrentHashMap.newKeySet();
			threads.workers().forRanges(10_000, () -> {
				made.incrementAndGet();
				Thread[] own = new Thread[1];
				return (from, to) -> {
					seen.add(Thread.currentThread());
					own[0] = own[0] == null ? Thread.currentThread() : own[0];
					assertEquals(own[0], Thread.currentThread());
				};
			});
			assertTrue(made.get() <= 3, made + " made");
			assertTrue(seen.size() <= 3, seen.size() + " threads");
		}
	}

	// Each range waits until another thread has begun one too: with one thread alone this would time out.
	@Test
	void runsRangesAtTheSameTime() {
		try (Threads threads = new Threads(2)) {
			CountDownLatch two = new CountDownLatch(2);
			AtomicInteger missed = new AtomicInteger();
			threads.workers().forRanges(2, () -> (from, to) -> {
				two.countDown();
				try {
					if (!two.await(20, TimeUnit.SECONDS)) {
						missed.incrementAndGet();
					}
				} catch (InterruptedException e) {
					missed.incrementAndGet();
				}
			});
			assertEquals(0, missed.get());
		}
	}

	@Test
	void inlineStaysOnTheCallingThreadAndInOrder() {
		int[] next = new int[1];
		Thread caller = Thread.currentThread();
		Workers.inline().forRanges(1000, () -> (from, to) -> {
			assertEquals(caller, Thread.currentThread());
			assertEquals(next[0], from);
			next[0] = to;
		});
		assertEquals(1000, next[0]);
	}

	@ParameterizedTest
	@ValueSource(ints = { 1, 2, 3 })
	void passesOnAFailureAndBeginsNoFurtherRange(int width) {
		try (Threads threads = new Threads(width)) {
			AtomicInteger begun = new AtomicInteger();
			IllegalStateException thrown = assertThrows(IllegalStateException.class,
					() -> threads.workers().forRanges(100_000, () -> (from, to) -> {
						begun.incrementAndGet();
						throw new IllegalStateException("planted");
					}));
			assertEquals("planted", thrown.getMessage());
			assertTrue(begun.get() <= width, begun + " ranges begun");
		}
	}

	@Test
	void passesOnAFailureOfAnotherThread() {
		try (Threads threads = new Threads(2)) {
			Thread caller = Thread.currentThread();
			CountDownLatch otherHasFailed = new CountDownLatch(1);
			assertThrows(IllegalStateException.class, () -> threads.workers().forRanges(2, () -> (from, to) -> {
				if (Thread.currentThread() != caller) {
					otherHasFailed.countDown();
					throw new IllegalStateException("planted");
				}
				try {
					otherHasFailed.await(20, TimeUnit.SECONDS);
				} catch (InterruptedException e) {
					Thread.currentThread().interrupt();
				}
			}));
		}
	}

	// The caller fails once the other has begun; the other goes on once the caller waits for it.
	@Test
	void beginsNoFurtherRangeAfterAFailureOfAnother() {
		try (Threads threads = new Threads(2)) {
			Thread caller = Thread.currentThread();
			AtomicInteger begunByOther = new AtomicInteger();
			assertThrows(IllegalStateException.class, () -> threads.workers().forRanges(1000, () -> (from, to) -> {
				if (Thread.currentThread() == caller) {
					spinUntil(() -> begunByOther.get() > 0);
					throw new IllegalStateException("planted");
				}
				begunByOther.incrementAndGet();
				spinUntil(() -> caller.getState() == Thread.State.WAITING);
			}));
			assertEquals(1, begunByOther.get());
		}
	}

	private static void spinUntil(BooleanSupplier holds) {
		long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(20);
		while (!holds.getAsBoolean() && System.nanoTime() < deadline) {
			Thread.onSpinWait();
		}
	}

	@ParameterizedTest
	@ValueSource(ints = { 1, 2, 3 })
	void stopsSoonAfterItIsCancelled(int width) {
		try (Threads threads = new Threads(width)) {
			Tally tally = Tally.cancellingAfter(1);
			assertThrows(CancellationException.class,
					() -> threads.workers(tally).forRanges(16_000, () -> (from, to) -> {
					}));
			assertTrue(tally.advanced() < 16_000 / 4, tally.advanced() + " done");
		}
	}

	@Test
	void doesNothingWhereItIsCancelledBefore() {
		AtomicInteger made = new AtomicInteger();
		Workers cancelled = Workers.inline().reportingTo(Tally.cancellingAfter(0));
		assertThrows(CancellationException.class, cancelled::checkCancelled);
		assertThrows(CancellationException.class, () -> cancelled.forRanges(10, () -> {
			made.incrementAndGet();
			return (from, to) -> made.incrementAndGet();
		}));
		assertEquals(0, made.get());
	}

	// The caller may stand on one of the threads it lends; those it waits for may then never become free.
	@Test
	void finishesOnACallerThatOccupiesTheOnlyThread() {
		try (Threads threads = new Threads(1)) {
			AtomicInteger done = new AtomicInteger();
			Workers three = Workers.on(threads.executor(), 3, Progress.NONE);
			assertTimeoutPreemptively(Duration.ofSeconds(20), () -> threads.executor()
					.submit(() -> three.forRanges(100, () -> (from, to) -> done.addAndGet(to - from))).get());
			assertEquals(100, done.get());
		}
	}

	@Test
	void refusesAWidthOfNone() {
		assertThrows(IllegalArgumentException.class, () -> Workers.on(Runnable::run, 0, Progress.NONE));
	}
}
