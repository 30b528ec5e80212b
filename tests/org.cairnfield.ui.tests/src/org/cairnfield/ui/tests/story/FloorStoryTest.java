package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** A sample goes to floors that its site has, and one that came from elsewhere to a floor that does not exist is not lost. */
@ExtendWith(PictureOnFailure.class)
@Order(11)
class FloorStoryTest {

	private ArchiveSession session;
	private Survey survey;
	private SampleRef sample;

	@BeforeEach
	void chooseASample() {
		Stage.beginWithTheDemo();
		session = Stage.session();
		survey = Ui.ask(() -> site().getSurveys().get(0));
		sample = new SampleRef(survey, 0);
		Stage.show("org.cairnfield.ui.samples");
		Ui.run(() -> session.select(session.selection().withScope(survey).withSamples(List.of(sample))));
		Ui.waitUntilIdle();
		Hand.activate(Stage.window());
	}

	private Site site() {
		return session.archive().getSites().stream().filter(site -> site.getName().equals("Lantern Store")).findFirst()
				.orElseThrow();
	}

	private int level() {
		return survey.table().floorLevel(0);
	}

	@Test
	void offersTheFloorsOfTheSite() throws Exception {
		int before = Ui.ask(this::level);
		Stage.command("org.cairnfield.ui.setFloor");
		Combo floors = (Combo) Widgets.byId(Control.class, "samples.bar.field");
		assertEquals(List.of("Floor 0", "Floor 1", "Floor 2", "Floor 3"), Ui.ask(() -> List.of(floors.getItems())));
		assertTrue(Ui.ask(() -> (floors.getStyle() & SWT.READ_ONLY) != 0), "no other can be written");
		PictureOnFailure.take("floors-to-choose");
		Hand.choose(floors, "Floor 3");
		Hand.press("Return");
		Ui.waitUntil("it is there", () -> level() == 3);
		Hand.press("ctrl+z");
		Ui.waitUntil("it is back", () -> level() == before);
	}

	@Test
	void refusesAFloorThatDoesNotExistInTheRow() throws Exception {
		int before = Ui.ask(this::level);
		Stage.command("org.cairnfield.ui.editPosition");
		Text floor = Widgets.byId(Text.class, "samples.edit.floor");
		Hand.fill(floor, "77");
		Hand.press("Return");
		Label said = Widgets.byId(Label.class, "samples.bar.text");
		Ui.waitUntil("the floors are named",
				() -> said.getText().contains("Lantern Store has no floor 77. Its floors are 0, 1, 2, 3."));
		PictureOnFailure.take("floor-refused");
		assertEquals(before, Ui.ask(this::level));
		Hand.press("Escape");
	}

	@Test
	void showsWhatIsOnAFloorThatDoesNotExist() throws Exception {
		SampleTable before = Ui.ask(() -> survey.table());
		Ui.run(() -> survey.getSamples().setTable(before.edit().floorLevel(0, 77).floorLevel(1, 77).done()));
		try {
			Stage.waitUntilChecked();
			Tree tree = Widgets.byId(Tree.class, "explorer.tree");
			Hand.click(tree, "On no floor of the site");
			Ui.waitUntil("they are selected",
					() -> session.selection().samples().equals(List.of(sample, new SampleRef(survey, 1))));
			Stage.show("org.cairnfield.ui.findings");
			Tree findings = Widgets.byId(Tree.class, "findings.tree");
			Hand.click(findings, "On a floor that does not exist");
			assertTrue(Ui.ask(() -> session.findings().of(sample).stream()
					.anyMatch(
							finding -> finding.message().contains("on floor 77, which Lantern Store does not have"))));
			PictureOnFailure.take("floor-unknown");
		} finally {
			Ui.run(() -> survey.getSamples().setTable(before));
			Stage.waitUntilChecked();
		}
	}
}
