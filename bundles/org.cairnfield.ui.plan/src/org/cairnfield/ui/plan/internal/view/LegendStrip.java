package org.cairnfield.ui.plan.internal.view;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.ui.charts.Spoken;
import org.cairnfield.ui.charts.colour.Contrast;
import org.cairnfield.ui.charts.scale.ShownNumbers;
import org.cairnfield.ui.plan.PlanLegend;
import org.cairnfield.ui.plan.SampleLook;
import org.cairnfield.ui.plan.SampleLook.Fill;
import org.cairnfield.ui.plan.internal.gef.Colours;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

/** What colours, shapes and marks of the plan mean, in lines below it. */
final class LegendStrip extends Canvas {

	private static final int EDGE = 8;
	private static final int GAP = 18;
	private static final int SYMBOL = 16;
	private static final int RAMP = 160;

	/** A piece that is not broken over lines. */
	private record Piece(int width, Painter painter) {
	}

	private interface Painter {
		void paint(GC gc, int x, int middle);
	}

	private PlanLegend legend = new PlanLegend("", List.of(), null);
	private PlanLegend below;
	private boolean marks;
	private boolean tests;
	private boolean known;

	LegendStrip(Composite parent) {
		super(parent, SWT.DOUBLE_BUFFERED);
		setData("org.cairnfield.id", "plan.legend");
		addPaintListener(event -> flow(event.gc, getClientArea().width, true));
		addListener(SWT.Resize, event -> redraw());
		Spoken.picture(this, () -> Messages.LegendStrip_legendOfThePlan,
				() -> text().isEmpty() ? Messages.LegendStrip_nothingIsColoured : text(), () -> "");
	}

	/**
	 * @param surface       what colours below the samples mean; null for none
	 * @param withMarks     whether there are samples to explain marks of
	 * @param withTests     whether some of them are test samples, to be told from others
	 * @param withKnown     whether places of access points are shown that are known, and are to be told from estimated ones
	 * @return whether another height suits it better
	 */
	boolean show(PlanLegend other, PlanLegend surface, boolean withMarks, boolean withTests, boolean withKnown) {
		tests = withTests;
		known = withKnown;
		legend = other;
		below = surface;
		marks = withMarks;
		redraw();
		return computeSize(getSize().x, SWT.DEFAULT, true).y != getSize().y;
	}

	/** The legend in words. */
	String text() {
		return (below == null || below.title().isEmpty() ? words(legend) : words(legend) + ". " + words(below))
				+ (tests ? Messages.LegendStrip_shapesWithABarTest : "")
				+ (known ? Messages.LegendStrip_squaresWithACrossAccess : "");
	}

	private static String words(PlanLegend of) {
		StringBuilder text = new StringBuilder(of.title());
		if (of.ramp() != null) {
			text.append(Messages.LegendStrip_from).append(ShownNumbers.text(of.ramp().low(), 0))
					.append(Messages.LegendStrip_to)
					.append(ShownNumbers.text(of.ramp().high(), 0, of.ramp().unit()));
		}
		of.entries().forEach(entry -> text.append("; ").append(entry.text()));
		return text.toString();
	}

	@Override
	public Point computeSize(int widthHint, int heightHint, boolean changed) {
		int width = widthHint == SWT.DEFAULT ? Math.max(200, getClientArea().width) : widthHint;
		GC gc = new GC(this);
		int height = flow(gc, width, false);
		gc.dispose();
		return new Point(width, height);
	}

	private int flow(GC gc, int width, boolean paint) {
		int line = Math.max(gc.getFontMetrics().getHeight(), SYMBOL) + 5;
		int x = EDGE;
		int y = 3;
		gc.setAntialias(SWT.ON);
		for (Piece piece : pieces(gc)) {
			if (x > EDGE && x + piece.width() > width - EDGE) {
				x = EDGE;
				y += line;
			}
			if (paint) {
				piece.painter().paint(gc, x, y + line / 2);
			}
			x += piece.width() + GAP;
		}
		return y + line + 3;
	}

	private List<Piece> pieces(GC gc) {
		List<Piece> pieces = new ArrayList<>();
		add(pieces, gc, legend);
		if (below != null) {
			add(pieces, gc, below);
		}
		if (marks) {
			pieces.add(symbol(gc, "finding", this::paintFinding));
			pieces.add(symbol(gc, Messages.LegendStrip_setAside, this::paintSetAside));
		}
		if (tests) {
			pieces.add(symbol(gc, Messages.LegendStrip_testSample, this::paintTest));
		}
		if (known) {
			pieces.add(symbol(gc, Messages.LegendStrip_accessPointEstimated, this::paintEstimated));
			pieces.add(symbol(gc, Messages.LegendStrip_accessPointKnownPlace, this::paintKnown));
		}
		return pieces;
	}

	private void add(List<Piece> pieces, GC gc, PlanLegend of) {
		if (!of.title().isEmpty()) {
			pieces.add(text(gc, of.title() + (of.ramp() != null || !of.entries().isEmpty() ? ":" : "")));
		}
		if (of.ramp() != null) {
			pieces.add(ramp(gc, of.ramp()));
		}
		for (PlanLegend.Entry entry : of.entries()) {
			pieces.add(symbol(gc, entry.text(), (g, x, y) -> paintLook(g, entry.look(), x + SYMBOL / 2, y)));
		}
	}

	private Piece text(GC gc, String text) {
		return new Piece(gc.textExtent(text).x, (g, x, middle) -> {
			g.setForeground(getForeground());
			g.drawText(text, x, middle - g.textExtent(text).y / 2, true);
		});
	}

	private Piece symbol(GC gc, String text, Painter painter) {
		Piece words = text(gc, text);
		return new Piece(SYMBOL + 4 + words.width(), (g, x, middle) -> {
			painter.paint(g, x, middle);
			words.painter().paint(g, x + SYMBOL + 4, middle);
		});
	}

	private Piece ramp(GC gc, PlanLegend.Ramp ramp) {
		Piece low = text(gc, ShownNumbers.text(ramp.low(), 0));
		Piece high = text(gc, ShownNumbers.text(ramp.high(), 0, ramp.unit()));
		return new Piece(low.width() + 6 + RAMP + 6 + high.width(), (g, x, middle) -> {
			low.painter().paint(g, x, middle);
			int left = x + low.width() + 6;
			for (int i = 0; i < RAMP; i++) {
				g.setForeground(Colours.of(ramp.colours()[i * ramp.colours().length / RAMP]));
				g.drawLine(left + i, middle - 5, left + i, middle + 5);
			}
			high.painter().paint(g, left + RAMP + 6, middle);
		});
	}

	private void paintLook(GC gc, SampleLook look, int column, int row) {
		double[] outline = look.marker().outline();
		int[] corners = new int[outline.length];
		for (int i = 0; i < outline.length; i++) {
			corners[i] = (int) Math.round((i % 2 == 0 ? column : row) + 5.5 * outline[i]);
		}
		RGB fill = Colours.of(look.rgb()).getRGB();
		gc.setBackground(new Color(fill));
		gc.setForeground(new Color(Contrast.rim(fill, getBackground().getRGB())));
		if (look.fill() == Fill.SOLID) {
			gc.fillPolygon(corners);
		} else if (look.fill() == Fill.DOTTED) {
			gc.fillOval(column - 2, row - 2, 4, 4);
		}
		gc.drawPolygon(corners);
	}

	private void paintFinding(GC gc, int x, int middle) {
		gc.setForeground(getForeground());
		gc.setBackground(getForeground());
		gc.drawOval(x + 1, middle - 3, 8, 8);
		gc.fillPolygon(new int[] { x + 8, middle - 1, x + 16, middle - 1, x + 12, middle - 8 });
	}

	private void paintEstimated(GC gc, int x, int middle) {
		gc.setForeground(getForeground());
		gc.drawPolygon(new int[] { x + 2, middle - 6, x + 14, middle - 6, x + 8, middle + 6 });
	}

	private void paintKnown(GC gc, int x, int middle) {
		gc.setForeground(getForeground());
		gc.drawRectangle(x + 3, middle - 5, 10, 10);
		gc.drawLine(x + 3, middle - 5, x + 13, middle + 5);
		gc.drawLine(x + 3, middle + 5, x + 13, middle - 5);
	}

	private void paintTest(GC gc, int x, int middle) {
		gc.setBackground(getForeground());
		gc.setAlpha(150);
		gc.fillOval(x + 3, middle - 5, 10, 10);
		gc.setAlpha(255);
		gc.setBackground(getBackground());
		gc.fillRectangle(x + 5, middle - 1, 6, 2);
	}

	private void paintSetAside(GC gc, int x, int middle) {
		gc.setForeground(getForeground());
		gc.setAlpha(90);
		gc.drawOval(x + 3, middle - 5, 10, 10);
		gc.setAlpha(255);
		gc.drawLine(x + 4, middle - 4, x + 12, middle + 4);
		gc.drawLine(x + 4, middle + 4, x + 12, middle - 4);
	}
}
