package org.cairnfield.report.internal.picture;

import java.awt.Color;
import java.awt.Paint;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.cairnfield.core.text.Words;
import org.cairnfield.report.internal.picture.ClusterSizes.Size;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.category.DefaultCategoryDataset;

/**
 * Bars of cluster sizes before and after reassignment. The largest clusters have a panel of their own;
 * totals, among them the clusters not shown and noise, have another, because on one scale hundreds of
 * small clusters together would dwarf every single one.
 */
final class ClusterSizesPicture {

	private static final int ROW = 27;
	private static final int AXIS = 46;
	private static final int KEY = 26;
	private static final int LABELS = 132;
	private static final int PANEL_TITLE = 24;

	private final ClusterSizes sizes;
	private final int shown;

	ClusterSizesPicture(ClusterSizes sizes, int most) {
		if (most < 1) {
			throw new IllegalArgumentException("at least one cluster must be shown, was " + most);
		}
		this.sizes = sizes;
		// One left over is as well shown as gathered.
		int all = sizes.clusters().size();
		this.shown = all <= most + 1 ? all : most;
	}

	String svg(String source) {
		List<Size> single = sizes.clusters().subList(0, shown);
		List<Size> totals = totals();
		int body = KEY + (single.isEmpty() ? 0 : PANEL_TITLE + panelHeight(single)) + PANEL_TITLE + panelHeight(totals);
		Page page = new Page(body, Messages.ClusterSizesPicture_clusterSizesBeforeAndAfter, source);
		drawKey(page);
		if (!single.isEmpty()) {
			drawPanel(page,
					shown < sizes.clusters().size()
							? Words.bind(Messages.ClusterSizesPicture_theLargestClusters, shown)
							: Messages.ClusterSizesPicture_clusters,
					single);
		}
		drawPanel(page, Messages.ClusterSizesPicture_allSamples, totals);
		return page.svg(description(totals));
	}

	private List<Size> totals() {
		int all = sizes.clusters().size();
		List<Size> totals = new ArrayList<>();
		if (shown < all) {
			totals.add(sizes.together(Words.bind(Messages.ClusterSizesPicture_these, shown), 0, shown));
			totals.add(sizes.together(
					Words.bind(Messages.ClusterSizesPicture_others, PictureLook.count(all - shown)), shown, all));
		} else if (all > 0) {
			totals.add(sizes.together(Messages.ClusterSizesPicture_inClusters, 0, all));
		}
		totals.add(sizes.noise());
		return totals;
	}

	private static int panelHeight(List<Size> rows) {
		return rows.size() * ROW + AXIS;
	}

	/** What hollow and solid mean. */
	private static void drawKey(Page page) {
		double x = Page.MARGIN + LABELS;
		String[] names = { "before", "after" };
		for (int i = 0; i < names.length; i++) {
			Rectangle2D box = new Rectangle2D.Double(x, page.y() + 2, 22, 9);
			page.graphics().setPaint(fill(i));
			page.graphics().fill(box);
			page.graphics().setPaint(outline(i));
			page.graphics().setStroke(PictureLook.HAIRLINE);
			page.graphics().draw(box);
			page.text(names[i], x + 29, page.y() + 11, PictureLook.TEXT, PictureLook.INK);
			x += 100;
		}
		page.skip(KEY);
	}

	private static void drawPanel(Page page, String title, List<Size> rows) {
		page.text(title, Page.MARGIN, page.y() + 15, PictureLook.STRONG, PictureLook.INK);
		page.skip(PANEL_TITLE);
		CategoryPlot plot = plot(rows);
		Rectangle2D area = page.chart(plot, panelHeight(rows));
		for (int i = 0; i < rows.size(); i++) {
			Size row = rows.get(i);
			double middle = plot.getDomainAxis().getCategoryMiddle(i, rows.size(), area, RectangleEdge.LEFT);
			double end = plot.getRangeAxis().valueToJava2D(Math.max(row.before(), row.after()), area,
					RectangleEdge.BOTTOM);
			page.textOnWhite(figures(row), end + 8, middle + 4.5, PictureLook.SMALL);
		}
	}

	private static CategoryPlot plot(List<Size> rows) {
		DefaultCategoryDataset data = new DefaultCategoryDataset();
		int largest = 1;
		for (Size row : rows) {
			data.addValue(bar(row.before()), "before", row.name());
			data.addValue(bar(row.after()), "after", row.name());
			largest = Math.max(largest, Math.max(row.before(), row.after()));
		}
		CategoryAxis names = new CategoryAxis();
		Axes.quieten(names);
		names.setTickLabelFont(PictureLook.TEXT);
		// Half the gap between rows, at either end.
		names.setLowerMargin(0.13 / rows.size());
		names.setUpperMargin(0.13 / rows.size());
		names.setCategoryMargin(0.26);
		// Room for the figures beside the longest bar.
		NumberAxis counts = Axes.counts("samples", 1.2 * largest);
		CategoryPlot plot = new CategoryPlot(data, names, counts, bars());
		plot.setOrientation(PlotOrientation.HORIZONTAL);
		plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
		Axes.quieten(plot);
		plot.setInsets(new RectangleInsets(0, 8, 0, Axes.RIGHT));
		plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
		plot.setRangeGridlinePaint(PictureLook.GRID);
		plot.setRangeGridlineStroke(PictureLook.HAIRLINE);
		// The same left edge in every panel.
		AxisSpace left = new AxisSpace();
		left.setLeft(LABELS);
		plot.setFixedDomainAxisSpace(left);
		return plot;
	}

	/** No bar for none, whose outline would be a line. */
	private static Integer bar(int samples) {
		return samples == 0 ? null : samples;
	}

	private static BarRenderer bars() {
		BarRenderer bars = new BarRenderer();
		bars.setBarPainter(new StandardBarPainter());
		bars.setShadowVisible(false);
		bars.setItemMargin(0);
		bars.setDrawBarOutline(true);
		for (int i = 0; i < 2; i++) {
			bars.setSeriesPaint(i, fill(i));
			bars.setSeriesOutlinePaint(i, outline(i));
			bars.setSeriesOutlineStroke(i, PictureLook.HAIRLINE);
		}
		return bars;
	}

	private static Paint fill(int group) {
		return group == 0 ? Color.WHITE : PictureLook.ACCENT;
	}

	private static Paint outline(int group) {
		return group == 0 ? PictureLook.QUIET : PictureLook.ACCENT;
	}

	private static String figures(Size size) {
		return size.before() == size.after() ? PictureLook.count(size.before())
				: PictureLook.count(size.before()) + " → " + PictureLook.count(size.after());
	}

	private static String description(List<Size> totals) {
		StringBuilder text = new StringBuilder(Messages.ClusterSizesPicture_samplesBeforeAndAfter);
		String separator = ": ";
		for (Size total : totals) {
			text.append(separator).append(total.name()).append(' ').append(figures(total));
			separator = "; ";
		}
		return text.append('.').toString();
	}
}
