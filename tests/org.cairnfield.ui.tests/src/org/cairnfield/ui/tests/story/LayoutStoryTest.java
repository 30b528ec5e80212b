package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.cairnfield.ui.show.IfChanged;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Layout;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** A window is laid out again where something in it has changed, and left alone where it has not. */
@ExtendWith(PictureOnFailure.class)
@Order(2)
class LayoutStoryTest {

	private Shell shell;
	private Button button;
	private Label label;
	private int layouts;

	@BeforeEach
	void openAWindow() {
		Ui.run(() -> {
			shell = new Shell(Stage.window(), SWT.DIALOG_TRIM);
			button = new Button(shell, SWT.PUSH);
			label = new Label(shell, SWT.NONE);
			label.setLayoutData(new GridData());
			shell.setLayout(new Layout() {
				@Override
				protected Point computeSize(Composite composite, int width, int height, boolean flush) {
					return new Point(200, 100);
				}

				@Override
				protected void layout(Composite composite, boolean flush) {
					layouts++;
				}
			});
			shell.pack();
			shell.open();
		});
	}

	@AfterEach
	void close() {
		Ui.run(shell::dispose);
	}

	/** How often the window was laid out by an action and what is due after it. */
	private int layouts(Runnable action) {
		Ui.waitUntilIdle();
		int before = Ui.ask(() -> layouts);
		Ui.run(action);
		Ui.waitUntilIdle();
		return Ui.ask(() -> layouts) - before;
	}

	@Test
	void laysOutForAnotherTextOnly() {
		assertEquals(1, layouts(() -> IfChanged.text(button, "&Apply")));
		assertEquals(0, layouts(() -> IfChanged.text(button, "&Apply")));
		assertEquals(1, layouts(() -> IfChanged.text(label, "Salt & Rope")));
		assertEquals(0, layouts(() -> IfChanged.text(label, "Salt & Rope")));
		assertEquals("Salt && Rope", Ui.ask(label::getText), "no mnemonic");
	}

	@Test
	void laysOutWhatComesAndGoes() {
		assertEquals(0, layouts(() -> IfChanged.shown(label, true)));
		assertEquals(1, layouts(() -> IfChanged.shown(label, false)));
		assertFalse(Ui.ask(label::getVisible));
		assertEquals(0, layouts(() -> IfChanged.shown(label, false)));
		assertEquals(1, layouts(() -> IfChanged.shown(label, true)));
		assertTrue(Ui.ask(label::getVisible));
	}
}
