package org.cairnfield.ui.plan.internal.gef;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

import org.cairnfield.ui.plan.internal.geometry.Bounds;
import org.cairnfield.ui.plan.internal.geometry.Camera;
import org.cairnfield.ui.plan.internal.raster.FloorRaster;
import org.cairnfield.ui.work.Soon;
import org.eclipse.draw2d.Graphics;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;

/**
 * The floor as square images at the present scale, made a few at a time between events so that no event waits. Shifting
 * the plan draws the images elsewhere; at another scale the old ones are shown stretched until there are new ones.
 */
final class FloorTiles {

	static final int SIDE = 256;
	private static final long SLICE_NANOS = 8_000_000;
	private static final int AFTER_ZOOM_MILLIS = 40;
	private static final int MOST_TILES = 160;
	private static final PaletteData PALETTE = new PaletteData(0xff0000, 0xff00, 0xff);

	private record Key(long column, long row) {
	}

	private static final class Tile {
		private Image image;
		private boolean stale;
	}

	private final Canvas canvas;
	private final Consumer<Rectangle> repaint;
	private Color background;
	private final Soon drawing = new Soon(0, this::drawSome);
	private final Soon drawingAfterZoom = new Soon(AFTER_ZOOM_MILLIS, this::drawSome);
	private Map<Key, Tile> tiles = new HashMap<>();
	private Map<Key, Tile> behind = new HashMap<>();
	private double behindScale;
	private FloorRaster raster;
	private Camera camera = new Camera(20, 0, 0);
	private int[] pixels = new int[0];
	private byte[] bytes = new byte[0];
	/** Of the display in percent: images are made of its own pixels, points on the canvas are larger at 200. */
	private int zoom = 100;

	/** @param repaint hears what part of the canvas shows something new */
	FloorTiles(Canvas canvas, Color background, Consumer<Rectangle> repaint) {
		this.canvas = canvas;
		this.background = background;
		this.repaint = repaint;
	}

	/** Draws something else from now on; what is shown stays until it is redrawn. */
	void raster(FloorRaster other) {
		raster = other;
		tiles.values().forEach(tile -> tile.stale = true);
		draw();
	}

	/** Draws something else on another background, all that is in sight at once. */
	void wear(Color other, FloorRaster drawn) {
		background = other;
		raster = drawn;
		release(behind);
		release(tiles);
		if (canvas.isVisible()) {
			missing().forEach(this::draw);
		}
		repaint.accept(null);
	}

	/** Forgets all at once: another floor. */
	void clear(FloorRaster other) {
		release(tiles);
		release(behind);
		raster = other;
		draw();
		repaint.accept(null);
	}

	/** Draws again what shows some places, given with their reach in metres. */
	void redraw(List<Bounds> places) {
		double metres = SIDE / camera.pixelsPerMetre();
		tiles.forEach((key, tile) -> {
			Bounds covered = new Bounds(key.column() * metres, -(key.row() + 1) * metres, (key.column() + 1) * metres,
					-key.row() * metres);
			for (int i = 0; i < places.size() && !tile.stale; i++) {
				Bounds place = places.get(i);
				tile.stale = place.right() >= covered.left() && place.left() <= covered.right()
						&& place.top() >= covered.bottom() && place.bottom() <= covered.top();
			}
		});
		draw();
	}

	/** Looks at it from elsewhere. */
	void camera(Camera other) {
		if (other.pixelsPerMetre() != camera.pixelsPerMetre()) {
			if (missing().isEmpty() || behind.isEmpty()) {
				release(behind);
				Map<Key, Tile> empty = behind;
				behind = tiles;
				behindScale = camera.pixelsPerMetre();
				tiles = empty;
			} else {
				release(tiles);
			}
			camera = other;
			drawAfterZoom();
		} else {
			camera = other;
			draw();
		}
		repaint.accept(null);
	}

	/** Whether all that is visible is drawn. */
	boolean isDone() {
		return missing().isEmpty();
	}

	void dispose() {
		release(tiles);
		release(behind);
	}

	private static void release(Map<Key, Tile> some) {
		some.values().forEach(tile -> tile.image.dispose());
		some.clear();
	}

	void paint(Graphics graphics) {
		org.eclipse.draw2d.geometry.Rectangle clip = graphics.getClip(new org.eclipse.draw2d.geometry.Rectangle());
		boolean whole = isCovered();
		if (!isDone()) {
			draw(); // what was out of sight when it should have been drawn
		}
		graphics.setInterpolation(SWT.NONE);
		if (!whole) {
			graphics.setBackgroundColor(background);
			graphics.fillRectangle(clip);
			paintBehind(graphics, clip);
		} else if (!behind.isEmpty()) {
			release(behind);
		}
		int side = SIDE * zoom / 100;
		tiles.forEach((key, tile) -> {
			int left = column(key);
			int top = row(key);
			if (clip.intersects(new org.eclipse.draw2d.geometry.Rectangle(left, top, SIDE, SIDE))) {
				if (zoom == 100) {
					graphics.drawImage(tile.image, left, top);
				} else {
					graphics.drawImage(tile.image, 0, 0, side, side, left, top, SIDE, SIDE);
				}
			}
		});
	}

	private void paintBehind(Graphics graphics, org.eclipse.draw2d.geometry.Rectangle clip) {
		double ratio = camera.pixelsPerMetre() / behindScale;
		double side = SIDE * ratio;
		int pixelSide = SIDE * zoom / 100;
		behind.forEach((key, tile) -> {
			int left = (int) Math.round(camera.originColumn() + key.column() * side);
			int top = (int) Math.round(camera.originRow() + key.row() * side);
			int right = (int) Math.round(camera.originColumn() + (key.column() + 1) * side);
			int bottom = (int) Math.round(camera.originRow() + (key.row() + 1) * side);
			if (right > left && bottom > top
					&& clip.intersects(
							new org.eclipse.draw2d.geometry.Rectangle(left, top, right - left, bottom - top))) {
				graphics.drawImage(tile.image, 0, 0, pixelSide, pixelSide, left, top, right - left, bottom - top);
			}
		});
	}

	private int column(Key key) {
		return (int) (camera.originColumn() + key.column() * SIDE);
	}

	private int row(Key key) {
		return (int) (camera.originRow() + key.row() * SIDE);
	}

	private boolean isCovered() {
		for (Key key : visible()) {
			if (!tiles.containsKey(key)) {
				return false;
			}
		}
		return true;
	}

	private List<Key> visible() {
		Rectangle area = canvas.getClientArea();
		List<Key> keys = new ArrayList<>();
		long lastRow = Math.floorDiv(area.height - 1 - camera.originRow(), SIDE);
		long lastColumn = Math.floorDiv(area.width - 1 - camera.originColumn(), SIDE);
		for (long r = Math.floorDiv(-camera.originRow(), SIDE); r <= lastRow; r++) {
			for (long c = Math.floorDiv(-camera.originColumn(), SIDE); c <= lastColumn; c++) {
				keys.add(new Key(c, r));
			}
		}
		return keys;
	}

	private List<Key> missing() {
		List<Key> keys = visible();
		keys.removeIf(key -> {
			Tile tile = tiles.get(key);
			return tile != null && !tile.stale;
		});
		return keys;
	}

	private void draw() {
		if (raster != null && !drawingAfterZoom.isDue()) {
			drawing.request();
		}
	}

	private void drawAfterZoom() {
		drawing.cancel();
		if (raster != null) {
			drawingAfterZoom.postpone();
		}
	}

	private void drawSome() {
		if (canvas.isDisposed() || !canvas.isVisible()) {
			return;
		}
		if (zoom != canvas.getMonitor().getZoom()) {
			zoom = canvas.getMonitor().getZoom();
			release(tiles);
			release(behind);
		}
		long start = System.nanoTime();
		List<Key> wanted = missing();
		int done = 0;
		for (; done < wanted.size() && System.nanoTime() - start < SLICE_NANOS; done++) {
			Key key = wanted.get(done);
			draw(key);
			repaint.accept(new Rectangle(column(key), row(key), SIDE, SIDE));
		}
		if (done < wanted.size()) {
			draw();
		} else if (tiles.size() > MOST_TILES) {
			forgetHidden();
		}
	}

	private void forgetHidden() {
		List<Key> visible = visible();
		tiles.entrySet().removeIf(entry -> {
			boolean hidden = !visible.contains(entry.getKey());
			if (hidden) {
				entry.getValue().image.dispose();
			}
			return hidden;
		});
	}

	private void draw(Key key) {
		int side = SIDE * zoom / 100;
		Image drawn = new Image(canvas.getDisplay(), data(key, side));
		Tile tile = tiles.computeIfAbsent(key, k -> {
			Tile made = new Tile();
			made.image = new Image(canvas.getDisplay(), side, side);
			return made;
		});
		// into an image of the window system's own, which it copies to the screen many times faster
		GC gc = new GC(tile.image);
		gc.setInterpolation(SWT.NONE);
		gc.drawImage(drawn, 0, 0);
		gc.dispose();
		drawn.dispose();
		tile.stale = false;
	}

	private ImageData data(Key key, int side) {
		double pixelsPerPoint = zoom / 100.0;
		if (pixels.length != side * side) {
			pixels = new int[side * side];
			bytes = new byte[4 * side * side];
		}
		raster.draw(pixels, side, key.column() * side, key.row() * side, camera.pixelsPerMetre() * pixelsPerPoint,
				pixelsPerPoint);
		for (int i = 0; i < pixels.length; i++) {
			bytes[4 * i + 1] = (byte) (pixels[i] >> 16);
			bytes[4 * i + 2] = (byte) (pixels[i] >> 8);
			bytes[4 * i + 3] = (byte) pixels[i];
		}
		return new ImageData(side, side, 32, PALETTE, 4, bytes);
	}
}
