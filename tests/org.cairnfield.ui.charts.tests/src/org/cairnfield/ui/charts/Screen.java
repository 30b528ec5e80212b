package org.cairnfield.ui.charts;

import java.util.function.Function;

import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTError;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** A display for tests of canvases, which are skipped where there is none; and what they need to use it. */
final class Screen implements BeforeEachCallback, AfterEachCallback {

	static final RGB WHITE = new RGB(255, 255, 255);
	static final RGB BLACK = new RGB(0, 0, 0);

	private Shell shell;

	@Override
	public void beforeEach(ExtensionContext context) {
		shell = new Shell(display());
	}

	@Override
	public void afterEach(ExtensionContext context) {
		if (shell != null) {
			shell.dispose();
		}
	}

	/** One for all tests of a run, as the platform likes it; where there is none, the platform is asked only once. */
	private static final class Shared {

		static final Display DISPLAY;
		static final String FAULT;

		static {
			Display display = null;
			String fault = "";
			try {
				display = Display.getDefault();
			} catch (SWTError | UnsatisfiedLinkError none) {
				fault = none.getMessage();
			}
			DISPLAY = display;
			FAULT = fault;
		}
	}

	private static Display display() {
		Assumptions.assumeTrue(Shared.DISPLAY != null, () -> "needs a display, such as Xvfb: " + Shared.FAULT);
		return Shared.DISPLAY;
	}

	/** A chart of this size in points, black on white. */
	<C extends Chart> C chart(Function<Composite, C> make, int width, int height) {
		C chart = make.apply(shell);
		chart.setForeground(shell.getDisplay().getSystemColor(SWT.COLOR_BLACK));
		chart.setBackground(shell.getDisplay().getSystemColor(SWT.COLOR_WHITE));
		chart.setSize(width, height);
		return chart;
	}

	static void press(Chart chart, int keyCode, int modifiers) {
		Event event = new Event();
		event.keyCode = keyCode;
		event.stateMask = modifiers;
		chart.notifyListeners(SWT.KeyDown, event);
	}

	/** @param type such as {@link SWT#MouseDown} */
	static void mouse(Chart chart, int type, int x, int y) {
		Event event = new Event();
		event.x = x;
		event.y = y;
		event.button = type == SWT.MouseMove ? 0 : 1;
		chart.notifyListeners(type, event);
	}

	static RGB pixel(ImageData picture, int x, int y) {
		return picture.palette.getRGB(picture.getPixel(x, y));
	}

	/** How many pixels have this colour. */
	static int count(ImageData picture, RGB rgb) {
		int count = 0;
		for (int y = 0; y < picture.height; y++) {
			count += countInLine(picture, rgb, y);
		}
		return count;
	}

	static int countInLine(ImageData picture, RGB rgb, int y) {
		int count = 0;
		for (int x = 0; x < picture.width; x++) {
			count += pixel(picture, x, y).equals(rgb) ? 1 : 0;
		}
		return count;
	}
}
