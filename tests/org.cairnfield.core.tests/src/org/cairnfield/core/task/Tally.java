package org.cairnfield.core.task;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;

/** Adds up what long work tells, and cancels it once so much is done. */
public final class Tally implements Progress {

	private final AtomicInteger steps = new AtomicInteger();
	private final AtomicLong begun = new AtomicLong();
	private final AtomicLong advanced = new AtomicLong();
	private final AtomicInteger late = new AtomicInteger();
	private final AtomicLong ahead = new AtomicLong();
	private final long cancelAfter;

	private Tally(long cancelAfter) {
		this.cancelAfter = cancelAfter;
	}

	public static Tally neverCancelling() {
		return new Tally(Long.MAX_VALUE);
	}

	/** Cancelled from the moment when {@code units} have been advanced. */
	public static Tally cancellingAfter(long units) {
		return new Tally(units);
	}

	@Override
	public void begin(String step, long units) {
		steps.incrementAndGet();
		// What the step before left open or overran shows here, even if a later one makes up for it.
		ahead.accumulateAndGet(Math.abs(begun.get() - advanced.get()), Math::max);
		begun.addAndGet(units);
	}

	@Override
	public void advance(long units) {
		if (advanced.getAndAdd(units) >= cancelAfter) {
			late.incrementAndGet();
		}
	}

	@Override
	public boolean isCancelled() {
		return advanced.get() >= cancelAfter;
	}

	public int steps() {
		return steps.get();
	}

	/** Units of all steps begun. */
	public long begun() {
		return begun.get();
	}

	public long advanced() {
		return advanced.get();
	}

	/** How often work was still done once it was cancelled. */
	public int late() {
		return late.get();
	}

	/** By how much a step was ever short of what it began with, or beyond it, when the next one began. */
	public long largestMismatch() {
		return Math.max(ahead.get(), Math.abs(begun.get() - advanced.get()));
	}
}
