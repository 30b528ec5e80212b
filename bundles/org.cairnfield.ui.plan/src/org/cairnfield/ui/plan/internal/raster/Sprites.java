package org.cairnfield.ui.plan.internal.raster;

import java.util.LinkedHashMap;
import java.util.Map;

import org.cairnfield.ui.plan.SampleLook;

/**
 * Sprites drawn lately, for all floors and colourings. A floor gets a new raster whenever its samples, their colours or the
 * findings change, but nearly all of its samples look as they did before. Safe for several threads.
 */
final class Sprites {

	/** Some 5 KiB each, 20 KiB on a display of 200 %. */
	private static final int MOST = 1000;
	private static final Sprites SHARED = new Sprites(MOST);

	private record Key(SampleLook look, int mark, double radius, double pixelsPerPoint, Ink ink) {
	}

	private final Map<Key, Sprite> drawn;

	/** @param most how many are kept */
	Sprites(int most) {
		drawn = new LinkedHashMap<>(16, 0.75f, true) {
			@Override
			protected boolean removeEldestEntry(Map.Entry<Key, Sprite> eldest) {
				return size() > most;
			}
		};
	}

	/** Those of the program. */
	static Sprites shared() {
		return SHARED;
	}

	/** See {@link Sprite#of}. */
	synchronized Sprite of(SampleLook look, int mark, double radius, double pixelsPerPoint, Ink ink) {
		return drawn.computeIfAbsent(new Key(look, mark, radius, pixelsPerPoint, ink),
				key -> Sprite.of(look, mark, radius, pixelsPerPoint, ink));
	}
}
