package org.cairnfield.ui.plan.internal.image;

import java.util.function.BiConsumer;
import java.util.stream.Collectors;

import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.model.values.Outline;
import org.cairnfield.model.values.Placement;
import org.cairnfield.ui.charts.Spoken;
import org.cairnfield.ui.charts.colour.Palette;
import org.cairnfield.ui.charts.scale.ShownNumbers;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

/** The image with the control points on it, and over it the floor as it would lie. Wheel zooms, a drag shifts, a click sets a point. */
final class ImageBoard extends Canvas {

	private static final double STEP = 1.2;
	private static final int CLICK = 4;
	private static final int ARM = 8;
	private static final int MOST_DOTS = 2000;
	private static final String EMPTY = Messages.ImageBoard_chooseAnImageFileOf;

	private final ControlPoints points;
	private final Outline outline;
	private final SampleRows samples;
	private final BiConsumer<Double, Double> clicked;
	private Image image;
	private double scale = 1;
	private double left;
	private double top;
	private boolean fitted = true;
	private Point pressed;
	private Point last;
	private ControlPoints.Entry chosen;

	/** @param clicked hears column and row */
	ImageBoard(Composite parent, ControlPoints points, Outline outline, SampleRows samples,
			BiConsumer<Double, Double> clicked) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.BORDER);
		this.points = points;
		this.outline = outline;
		this.samples = samples;
		this.clicked = clicked;
		setData("org.cairnfield.id", "plan.image");
		setBackground(getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
		Spoken.picture(this, () -> Messages.ImageBoard_planImage, this::content,
				() -> chosen == null ? "" : words(chosen));
		setCursor(getDisplay().getSystemCursor(SWT.CURSOR_CROSS));
		addListener(SWT.Paint, event -> paint(event.gc));
		addListener(SWT.Resize, event -> {
			if (fitted) {
				fit();
			}
		});
		addListener(SWT.MouseDown, event -> {
			pressed = new Point(event.x, event.y);
			last = pressed;
		});
		addListener(SWT.MouseMove, this::drag);
		addListener(SWT.MouseUp, this::release);
		addListener(SWT.MouseWheel, event -> zoom(event.count > 0 ? STEP : 1 / STEP, event.x, event.y));
		addListener(SWT.Dispose, event -> show((Image) null));
	}

	/** Shows an image, which is disposed with this; null for none. */
	void show(Image other) {
		if (image != null) {
			image.dispose();
		}
		image = other;
		if (!isDisposed()) {
			fit();
		}
	}

	/** Marks a point. */
	void choose(ControlPoints.Entry entry) {
		chosen = entry;
		redraw();
	}

	private String content() {
		return image == null ? EMPTY
				: points.entries().isEmpty() ? Messages.ImageBoard_noPointIsMarked
						: points.entries().stream().map(this::words).collect(Collectors.joining("; "));
	}

	private String words(ControlPoints.Entry entry) {
		return NLS.bind(Messages.ImageBoard_pointAtColumnRow, new Object[] { points.entries().indexOf(entry) + 1,
				ShownNumbers.text(entry.column(), 1), ShownNumbers.text(entry.row(), 1) });
	}

	private void fit() {
		Rectangle area = getClientArea();
		if (image != null && area.width > 0 && area.height > 0) {
			Rectangle size = image.getBounds();
			scale = Math.min((double) area.width / size.width, (double) area.height / size.height);
			left = (area.width - size.width * scale) / 2;
			top = (area.height - size.height * scale) / 2;
			fitted = true;
		}
		redraw();
	}

	private void zoom(double factor, int column, int row) {
		left = column - (column - left) * factor;
		top = row - (row - top) * factor;
		scale *= factor;
		fitted = false;
		redraw();
	}

	private void drag(Event event) {
		if (pressed != null && (Math.hypot(event.x - pressed.x, event.y - pressed.y) > CLICK || last != pressed)) {
			left += event.x - last.x;
			top += event.y - last.y;
			last = new Point(event.x, event.y);
			fitted = false;
			redraw();
		}
	}

	private void release(Event event) {
		drag(event);
		boolean click = pressed != null && last == pressed && event.button == 1;
		pressed = null;
		if (click && image != null) {
			double column = (event.x - left) / scale;
			double row = (event.y - top) / scale;
			if (column >= 0 && row >= 0 && column <= image.getBounds().width && row <= image.getBounds().height) {
				clicked.accept(Math.rint(column * 10) / 10, Math.rint(row * 10) / 10);
			}
		}
	}

	private void paint(GC gc) {
		if (image == null) {
			Point size = gc.textExtent(EMPTY);
			gc.drawText(EMPTY, (getClientArea().width - size.x) / 2, (getClientArea().height - size.y) / 2, true);
			return;
		}
		Rectangle size = image.getBounds();
		gc.setAntialias(SWT.ON);
		gc.setInterpolation(SWT.HIGH);
		gc.drawImage(image, 0, 0, size.width, size.height, (int) Math.round(left), (int) Math.round(top),
				(int) Math.round(size.width * scale), (int) Math.round(size.height * scale));
		points.placement().ifPresent(placement -> paintFloor(gc, placement));
		for (int i = 0; i < points.entries().size(); i++) {
			paintPoint(gc, points.entries().get(i), i + 1);
		}
	}

	private void paintFloor(GC gc, Placement placement) {
		Color accent = new Color(Palette.PAPER.accent(getDisplay().getSystemColor(SWT.COLOR_LIST_SELECTION).getRGB())); // images are mostly white
		gc.setForeground(accent);
		gc.setBackground(accent);
		gc.setLineWidth(2);
		if (outline != null && outline.size() > 1) {
			int[] corners = new int[2 * outline.size()];
			for (int i = 0; i < outline.size(); i++) {
				Point at = at(placement, outline.xMetres(i), outline.yMetres(i));
				corners[2 * i] = at.x;
				corners[2 * i + 1] = at.y;
			}
			gc.drawPolygon(corners);
		}
		int step = 1 + samples.size() / MOST_DOTS;
		for (int i = 0; i < samples.size(); i += step) {
			Point at = at(placement, samples.table(i).xMetres(samples.row(i)),
					samples.table(i).yMetres(samples.row(i)));
			gc.fillOval(at.x - 2, at.y - 2, 4, 4);
		}
	}

	private Point at(Placement placement, double xMetres, double yMetres) {
		double turn = Math.toRadians(placement.turnDegrees());
		double dx = (xMetres - placement.xMetres()) / placement.metresPerPixel();
		double dy = (yMetres - placement.yMetres()) / placement.metresPerPixel();
		double column = Math.cos(turn) * dx + Math.sin(turn) * dy;
		double row = Math.sin(turn) * dx - Math.cos(turn) * dy;
		return new Point((int) Math.round(left + column * scale), (int) Math.round(top + row * scale));
	}

	private void paintPoint(GC gc, ControlPoints.Entry entry, int number) {
		int column = (int) Math.round(left + entry.column() * scale);
		int row = (int) Math.round(top + entry.row() * scale);
		for (int pass = 0; pass < 2; pass++) { // a light line below a dark one is seen on any image
			gc.setForeground(getDisplay().getSystemColor(pass == 0 ? SWT.COLOR_WHITE : SWT.COLOR_BLACK));
			gc.setLineWidth(pass == 0 ? 4 : entry == chosen ? 2 : 1);
			gc.drawLine(column - ARM, row, column + ARM, row);
			gc.drawLine(column, row - ARM, column, row + ARM);
			if (entry == chosen) {
				gc.drawOval(column - ARM, row - ARM, 2 * ARM, 2 * ARM);
			}
		}
		gc.setForeground(getDisplay().getSystemColor(SWT.COLOR_BLACK));
		gc.setBackground(getDisplay().getSystemColor(SWT.COLOR_WHITE));
		gc.drawText(" " + number + " ", column + ARM - 2, row + 2);
	}
}
