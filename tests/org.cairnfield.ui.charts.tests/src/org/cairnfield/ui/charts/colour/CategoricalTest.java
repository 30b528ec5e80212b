package org.cairnfield.ui.charts.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CategoricalTest {

	/** About six times what is just noticeable. */
	private static final double CLEARLY_DIFFERENT = 15;
	private static final RGB WHITE = new RGB(255, 255, 255);
	private static final RGB DARK = new RGB(30, 31, 34);

	@Test
	void areTheColoursOfOkabeAndIto() {
		Set<RGB> published = Set.of(new RGB(0, 0, 0), new RGB(230, 159, 0), new RGB(86, 180, 233), new RGB(0, 158, 115),
				new RGB(240, 228, 66), new RGB(0, 114, 178), new RGB(213, 94, 0), new RGB(204, 121, 167));
		assertEquals(published,
				Stream.of(Categorical.values()).map(colour -> colour.on(WHITE)).collect(Collectors.toSet()));
	}

	@Test
	void blackTurnsWhiteOnDark() {
		assertEquals(WHITE, Categorical.BLACK.on(DARK));
		assertEquals(Categorical.BLUE.on(WHITE), Categorical.BLUE.on(DARK));
	}

	@ParameterizedTest
	@EnumSource
	void canBeToldApartByDichromats(Dichromat person) {
		assertAllDiffer(person::sees, WHITE);
		assertAllDiffer(person::sees, DARK);
	}

	private static void assertAllDiffer(UnaryOperator<RGB> eye, RGB background) {
		for (Categorical one : Categorical.values()) {
			for (Categorical other : Categorical.values()) {
				if (one != other) {
					double difference = Lab.of(eye.apply(one.on(background)))
							.difference(Lab.of(eye.apply(other.on(background))));
					assertTrue(difference > CLEARLY_DIFFERENT, one + " and " + other + ": " + difference);
				}
			}
		}
	}

	@Test
	void sixtyFourStylesDiffer() {
		Set<Categorical.Style> styles = new HashSet<>();
		for (int i = 0; i < 64; i++) {
			styles.add(Categorical.style(i));
		}
		assertEquals(64, styles.size());
	}

	@Test
	void theFirstEightShapesDiffer() {
		assertEquals(8,
				Stream.iterate(0, i -> i + 1).limit(8).map(i -> Categorical.style(i).marker()).distinct().count());
	}
}
