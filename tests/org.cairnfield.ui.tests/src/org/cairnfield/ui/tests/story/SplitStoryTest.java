package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.split.SplitStudy;
import org.cairnfield.curation.split.Trial;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Labels;
import org.cairnfield.ui.charts.BarChart;
import org.cairnfield.ui.charts.Chart;
import org.cairnfield.ui.charts.GridMap;
import org.cairnfield.ui.charts.LineChart;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A floor is split: by the elbow of its curve after looking around with the mouse, and by a cell of a sweep. */
@ExtendWith(PictureOnFailure.class)
@Order(7)
class SplitStoryTest {

	private static final Pattern ELBOW = Pattern.compile("elbow: .* (\\d+(?:\\.\\d+)?).dB");
	private static final Pattern CELL = Pattern.compile("ε ([\\d.]+).dB, minPts (\\d+): Noise share ([\\d.]+).%");
	private static final Pattern NOISE = Pattern.compile("(\\d+) clusters?, .* noise \\((\\d+) of (\\d+) kept",
			Pattern.DOTALL);

	@TempDir
	static Path folder;
	private ArchiveSession session;
	private Text epsilon;
	private Text facts;

	@AfterAll
	static void goBack() {
		ReviewStage.goBack();
	}

	private void chooseTheFloor(String story) throws Exception {
		session = ReviewStage.open(folder, story);
		ReviewStage.showSplitting();
		Combo scope = Widgets.byId(Combo.class, "split.scope");
		String floor = Ui.ask(() -> List.of(scope.getItems())).stream()
				.filter(item -> item.contains("Lantern Store, floor 3")).findFirst().get();
		Hand.choose(scope, floor);
		Hand.fill(Widgets.byId(Spinner.class, "split.minPts"), Integer.toString(ReviewStage.MIN_PTS));
		Hand.press("Tab");
		Ui.waitUntilIdle();
		epsilon = Widgets.byId(Text.class, "split.epsilon");
		facts = Widgets.byId(Text.class, "split.facts");
	}

	private double shownEpsilon() {
		return Double.parseDouble(Ui.ask(epsilon::getText));
	}

	/** The figures follow: clusters and noise are those that ε makes of the floor. */
	private void waitForFacts(SplitStudy study, double of) {
		Trial trial = study.split(of, ReviewStage.MIN_PTS, Workers.inline());
		Ui.waitUntil("clusters and noise are those of " + of, () -> {
			Matcher said = NOISE.matcher(facts.getText());
			return said.find() && Integer.parseInt(said.group(1)) == trial.clusters()
					&& Integer.parseInt(said.group(2)) == trial.noise();
		});
	}

	@Test
	void keepsWhatTheElbowMakes() throws Exception {
		chooseTheFloor("elbow");
		SplitStudy study = ReviewStage.study(session);
		Hand.click(Widgets.byId(CTabFolder.class, "split.pictures"), "Curve");
		LineChart curve = Widgets.byId(LineChart.class, "split.curve");
		double expected = study.curve(ReviewStage.MIN_PTS, Workers.inline()).elbowEpsilon().get();
		Ui.waitUntil("the curve is that of the floor, with its elbow", () -> curve.itemCount() == 1
				&& ELBOW.matcher(curve.itemText(0)).matches() && Math.abs(elbow(curve) - expected) < 0.05);
		double elbow = Ui.ask(() -> elbow(curve));
		double start = shownEpsilon();
		waitForFacts(study, start);
		Set<String> seen = new LinkedHashSet<>();
		Listener watching = event -> seen.add(facts.getText());
		Ui.run(() -> facts.addListener(SWT.Modify, watching));
		dragGuide(curve, from -> find(curve, at -> curve.itemAt(at.x, at.y) == 0).y);
		double dragged = shownEpsilon();
		Ui.run(() -> facts.removeListener(SWT.Modify, watching));
		// not exactly: figures of more or fewer lines make the curve lower or higher
		assertTrue(Math.abs(dragged - elbow) < Math.abs(start - elbow),
				() -> dragged + " is no nearer to the elbow " + elbow + " than " + start);
		assertTrue(seen.stream().map(text -> text.split("\\n")[0]).distinct().count() > 2,
				() -> "figures follow on the way: " + seen);
		waitForFacts(study, dragged);
		dragGuide(curve, from -> from + 40);
		double lower = shownEpsilon();
		assertTrue(lower < dragged, lower + " after " + dragged);
		waitForFacts(study, lower);
		String before = Ui.ask(facts::getText);
		Hand.fill(epsilon, String.format(Locale.ROOT, "%.0f", elbow));
		Hand.press("Return");
		waitForFacts(study, elbow);
		assertNotEquals(before, Ui.ask(facts::getText));
		Split kept = keep("by-elbow");
		assertEquals(elbow, kept.getEpsilon(), "ε is what was shown");
		assertEquals(elbow, shownEpsilon());
		Trial trial = study.split(elbow, ReviewStage.MIN_PTS, Workers.inline());
		Labels labels = Ui.ask(kept::getLabels);
		assertEquals(study.map().map().size(), labels.size());
		assertEquals(trial.noise(), labels.noise());
		assertEquals(List.of(boxed(trial.sizes())), List.of(boxed(labels.clusterSizes())));
		Hand.click(Widgets.byId(CTabFolder.class, "split.pictures"), "Sizes");
		assertEquals(bars(labels), items(Widgets.byId(BarChart.class, "split.sizes")));
	}

	private static double elbow(LineChart curve) {
		return Double.parseDouble(matched(ELBOW, curve.itemText(0)).group(1));
	}

	/** Noise first, then clusters from the largest. */
	private static List<String> bars(Labels labels) {
		List<String> bars = new ArrayList<>();
		bars.add("noise: " + labels.noise());
		int[] sizes = labels.clusterSizes();
		IntStream.range(0, sizes.length).boxed().sorted(Comparator.comparingInt((Integer c) -> -sizes[c]))
				.forEach(c -> bars.add("C" + c + ": " + sizes[c]));
		return bars;
	}

	private static Integer[] boxed(int[] values) {
		return Arrays.stream(values).boxed().toArray(Integer[]::new);
	}

	private static List<String> items(Chart chart) {
		return Ui.ask(() -> IntStream.range(0, chart.itemCount()).mapToObj(chart::itemText).toList());
	}

	private static Matcher matched(Pattern pattern, String text) {
		Matcher matcher = pattern.matcher(text);
		assertTrue(matcher.find(), text);
		return matcher;
	}

	private static boolean isThere(Chart chart, Predicate<Point> test) {
		Point size = chart.getSize();
		return IntStream.range(0, size.x * size.y).anyMatch(i -> test.test(new Point(i % size.x, i / size.x)));
	}

	/** The middle of the points of a chart that pass a test, in its own points; on the user interface thread. */
	private static Point find(Chart chart, Predicate<Point> test) {
		Point size = chart.getSize();
		int left = Integer.MAX_VALUE;
		int top = Integer.MAX_VALUE;
		int right = -1;
		int bottom = -1;
		for (int y = 0; y < size.y; y++) {
			for (int x = 0; x < size.x; x++) {
				if (test.test(new Point(x, y))) {
					left = Math.min(left, x);
					right = Math.max(right, x);
					top = Math.min(top, y);
					bottom = Math.max(bottom, y);
				}
			}
		}
		assertTrue(right >= 0, "the chart has no such place");
		return new Point((left + right) / 2, (top + bottom) / 2);
	}

	/**
	 * Takes the line of ε with the mouse and moves it up or down.
	 *
	 * @param toY the height of the chart that it is to go to, by the one where it is
	 */
	private static void dragGuide(LineChart curve, IntUnaryOperator toY) {
		Hand.drag(() -> {
			Point from = find(curve, at -> isOnGuide(curve, at));
			return List.of(curve.toDisplay(from), curve.toDisplay(from.x, toY.applyAsInt(from.y)));
		});
	}

	private static boolean isOnGuide(LineChart curve, Point at) {
		return at.x == curve.getSize().x / 2 && curve.isOnGuide(at.x, at.y);
	}

	private Split keep(String name) {
		Hand.fill(Widgets.byId(Text.class, "split.name"), name);
		Hand.click(Widgets.byId(Button.class, "split.keep"));
		Ui.waitUntil("the split is kept", () -> session.archive().getSplits().size() == 1);
		Split kept = Ui.ask(() -> session.archive().getSplits().get(0));
		assertEquals(name, Ui.ask(kept::getId));
		assertEquals(ReviewStage.FLOOR, Ui.ask(kept::getScope));
		return kept;
	}

	@Test
	void keepsACellOfTheSweep() throws Exception {
		chooseTheFloor("sweep");
		Hand.click(Widgets.byId(CTabFolder.class, "split.pictures"), "Sweep");
		GridMap grid = Widgets.byId(GridMap.class, "split.grid");
		Hand.click(Widgets.byId(Button.class, "split.sweep"));
		Ui.waitUntil("the grid is there", () -> grid.itemCount() > 4);
		int cell = aCellWithSomeNoise(items(grid));
		Matcher asked = matched(CELL, Ui.ask(() -> grid.itemText(cell)));
		Ui.waitUntil("the cell is drawn", () -> isThere(grid, at -> grid.itemAt(at.x, at.y) == cell));
		Hand.click(() -> grid.toDisplay(find(grid, at -> grid.itemAt(at.x, at.y) == cell)));
		Spinner minPts = Widgets.byId(Spinner.class, "split.minPts");
		Ui.waitUntil("the cell is tried", () -> minPts.getSelection() == Integer.parseInt(asked.group(2))
				&& facts.getText().contains(asked.group(3) + " % noise"));
		assertEquals(Double.parseDouble(asked.group(1)), shownEpsilon(), 0.0005);
		assertEquals(cell, Ui.ask(grid::getChosen));
		Split kept = keep("from-sweep");
		assertEquals(shownEpsilon(), kept.getEpsilon(), 1e-5 * kept.getEpsilon());
		assertEquals(Integer.parseInt(asked.group(2)), Ui.ask(kept::getMinPts));
		Labels labels = Ui.ask(kept::getLabels);
		assertEquals(asked.group(3), String.format(Locale.ROOT, "%.1f", 100.0 * labels.noise() / labels.size()),
				"noise is that of the cell");
		Ui.waitUntil("with proposals", () -> kept.getProposals() != null && !kept.getProposals().all().isEmpty());
		marksNoiseInTheTable(kept);
		Stage.show("org.cairnfield.ui.explorer");
		Tree explorer = Widgets.byId(Tree.class, "explorer.tree");
		Hand.click(explorer, "Splits");
		Hand.press("Right");
		assertEquals("from-sweep  " + labels.size() + "  " + labels.noise() + " outliers",
				Ui.ask(Widgets.item(explorer, "from-sweep")::getText));
	}

	@Test
	void keepsWhatTheBestMethodMakes() throws Exception {
		chooseTheFloor("best");
		Combo kind = Widgets.byId(Combo.class, "split.kind");
		Hand.choose(kind, "one split, by the best method");
		Split kept = keep("by-best");
		Hand.choose(kind, "one split");
		String said = Ui.ask(Widgets.byId(Label.class, "split.message")::getText);
		Matcher errors = matched(Pattern.compile(
				"held-out error by method: dbscan ([\\d.]+) m .*; k-means ([\\d.]+) m .*; affinity .*; kernel-reduction "),
				said);
		boolean dbscan = Double.parseDouble(errors.group(1)) <= Double.parseDouble(errors.group(2));
		assertTrue(dbscan || Ui.ask(kept::getMethod) != null, () -> "worse than k-means, and kept: " + said);
	}

	/** Some other minPts than at first, and noise enough for proposals. */
	private static int aCellWithSomeNoise(List<String> cells) {
		for (int i = 0; i < cells.size(); i++) {
			Matcher cell = matched(CELL, cells.get(i));
			double noise = Double.parseDouble(cell.group(3));
			if (noise > 15 && noise < 60 && Integer.parseInt(cell.group(2)) != ReviewStage.MIN_PTS) {
				return i;
			}
		}
		throw new AssertionError(cells.toString());
	}

	private void marksNoiseInTheTable(Split split) {
		Ui.run(() -> session.select(session.selection().withScope(split)));
		Stage.show("org.cairnfield.ui.samples");
		Stage.command("org.eclipse.ui.window.maximizePart"); // a small screen has room for a row otherwise
		Table table = Widgets.byId(Table.class, "samples.table");
		Ui.waitUntil("samples of the split are listed",
				() -> table.getItemCount() > 3 && !role(table.getItem(0)).isEmpty());
		Ui.run(() -> {
			Labels labels = split.getLabels();
			for (TableItem item : table.getItems()) {
				int row = IntStream.range(0, labels.size()).filter(i -> labels.sample(i).equals(item.getText(0)))
						.findFirst().getAsInt();
				assertEquals(labels.cluster(row) == Labels.NOISE, role(item).equals("noise"), item.getText(0));
			}
		});
		Stage.command("org.eclipse.ui.window.maximizePart");
		Stage.show("org.cairnfield.ui.review.evidence"); // which is behind the samples on a small screen
	}

	private static String role(TableItem item) {
		Table table = item.getParent();
		for (int column = 0; column < table.getColumnCount(); column++) {
			if (table.getColumn(column).getText().equals("role")) {
				return item.getText(column);
			}
		}
		throw new AssertionError("no column of roles");
	}
}
