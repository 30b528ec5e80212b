package org.cairnfield.ui.charts.colour;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;

/**
 * All colours that say nothing of data: the two that the desktop gives, and the shades between that are made of them, so that
 * a light theme and a dark one are treated alike. Whoever paints asks for it again each time, since the theme may change.
 */
public record Palette(RGB foreground, RGB background) {

	/** Of pictures that leave the screen, whatever the theme. */
	public static final Palette PAPER = new Palette(new RGB(0, 0, 0), new RGB(255, 255, 255));

	/** What the strip above the views says, as the colour of its lines. */
	public enum Tint {
		INFORMATION(new RGB(222, 236, 252), new RGB(32, 56, 84)), WARNING(new RGB(255, 243, 205), new RGB(84, 64, 16)),
		ERROR(new RGB(253, 224, 221), new RGB(92, 32, 32));

		private final RGB light;
		private final RGB dark;

		Tint(RGB light, RGB dark) {
			this.light = light;
			this.dark = dark;
		}
	}

	/** Of lists, tables and drawings under the theme of the desktop. */
	public static Palette of(Display display) {
		return new Palette(display.getSystemColor(SWT.COLOR_LIST_FOREGROUND).getRGB(),
				display.getSystemColor(SWT.COLOR_LIST_BACKGROUND).getRGB());
	}

	/** Whether the background is dark, and what lies on it light. */
	public boolean isDark() {
		return Contrast.isDark(background);
	}

	/** The same theme with a background that is tinted. */
	public Palette tinted(Tint tint) {
		RGB tinted = isDark() ? tint.dark : tint.light;
		return new Palette(Contrast.textOn(tinted), tinted);
	}

	/** For text of second rank, which reads on the {@link #band} too. */
	public RGB muted() {
		return Contrast.standingOut(Contrast.between(background, foreground, 0.68), band(), Contrast.TEXT);
	}

	/** For lines of a grid, which only guide the eye. */
	public RGB faint() {
		return Contrast.between(background, foreground, 0.14);
	}

	/** For lines of an axis, outlines that mean something, and shapes of what has no value. */
	public RGB line() {
		return Contrast.standingOut(Contrast.between(background, foreground, 0.45), background, Contrast.SHAPE);
	}

	/** Behind what is chosen. */
	public RGB band() {
		return Contrast.between(background, foreground, 0.09);
	}

	/** For strong lines, such as walls. */
	public RGB strong() {
		return Contrast.between(background, foreground, 0.85);
	}

	/** The colour for what is selected, made of that which the desktop selects with. */
	public RGB accent(RGB ofDesktop) {
		return Contrast.rim(ofDesktop, background);
	}

	/** The colour for words such as links and counts, made of that which the desktop has for them. */
	public RGB readable(RGB ofDesktop) {
		return Contrast.standingOut(ofDesktop, background, Contrast.TEXT);
	}
}
