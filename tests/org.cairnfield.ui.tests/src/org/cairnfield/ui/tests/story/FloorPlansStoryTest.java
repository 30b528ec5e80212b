package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.cairnfield.exchange.export.SiteFrame;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.values.Georeference;
import org.cairnfield.model.values.Outline;
import org.cairnfield.testkit.MuseumPlans;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The plans of the museums come as an IMDF archive: a steward looks at what they would change, takes them in, and takes them back. */
@ExtendWith(PictureOnFailure.class)
@Order(12)
class FloorPlansStoryTest {

	private static final double MILLIMETRE = 1e-3;

	@TempDir
	Path folder;

	@Test
	void takesPlansInAndTakesThemBack() throws Exception {
		Stage.beginWithTheDemo();
		ArchiveSession session = Stage.session();
		Site site = Ui.ask(() -> session.archive().getSites().stream()
				.filter(each -> each.getName().equals("Lantern Store")).findFirst().orElseThrow());
		Floor floor = Ui.ask(() -> site.getFloors().get(1));
		Outline drawn = floor.getOutline();
		String image = floor.getPlanImage();
		Ui.run(() -> {
			floor.setOutline(Outline.parse("0,0 10,0 10,10"));
			session.select(session.selection().withScope(floor).withSamples(List.of()));
		});
		Path plans = MuseumPlans.zip(folder.resolve("museums.zip"), MuseumPlans.texts(frames(session)));
		Stage.view("org.cairnfield.ui.plan.view");
		Shell dialog = openDialog();
		Text file = Widgets.byId(Text.class, "floors.file");
		Table floors = Widgets.byId(Table.class, "floors.table");
		Button take = Widgets.byId(Button.class, "floors.do");
		assertFalse(Ui.ask(take::isEnabled), "there is no file yet");
		Hand.fill(file, folder.resolve("nowhere.zip").toString());
		Text notes = Widgets.byId(Text.class, "floors.notes");
		Ui.waitUntil("what is wrong is said", () -> notes.getText().contains("there is no such file"));
		Hand.fill(file, plans.toString());
		Ui.waitUntil("the floors are listed", () -> floors.getItemCount() == 4);
		Ui.waitUntilIdle();
		PictureOnFailure.take("floors-dialog");
		assertEquals("1  Floor 1", Ui.ask(() -> floors.getItem(1).getText(0)));
		assertEquals("changed", Ui.ask(() -> floors.getItem(1).getText(1)));
		assertEquals("4 corners, 1,012 m² (before 3 corners, 50 m²)", Ui.ask(() -> floors.getItem(1).getText(2)));
		assertEquals("replaced: 1 walkway, 10 rooms, 3 fixtures, 10 doors", Ui.ask(() -> floors.getItem(1).getText(4)));
		assertTrue(Ui.ask(notes::getText).contains("belongs to no building"), "the quay is left out");
		assertEquals(image, floor.getPlanImage(), "nothing is done yet");
		Hand.click(take);
		Ui.waitUntil("the dialog is closed", dialog::isDisposed);
		Ui.waitUntil("the floor has the plan", () -> !Objects.equals(image, floor.getPlanImage()));
		Ui.waitUntilIdle();
		PictureOnFailure.take("floors-plan");
		assertSame(drawn, floor.getOutline());
		lookAt(session, floor);
		Hand.activate(Stage.window());
		Hand.press("ctrl+z");
		Ui.waitUntil("undo brings the image back", () -> Objects.equals(image, floor.getPlanImage()));
		assertEquals(3, Ui.ask(() -> floor.getOutline().size()));
		Ui.run(() -> floor.setOutline(drawn));
		Ui.waitUntilIdle();
	}

	private static Map<String, SiteFrame.Anchor> frames(ArchiveSession session) {
		Map<String, SiteFrame.Anchor> frames = new HashMap<>();
		Ui.run(() -> session.archive().getSites().forEach(site -> {
			Georeference at = site.getGeoreference();
			frames.put(site.getName(),
					new SiteFrame.Anchor(at.latitudeDegrees(), at.longitudeDegrees(), at.bearingDegrees()));
		}));
		return frames;
	}

	private static Shell openDialog() {
		Ui.later(() -> {
			try {
				PlatformUI.getWorkbench().getService(IHandlerService.class)
						.executeCommand("org.cairnfield.ui.takeFloors", null);
			} catch (Exception e) {
				throw new AssertionError(e);
			}
		});
		Shell dialog = Widgets.shell("Take in floor plans");
		Hand.activate(dialog);
		return dialog;
	}

	private static void assertSame(Outline expected, Outline outline) {
		assertEquals(expected.size(), outline.size());
		for (int i = 0; i < expected.size(); i++) {
			assertEquals(expected.xMetres(i), outline.xMetres(i), MILLIMETRE);
			assertEquals(expected.yMetres(i), outline.yMetres(i), MILLIMETRE);
		}
	}

	/** The image as the plan reads it: a wall of the corridor is dark, the door in it light, the corridor in between. */
	private static void lookAt(ArchiveSession session, Floor floor) throws Exception {
		Path file = session.open().resolve(floor.getPlanImage());
		assertTrue(Files.size(file) > 0 && file.toString().endsWith(".svg"), file::toString);
		ImageData picture = new ImageData(file.toString());
		double metres = floor.getPlanPlacement().metresPerPixel();
		int row = (int) Math.round((floor.getPlanPlacement().yMetres() - 9.5) / metres);
		RGB wall = pixel(picture, 2, row, floor);
		RGB door = pixel(picture, 4.6, row + 2, floor);
		assertTrue(wall.red < 160, () -> "wall " + wall);
		assertTrue(door.red > 230, () -> "door " + door);
		assertEquals(new RGB(0xf2, 0xf2, 0xf2), pixel(picture, 2, row - 20, floor), "corridor");
	}

	private static RGB pixel(ImageData picture, double xMetres, int row, Floor floor) {
		int column = (int) Math
				.round((xMetres - floor.getPlanPlacement().xMetres()) / floor.getPlanPlacement().metresPerPixel());
		return picture.palette.getRGB(picture.getPixel(column, row));
	}
}
