package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.ui.plan.PlanGeometry;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A steward looks where the floor was hardly surveyed and how far an access point carries, and hands the picture on. */
@ExtendWith(PictureOnFailure.class)
@Order(13)
class SurfaceStoryTest {

	@TempDir
	static Path folder;

	@AfterAll
	static void goBack() {
		ReviewStage.goBack();
	}

	@Test
	void showsDensityAndLevelsAndSavesThePicture() throws Exception {
		Stage.open(Demo.copy(folder.resolve("surface")));
		ArchiveSession session = Stage.session();
		Stage.perspective("org.cairnfield.ui.curate");
		PlanGeometry plan = (PlanGeometry) Stage.view("org.cairnfield.ui.plan.view");
		Ui.run(() -> session
				.select(session.selection().withScope(session.archive().getSites().get(0).getFloors().get(1))
						.withSamples(List.of()).withAccessPoint(null)));
		Stage.command("org.cairnfield.ui.plan.fit");
		Hand.activate(Stage.window());
		Combo surface = Widgets.byId(Combo.class, "plan.surface");
		Hand.choose(surface, "sample density");
		Label caption = Widgets.byId(Label.class, "plan.caption");
		Ui.waitUntil("the density is explained",
				() -> caption.getText().startsWith("Sample density: samples of the map within "));
		Ui.waitUntil("the plan is drawn", plan::isDrawn);
		PictureOnFailure.take("surface-density");
		Hand.choose(surface, "RSSI of the access point");
		Ui.waitUntil("one is to be chosen", () -> caption.getText().startsWith("Choose an access point"));
		Ui.run(() -> session.select(session.selection().withAccessPoint(elsewhere(session))));
		Ui.waitUntil("it is not heard here",
				() -> caption.getText().endsWith("no place of the map on this floor hears it."));
		Ui.run(() -> session.select(session.selection().withAccessPoint(heard(session, 1))));
		Ui.waitUntil("it is explained, with its error",
				() -> caption.getText().contains("Mean error at a place that is left out: "));
		Ui.waitUntil("the plan is drawn", plan::isDrawn);
		Ui.waitUntilIdle();
		PictureOnFailure.take("surface-level");
		Path file = folder.resolve("plan.png");
		Ui.later(() -> Stage.commandHere("org.cairnfield.ui.plan.picture"));
		Hand.nameFile("Save a picture of the plan", file);
		Files.copy(file, Path.of(System.getProperty("cairnfield.screenshots"), "saved-plan.png"));
		ImageData picture = new ImageData(file.toString());
		assertTrue(picture.width > 400 && picture.height > 200, picture.width + " × " + picture.height);
		assertTrue(colours(picture) > 50, "a picture of " + colours(picture) + " colours");
		Ui.run(Stage.view("org.cairnfield.ui.plan.view")::setFocus);
		Hand.press("ctrl+c");
		assertEquals(picture.width, Ui.ask(SurfaceStoryTest::copied).width, "the same picture is on the clipboard");
		Hand.choose(surface, "none");
		Ui.waitUntil("it is gone", () -> caption.getText().isEmpty());
		assertFalse(Ui.ask(caption::getVisible));
		assertEquals(0, Ui.ask(surface::getSelectionIndex));
	}

	/** One that a sample of the first site hears on a floor. */
	private static AccessPoint heard(ArchiveSession session, int floor) {
		SampleTable table = session.archive().getSites().get(0).getSurveys().get(0).table();
		int row = IntStream.range(0, table.size()).filter(r -> table.floorLevel(r) == floor).findFirst().orElseThrow();
		return accessPoint(session, table.accessPoints().get(table.accessPoint(row, 0)));
	}

	/** One that another site hears, and the first does not. */
	private static AccessPoint elsewhere(ArchiveSession session) {
		Set<String> here = session.archive().getSites().get(0).getSurveys().stream()
				.flatMap(survey -> survey.table().accessPoints().stream()).collect(Collectors.toSet());
		String other = session.archive().getSites().get(1).getSurveys().get(0).table().accessPoints().stream()
				.filter(id -> !here.contains(id)).findFirst().orElseThrow();
		return accessPoint(session, other);
	}

	private static AccessPoint accessPoint(ArchiveSession session, String id) {
		return session.archive().getAccessPoints().stream().filter(each -> each.getId().equals(id)).findFirst()
				.orElseThrow();
	}

	private static ImageData copied() {
		Clipboard clipboard = new Clipboard(Display.getCurrent());
		try {
			return (ImageData) clipboard.getContents(ImageTransfer.getInstance());
		} finally {
			clipboard.dispose();
		}
	}

	private static long colours(ImageData picture) {
		return IntStream.range(0, picture.width * picture.height)
				.map(i -> picture.getPixel(i % picture.width, i / picture.width)).distinct().count();
	}
}
