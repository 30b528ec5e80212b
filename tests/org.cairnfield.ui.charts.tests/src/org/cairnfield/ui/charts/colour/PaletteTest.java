package org.cairnfield.ui.charts.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.cairnfield.ui.charts.colour.Palette.Tint;
import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Contrast of everything that a view writes or draws, in light and dark themes, by success criteria 1.4.3 and 1.4.11 of WCAG 2.1. */
class PaletteTest {

	/** Paper, and lists as themes of GTK have them: Adwaita light and dark, one darker still, one in sepia. */
	static Stream<Palette> themes() {
		return Stream.of(Palette.PAPER, new Palette(new RGB(46, 52, 54), new RGB(255, 255, 255)),
				new Palette(new RGB(255, 255, 255), new RGB(45, 45, 45)),
				new Palette(new RGB(220, 220, 220), new RGB(18, 18, 20)),
				new Palette(new RGB(40, 32, 24), new RGB(250, 240, 220)));
	}

	/** Pairs with their ratio in "Understanding Success Criterion 1.4.11: Non-text Contrast", which gives one decimal or none. */
	@Test
	void agreesWithPublishedExamples() {
		RGB white = new RGB(255, 255, 255);
		assertEquals(3.0, Contrast.ratio(new RGB(0x94, 0x94, 0x94), white), 0.05);
		assertEquals(1.2, Contrast.ratio(new RGB(0xff, 0xf0, 0x00), white), 0.05);
		assertEquals(5.6, Contrast.ratio(new RGB(0xe5, 0xe5, 0xe5), new RGB(0x62, 0x21, 0xea)), 0.1); // said of a picture: 5.69, cut
	}

	@ParameterizedTest
	@MethodSource("themes")
	void textReads(Palette theme) {
		for (RGB text : List.of(theme.foreground(), theme.muted(), theme.strong())) {
			assertReads(text, theme.background());
		}
		assertReads(theme.foreground(), theme.band());
		assertReads(theme.muted(), theme.band());
	}

	@ParameterizedTest
	@MethodSource("themes")
	void linesThatMeanSomethingStandOut(Palette theme) {
		assertStandsOut(theme.line(), theme.background());
		assertStandsOut(theme.strong(), theme.background());
	}

	@ParameterizedTest
	@MethodSource("themes")
	void samplesBarsAndLinesHaveARimThatStandsOut(Palette theme) {
		for (Categorical colour : Categorical.values()) {
			assertStandsOut(Contrast.rim(colour.on(theme.background()), theme.background()), theme.background());
		}
		for (Continuous ramp : List.of(Continuous.rising(), Continuous.falling())) {
			for (int step = 0; step <= 100; step++) {
				assertStandsOut(Contrast.rim(ramp.rgb(step / 100.0), theme.background()), theme.background());
				assertReads(Contrast.textOn(ramp.rgb(step / 100.0)), ramp.rgb(step / 100.0));
			}
		}
	}

	/** Colours that desktops select with and underline: those of Adwaita, a pale one, a dark one. */
	@ParameterizedTest
	@MethodSource("themes")
	void coloursOfTheDesktopAreMovedUntilTheyStandOut(Palette theme) {
		for (RGB desktop : List.of(new RGB(53, 132, 228), new RGB(21, 83, 158), new RGB(27, 106, 203),
				new RGB(200, 220, 255), new RGB(20, 20, 60))) {
			assertStandsOut(theme.accent(desktop), theme.background());
			assertReads(theme.readable(desktop), theme.background());
		}
	}

	@ParameterizedTest
	@MethodSource("themes")
	void theStripReads(Palette theme) {
		for (Tint tint : Tint.values()) {
			Palette strip = theme.tinted(tint);
			assertEquals(theme.isDark(), strip.isDark());
			assertReads(strip.foreground(), strip.background());
			assertReads(strip.readable(new RGB(27, 106, 203)), strip.background());
		}
	}

	/** They are the same under every theme: lists and tabs of Adwaita, light and dark. */
	@Test
	void iconsStandOutInLightAndDark() throws IOException {
		Path root = Path.of("").toAbsolutePath();
		while (!Files.isDirectory(root.resolve("bundles"))) {
			root = root.getParent();
		}
		int colours = 0;
		for (String folder : List.of("bundles/org.cairnfield.ui/icons/views",
				"bundles/org.cairnfield.model.edit/icons/model")) {
			try (DirectoryStream<Path> icons = Files.newDirectoryStream(root.resolve(folder), "*.svg")) {
				for (Path icon : icons) {
					Matcher found = Pattern.compile("#(\\p{XDigit}{6})").matcher(Files.readString(icon));
					while (found.find()) {
						int rgb = Integer.parseInt(found.group(1), 16);
						for (int grey : new int[] { 255, 0xf5, 0x33, 0x2d }) {
							assertStandsOut(new RGB(rgb >> 16, rgb >> 8 & 0xff, rgb & 0xff), new RGB(grey, grey, grey));
						}
						colours++;
					}
				}
			}
		}
		assertTrue(colours > 40, "colours of icons: " + colours);
	}

	private static void assertReads(RGB text, RGB background) {
		assertRatio(Contrast.TEXT, text, background);
	}

	private static void assertStandsOut(RGB shape, RGB background) {
		assertRatio(Contrast.SHAPE, shape, background);
	}

	private static void assertRatio(double least, RGB one, RGB other) {
		assertTrue(Contrast.ratio(one, other) >= least, () -> one + " on " + other + ": " + Contrast.ratio(one, other));
	}
}
