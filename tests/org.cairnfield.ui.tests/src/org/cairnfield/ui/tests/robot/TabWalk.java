package org.cairnfield.ui.tests.robot;

import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;

/** Goes through a window by the tab key alone. */
public final class TabWalk {

	private static final Set<Class<?>> ROLES = Set.of(Button.class, Text.class, Combo.class, Table.class, Tree.class,
			Spinner.class, Scale.class,
			Link.class, StyledText.class);
	/** No window has as many controls. */
	private static final int MOST_STEPS = 400;

	private TabWalk() {
	}

	/** Controls of a view that the tab key does not lead to, or not away from; on the user interface thread. The focus is where it was. */
	public static List<String> unreached(Shell window, String view) {
		Set<Control> wanted = new HashSet<>();
		Composite part = part(window, view);
		if (part == null) {
			return List.of(view + " is not to be seen");
		}
		collect(part, wanted);
		List<String> unreached = new ArrayList<>();
		if (wanted.isEmpty()) {
			return unreached;
		}
		Control before = Display.getCurrent().getFocusControl();
		wanted.iterator().next().forceFocus();
		Set<Control> seen = new HashSet<>();
		for (int steps = 0; steps < MOST_STEPS && !seen.containsAll(wanted); steps++) {
			Control focus = Display.getCurrent().getFocusControl();
			if (focus == null || focus.isDisposed()) {
				break;
			}
			if (seen.add(focus) && !letsGo(focus)) {
				unreached.add(focus + " " + focus.getData("org.cairnfield.id") + " keeps the tab key to itself");
			}
			focus.traverse(SWT.TRAVERSE_TAB_NEXT);
		}
		if (before != null && !before.isDisposed()) {
			before.forceFocus();
		}
		wanted.stream().filter(control -> !control.isDisposed() && control.isVisible() && !seen.contains(control))
				.forEach(control -> unreached
						.add(control + " " + control.getData("org.cairnfield.id") + " is not reached"));
		return unreached;
	}

	/** What the platform has made for a view; null for none. */
	private static Composite part(Composite composite, String view) {
		if (String.valueOf(composite.getData("modelElement"))
				.matches("(?s)" + Pattern.quote(view) + "=\\S*PartImpl@.*")) {
			return composite;
		}
		for (Control child : composite.getChildren()) {
			Composite found = child instanceof Composite below && child.isVisible() ? part(below, view) : null;
			if (found != null) {
				return found;
			}
		}
		return null;
	}

	private static void collect(Composite composite, Set<Control> wanted) {
		for (Control child : composite.getChildren()) {
			boolean hasRoom = child.getSize().x > 0 && child.getSize().y > 0; // else a low view or a sash leaves it out
			if (hasRoom && child.isVisible() && child.isEnabled()) {
				boolean hearsKeys = child instanceof Canvas && child.getListeners(SWT.KeyDown).length > 0;
				boolean isChoiceOfSeveral = child instanceof Button && (child.getStyle() & SWT.RADIO) != 0; // arrows lead on from the one chosen
				if ((hearsKeys || ROLES.contains(child.getClass())) && !isChoiceOfSeveral) {
					wanted.add(child);
				}
				if (child instanceof Composite below) {
					collect(below, wanted);
				}
			}
		}
	}

	/** What the toolkit asks a control before it lets the tab key lead on. */
	private static boolean letsGo(Control control) {
		Event event = new Event();
		event.detail = SWT.TRAVERSE_TAB_NEXT;
		event.doit = (traversalCode(control) & SWT.TRAVERSE_TAB_NEXT) != 0;
		control.notifyListeners(SWT.Traverse, event);
		return event.doit;
	}

	private static int traversalCode(Control control) {
		for (Class<?> type = control.getClass(); type != null; type = type.getSuperclass()) {
			for (Method method : type.getDeclaredMethods()) {
				if (method.getName().equals("traversalCode")) {
					try {
						method.setAccessible(true);
						return (int) method.invoke(control, 0, 0L);
					} catch (ReflectiveOperationException e) {
						throw new AssertionError(e);
					}
				}
			}
		}
		throw new AssertionError("the toolkit has changed");
	}
}
