package org.cairnfield.batch.cli;

import java.io.PrintWriter;
import java.util.concurrent.atomic.AtomicLong;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.text.Words;

/** A line on standard error that follows the work; one line a step where that is no terminal. */
final class ConsoleProgress implements Progress {

	private static final long NANOS_BETWEEN = 200_000_000L;

	private final PrintWriter err;
	private final boolean quiet;
	private final boolean terminal;
	private final AtomicLong done = new AtomicLong();
	private final AtomicLong shownAt = new AtomicLong();
	private volatile String step = "";
	private volatile long units;
	private int width;

	private ConsoleProgress(PrintWriter err, boolean quiet, boolean terminal) {
		this.err = err;
		this.quiet = quiet;
		this.terminal = terminal;
	}

	static ConsoleProgress on(PrintWriter err, boolean quiet) {
		return new ConsoleProgress(err, quiet, System.console() != null && err instanceof TerminalWriter);
	}

	@Override
	public synchronized void begin(String newStep, long newUnits) {
		if (!quiet && !terminal && !newStep.equals(step)) {
			err.println(newStep + " …");
		}
		step = newStep;
		units = newUnits;
		done.set(0);
		show();
	}

	@Override
	public void advance(long more) {
		done.addAndGet(more);
		long now = System.nanoTime();
		long last = shownAt.get();
		if (now - last > NANOS_BETWEEN && shownAt.compareAndSet(last, now)) {
			show();
		}
	}

	@Override
	public synchronized void warn(String message) {
		clear();
		err.println(Words.bind(Messages.ConsoleProgress_note, message));
	}

	private synchronized void show() {
		if (quiet || !terminal) {
			return;
		}
		String line = step + (units > 0 ? " " + Math.min(100, 100 * done.get() / units) + " %" : "");
		back();
		err.print(line + " ".repeat(Math.max(0, width - line.length())));
		err.flush();
		width = line.length();
	}

	private void back() {
		if (err instanceof TerminalWriter terminalWriter) {
			terminalWriter.carriageReturn();
		}
	}

	private void clear() {
		if (width > 0) {
			back();
			err.print(" ".repeat(width));
			back();
			err.flush();
			width = 0;
		}
	}

	/** Leaves the line clean for what follows. */
	synchronized void end() {
		clear();
	}
}
