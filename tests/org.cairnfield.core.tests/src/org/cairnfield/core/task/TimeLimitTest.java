package org.cairnfield.core.task;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class TimeLimitTest {

	private final AtomicLong now = new AtomicLong(-5);
	private final TimeLimit limit = TimeLimit.of(Duration.ofNanos(10), now::get);

	@Test
	void worksUntilTheTimeIsOver() {
		assertEquals(Optional.of(7), limit.run(Workers.inline(), within -> 7));
		now.addAndGet(9);
		assertFalse(limit.isOver());
		now.addAndGet(1);
		assertTrue(limit.isOver());
		assertEquals(Optional.empty(), limit.run(Workers.inline(), within -> {
			throw new AssertionError("begun too late");
		}));
	}

	@Test
	void stopsWorkThatLooksUpOnceItIsOver() {
		assertEquals(Optional.empty(), limit.run(Workers.inline(), within -> {
			within.checkCancelled();
			now.addAndGet(10);
			within.checkCancelled();
			throw new AssertionError("went on");
		}));
	}

	@Test
	void theFirstPartIsOverSooner() {
		now.addAndGet(2);
		assertTrue(limit.first(0.2).isOver());
		assertFalse(limit.first(0.3).isOver());
	}

	@Test
	void theCallersOwnCancellingIsNoMatterOfTime() {
		boolean[] cancelled = { false };
		Workers workers = Workers.on(Runnable::run, 1, new Progress() {
			@Override
			public boolean isCancelled() {
				return cancelled[0];
			}
		});
		assertThrows(CancellationException.class, () -> limit.run(workers, within -> {
			cancelled[0] = true;
			within.checkCancelled();
			return 1;
		}));
		assertThrows(CancellationException.class, () -> limit.run(workers, within -> 1));
	}
}
