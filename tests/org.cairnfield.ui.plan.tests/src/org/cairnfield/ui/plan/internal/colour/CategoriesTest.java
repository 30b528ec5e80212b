package org.cairnfield.ui.plan.internal.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;

import org.cairnfield.ui.plan.PlanLegend;
import org.cairnfield.ui.plan.SampleColours;
import org.cairnfield.ui.plan.SampleLook;
import org.cairnfield.ui.plan.internal.raster.Rgb;
import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.Test;

class CategoriesTest {

	private static final RGB WHITE = new RGB(255, 255, 255);

	private static List<String> names(int count) {
		return IntStream.range(0, count).mapToObj(i -> "kind " + i).toList();
	}

	@Test
	void repeatsEachColourByAShape() {
		SampleColours colours = Categories.of("Kind", names(8), 80, i -> i % 8, WHITE);
		assertEquals(8, colours.looks().size());
		assertEquals(8, colours.looks().stream().map(SampleLook::rgb).distinct().count());
		assertEquals(8, colours.looks().stream().map(SampleLook::marker).distinct().count());
		assertEquals(10, colours.legend().entries().get(3).count());
	}

	@Test
	void leavesOutKindsWithoutASample() {
		SampleColours colours = Categories.of("Kind", names(5), 10, i -> i % 2 == 0 ? 1 : 4, WHITE);
		assertEquals(List.of("kind 1", "kind 4"),
				colours.legend().entries().stream().map(PlanLegend.Entry::label).toList());
		assertEquals(colours.looks().get(1), colours.looks().get(colours.lookOf()[1]));
	}

	@Test
	void greysTheSmallestOfMoreThanEight() {
		// kind k has k + 1 samples
		int[] kindOf = IntStream.range(0, 12).flatMap(k -> IntStream.range(0, k + 1).map(i -> k)).toArray();
		SampleColours colours = Categories.of("Kind", names(12), kindOf.length, i -> kindOf[i], WHITE);
		List<PlanLegend.Entry> entries = colours.legend().entries();
		assertEquals(8, entries.size());
		assertEquals("kind 5", entries.get(0).label());
		assertEquals("5 others", entries.get(7).label());
		assertEquals(1 + 2 + 3 + 4 + 5, entries.get(7).count());
		assertEquals(Categories.grey(WHITE), colours.looks().get(colours.lookOf()[0]).rgb());
		assertTrue(colours.looks().get(colours.lookOf()[kindOf.length - 1]).rgb() != Categories.grey(WHITE));
	}

	@Test
	void rampPutsTheEndsAtTheEndsAndTellsWhatHasNoValue() {
		double[] values = { -95, -35, Double.NaN, -120 };
		SampleColours colours = Ramps.of("RSSI", -95, -35, "dBm", 4, i -> values[i], "not heard", WHITE);
		int[] ramp = colours.legend().ramp().colours();
		assertEquals(ramp[0], colours.looks().get(colours.lookOf()[0]).rgb());
		assertEquals(ramp[ramp.length - 1], colours.looks().get(colours.lookOf()[1]).rgb());
		assertEquals(ramp[0], colours.looks().get(colours.lookOf()[3]).rgb());
		assertEquals("not heard", colours.legend().entries().get(0).label());
		assertEquals(1, colours.legend().entries().get(0).count());
	}

	@Test
	void rampMakesHighValuesStandOutFromTheBackground() {
		for (RGB background : List.of(WHITE, new RGB(30, 30, 30))) {
			int[] ramp = Ramps.of("", 0, 1, "m", 0, i -> 0, "", background).legend().ramp().colours();
			int of = Rgb.of(background);
			assertTrue(difference(ramp[ramp.length - 1], of) > difference(ramp[0], of));
		}
	}

	private static int difference(int a, int b) {
		return Math.abs((a >> 8 & 0xff) - (b >> 8 & 0xff));
	}
}
