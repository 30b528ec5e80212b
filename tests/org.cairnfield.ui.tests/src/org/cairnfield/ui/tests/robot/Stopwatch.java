package org.cairnfield.ui.tests.robot;

import java.util.Arrays;
import java.util.Locale;
import java.util.function.BooleanSupplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Listener;

/**
 * From what a person does to the paint of a control that shows what came of it, and to the moment when the event loop has
 * nothing left to do. All on the user interface thread; the way of a key through the display is not in it.
 */
public final class Stopwatch {

	private final Control control;
	private final Listener paint;
	private final Listener sleep = event -> sleep();
	private volatile long began;
	private volatile long painted;
	private volatile long calm;

	/**
	 * @param control whose paint counts
	 * @param isThere whether it shows what came of it; asked when it is painted
	 */
	public Stopwatch(Control control, BooleanSupplier isThere) {
		this.control = control;
		this.paint = event -> paint(isThere);
		Ui.run(() -> {
			Display.getCurrent().addListener(SWT.Sleep, sleep);
			control.addListener(SWT.Paint, paint);
		});
	}

	/** It is done; the first time counts. */
	public void begin() {
		if (began == 0) {
			began = System.nanoTime();
		}
	}

	private void paint(BooleanSupplier isThere) {
		if (began != 0 && painted == 0 && isThere.getAsBoolean()) {
			painted = System.nanoTime();
		}
	}

	private void sleep() {
		if (painted != 0 && calm == 0) {
			calm = System.nanoTime();
		}
	}

	/** Milliseconds to the paint, and to the calm after it; waits for both. */
	public double[] millis() {
		Ui.waitUntil("it is painted", () -> painted != 0);
		Ui.waitUntil("all is calm", () -> calm != 0);
		Ui.run(() -> {
			Display.getCurrent().removeListener(SWT.Sleep, sleep);
			control.removeListener(SWT.Paint, paint);
		});
		return new double[] { (painted - began) / 1e6, (calm - began) / 1e6 };
	}

	/** Such as "median 12.1 ms, 95 % 20.3 ms, longest 31.0 ms of 100". */
	public static String summary(double[] millis) {
		double[] sorted = millis.clone();
		Arrays.sort(sorted);
		return String.format(Locale.ROOT, "median %.1f ms, 95 %% %.1f ms, longest %.1f ms of %d",
				sorted[sorted.length / 2],
				sorted[(int) Math.ceil(0.95 * sorted.length) - 1], sorted[sorted.length - 1], sorted.length);
	}
}
