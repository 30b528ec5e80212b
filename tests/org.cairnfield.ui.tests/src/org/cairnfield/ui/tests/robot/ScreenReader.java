package org.cairnfield.ui.tests.robot;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.Accessible;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleControlListener;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.browser.Browser;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.DateTime;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Slider;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Asks controls what a screen reader asks them: their name, and of drawings also role and what they show. It asks the
 * accessibility object of each control, where the toolkit notes the label before it as a relation, and otherwise takes what the
 * toolkit itself hands to screen readers: the text of a button, the message of an empty field. It looks at each window that the
 * robot clicks in or that comes up, and fails the story in which something has no name. Applies to every story, as
 * {@link CleanLog} does.
 */
public final class ScreenReader implements AfterEachCallback {

	private static final String ID = "org.cairnfield.id";
	private static final Set<Class<?>> ROLES = Set.of(Button.class, Text.class, Combo.class, Table.class, Tree.class,
			org.eclipse.swt.widgets.List.class, Spinner.class, Scale.class, Slider.class, Link.class, StyledText.class,
			Browser.class, DateTime.class);
	private static final Set<String> FAULTS = new LinkedHashSet<>();

	@Override
	public void afterEach(ExtensionContext context) {
		assertEquals(List.of(), take(), "what a screen reader cannot say");
	}

	/** Faults since the last call, one line each. */
	public static List<String> take() {
		return Ui.ask(() -> {
			List<String> taken = List.copyOf(FAULTS);
			FAULTS.clear();
			return taken;
		});
	}

	/** Asks all that can be seen in a window; on the user interface thread. */
	public static void ask(Shell shell) {
		if (hasAnythingOfOurs(shell)) { // else it is a dialog of the platform
			ask(shell, shell.getText(), new HashMap<>());
		}
	}

	private static void ask(Composite composite, String where, Map<String, Control> names) {
		for (Control child : composite.getChildren()) {
			if (child.isVisible() && !(child instanceof Shell) && !isOfThePlatform(child)) {
				askOne(child, where, names);
				if (child instanceof Composite below) {
					// two views may have a filter each
					boolean isView = composite instanceof CTabFolder;
					ask(below, isView ? where + ", " + tab((CTabFolder) composite) : where,
							isView ? new HashMap<>() : names);
				}
			}
		}
	}

	private static String tab(CTabFolder folder) {
		return folder.getSelection() == null ? "" : folder.getSelection().getText();
	}

	private static void askOne(Control control, String where, Map<String, Control> names) {
		if (control instanceof ToolBar bar) {
			for (ToolItem item : bar.getItems()) {
				if ((item.getStyle() & SWT.SEPARATOR) == 0 && isBlank(item.getText())
						&& isBlank(item.getToolTipText())) {
					fault(where, control, "has an item without a name");
				}
			}
			return;
		}
		boolean drawing = control.getClass() == Canvas.class || isOurs(control) && control instanceof Canvas;
		boolean picture = control instanceof Label label && label.getImage() != null;
		if (!drawing && !picture && !ROLES.contains(control.getClass())) {
			return;
		}
		String name = name(control);
		if (name.isBlank()) {
			fault(where, control, "has no name");
			return;
		}
		if (drawing) {
			if (role(control) != ACC.ROLE_GRAPHIC) {
				fault(where, control, name + " does not say that it is a picture");
			}
			if (description(control).isBlank() && value(control).isBlank()) {
				fault(where, control, name + " does not say what it shows");
			}
		}
		Control other = names.put(control.getClass().getSimpleName() + " " + name, control);
		if (other != null && !(control instanceof Label)) {
			fault(where, control, "has the name of another one: " + name);
		}
	}

	/** A view of others, what the window shows in its status line, and what a dialog of the platform has around our page. */
	private static boolean isOfThePlatform(Control control) {
		String part = String.valueOf(control.getData("modelElement"));
		boolean isFrame = control instanceof Label || control instanceof Tree
				|| control instanceof Text text && (text.getStyle() & SWT.READ_ONLY) != 0;
		return part.matches("(?s).*\\.(Part|ToolControl)Impl@.*") && !part.startsWith("org.cairnfield.")
				|| isFrame && control.getData(ID) == null && control.getShell().getParent() != null;
	}

	private static boolean hasAnythingOfOurs(Composite composite) {
		for (Control child : composite.getChildren()) {
			if (child.getData(ID) != null
					|| child instanceof Composite below && !(child instanceof Shell) && hasAnythingOfOurs(below)) {
				return true;
			}
		}
		return false;
	}

	private static boolean isOurs(Control control) {
		return control.getClass().getName().startsWith("org.cairnfield.");
	}

	private static void fault(String where, Control control, String what) {
		Object id = control.getData(ID);
		FAULTS.add(where + ": " + control.getClass().getSimpleName() + (id == null ? "" : " " + id) + " " + what + " ["
				+ way(control) + "]");
	}

	private static String way(Control control) {
		StringBuilder way = new StringBuilder();
		for (Control at = control; at.getParent() != null && way.length() < 200; at = at.getParent()) {
			way.insert(0, "/" + at.getClass().getName().replaceAll(".*\\.", ""));
		}
		return way.toString();
	}

	/** Empty for none. */
	static String name(Control control) {
		AccessibleEvent event = new AccessibleEvent(control);
		event.childID = ACC.CHILDID_SELF;
		for (Object listener : list(control.getAccessible(), "accessibleListeners")) {
			((AccessibleListener) listener).getName(event);
		}
		if (!isBlank(event.result)) {
			return event.result;
		}
		for (Object relation : list(control.getAccessible(), "relations")) {
			if ((int) value(relation, "type") == ACC.RELATION_LABELLED_BY
					&& ((Accessible) value(relation, "target")).getControl() instanceof Label label
					&& !isBlank(label.getText())) {
				return label.getText().replace("&", "").replaceFirst(":$", "");
			}
		}
		if (control instanceof Button button) {
			return button.getText().replace("&", "");
		} else if (control instanceof Link link) {
			return link.getText();
		} else if (control instanceof Text text && (text.getStyle() & SWT.MULTI) == 0) {
			return text.getMessage();
		}
		return "";
	}

	private static String description(Control control) {
		AccessibleEvent event = new AccessibleEvent(control);
		event.childID = ACC.CHILDID_SELF;
		for (Object listener : list(control.getAccessible(), "accessibleListeners")) {
			((AccessibleListener) listener).getDescription(event);
		}
		return event.result == null ? "" : event.result;
	}

	private static String value(Control control) {
		AccessibleControlEvent event = new AccessibleControlEvent(control);
		for (Object listener : list(control.getAccessible(), "accessibleControlListeners")) {
			((AccessibleControlListener) listener).getValue(event);
		}
		return event.result == null ? "" : event.result;
	}

	private static int role(Control control) {
		AccessibleControlEvent event = new AccessibleControlEvent(control);
		event.childID = ACC.CHILDID_SELF;
		for (Object listener : list(control.getAccessible(), "accessibleControlListeners")) {
			((AccessibleControlListener) listener).getRole(event);
		}
		return event.detail;
	}

	/** The toolkit has no other way to ask but from outside the program. */
	private static List<Object> list(Accessible accessible, String field) {
		return value(accessible, field) instanceof List<?> list ? new ArrayList<>(list) : List.of();
	}

	private static Object value(Object object, String field) {
		try {
			Field found = object.getClass().getDeclaredField(field);
			found.setAccessible(true);
			return found.get(object);
		} catch (ReflectiveOperationException e) {
			throw new AssertionError("the toolkit has changed: " + field, e);
		}
	}

	private static boolean isBlank(String text) {
		return text == null || text.isBlank();
	}
}
