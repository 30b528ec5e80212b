package org.cairnfield.ui.tests.story;

import java.nio.file.Path;

import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.Status;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IViewPart;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Somebody new is taken by the hand; somebody in trouble reads what was logged. */
@ExtendWith(PictureOnFailure.class)
@Order(14)
class HelpStoryTest {

	private static final String LOG = "org.eclipse.pde.runtime.LogView";

	@TempDir
	static Path folder;

	@BeforeAll
	static void openAnArchive() throws Exception {
		Stage.open(Demo.copy(folder.resolve("help")));
		Stage.perspective("org.cairnfield.ui.curate");
	}

	@AfterAll
	static void goBack() {
		ReviewStage.goBack();
	}

	@Test
	void showsTheFirstStepsBesideTheWork() throws Exception {
		IViewPart steps = Stage.view("org.cairnfield.ui.firstSteps");
		PictureOnFailure.take("first-steps");
		for (int step : new int[] { 2, 6 }) { // findings and plan come up; the others are the commands of buttons and menus
			Stage.view("org.cairnfield.ui.firstSteps");
			Hand.activate(Stage.window());
			Link link = Widgets.byId(Link.class, "steps." + step);
			Ui.run(() -> ((ScrolledComposite) link.getParent().getParent()).showControl(link));
			Hand.click(() -> link.toDisplay(8, link.getSize().y / 2));
			String shown = step == 2 ? "org.cairnfield.ui.findings" : "org.cairnfield.ui.plan.view";
			Ui.waitUntil(shown + " has the focus",
					() -> shown.equals(steps.getSite().getPage().getActivePart().getSite().getId()));
		}
		Ui.run(() -> steps.getSite().getPage().hideView(steps));
	}

	@Test
	void showsWhatWasLogged() {
		IViewPart log = Stage.view(LOG);
		Platform.getLog(HelpStoryTest.class)
				.log(new Status(IStatus.INFO, "org.cairnfield.ui.tests", "a line of the story"));
		Ui.waitUntil("the line is listed", () -> isListed(Stage.window(), "a line of the story"));
		Ui.run(() -> log.getSite().getPage().hideView(log));
	}

	private static boolean isListed(Composite in, String text) {
		for (Control child : in.getChildren()) {
			if (child instanceof Tree tree && tree.getItemCount() > 0 && tree.getItem(0).getText(0).equals(text)
					|| child instanceof Composite below && isListed(below, text)) {
				return true;
			}
		}
		return false;
	}
}
