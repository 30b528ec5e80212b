package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.cairnfield.model.Device;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.edit.SetSampleStateCommand;
import org.cairnfield.model.values.Scope;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IPageLayout;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The Properties view shows what is selected, whatever kind of object that is, and follows its changes. */
@ExtendWith(PictureOnFailure.class)
@Order(9)
class PropertiesStoryTest {

	private ArchiveSession session;
	private Tree archive;
	private Split split;

	@BeforeEach
	void openTheDemo() {
		Stage.beginWithTheDemo();
		session = Stage.session();
		split = ModelFactory.eINSTANCE.createSplit();
		split.setId("third-floor");
		split.setScope(Scope.floor("lantern-store", 3));
		Ui.run(() -> session.archive().getSplits().add(split));
		Stage.show(IPageLayout.ID_PROP_SHEET);
		Stage.show("org.cairnfield.ui.explorer");
		archive = Widgets.byId(Tree.class, "explorer.tree");
		Hand.activate(Stage.window());
	}

	@AfterEach
	void goBack() {
		Ui.run(() -> session.archive().getSplits().remove(split));
	}

	private void select(EObject object) {
		Ui.run(() -> session.select(session.selection().withSamples(List.of()).withScope(object)));
		Ui.waitUntil("the tree shows it",
				() -> archive.getSelectionCount() == 1 && archive.getSelection()[0].getData() == object);
	}

	/** Names and values, in the order of the screen. */
	private static Map<String, String> shown() {
		Map<String, String> rows = new LinkedHashMap<>();
		Widgets.isThere("properties.tree", Tree.class, tree -> {
			collect(tree.getItems(), rows);
			return true;
		});
		return rows;
	}

	private static void collect(TreeItem[] items, Map<String, String> rows) {
		for (TreeItem item : items) {
			if (!item.getText(1).isEmpty()) {
				rows.put(item.getText(0), item.getText(1));
			}
			collect(item.getItems(), rows);
		}
	}

	private static void waitFor(String name, String value) {
		Ui.waitUntil("properties have " + name + " " + value, () -> value.equals(shown().get(name)));
	}

	@Test
	void showsEveryKindOfObject() throws Exception {
		Survey survey = Ui.ask(() -> session.archive().getSites().get(0).getSurveys().get(0));
		Device device = Ui.ask(() -> session.archive().getDevices().get(0));
		Map<EObject, String> named = new LinkedHashMap<>();
		named.put(session.archive(), "Name");
		named.put(session.archive().getSites().get(0), "Place on Earth");
		named.put(session.archive().getSites().get(0).getFloors().get(0), "Storey height (m)");
		named.put(survey, "Surveyor (initials)");
		named.put(device, "RSSI offset (dB)");
		named.put(session.archive().getAccessPoints().get(0), "Strongest level (dBm)");
		named.put(split, "minPts (samples)");
		int picture = 0;
		for (Map.Entry<EObject, String> each : named.entrySet()) {
			select(each.getKey());
			Ui.waitUntil("properties of " + each.getKey().eClass().getName(),
					() -> shown().containsKey(each.getValue()));
			PictureOnFailure.take("properties-" + picture++ + "-" + each.getKey().eClass().getName());
			List<String> order = new ArrayList<>(Ui.ask(() -> shown()).keySet());
			assertTrue(order.size() >= 4, order::toString);
			assertFalse(order.contains("Misc"), order::toString);
		}
	}

	@Test
	void showsWhatIsClickedInTheTree() {
		Hand.click(archive, "Floor 1");
		waitFor("Level", "1");
		Hand.click(archive, "Marrow Quay Museums");
		waitFor("Name", "Marrow Quay Museums");
	}

	@Test
	void changesNamesAndKindsByTypingAndTakesThemBack() throws Exception {
		Survey survey = Ui.ask(() -> session.archive().getSites().get(0).getSurveys().get(0));
		Device device = Ui.ask(() -> session.archive().getDevices().get(0));
		String before = device.getName();
		select(device);
		waitFor("Name", before);
		type("Name", "Wrist guide, left");
		Ui.waitUntil("the device has the name", () -> "Wrist guide, left".equals(device.getName()));
		waitFor("Name", "Wrist guide, left");
		PictureOnFailure.take("properties-changed");
		Hand.press("ctrl+z");
		Ui.waitUntil("it has its old name again", () -> before.equals(device.getName()));
		waitFor("Name", before);
		Double offset = device.getOffsetDb();
		type("RSSI offset (dB)", "77");
		Hand.press("Escape");
		assertEquals(offset, Ui.ask(device::getOffsetDb), "no device is so far off");
		Stage.show("org.cairnfield.ui.explorer"); // Properties follow the view that has the focus
		select(survey);
		Ui.waitUntil("properties of the survey", () -> shown().containsKey("Kind"));
		SurveyKind kind = survey.getKind();
		Hand.click(Widgets.byId(Tree.class, "properties.tree"), "Kind");
		Ui.waitUntil("the kinds can be chosen", () -> Display.getCurrent().getFocusControl() instanceof Text field
				&& field.getParent() instanceof CCombo);
		Hand.press(kind == SurveyKind.TRAINING ? "Down" : "Up");
		Hand.press("Return");
		Ui.waitUntil("the survey is of the other kind", () -> survey.getKind() != kind);
		Hand.press("ctrl+z");
		Ui.waitUntil("and of the old one", () -> survey.getKind() == kind);
	}

	private static void type(String name, String text) {
		Hand.click(Widgets.byId(Tree.class, "properties.tree"), name);
		Ui.waitUntil("it can be typed", () -> Display.getCurrent().getFocusControl() instanceof Text);
		Hand.press("ctrl+a");
		Hand.type(text);
		Hand.press("Return");
	}

	@Test
	void followsTheSampleOnThePlanAndInTheTable() throws Exception {
		Survey survey = Ui.ask(() -> session.archive().getSites().get(0).getSurveys().get(0));
		SampleRef first = new SampleRef(survey, 0);
		for (String view : List.of("org.cairnfield.ui.samples", "org.cairnfield.ui.plan.view")) {
			Stage.show(view);
			Ui.run(() -> session.select(session.selection().withScope(survey).withSamples(List.of(first))));
			waitFor("Sample", Ui.ask(() -> survey.table().id(0)));
			waitFor("State", "part of the map");
			Ui.run(() -> session.run(SetSampleStateCommand.setAside(List.of(first), "in a lift")));
			waitFor("State", "set aside: in a lift");
			PictureOnFailure.take("properties-sample-" + view);
			Ui.run(() -> session.commands().undo());
			waitFor("State", "part of the map");
			Ui.run(() -> session.select(session.selection().withSamples(List.of(first, new SampleRef(survey, 1)))));
			waitFor("Samples selected", "2");
			PictureOnFailure.take("properties-samples-" + view);
			assertEquals("0", Ui.ask(() -> shown().get("Samples set aside")));
		}
	}

	@Test
	void showsAFinding() throws Exception {
		Stage.show("org.cairnfield.ui.findings");
		Stage.waitUntilChecked();
		Tree findings = Widgets.byId(Tree.class, "findings.tree");
		Hand.click(findings,
				() -> findings.getItem(0).getExpanded() ? findings.getItem(0).getItem(0) : findings.getItem(0));
		Ui.waitUntil("properties of the finding",
				() -> shown().containsKey("Message") && shown().containsKey("Remedy"));
		PictureOnFailure.take("properties-finding");
	}
}
