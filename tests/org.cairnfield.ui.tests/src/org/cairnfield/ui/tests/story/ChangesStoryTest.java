package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.MoveSampleCommand;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.edit.SetSampleStateCommand;
import org.cairnfield.ui.scope.MarkedPlace;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** What a save point changed is seen where it happened. */
@ExtendWith(PictureOnFailure.class)
@Order(13)
class ChangesStoryTest {

	@TempDir
	static Path folder;

	@AfterAll
	static void goBack() {
		ReviewStage.goBack();
	}

	@Test
	void showsOnThePlanWhatASavePointChanged() throws Exception {
		Stage.open(Demo.copy(folder.resolve("changes")));
		ArchiveSession session = Stage.session();
		Stage.perspective("org.cairnfield.ui.curate");
		Survey survey = Ui.ask(() -> session.archive().getSites().get(0).getSurveys().get(0));
		SampleRef moved = new SampleRef(survey, 3);
		double x = Ui.ask(() -> moved.sample().xMetres());
		double y = Ui.ask(() -> moved.sample().yMetres());
		List<SampleRef> aside = List.of(new SampleRef(survey, 10), new SampleRef(survey, 11));
		Ui.run(() -> session.run(new MoveSampleCommand(moved, x + 3, y + 1)));
		Ui.run(() -> session.run(SetSampleStateCommand.setAside(aside, "a trial")));
		Stage.show("org.cairnfield.ui.history");
		Table points = Widgets.byId(Table.class, "history.points");
		int before = Ui.ask(points::getItemCount);
		Hand.activate(Stage.window());
		Hand.click(Widgets.byId(Button.class, "history.make"));
		Ui.waitUntil("a save point is made", () -> points.getItemCount() == before + 1 && !session.isModified());
		Hand.click(points, 0);
		Tree changes = Widgets.byId(Tree.class, "history.changes");
		Ui.waitUntil("its changes are listed",
				() -> changes.getItemCount() > 0 && changes.getItem(0).getText().startsWith("Survey "));
		Hand.click(changes, () -> changes.getItem(0));
		Ui.run(() -> Arrays.stream(changes.getMenu().getItems())
				.filter(item -> item.getText().equals("Show on the &plan")).findFirst().orElseThrow()
				.notifyListeners(SWT.Selection, new Event()));
		Ui.waitUntil("all that changed is selected", () -> session.selection().samples().size() == 3);
		MarkedPlace cross = Ui.ask(() -> session.selection().marked().get(0));
		assertEquals(1, Ui.ask(() -> session.selection().marked().size()));
		assertEquals(List.of(x, y), List.of(cross.xMetres(), cross.yMetres()));
		assertEquals(Ui.ask(() -> moved.sample().id()) + " was here", cross.label());
		PictureOnFailure.take("changes-on-the-plan");
	}
}
