package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.ui.internal.intake.IntakeWizard;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.Interruptions;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A wide file in which −110 means not heard, which nobody could guess, is corrected and taken in; then taken back. */
@ExtendWith(PictureOnFailure.class)
@Order(4)
class IntakeStoryTest {

	private static final String WIDE = """
			id,time,device,building,floor,x,y,00:00:5E:00:53:70,00:00:5E:00:53:71,00:00:5E:00:53:72
			BS-1,2031-11-20T09:00:00Z,Wrist guide A,Boat Shed,0,1,1,-61,-110,-70
			BS-2,2031-11-20T09:00:05Z,Wrist guide A,Boat Shed,0,3,1,-64,-72,-110
			BS-3,2031-11-20T09:00:10Z,Wrist guide A,Boat Shed,0,five,1,-66,-71,-110
			BS-4,2031-11-20T09:00:15Z,Wrist guide A,Boat Shed,1,7,1,-110,-69,-80
			""";

	private static final int ROWS = 600_000;

	@TempDir
	Path folder;

	private static Optional<Survey> taken(ArchiveSession session) {
		for (Site site : session.archive().getSites()) {
			if (site.getName().equals("Boat Shed")) {
				return Optional.of(site.getSurveys().get(0));
			}
		}
		return Optional.empty();
	}

	@Test
	void correctsAWrongGuessBeforeAnythingIsTakenIn() throws Exception {
		Path file = Files.writeString(folder.resolve("boat-shed.csv"), WIDE);
		ArchiveSession session = Stage.session();
		Hand.activate(Stage.window());
		Stage.takeIn(List.of(file));
		Shell wizard = Widgets.shell("Take in survey files");
		Table preview = Widgets.byId(Table.class, "intake.preview");
		Ui.waitUntil("the preview shows the rows", () -> preview.getItemCount() >= 4);
		Combo notHeard = Widgets.byId(Combo.class, "intake.notHeard");
		assertFalse(Ui.ask(() -> notHeard.getText().equals("-110")), "it cannot be guessed");
		PictureOnFailure.take("intake-wizard");
		Hand.fill(notHeard, "-110");
		Hand.press("Tab");
		Hand.click(Widgets.button("Next >"));
		Widgets.byId(Table.class, "intake.place.files");
		Hand.click(Widgets.button("Next >"));
		Table quarantined = Widgets.byId(Table.class, "intake.quarantined");
		Label outcome = Widgets.byId(Label.class, "intake.outcome");
		Ui.waitUntil("the outcome is known", () -> outcome.getText().startsWith("3 samples would be taken in"));
		assertEquals("4", Ui.ask(() -> quarantined.getItem(0).getText(1)),
				"the line of the row whose x is not a number");
		Hand.click(Widgets.button("Finish"));
		Ui.waitUntil("the wizard is closed", wizard::isDisposed);
		Ui.waitUntil("the survey is there", () -> taken(session).isPresent());
		SampleTable table = Ui.ask(() -> taken(session).get().table());
		assertEquals(3, table.size());
		assertEquals(2, table.heard(0), "-110 is no level");
		Tree tree = Widgets.byId(Tree.class, "explorer.tree");
		Widgets.item(tree, "Boat Shed");
		try (Stream<Path> files = Files.list(folder)) {
			assertTrue(files.anyMatch(each -> each.toString().endsWith(".quarantine.csv")),
					"the row that was refused is kept");
		}
		Hand.activate(Stage.window());
		Hand.press("ctrl+z");
		Ui.waitUntil("undo takes the survey out again", () -> taken(session).isEmpty());
		Stage.save();
	}

	/** Escape comes while the file is read, which takes some seconds. */
	@Test
	void leavesWhileALargeFileIsRead() throws Exception {
		List<String> lines = new ArrayList<>(List.of(WIDE.lines().findFirst().get()));
		IntStream.range(0, ROWS)
				.forEach(row -> lines.add("BS-" + row + ",2031-11-20T09:00:00Z,Wrist guide A,Boat Shed,0," + row % 50
						+ ",1,-61,-" + (40 + row % 50) + ",-70"));
		Path file = Files.write(folder.resolve("large.csv"), lines);
		Hand.activate(Stage.window());
		List<String> seen = Interruptions.escape(Stage.window(),
				() -> IntakeWizard.open(Stage.window(), List.of(file)));
		assertTrue(seen.stream().allMatch(text -> text.startsWith("Take in survey files")),
				() -> "nothing says that it cannot be closed: " + seen);
		assertTrue(taken(Stage.session()).isEmpty());
	}
}
