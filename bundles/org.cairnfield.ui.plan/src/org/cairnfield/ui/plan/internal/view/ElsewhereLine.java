package org.cairnfield.ui.plan.internal.view;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.cairnfield.model.Floor;
import org.cairnfield.ui.plan.internal.scene.Elsewhere;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Link;

/** A line at the edge of the plan that names what is compared but lies on another floor, and leads there. */
final class ElsewhereLine {

	private final Link link;
	private List<Elsewhere> shown = List.of();

	/** @param go shows a floor */
	ElsewhereLine(Composite parent, Consumer<Floor> go) {
		link = new Link(parent, SWT.WRAP);
		link.setData("org.cairnfield.id", "plan.elsewhere");
		GridData data = new GridData(SWT.FILL, SWT.TOP, true, false);
		data.horizontalIndent = 8;
		data.widthHint = 100;
		data.exclude = true;
		link.setLayoutData(data);
		link.setVisible(false);
		link.addListener(SWT.Selection, event -> go.accept(shown.get(Integer.parseInt(event.text)).floor()));
	}

	void show(List<Elsewhere> now) {
		if (now.equals(shown)) {
			return;
		}
		shown = now;
		link.setText(
				IntStream.range(0, now.size()).mapToObj(ElsewhereLine.this::text).collect(Collectors.joining("   ")));
		((GridData) link.getLayoutData()).exclude = now.isEmpty();
		link.setVisible(!now.isEmpty());
		link.requestLayout();
	}

	private String text(int index) {
		Elsewhere each = shown.get(index);
		String place = each.place().replace("&", "&&");
		return each.words().replace("&", "&&") + ": "
				+ (each.floor() == null ? place : "<a href=\"" + index + "\">show " + place + "</a>");
	}
}
