package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IViewPart;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** What is in a table goes into a message, a spreadsheet, a file; columns that nobody needs are out of sight. */
@ExtendWith(PictureOnFailure.class)
@Order(13)
class TablesStoryTest {

	private static final String HISTORY = "org.cairnfield.ui.history";

	@TempDir
	static Path folder;

	@BeforeAll
	static void openAnArchive() throws Exception {
		Stage.open(Demo.copy(folder.resolve("tables")));
		Stage.perspective("org.cairnfield.ui.curate");
	}

	@AfterAll
	static void goBack() {
		ReviewStage.goBack();
	}

	private static String clipboard() {
		return Ui.ask(() -> {
			Clipboard clipboard = new Clipboard(Display.getCurrent());
			try {
				return (String) clipboard.getContents(TextTransfer.getInstance());
			} finally {
				clipboard.dispose();
			}
		});
	}

	private static String line(Table table, int row, String between) {
		return Ui.ask(() -> IntStream.range(0, table.getColumnCount())
				.filter(c -> table.getColumn(c).getWidth() > 0 && !table.getColumn(c).getText().isEmpty())
				.mapToObj(table.getItem(row)::getText).collect(Collectors.joining(between)));
	}

	/** Upwards, downwards, and as it was. */
	@Test
	void sortsTheFindingsOfAHeadingByTheHeaderOfAColumn() throws Exception {
		Stage.show("org.cairnfield.ui.findings");
		Tree findings = Widgets.byId(Tree.class, "findings.tree");
		Hand.choose(Widgets.byId(Combo.class, "findings.grouping"), "by severity");
		Ui.waitUntil("there are findings", () -> findings.getItemCount() == 3);
		Hand.click(findings, () -> findings.getItem(0));
		Hand.press("plus");
		Ui.waitUntil("the errors are listed", () -> !longestHeading(findings).isEmpty());
		List<String> before = longestHeading(findings);
		Comparator<String> byNumber = Comparator.comparingInt(text -> Integer.parseInt(text.split(" ")[0])); // "10 samples"
		List<String> upwards = before.stream().sorted(byNumber).toList();
		assertTrue(before.size() > 2 && !before.equals(upwards), before::toString);
		clickHeader(findings);
		assertEquals(upwards, longestHeading(findings));
		PictureOnFailure.take("findings-sorted");
		clickHeader(findings);
		assertEquals(before.stream().sorted(byNumber.reversed()).toList(), longestHeading(findings));
		clickHeader(findings);
		assertEquals(before, longestHeading(findings));
		Hand.choose(Widgets.byId(Combo.class, "findings.grouping"), "by rule");
	}

	private static List<String> longestHeading(Tree findings) {
		return Ui.ask(() -> {
			TreeItem[] longest = Arrays.stream(findings.getItems()).map(TreeItem::getItems)
					.max(Comparator.comparingInt(items -> items.length)).orElseThrow();
			return Arrays.stream(longest).map(item -> item.getText(0)).toList();
		});
	}

	private static void clickHeader(Tree tree) {
		Hand.click(() -> tree.toDisplay(tree.getColumn(0).getWidth() / 2, -tree.getHeaderHeight() / 2));
		Ui.waitUntilIdle();
	}

	/** Chooses a column in the context menu. */
	private static void toggle(Table table, String column) {
		Ui.run(() -> {
			Menu menu = table.getMenu();
			menu.notifyListeners(SWT.Show, new Event());
			MenuItem columns = Arrays.stream(menu.getItems()).filter(item -> item.getText().equals("C&olumns"))
					.findFirst().orElseThrow();
			MenuItem chosen = Arrays.stream(columns.getMenu().getItems()).filter(item -> item.getText().equals(column))
					.findFirst().orElseThrow();
			chosen.notifyListeners(SWT.Selection, new Event());
			menu.notifyListeners(SWT.Hide, new Event());
		});
		Ui.waitUntilIdle();
	}

	private static Table history() {
		Stage.show(HISTORY);
		Table table = Widgets.byId(Table.class, "history.points");
		Ui.waitUntil("the history is there", () -> table.getItemCount() > 0);
		return table;
	}

	@Test
	void copiesTheLinesSelectedAndSavesThemAll() throws Exception {
		Table table = history();
		Hand.activate(Stage.window());
		Hand.click(table, 0);
		Hand.press("ctrl+c");
		assertEquals(line(table, 0, "\t"), clipboard());
		Path file = folder.resolve("history.csv");
		Ui.later(() -> Stage.commandHere("org.cairnfield.ui.saveTable"));
		Hand.nameFile("Save the table as CSV", file);
		Ui.waitUntil("all lines are written", () -> linesOf(file).size() == table.getItemCount() + 1);
		List<String> lines = linesOf(file);
		assertEquals("Time,Who,What changed,Save point,Exchange", lines.get(0));
		assertTrue(lines.get(1).startsWith(Ui.ask(() -> table.getItem(0).getText(1))), lines::toString);
	}

	private static List<String> linesOf(Path file) {
		try {
			return Files.readAllLines(file);
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	@Test
	void copiesATreeAsItIsUnfolded() {
		Stage.show("org.cairnfield.ui.findings");
		Stage.waitUntilChecked();
		Tree tree = Widgets.byId(Tree.class, "findings.tree");
		Hand.activate(Stage.window());
		Hand.click(tree, () -> tree.getItem(0));
		Ui.run(tree::deselectAll);
		Hand.press("ctrl+c");
		List<String> lines = clipboard().lines().toList();
		String child = Ui.ask(() -> tree.getItem(0).getExpanded() && tree.getItem(0).getItemCount() > 0
				? tree.getItem(0).getItem(0).getText(0)
				: "");
		assertTrue(
				lines.size() > 3 && (child.isEmpty() || lines.stream().anyMatch(line -> line.startsWith("  " + child))),
				lines::toString);
	}

	@Test
	void saysATextThatIsCut() {
		Table table = history();
		int column = 3;
		Ui.run(() -> table.getColumn(column).setWidth(60));
		Hand.activate(Stage.window());
		Hand.click(() -> table.toDisplay(table.getItem(0).getBounds(column).x + 20,
				table.getItem(0).getBounds(column).y + 8));
		Ui.waitUntil("it is said in full", () -> table.getItem(0).getText(column).equals(table.getToolTipText()));
		Hand.click(table, 0);
		Ui.waitUntil("what is whole is not said again", () -> table.getToolTipText() == null);
		Ui.run(() -> table.getColumn(column).setWidth(380));
	}

	@Test
	void hidesAColumnUntilItIsWantedAgain() {
		Table table = history();
		String column = Ui.ask(() -> table.getColumn(1).getText());
		int wide = Ui.ask(() -> table.getColumn(1).getWidth());
		assertTrue(wide > 0);
		toggle(table, column);
		assertEquals(0, Ui.ask(() -> table.getColumn(1).getWidth()));
		Hand.activate(Stage.window());
		Hand.click(table, 0);
		Hand.press("ctrl+c");
		assertEquals(line(table, 0, "\t"), clipboard());
		IViewPart part = Stage.view(HISTORY);
		Ui.run(() -> part.getSite().getPage().hideView(part));
		Table again = history();
		Ui.waitUntil("it is still hidden", () -> again.getColumn(1).getWidth() == 0);
		toggle(again, column);
		Ui.waitUntil("it is back", () -> again.getColumn(1).getWidth() > 0);
	}
}
