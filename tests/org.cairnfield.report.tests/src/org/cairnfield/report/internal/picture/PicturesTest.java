package org.cairnfield.report.internal.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.cairnfield.core.cluster.Kneedle;
import org.cairnfield.core.cluster.Kneedle.Knee;
import org.cairnfield.core.cluster.Kneedle.Shape;
import org.cairnfield.core.series.Curve;
import org.cairnfield.core.series.Series;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class PicturesTest {

	private static final String SOURCE = "Tide House, spring survey, 200 samples.";
	private static final double[] DISTANCES = IntStream.rangeClosed(1, 200)
			.mapToDouble(i -> 40 + 160 * Math.pow(i / 200.0, 8))
			.toArray();
	private static final Series CURVE = Curve.ascending("third nearest", DISTANCES);
	private static final Optional<Knee> ELBOW = Kneedle.find(CURVE.xs(), CURVE.ys(), 1, Shape.CONVEX_INCREASING);

	@BeforeAll
	static void drawWithoutADisplay() {
		System.setProperty("java.awt.headless", "true");
	}

	@Test
	void distanceCurveShowsElbowEpsilonAndSource() throws Exception {
		Svg svg = new Svg(Pictures.kDistance(CURVE, 3, ELBOW, 50, "dB", SOURCE));
		List<String> texts = svg.texts();
		assertTrue(texts.contains("Distance to the 3rd nearest sample, sorted"), texts::toString);
		assertTrue(texts.contains("distance (dB)"), texts::toString);
		// 40 + 160·t⁸ passes 50 at t = (1/16)^(1/8) = 0.707: 141 of 200 samples are within.
		assertTrue(texts.contains("chosen ε = 50 dB, exceeded by 30 % of the samples"), texts::toString);
		assertTrue(texts.contains(SOURCE), texts::toString);
		// Steepest as the diagonal where t⁷ = 1/8: t = 0.743, 54.8 dB.
		assertTrue(texts.stream().anyMatch(text -> text.startsWith("elbow at 5") && text.endsWith(" dB")),
				texts::toString);
		assertTrue(svg.description().contains("200 samples"), svg::description);
		assertTrue(svg.holdsItsTexts());
	}

	@Test
	void distanceCurveGoesWithoutAnElbow() throws Exception {
		Svg svg = new Svg(Pictures.kDistance(CURVE, 1, Optional.empty(), 300, "dB", SOURCE));
		assertTrue(svg.texts().contains("Distance to the nearest sample, sorted"), svg.texts()::toString);
		assertTrue(svg.texts().contains("chosen ε = 300 dB, exceeded by 0 % of the samples"), svg.texts()::toString);
		assertFalse(svg.texts().stream().anyMatch(text -> text.contains("elbow")));
		assertTrue(svg.description().contains("no elbow"), svg::description);
	}

	@Test
	void epsilonIsNamedWhereTheCurveIsNot() throws Exception {
		// Met by nearly all samples, the label stands above the line on the left; by few, below it on the right.
		Element high = labelOfEpsilon(120);
		Element low = labelOfEpsilon(40.001);
		assertTrue(Double.parseDouble(high.getAttribute("x")) < 100);
		assertTrue(Double.parseDouble(low.getAttribute("x")) > 300);
	}

	private static Element labelOfEpsilon(double epsilon) throws Exception {
		Svg svg = new Svg(Pictures.kDistance(CURVE, 3, ELBOW, epsilon, "dB", SOURCE));
		return svg.elements("text").stream().filter(text -> text.getTextContent().startsWith("chosen ε")).findFirst()
				.orElseThrow();
	}

	@Test
	void distanceCurveRefusesWhatCannotBeDrawn() {
		Series empty = new Series("none", new double[0], new double[0]);
		assertThrows(IllegalArgumentException.class,
				() -> Pictures.kDistance(empty, 3, Optional.empty(), 50, "dB", SOURCE));
		assertThrows(IllegalArgumentException.class,
				() -> Pictures.kDistance(CURVE, 3, ELBOW, Double.NaN, "dB", SOURCE));
	}

	@Test
	void clusterSizesNameEveryClusterAndNoise() throws Exception {
		int[] before = { 0, 0, 1, 1, 1, -1, -1, -1 };
		int[] after = { 0, 0, 1, 1, 1, 1, 0, -1 };
		Svg svg = new Svg(Pictures.clusterSizes(ClusterSizes.of(before, after), SOURCE));
		List<String> texts = svg.texts();
		assertTrue(texts.containsAll(List.of("C0", "2 → 3", "C1", "3 → 4", "noise", "3 → 1", "in clusters", "5 → 7")),
				texts::toString);
		assertTrue(texts.indexOf("C1") < texts.indexOf("C0"), "largest first");
		assertTrue(svg.holdsItsTexts());
	}

	@Test
	void clusterSizesGatherTheSmallOnes() throws Exception {
		int[] before = new int[5000];
		Random random = new Random(3);
		for (int i = 0; i < before.length; i++) {
			before[i] = random.nextDouble() < 0.2 ? -1 : (int) (400 * Math.pow(random.nextDouble(), 2));
		}
		ClusterSizes sizes = ClusterSizes.of(before, before);
		Svg svg = new Svg(Pictures.clusterSizes(sizes, SOURCE));
		List<String> texts = svg.texts();
		int others = sizes.clusters().size() - 20;
		assertTrue(others > 100);
		assertTrue(texts.containsAll(List.of("The 20 largest clusters", "these 20", others + " others", "noise")),
				texts::toString);
		assertEquals(20, texts.stream().filter(text -> text.matches("C\\d+")).count());
	}

	@Test
	void clusterSizesSpareOneLeftOverAndShowNoClusters() throws Exception {
		int[] three = { 0, 0, 0, 1, 1, 2 };
		List<String> texts = new Svg(Pictures.clusterSizes(ClusterSizes.of(three, three), 2, SOURCE)).texts();
		assertTrue(texts.contains("C2"), texts::toString);
		int[] noise = { -1, -1 };
		texts = new Svg(Pictures.clusterSizes(ClusterSizes.of(noise, noise), SOURCE)).texts();
		assertTrue(texts.contains("noise"), texts::toString);
	}

	@Test
	void barsAreAsLongAsTheyShould() throws Exception {
		int[] before = new int[40];
		Arrays.fill(before, 0, 10, 1);
		Svg svg = new Svg(Pictures.clusterSizes(ClusterSizes.of(before, before), SOURCE));
		List<Double> widths = svg.elements("rect").stream()
				.filter(rect -> Svg.style(rect, "fill").equals("rgb(0,114,178)"))
				.map(rect -> Double.parseDouble(rect.getAttribute("width"))).toList();
		// The key, 30 and 10 in the first panel, 40 in the second; no bar for no noise.
		assertEquals(4, widths.size());
		assertEquals(3, widths.get(1) / widths.get(2), 0.01);
		// Nor a line as the outline of no bar.
		assertTrue(svg.elements("line").stream().noneMatch(line -> Svg.style(line, "stroke").equals("rgb(0,114,178)")));
	}

	@Test
	void errorCurvesHaveFiguresInTheirKey() throws Exception {
		double[] errors = IntStream.rangeClosed(1, 20).asDoubleStream().toArray();
		Svg svg = new Svg(Pictures.errorDistribution(List.of(ErrorCurve.of("plain", errors)), SOURCE));
		// Percentiles of 1 to 20 by Hyndman-Fan 6.
		assertTrue(
				svg.texts().containsAll(List.of("plain", "20", "10.5 m", "15.8 m", "20.0 m", "horizontal error (m)")),
				svg.texts()::toString);
		assertTrue(svg.texts().contains(SOURCE + " Percentiles by Hyndman-Fan 6."), svg.texts()::toString);
		assertTrue(svg.holdsItsTexts());
	}

	@Test
	void errorCurvesDifferInDashAndMarkerToo() throws Exception {
		double[] errors = { 1, 2, 3, 4 };
		List<ErrorCurve> two = List.of(ErrorCurve.of("same", errors), ErrorCurve.of("same", errors));
		Svg svg = new Svg(Pictures.errorDistribution(two, SOURCE));
		List<String> dashes = svg.elements("line").stream().filter(line -> Svg.style(line, "stroke-width").equals("2"))
				.map(line -> Svg.style(line, "stroke-dasharray")).toList();
		assertEquals(List.of("none", "9,4"), dashes);
		// Three marks on each curve, one in the key: round ones, then square ones.
		assertEquals(4, closedOutlines(svg, "rgb(0,114,178)", true));
		assertEquals(4, closedOutlines(svg, "rgb(213,94,0)", false));
	}

	private static long closedOutlines(Svg svg, String colour, boolean round) {
		return svg.elements("path").stream()
				.filter(path -> Svg.style(path, "stroke").equals(colour))
				.map(path -> path.getAttribute("d")).filter(d -> d.endsWith("Z") && d.contains("C") == round).count();
	}

	@Test
	void errorCurvesAreCutWhereOnlyStraysRemain() throws Exception {
		double[] errors = IntStream.range(0, 1000).mapToDouble(i -> i < 995 ? i % 10 : 250).toArray();
		Svg svg = new Svg(Pictures.errorDistribution(List.of(ErrorCurve.of("plain", errors)), SOURCE));
		assertTrue(svg.texts().stream().anyMatch(text -> text.contains("Cut at 18.0 m, beyond which are 0.5 %")),
				svg.texts()::toString);
		assertTrue(svg.texts().contains("250.0 m"), svg.texts()::toString);
	}

	@Test
	void errorCurvesHandleErrorsThatAreAllZero() throws Exception {
		Svg svg = new Svg(Pictures.errorDistribution(List.of(ErrorCurve.of("perfect", new double[5])), SOURCE));
		assertTrue(svg.texts().contains("0.00 m"), svg.texts()::toString);
		assertThrows(IllegalArgumentException.class, () -> ErrorCurve.of("none", new double[0]));
		assertThrows(IllegalArgumentException.class, () -> Pictures.errorDistribution(List.of(), SOURCE));
	}

	@Test
	void namesFromOutsideDoNotBreakThePicture() throws Exception {
		String name = "a <b> & \"c\"\u0000 " + "very ".repeat(30) + "long";
		Svg svg = new Svg(Pictures.errorDistribution(List.of(ErrorCurve.of(name, new double[] { 1, 2 })), "<&>"));
		String shown = svg.texts().stream().filter(text -> text.startsWith("a <b> & \"c\"")).findFirst().orElseThrow();
		assertTrue(shown.endsWith("…") && shown.length() < 60, shown);
		assertTrue(svg.texts().contains("<&> Percentiles by Hyndman-Fan 6."), svg.texts()::toString);
	}

	@Test
	void sameNumbersGiveTheSameTextInAnyLocale() {
		double[] errors = new Random(4).doubles(3000, 0, 12).toArray();
		int[] labels = new Random(5).ints(3000, -1, 12).toArray();
		assertSameEverywhere(() -> Pictures.kDistance(CURVE, 3, ELBOW, 50.5, "dB", SOURCE));
		assertSameEverywhere(() -> Pictures.clusterSizes(ClusterSizes.of(labels, labels), SOURCE));
		assertSameEverywhere(() -> Pictures.errorDistribution(List.of(ErrorCurve.of("plain", errors)), SOURCE));
	}

	private static void assertSameEverywhere(Supplier<String> picture) {
		String first = picture.get();
		assertEquals(first, picture.get());
		assertEquals(first, Svg.inGermany(picture));
		assertNotEquals("", first);
		assertTrue(first.length() < 200_000, "characters: " + first.length());
	}

	@Test
	void methodsStandWhereTheirTimeAndErrorPutThem() throws Exception {
		MethodPoints plain = new MethodPoints("plain", new double[] { 1, 1 }, new double[] { 1, 1 }, 1, 1, 1, 1);
		MethodPoints fast = new MethodPoints("k-means", new double[] { 0.125, 0.25 }, new double[] { 1.5, 1.1 }, 0.2,
				1.3, 1.1, 1.5);
		Svg svg = new Svg(Pictures.methods(List.of(plain, fast), SOURCE));
		List<String> texts = svg.texts();
		assertTrue(
				texts.containsAll(
						List.of("plain", "k-means", "1/8", "1/4", "1/2", "1", "match time to plain matching", SOURCE)),
				texts::toString);
		assertTrue(svg.description().contains("k-means: error 1.3, time 0.2"), svg::description);
		assertTrue(svg.holdsItsTexts());
		assertEquals(Pictures.methods(List.of(plain, fast), SOURCE), Pictures.methods(List.of(plain, fast), SOURCE));
		assertThrows(IllegalArgumentException.class, () -> Pictures.methods(List.of(), SOURCE));
		MethodPoints lost = new MethodPoints("dbscan", new double[] { 0.5, 0.5 }, new double[] { 1.2, 70 }, 0.5, 35.6,
				1.2, 70);
		List<String> beyond = new Svg(Pictures.methods(List.of(plain, lost), SOURCE)).texts();
		assertTrue(
				String.join(" ", beyond)
						.contains("Errors above 2 stand at the upper edge: 1 map, and on average dbscan 35.6."),
				beyond::toString);
	}

	@Test
	void shapesSayClustersLargestAndNoise() throws Exception {
		Svg svg = new Svg(Pictures.splitShapes(Map.of("Tide House",
				List.of(new SplitShape("dbscan", List.of(50, 20, 5), 25), new SplitShape("k-means", List.of(100), 0),
						new SplitShape("none", List.of(), 10))),
				SOURCE));
		List<String> texts = svg.texts();
		assertTrue(texts.containsAll(List.of("Tide House", "3 clusters, largest 50 %, noise 25 %",
				"1 cluster, largest 100 %, noise 0 %", "0 clusters, noise 100 %")), texts::toString);
		assertTrue(svg.description().contains("dbscan 3 clusters"), svg::description);
		assertTrue(svg.holdsItsTexts());
	}
}
