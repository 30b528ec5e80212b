package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;

import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.views.IViewDescriptor;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every button of every view is pressed once, with the first line of each list selected and a reason given wherever one is
 * asked for. None of it logs an error.
 */
@ExtendWith(PictureOnFailure.class)
@Order(20)
class EveryButtonStoryTest {

	/** A button that makes another one possible. */
	private record Before(String view, String button) {
	}

	private static final Map<String, Before> AFTER = Map.of("review.undo",
			new Before("org.cairnfield.ui.review.queue", "review.pool"),
			"releases.report", new Before("org.cairnfield.ui.release.gates", "gates.ask"));
	/** What is possible only after several steps, which stories of their own take, by mouse. */
	private static final Set<String> GREYED = Set.of("gates.prepare", "gates.discard", "gates.sign",
			"review.audit.approve",
			"split.carry", "split.release", "study.keep",
			"study.save");

	@TempDir
	static Path folder;
	private static EverythingStage stage;

	@BeforeAll
	static void openAnArchive() throws Exception {
		stage = new EverythingStage(folder);
	}

	@AfterAll
	static void goBack() {
		Ui.run(() -> PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage().resetPerspective());
		ReviewStage.goBack();
	}

	@Test
	void pressesEveryButton() {
		Set<String> seen = new TreeSet<>();
		Set<String> pressed = new TreeSet<>();
		for (IViewDescriptor view : PlatformUI.getWorkbench().getViewRegistry().getViews()) {
			if (view.getId().startsWith("org.cairnfield.") && !view.getId().equals(FaultyView.ID)) {
				Stage.show(view.getId());
				for (int tab = 0; tab < tabs(); tab++) {
					press(view, tab, seen, pressed);
				}
			}
		}
		assertTrue(pressed.size() > 30, pressed::toString);
		Set<String> pushed = pushedByCommands();
		assertTrue(pushed.size() > 30, pushed::toString);
		pushed.removeAll(seen);
		assertEquals(Set.of(), pushed, "commands push buttons that no view has");
		seen.removeAll(pressed);
		assertEquals(GREYED, seen);
	}

	private static Set<String> pushedByCommands() {
		Set<String> names = new TreeSet<>();
		for (IConfigurationElement handler : Platform.getExtensionRegistry()
				.getConfigurationElementsFor("org.eclipse.ui.handlers")) {
			String[] parts = String.valueOf(handler.getAttribute("class")).split("[:/]");
			if (parts[0].endsWith(".PushHandler")) {
				names.add(parts[2]);
			}
		}
		return names;
	}

	private static void press(IViewDescriptor view, int tab, Set<String> seen, Set<String> pressed) {
		show(view, tab);
		for (String name : buttons()) {
			seen.add(name);
			if (!pressed.contains(name)) {
				if (AFTER.containsKey(name)) {
					Stage.show(AFTER.get(name).view());
					choose();
					Ui.run(() -> press(AFTER.get(name).button()));
					Ui.waitUntilIdle();
				}
				show(view, tab);
				choose();
				boolean[] did = new boolean[1];
				stage.open("button " + name + " of " + view.getLabel(), () -> did[0] = press(name));
				if (did[0]) {
					pressed.add(name);
					stage.restore();
				}
			}
		}
	}

	private static void show(IViewDescriptor view, int tab) {
		Stage.show(view.getId());
		each(CTabFolder.class, tabs -> {
			if (tabs.getData("org.cairnfield.id") != null && tab < tabs.getItemCount()) {
				tabs.setSelection(tab);
				tabs.notifyListeners(SWT.Selection, new Event());
			}
		});
		Ui.waitUntilIdle();
	}

	/** As many as the view has that has most, at least one. */
	private static int tabs() {
		int[] most = { 1 };
		each(CTabFolder.class, tabs -> most[0] = tabs.getData("org.cairnfield.id") == null ? most[0]
				: Math.max(most[0], tabs.getItemCount()));
		return most[0];
	}

	/** Names of those in sight. */
	private static Set<String> buttons() {
		Set<String> names = new LinkedHashSet<>();
		each(Button.class, button -> names.add(name(button)));
		return names;
	}

	private static String name(Button button) {
		return button.getData("org.cairnfield.id") instanceof String id ? id : button.getText().replace("&", "");
	}

	/** On the user interface thread. @return whether it could be pressed */
	private static boolean press(String name) {
		List<Button> found = new ArrayList<>();
		collect(Stage.window(), false, Button.class, button -> {
			if (name(button).equals(name) && button.isEnabled()) {
				found.add(button);
			}
		});
		if (found.isEmpty()) {
			return false;
		}
		Button button = found.get(0);
		boolean switches = (button.getStyle() & (SWT.CHECK | SWT.TOGGLE)) != 0;
		for (int times = switches ? 2 : 1; times > 0; times--) { // and back
			button.setSelection(switches != button.getSelection());
			button.notifyListeners(SWT.Selection, new Event());
		}
		return true;
	}

	/** Selects the first line of each list that has none, and gives a reason, a note, a name where they are asked for. */
	private static void choose() {
		stage.select();
		each(Table.class, table -> {
			if (table.getItemCount() > 0 && table.getSelectionCount() == 0 && !isScope(table)) {
				table.setSelection(0);
				tell(table, table.getItem(0));
			}
		});
		each(Tree.class, tree -> {
			if (tree.getItemCount() > 0 && tree.getSelectionCount() == 0 && !isScope(tree)) {
				TreeItem first = tree.getItem(0).getExpanded() && tree.getItem(0).getItemCount() > 0
						? tree.getItem(0).getItem(0)
						: tree.getItem(0);
				tree.setSelection(first);
				tell(tree, first);
			}
		});
		each(Text.class, text -> {
			if (text.getEditable()
					&& String.valueOf(text.getData("org.cairnfield.id")).matches(".*\\.(reason|note|name|text)")) {
				text.setText("trial");
			}
		});
		Ui.waitUntilIdle();
	}

	/** Lists in which the archive's own selection is shown. */
	private static boolean isScope(Control list) {
		return Set.of("explorer.tree", "samples.table").contains(String.valueOf(list.getData("org.cairnfield.id")));
	}

	private static void tell(Control list, org.eclipse.swt.widgets.Widget item) {
		Event event = new Event();
		event.item = item;
		list.notifyListeners(SWT.Selection, event);
	}

	/** Controls of views that can be seen. */
	private static <T extends Control> void each(Class<T> role, Consumer<T> use) {
		Ui.run(() -> collect(Stage.window(), false, role, use));
	}

	private static <T extends Control> void collect(Composite composite, boolean inView, Class<T> role,
			Consumer<T> use) {
		for (Control child : composite.getChildren()) {
			if (!child.isDisposed() && child.isVisible()) {
				if (inView && role.isInstance(child)) {
					use.accept(role.cast(child));
				}
				if (child instanceof Composite below) {
					collect(below, inView || child instanceof CTabFolder, role, use);
				}
			}
		}
	}
}
