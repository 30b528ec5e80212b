package org.cairnfield.core.task;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import java.util.function.LongSupplier;

/** A time that work may take. What has not ended by then is stopped, as if it had been cancelled, and comes to nothing. */
public final class TimeLimit {

	/** Longer than anybody waits. */
	public static final Duration NEVER = Duration.ofDays(1_000);

	private final LongSupplier clock;
	private final long began;
	private final long nanos;

	private TimeLimit(LongSupplier clock, long began, long nanos) {
		this.clock = clock;
		this.began = began;
		this.nanos = nanos;
	}

	/** Counts from now. */
	public static TimeLimit of(Duration most) {
		return of(most, System::nanoTime);
	}

	/** Likewise by a clock that tells nanoseconds. */
	public static TimeLimit of(Duration most, LongSupplier clock) {
		return new TimeLimit(clock, clock.getAsLong(), most.toNanos());
	}

	/** The first part of the same time. @param share 0 … 1 */
	public TimeLimit first(double share) {
		return new TimeLimit(clock, began, (long) (share * nanos));
	}

	public boolean isOver() {
		return clock.getAsLong() - began >= nanos;
	}

	/**
	 * Does work that may be too long.
	 *
	 * @param workers threads of the caller; the work reports no progress
	 * @param work    with threads that are cancelled when the time is over
	 * @return empty where the time was over before its end
	 * @throws CancellationException where the caller has cancelled
	 */
	public <T> Optional<T> run(Workers workers, Function<Workers, T> work) {
		workers.checkCancelled();
		if (isOver()) {
			return Optional.empty();
		}
		try {
			return Optional.of(work.apply(workers.reportingTo(new Progress() {
				@Override
				public boolean isCancelled() {
					return workers.progress().isCancelled() || isOver();
				}

				@Override
				public void warn(String message) {
					workers.progress().warn(message);
				}
			})));
		} catch (CancellationException e) {
			workers.checkCancelled();
			if (!isOver()) {
				throw e;
			}
			return Optional.empty();
		}
	}
}
