package org.cairnfield.ui.tests.robot;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/**
 * Notes the longest turns of the event loop, each with what it was at. A turn is the handling of one event or one runnable;
 * what a dialog's own loop handles are turns of their own. Those that wait, as for a disk, are found by their time, those that
 * compute on a busy machine by that of the processor, so the longest of both kinds are kept.
 */
public final class TurnWatch implements AutoCloseable {

	/**
	 * One turn.
	 *
	 * @param cpuMillis processor time of the thread of the user interface, which other programs change less
	 * @param stack where it was when it had lasted a while; empty for a short one
	 */
	public record Turn(String during, double millis, double cpuMillis, List<StackTraceElement> stack) {

		@Override
		public String toString() {
			StringBuilder text = new StringBuilder(
					String.format(Locale.ROOT, "%.0f ms, processor %.0f ms, while %s", millis, cpuMillis, during));
			stack.stream().filter(frame -> frame.getClassName().startsWith("org.cairnfield")).limit(FRAMES)
					.forEach(frame -> text.append("\n    at ").append(frame));
			if (!stack.isEmpty()) {
				text.append("\n    in ").append(stack.get(0));
			}
			return text.toString();
		}
	}

	private static final int KEPT = 8;
	private static final int FRAMES = 12;
	private static final int LOOK_MILLIS = 5;
	private static final long A_WHILE_NANOS = 40_000_000;

	private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
	private final Display display = Display.getDefault();
	private final Listener listener = this::handle;
	private final List<Turn> longest = new ArrayList<>();
	private final List<Turn> busiest = new ArrayList<>();
	private final Thread looking = new Thread(this::look, "TurnWatch");
	private String during = "starting";
	private int depth;
	private long cpu;
	/** When the turn began; 0 between turns. */
	private volatile long began;
	private volatile boolean closed;
	private List<StackTraceElement> stack = List.of();
	private int turns;

	/** Watches from now on. */
	public TurnWatch() {
		Ui.run(() -> {
			for (int type : new int[] { SWT.PreEvent, SWT.PostEvent, SWT.Sleep, SWT.Wakeup }) {
				display.addListener(type, listener);
			}
		});
		looking.setDaemon(true);
		looking.start();
	}

	/** @param what the story does from now on */
	public void during(String what) {
		Ui.run(() -> during = what);
	}

	private void handle(Event event) {
		switch (event.type) {
		case SWT.PreEvent -> {
			if (depth++ == 0) {
				begin();
			}
		}
		case SWT.PostEvent -> {
			if (depth == 0 || --depth == 0) {
				end();
				begin(); // the rest of what opened a dialog, should this have been the last of its turns
			}
		}
		case SWT.Sleep -> {
			if (depth > 0) {
				end();
			}
			depth = 0;
			began = 0;
		}
		default -> begin();
		}
	}

	private void begin() {
		cpu = threads.getCurrentThreadCpuTime();
		synchronized (this) {
			stack = List.of();
			began = System.nanoTime();
		}
	}

	private synchronized void end() {
		if (began == 0) {
			return;
		}
		turns++;
		Turn turn = new Turn(during, (System.nanoTime() - began) / 1e6, (threads.getCurrentThreadCpuTime() - cpu) / 1e6,
				stack);
		keep(longest, turn, Turn::millis);
		keep(busiest, turn, Turn::cpuMillis);
	}

	private static void keep(List<Turn> most, Turn turn, ToDoubleFunction<Turn> by) {
		if (most.size() < KEPT || by.applyAsDouble(turn) > by.applyAsDouble(most.get(KEPT - 1))) {
			most.add(turn);
			most.sort(Comparator.comparingDouble(by).reversed());
			if (most.size() > KEPT) {
				most.remove(KEPT);
			}
		}
	}

	private void look() {
		try {
			while (!closed) {
				Thread.sleep(LOOK_MILLIS);
				long then = began;
				if (then != 0 && System.nanoTime() - then > A_WHILE_NANOS) {
					List<StackTraceElement> now = List.of(display.getThread().getStackTrace());
					synchronized (this) {
						if (began == then && stack.isEmpty()) {
							stack = now;
						}
					}
				}
			}
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
		}
	}

	/** The turns that took longest, the longest first. */
	public List<Turn> longest() {
		return Ui.ask(() -> List.copyOf(longest));
	}

	/** The turns that took most of the processor, the worst first. */
	public List<Turn> busiest() {
		return Ui.ask(() -> List.copyOf(busiest));
	}

	/** How many there were, and the longest of both kinds. */
	public String summary() {
		StringBuilder text = new StringBuilder(
				String.format(Locale.ROOT, "%,d turns of the event loop%n", Ui.ask(() -> turns)));
		text.append("by time:\n");
		longest().forEach(turn -> text.append(turn).append('\n'));
		text.append("by processor time:\n");
		busiest().forEach(turn -> text.append(turn).append('\n'));
		return text.toString();
	}

	@Override
	public void close() {
		closed = true;
		Ui.run(() -> {
			for (int type : new int[] { SWT.PreEvent, SWT.PostEvent, SWT.Sleep, SWT.Wakeup }) {
				display.removeListener(type, listener);
			}
		});
	}
}
