package org.cairnfield.ui.plan.internal.raster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

import org.cairnfield.ui.charts.colour.Marker;
import org.cairnfield.ui.plan.SampleLook;
import org.cairnfield.ui.plan.SampleLook.Fill;
import org.junit.jupiter.api.Test;

class SpritesTest {

	private static final Ink INK = new Ink(0xffffff, 0x222222, 0xff00ff);
	private static final SampleLook BLUE = SampleLook.solid(0x0072b2, Marker.CIRCLE);

	@Test
	void drawOnceWhatLooksTheSame() {
		Sprites sprites = new Sprites(10);
		Sprite first = sprites.of(BLUE, SampleMark.KEPT, 4, 1, INK);
		assertSame(first, sprites.of(SampleLook.solid(0x0072b2, Marker.CIRCLE), SampleMark.KEPT, 4, 1,
				new Ink(0xffffff, 0x222222, 0xff00ff)));
	}

	@Test
	void tellApartWhateverChangesTheLook() {
		Sprites sprites = new Sprites(10);
		List<Sprite> all = List.of(sprites.of(BLUE, SampleMark.KEPT, 4, 1, INK), sprites.of(BLUE, 0, 4, 1, INK),
				sprites.of(BLUE, SampleMark.KEPT | SampleMark.TEST, 4, 1, INK),
				sprites.of(BLUE, SampleMark.KEPT, 4.5, 1, INK), sprites.of(BLUE, SampleMark.KEPT, 4, 2, INK),
				sprites.of(BLUE, SampleMark.KEPT, 4, 1, new Ink(0, 0xdddddd, 0xff00ff)),
				sprites.of(new SampleLook(0x0072b2, Marker.CIRCLE, Fill.HOLLOW), SampleMark.KEPT, 4, 1, INK),
				sprites.of(SampleLook.solid(0xd55e00, Marker.CIRCLE), SampleMark.KEPT, 4, 1, INK));
		Set<Sprite> different = Collections.newSetFromMap(new IdentityHashMap<>());
		different.addAll(all);
		assertEquals(all.size(), different.size());
	}

	@Test
	void forgetWhatWasNotDrawnForTheLongestTime() {
		Sprites sprites = new Sprites(2);
		Sprite small = sprites.of(BLUE, SampleMark.KEPT, 3, 1, INK);
		Sprite middle = sprites.of(BLUE, SampleMark.KEPT, 4, 1, INK);
		assertSame(small, sprites.of(BLUE, SampleMark.KEPT, 3, 1, INK));
		sprites.of(BLUE, SampleMark.KEPT, 5, 1, INK);
		assertSame(small, sprites.of(BLUE, SampleMark.KEPT, 3, 1, INK));
		assertNotSame(middle, sprites.of(BLUE, SampleMark.KEPT, 4, 1, INK));
	}
}
