package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.ScreenReader;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.work.Soon;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The robot itself: it reaches what goes elsewhere a moment after it was aimed at, as a plan does that scrolls to a sample. */
@ExtendWith(PictureOnFailure.class)
@Order(2)
class RobotStoryTest {

	private static final int LATE_MILLIS = 700;
	private static final Point FIRST = new Point(60, 60);
	private static final Point LATER = new Point(220, 160);

	private final List<Point> pressed = new ArrayList<>();
	private final List<Point> released = new ArrayList<>();
	private Shell shell;
	private Canvas canvas;
	private Point target = FIRST;

	@BeforeEach
	void openAWindow() {
		Ui.run(() -> {
			shell = new Shell(Stage.window(), SWT.DIALOG_TRIM);
			canvas = new Canvas(shell, SWT.NONE);
			canvas.setSize(400, 300);
			shell.pack();
			shell.setLocation(200, 150); // where the window manager leaves it
			Soon elsewhere = new Soon(LATE_MILLIS, () -> target = LATER);
			canvas.addListener(SWT.MouseMove, event -> {
				if (target.equals(FIRST)) {
					elsewhere.request();
				}
			});
			canvas.addListener(SWT.MouseDown, event -> pressed.add(new Point(event.x, event.y)));
			canvas.addListener(SWT.MouseUp, event -> released.add(new Point(event.x, event.y)));
			shell.open();
		});
		Hand.activate(shell); // the pointer finds it only then
	}

	@AfterEach
	void close() {
		Ui.run(shell::dispose);
	}

	@Test
	void clicksWhatHasGoneElsewhere() {
		Hand.click(() -> canvas.toDisplay(target));
		assertEquals(List.of(LATER), Ui.ask(() -> List.copyOf(pressed)));
	}

	@Test
	void dragsWhatHasGoneElsewhere() {
		Hand.drag(() -> canvas.toDisplay(target), 50, 30);
		assertEquals(List.of(LATER), Ui.ask(() -> List.copyOf(pressed)));
		assertEquals(List.of(new Point(LATER.x + 50, LATER.y + 30)), Ui.ask(() -> List.copyOf(released)));
	}

	@Test
	void hearsWhatHasNoName() {
		Ui.run(() -> {
			canvas.setData("org.cairnfield.id", "robot.canvas");
			new Text(shell, SWT.BORDER);
			new Label(shell, SWT.NONE).setText("&Name:");
			new Text(shell, SWT.BORDER).setSize(10, 10);
			new Label(shell, SWT.NONE).setText("Name");
			new Text(shell, SWT.BORDER).setSize(10, 10);
			ScreenReader.ask(shell);
		});
		List<String> heard = ScreenReader.take();
		assertEquals(3, heard.size(), heard::toString);
		assertTrue(heard.get(0).contains("Canvas robot.canvas has no name"), heard::toString);
		assertTrue(heard.get(1).contains("Text has no name"), heard::toString);
		assertTrue(heard.get(2).contains("Text has the name of another one: Name"), heard::toString);
	}
}
