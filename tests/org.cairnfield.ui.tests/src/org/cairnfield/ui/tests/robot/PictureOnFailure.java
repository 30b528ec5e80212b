package org.cairnfield.ui.tests.robot;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.TestExecutionExceptionHandler;

/** Keeps what the screen showed when a test failed: in words in its report, as a picture in {@code target/screenshots}. */
public final class PictureOnFailure implements TestExecutionExceptionHandler {

	@Override
	public void handleTestExecutionException(ExtensionContext context, Throwable problem) throws Throwable {
		problem.addSuppressed(new OnTheScreen(describe(context.getRequiredTestClass().getSimpleName() + "-"
				+ context.getRequiredTestMethod().getName())));
		leaveDialogs();
		throw problem;
	}

	/** The next story begins with the workbench alone on the screen. */
	private static void leaveDialogs() {
		Ui.run(() -> {
			Shell window = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell();
			Shell[] shells = Display.getCurrent().getShells();
			for (int i = shells.length - 1; i >= 0; i--) {
				if (shells[i] != window && !shells[i].isDisposed() && shells[i].isVisible()) {
					shells[i].close();
				}
			}
		});
	}

	/** Takes a picture of that name; where it is, and what it shows in words. */
	public static String describe(String name) throws Exception {
		return take(name) + "\n" + OnScreen.describe();
	}

	/** Writes what went wrong to a file, with what the screen shows, for a program that no test framework looks after. */
	public static void report(Path file, Throwable problem) {
		try {
			StringWriter text = new StringWriter();
			problem.printStackTrace(new PrintWriter(text));
			System.setProperty("cairnfield.screenshots", file.getParent().toString());
			text.append(describe("screen"));
			Files.writeString(file, text.toString());
		} catch (Exception e) {
			e.printStackTrace();
		}
	}

	/** Goes with the failure into its report. */
	private static final class OnTheScreen extends Throwable {

		private static final long serialVersionUID = 1;

		OnTheScreen(String text) {
			super(text, null, false, false);
		}
	}

	/** Takes a picture of the whole display. */
	public static Path take(String name) throws Exception {
		Path file = Path.of(System.getProperty("cairnfield.screenshots", "target/screenshots")).resolve(name + ".png")
				.toAbsolutePath();
		Files.createDirectories(file.getParent());
		Ui.run(() -> {
			Display display = Display.getCurrent();
			Rectangle bounds = display.getBounds();
			GC gc = new GC(display);
			Image image = new Image(display, bounds.width, bounds.height);
			gc.copyArea(image, bounds.x, bounds.y);
			ImageLoader loader = new ImageLoader();
			loader.data = new ImageData[] { image.getImageData() };
			loader.save(file.toString(), SWT.IMAGE_PNG);
			image.dispose();
			gc.dispose();
		});
		return file;
	}
}
