package org.cairnfield.ui.tests.story;

import java.nio.file.Path;
import java.util.Map;

import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.Status;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
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
	private static final String SHEET = "org.eclipse.ui.cheatsheets.views.CheatSheetView";

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

	private static void run(String command, String parameter, String value) {
		Ui.run(() -> {
			try {
				PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(ParameterizedCommand.generateCommand(
						PlatformUI.getWorkbench().getService(ICommandService.class).getCommand(command), Map.of(parameter, value)), null);
			} catch (CommandException e) {
				throw new AssertionError(command, e);
			}
		});
		Ui.waitUntilIdle();
	}

	@Test
	void showsTheFirstStepsBesideTheWork() throws Exception {
		run("org.eclipse.ui.cheatsheets.openCheatSheet", "cheatSheetId", "org.cairnfield.ui.firstTenMinutes");
		IViewPart sheet = Stage.view(SHEET);
		Ui.waitUntil("its steps are shown", () -> says(Stage.window(), "Apply its remedy") && says(Stage.window(), "See what the winter changed"));
		PictureOnFailure.take("first-ten-minutes");
		Ui.run(() -> sheet.getSite().getPage().hideView(sheet));
	}

	@Test
	void showsWhatWasLogged() {
		IViewPart log = Stage.view(LOG);
		Platform.getLog(HelpStoryTest.class).log(new Status(IStatus.INFO, "org.cairnfield.ui.tests", "a line of the story"));
		Ui.waitUntil("the line is listed", () -> isListed(Stage.window(), "a line of the story"));
		Ui.run(() -> log.getSite().getPage().hideView(log));
	}

	/** Whether any control in sight has this text; those of forms are known by their method only. */
	private static boolean says(Composite in, String text) {
		for (Control child : in.getChildren()) {
			if (child.isVisible() && (text.equals(textOf(child)) || child instanceof Composite below && says(below, text))) {
				return true;
			}
		}
		return false;
	}

	private static Object textOf(Control control) {
		try {
			return control.getClass().getMethod("getText").invoke(control);
		} catch (ReflectiveOperationException e) {
			return null;
		}
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
