package org.cairnfield.ui.charts;

import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleControlListener;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.accessibility.AccessibleListener;

/** Tells assistive technology a chart's name, what it shows as a whole, and the item that is chosen. */
final class SpokenChart {

	final AccessibleListener names;
	final AccessibleControlListener values;

	SpokenChart(Chart chart) {
		names = new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = chart.getName();
			}

			@Override
			public void getDescription(AccessibleEvent event) {
				event.result = chart.isEmpty() ? chart.getEmptyText() : chart.summary();
			}
		};
		values = new AccessibleControlAdapter() {
			@Override
			public void getRole(AccessibleControlEvent event) {
				event.detail = ACC.ROLE_GRAPHIC;
			}

			@Override
			public void getValue(AccessibleControlEvent event) {
				event.result = chart.spokenValue();
			}
		};
	}
}
