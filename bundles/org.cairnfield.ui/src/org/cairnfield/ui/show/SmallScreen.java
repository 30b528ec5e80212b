package org.cairnfield.ui.show;

import org.eclipse.swt.widgets.Display;

/** A screen on which views share more of the window, such as one of 1024 × 768, or of 1920 × 1080 at 200 %. */
public final class SmallScreen {

	/** Points of height below which it is small. */
	private static final int HEIGHT = 860;

	private SmallScreen() {
	}

	/** Whether the person has one. */
	public static boolean isThere() {
		return Display.getCurrent().getPrimaryMonitor().getClientArea().height < HEIGHT;
	}
}
