package org.cairnfield.ui.plan.internal.gef;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.ui.plan.internal.raster.FloorRaster;
import org.cairnfield.ui.plan.internal.scene.PlanScene;
import org.cairnfield.ui.plan.internal.scene.SampleLabel;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.graphics.Font;

/** Where the words at samples go: next to each, on the first side where they cover neither another word nor a labelled sample. */
final class SampleLabels {

	/** From the middle of a sample to the edge of the frame around it, beyond its radius. */
	private static final int FRAME = 8;

	/** A word and what it covers. */
	record Placed(String text, Rectangle area) {
	}

	private SampleLabels() {
	}

	static List<Placed> place(PlanCanvas plan, Font font) {
		PlanScene scene = plan.scene();
		int reach = (int) Math.ceil(1.2 * FloorRaster.radiusPoints(plan.camera().pixelsPerMetre())) + FRAME;
		List<Rectangle> taken = new ArrayList<>();
		for (SampleLabel label : scene.labels()) {
			taken.add(around(plan, label, reach));
		}
		List<Placed> placed = new ArrayList<>();
		for (SampleLabel label : scene.labels()) {
			List<Rectangle> sides = sides(around(plan, label, reach),
					FigureUtilities.getTextExtents(label.text(), font));
			Rectangle free = sides.stream().filter(side -> taken.stream().noneMatch(side::intersects)).findFirst()
					.orElse(sides.get(0));
			taken.add(free);
			placed.add(new Placed(label.text(), free));
		}
		return placed;
	}

	private static Rectangle around(PlanCanvas plan, SampleLabel label, int reach) {
		int column = (int) Math.round(plan.camera().column(label.xMetres()));
		int row = (int) Math.round(plan.camera().row(label.yMetres()));
		return new Rectangle(column - reach, row - reach, 2 * reach, 2 * reach);
	}

	/** Right, left, below, above. */
	private static List<Rectangle> sides(Rectangle frame, Dimension size) {
		int middleColumn = frame.x + (frame.width - size.width) / 2;
		int middleRow = frame.y + (frame.height - size.height) / 2;
		return List.of(new Rectangle(frame.right() + 3, middleRow, size.width, size.height),
				new Rectangle(frame.x - 3 - size.width, middleRow, size.width, size.height),
				new Rectangle(middleColumn, frame.bottom() + 3, size.width, size.height),
				new Rectangle(middleColumn, frame.y - 3 - size.height, size.width, size.height));
	}
}
