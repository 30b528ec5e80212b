package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.cairnfield.model.Floor;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** A plan image is placed by points, whose metres are written one after the other. */
@ExtendWith(PictureOnFailure.class)
@Order(12)
class PlanImageStoryTest {

	@Test
	void writesTheMetresOfAPointByKeys() throws Exception {
		Stage.beginWithTheDemo();
		ArchiveSession session = Stage.session();
		Floor floor = Ui.ask(() -> session.archive().getSites().get(0).getFloors().get(0));
		Ui.run(() -> session.select(session.selection().withScope(floor).withSamples(List.of())));
		Stage.view("org.cairnfield.ui.plan.view");
		Ui.later(() -> {
			try {
				PlatformUI.getWorkbench().getService(IHandlerService.class)
						.executeCommand("org.cairnfield.ui.plan.placeImage", null);
			} catch (CommandException e) {
				throw new AssertionError(e);
			}
		});
		Shell dialog = Widgets.shell("Place a plan image");
		Hand.activate(dialog);
		Canvas image = Widgets.byId(Canvas.class, "plan.image");
		Table points = Widgets.byId(Table.class, "plan.controlPoints");
		Ui.waitUntilIdle();
		point(image, 0.4, 0.4);
		Ui.waitUntil("there is a point", () -> points.getItemCount() == 1);
		Hand.type("12");
		Hand.press("Tab");
		Hand.type("7,5");
		Hand.press("Return");
		assertEquals(List.of("12.00", "7.50"), metres(points, 0));
		point(image, 0.6, 0.6);
		Ui.waitUntil("there are two points", () -> points.getItemCount() == 2);
		Hand.type("20");
		Hand.press("Tab");
		Hand.type("3");
		Hand.press("Return");
		PictureOnFailure.take("plan-image-points");
		assertEquals(List.of("20.00", "3.00"), metres(points, 1));
		assertEquals(List.of("12.00", "7.50"), metres(points, 0));
		Hand.press("Escape");
		Ui.waitUntil("the dialog is closed", dialog::isDisposed);
	}

	private static void point(Canvas image, double right, double down) {
		Hand.click(() -> {
			Point size = image.getSize();
			return image.toDisplay((int) (size.x * right), (int) (size.y * down));
		});
	}

	private static List<String> metres(Table points, int row) {
		return Ui.ask(() -> row >= points.getItemCount() ? List.<String>of()
				: List.of(points.getItem(row).getText(2), points.getItem(row).getText(3)));
	}
}
