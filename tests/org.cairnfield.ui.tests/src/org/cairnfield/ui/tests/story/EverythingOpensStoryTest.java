package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

import org.cairnfield.ui.tests.robot.Menus;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.ScreenReader;
import org.cairnfield.ui.tests.robot.TabWalk;
import org.cairnfield.ui.tests.robot.Ui;
import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.preference.IPreferenceNode;
import org.eclipse.jface.preference.PreferenceManager;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.views.IViewDescriptor;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every perspective, view, menu entry, command of a view, dialog behind them and preference page that the registries of
 * the workbench know is opened once, on an archive with a release and a split under review, with a selection and a change
 * that make it possible. None of it logs an error, and nothing stays greyed out.
 */
@ExtendWith(PictureOnFailure.class)
@Order(20)
class EverythingOpensStoryTest {

	private static final String OURS = "org.cairnfield.";
	/** Part of the platform for an introduction, which the product has not; no list of views offers it. */
	private static final String INTRODUCTION = "org.eclipse.ui.internal.introview";
	/** They push buttons, each of which {@link EveryButtonStoryTest} presses. */
	private static final Set<String> PUSHING = Set.of("Curate", "Release");
	/** It ends the workbench, which the stories of leaving do. */
	private static final Set<String> ENDS = Set.of("Exit", "Quit");

	@TempDir
	static Path folder;
	private static EverythingStage stage;
	private static List<String> loggedBefore;

	@BeforeAll
	static void openAnArchiveUnderReview() throws Exception {
		loggedBefore = logged();
		stage = new EverythingStage(folder);
	}

	@AfterAll
	static void goBack() {
		Ui.run(() -> PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage().resetPerspective());
		ReviewStage.goBack();
	}

	@BeforeEach
	void begin() {
		stage.select();
	}

	/** What an entry has changed is taken back, and the archive is on show again. */
	@AfterEach
	void takeBack() {
		stage.restore();
	}

	private static IWorkbenchPage page() {
		return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
	}

	@Test
	void opensEveryPerspective() {
		Set<String> opened = new TreeSet<>();
		for (IPerspectiveDescriptor each : PlatformUI.getWorkbench().getPerspectiveRegistry().getPerspectives()) {
			stage.open("perspective " + each.getId(), () -> {
				page().setPerspective(each);
				page().resetPerspective();
			});
			opened.add(each.getLabel());
		}
		assertTrue(opened.containsAll(Set.of("Curate", "Review", "Release")), opened::toString);
		Stage.perspective("org.cairnfield.ui.curate");
	}

	@Test
	void opensEveryView() {
		Set<String> opened = new TreeSet<>();
		List<String> unreached = new ArrayList<>();
		for (IViewDescriptor each : views(id -> !id.equals(FaultyView.ID) && !id.equals(INTRODUCTION))) {
			stage.open("view " + each.getId(), () -> show(each.getId()));
			opened.add(each.getLabel());
			if (each.getId().startsWith(OURS)) {
				unreached.addAll(Ui.ask(() -> TabWalk.unreached(Stage.window(), each.getId())));
			}
			if (!each.getId().startsWith(OURS)) {
				Ui.run(() -> page().hideView(page().findView(each.getId())));
			}
		}
		assertTrue(opened.size() >= 19, opened::toString);
		assertEquals(List.of(), unreached);
	}

	/** What opens everything would notice if something did not. */
	@Test
	void findsAViewThatDoesNotOpen() {
		AssertionError found = null;
		try {
			stage.open("view " + FaultyView.ID, () -> show(FaultyView.ID));
		} catch (AssertionError e) {
			found = e;
		}
		Ui.run(() -> page().hideView(page().findView(FaultyView.ID)));
		ScreenReader.take(); // what the platform shows in its place
		assertTrue(found != null && found.getMessage().contains("planted"), String.valueOf(found));
	}

	private static List<IViewDescriptor> views(Predicate<String> wanted) {
		return Arrays.stream(PlatformUI.getWorkbench().getViewRegistry().getViews())
				.filter(view -> wanted.test(view.getId())).toList();
	}

	private static IViewPart show(String id) {
		try {
			return page().showView(id);
		} catch (PartInitException e) {
			throw new AssertionError(id, e);
		}
	}

	@Test
	void choosesEveryEntryOfTheMenuBar() {
		Set<String> all = new TreeSet<>();
		Set<String> chosen = new TreeSet<>();
		Set<String> came = new TreeSet<>();
		for (String perspective : List.of("org.cairnfield.ui.curate", "org.cairnfield.ui.timeline.perspective",
				"org.cairnfield.ui.review.perspective", "org.cairnfield.ui.release.perspective",
				"org.cairnfield.ui.release.study.perspective")) {
			Stage.perspective(perspective);
			Menu bar = Ui.ask(() -> Stage.window().getMenuBar());
			for (List<String> entry : Menus.entries(bar)) {
				String last = entry.get(entry.size() - 1);
				if (!ENDS.contains(last) && !PUSHING.contains(entry.get(0)) && !chosen.contains(entry.toString())) {
					all.add(entry.toString());
					Stage.perspective(perspective);
					stage.makePossible(last);
					boolean[] did = new boolean[1];
					List<String> windows = stage.open("entry " + entry,
							() -> did[0] = Menus.choose(Stage.window().getMenuBar(), entry));
					if (did[0]) {
						chosen.add(entry.toString());
						came.addAll(windows);
					}
					stage.restore();
				}
			}
		}
		assertTrue(chosen.size() >= 25, chosen::toString);
		all.removeAll(chosen);
		assertEquals(Set.of(), all, "greyed out");
		for (String title : List.of("About", "Preferences", "Show View", "Take in survey files", "Place on Earth")) {
			assertTrue(came.stream().anyMatch(words -> words.startsWith(title)), () -> "no " + title + " in " + came);
		}
	}

	@Test
	void choosesEveryEntryOfTheContextMenus() {
		Set<String> all = new TreeSet<>();
		Set<String> chosen = new TreeSet<>();
		Set<Control> known = new HashSet<>();
		Set<String> general = new HashSet<>();
		for (IViewDescriptor each : views(id -> id.startsWith(OURS) && !id.equals(FaultyView.ID))) {
			Stage.show(each.getId());
			for (Control control : withMenu()) {
				for (List<String> entry : known.add(control) ? Menus.entries(Ui.ask(control::getMenu))
						: List.<List<String>>of()) {
					if (isGeneral(entry) && general.contains(entry.get(0))) {
						continue;
					}
					all.add(entry.toString());
					Stage.show(each.getId());
					stage.makePossible(entry.get(entry.size() - 1));
					stage.open("entry " + entry + " at " + each.getLabel(), () -> {
						if (!control.isDisposed() && Menus.choose(control.getMenu(), entry)) {
							chosen.add(entry.toString());
							general.add(entry.get(0));
						}
					});
					stage.restore();
				}
			}
		}
		assertTrue(chosen.size() >= 8, chosen::toString);
		all.removeAll(chosen);
		assertEquals(Set.of(), all, "greyed out");
	}

	/** What does the same at every table, whatever is in it: one is enough. */
	private static boolean isGeneral(List<String> entry) {
		return entry.get(0).equals("Columns") || entry.get(0).startsWith("Save the table");
	}

	/** Controls of views that have a menu of their own; the menus of the frame, which hide it, are those of the platform. */
	private static List<Control> withMenu() {
		List<Control> found = new ArrayList<>();
		Ui.run(() -> collect(Stage.window(), false, found));
		return found;
	}

	private static void collect(Composite composite, boolean inView, List<Control> found) {
		for (Control child : composite.getChildren()) {
			if (inView && child.isVisible() && child.getMenu() != null && child.getMenu() != composite.getMenu()) {
				found.add(child);
			}
			if (child instanceof Composite below) {
				collect(below, inView || child instanceof CTabFolder, found);
			}
		}
	}

	/** Those on toolbars and menus of views, which are drawn by the platform only when they are wanted. */
	@Test
	void runsEveryCommandThatAViewOffers() throws Exception {
		int run = 0;
		Set<String> greyed = new TreeSet<>();
		for (IConfigurationElement contribution : Platform.getExtensionRegistry()
				.getConfigurationElementsFor("org.eclipse.ui.menus")) {
			String[] location = String.valueOf(contribution.getAttribute("locationURI")).split("[:?]");
			if (contribution.getContributor().getName().startsWith(OURS) && location.length > 1
					&& !location[1].startsWith("org.eclipse")
					&& PlatformUI.getWorkbench().getViewRegistry().find(location[1]) != null) {
				for (IConfigurationElement element : contribution.getChildren("command")) {
					Stage.show(location[1]);
					ParameterizedCommand command = command(element);
					stage.makePossible(String.valueOf(element.getAttribute("label")));
					if (Ui.ask(() -> command.getCommand().isEnabled())) {
						stage.open("command " + command.getId() + " of " + location[1], () -> execute(command));
						run++;
					} else {
						greyed.add(location[1] + " " + command.getId());
					}
					stage.restore();
				}
			}
		}
		assertTrue(run >= 12, "commands run: " + run);
		assertEquals(Set.of(), greyed, "greyed out");
	}

	private static ParameterizedCommand command(IConfigurationElement element) {
		Command command = PlatformUI.getWorkbench().getService(ICommandService.class)
				.getCommand(element.getAttribute("commandId"));
		Map<String, String> parameters = new HashMap<>();
		for (IConfigurationElement each : element.getChildren("parameter")) {
			parameters.put(each.getAttribute("name"), each.getAttribute("value"));
		}
		return Ui.ask(() -> ParameterizedCommand.generateCommand(command, parameters));
	}

	private static void execute(ParameterizedCommand command) {
		try {
			PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(command, null);
		} catch (CommandException e) {
			throw new AssertionError(command.getId(), e);
		}
	}

	@Test
	void opensEveryPreferencePage() {
		Set<String> titles = new TreeSet<>();
		Shell window = Stage.window();
		for (Object each : PlatformUI.getWorkbench().getPreferenceManager().getElements(PreferenceManager.PRE_ORDER)) {
			IPreferenceNode node = (IPreferenceNode) each;
			List<String> seen = stage.open("page " + node.getId(),
					() -> PreferencesUtil.createPreferenceDialogOn(window, node.getId(), null, null).open());
			assertTrue(seen.stream().anyMatch(words -> words.startsWith("Preferences")),
					() -> node.getId() + " shows " + seen);
			titles.add(node.getLabelText());
		}
		assertTrue(titles.containsAll(Set.of("Person", "Review")), titles::toString);
	}

	/** The log of the workbench has the whole session in it, its start too. */
	@Test
	void cameHereWithoutAnError() {
		assertEquals(List.of(), loggedBefore);
	}

	private static List<String> logged() throws IOException {
		Path log = Platform.getLogFileLocation().toPath();
		return !Files.exists(log) ? List.of()
				: Files.readAllLines(log).stream().filter(line -> line.matches("!ENTRY \\S+ 4 .*")).toList();
	}
}
