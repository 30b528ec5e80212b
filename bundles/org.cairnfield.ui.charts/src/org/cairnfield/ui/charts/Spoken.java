package org.cairnfield.ui.charts;

import java.util.function.Supplier;

import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleControlListener;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.widgets.Canvas;

/** Tells assistive technology of a drawing what no toolkit can know of it. */
public final class Spoken {

	private Spoken() {
	}

	/**
	 * Says that a canvas is a picture, and of what.
	 *
	 * @param name        what it is called
	 * @param description what it shows as a whole
	 * @param value       what is pointed out in it; empty for nothing
	 */
	public static void picture(Canvas canvas, Supplier<String> name, Supplier<String> description,
			Supplier<String> value) {
		canvas.getAccessible().addAccessibleListener(names(name, description));
		canvas.getAccessible().addAccessibleControlListener(values(value));
	}

	static AccessibleListener names(Supplier<String> name, Supplier<String> description) {
		return new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = name.get();
			}

			@Override
			public void getDescription(AccessibleEvent event) {
				event.result = description.get();
			}
		};
	}

	static AccessibleControlListener values(Supplier<String> value) {
		return new AccessibleControlAdapter() {
			@Override
			public void getRole(AccessibleControlEvent event) {
				event.detail = ACC.ROLE_GRAPHIC;
			}

			@Override
			public void getValue(AccessibleControlEvent event) {
				event.result = value.get();
			}
		};
	}
}
