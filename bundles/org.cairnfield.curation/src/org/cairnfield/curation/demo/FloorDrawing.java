package org.cairnfield.curation.demo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import javax.imageio.ImageIO;

import org.cairnfield.core.simulate.Corridor;
import org.cairnfield.core.simulate.Floor;
import org.cairnfield.core.simulate.Wall;
import org.cairnfield.model.values.Placement;

/** Draws the walls of an invented floor as a plan image. */
final class FloorDrawing {

	private static final int PIXELS_PER_METRE = 20;
	private static final double MARGIN_METRES = 1;
	private static final Color CORRIDOR = new Color(0xf2f2f2);
	private static final Color WALL = new Color(0x8a8a8a);

	private FloorDrawing() {
	}

	/** Writes it as PNG and says how it lies on the floor. */
	static Placement write(Floor floor, Path file) throws IOException {
		double width = floor.outline().width() + 2 * MARGIN_METRES;
		double depth = floor.outline().depth() + 2 * MARGIN_METRES;
		BufferedImage image = new BufferedImage((int) Math.ceil(width * PIXELS_PER_METRE),
				(int) Math.ceil(depth * PIXELS_PER_METRE), BufferedImage.TYPE_INT_RGB);
		Graphics2D g = image.createGraphics();
		g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
		g.setColor(Color.WHITE);
		g.fillRect(0, 0, image.getWidth(), image.getHeight());
		g.scale(PIXELS_PER_METRE, -PIXELS_PER_METRE);
		g.translate(MARGIN_METRES, MARGIN_METRES - depth);
		g.setColor(CORRIDOR);
		for (Corridor corridor : floor.corridors()) {
			double half = corridor.widthMetres() / 2;
			boolean alongX = corridor.y1() == corridor.y2();
			g.fill(alongX
					? new Rectangle2D.Double(Math.min(corridor.x1(), corridor.x2()), corridor.y1() - half,
							corridor.length(), 2 * half)
					: new Rectangle2D.Double(corridor.x1() - half, Math.min(corridor.y1(), corridor.y2()), 2 * half,
							corridor.length()));
		}
		g.setColor(WALL);
		for (Wall wall : floor.walls()) {
			// the thicker, the more it takes from a wave
			g.setStroke(new BasicStroke((float) (0.06 + 0.02 * wall.attenuationDb()), BasicStroke.CAP_ROUND,
					BasicStroke.JOIN_ROUND));
			g.draw(new Line2D.Double(wall.x1(), wall.y1(), wall.x2(), wall.y2()));
		}
		g.dispose();
		Files.createDirectories(file.getParent());
		ImageIO.write(image, "png", file.toFile());
		return new Placement(1.0 / PIXELS_PER_METRE, 0, -MARGIN_METRES, depth - MARGIN_METRES);
	}
}
