package org.cairnfield.exchange.export;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.cairnfield.exchange.AtomicFile;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.ResultTable;

/** Marked points for other programs: a table, and GeoJSON (RFC 7946) that a phone can show. */
public final class PointFiles {

	private static final int DEGREE_DECIMALS = 9;
	private static final int METRE_DECIMALS = 2;

	private PointFiles() {
	}

	/**
	 * A table with a row a point, in order; longitude and latitude where the place of the site on Earth is known.
	 *
	 * @param points all with the same properties
	 * @throws IntakeException where the file cannot be written
	 */
	public static void csv(Path file, List<MarkedPoint> points, List<SiteFrame> sites) throws IntakeException {
		Map<String, SiteProjection> projections = projections(sites);
		List<String> header = new ArrayList<>(List.of("order", "site", "floor", "x_m", "y_m", "longitude", "latitude"));
		header.addAll(points.isEmpty() ? List.of() : points.get(0).properties().keySet());
		List<List<?>> rows = new ArrayList<>();
		for (MarkedPoint point : points) {
			SiteProjection projection = projections.get(point.site());
			double[] lonLat = projection == null ? null : projection.lonLat(point.xMetres(), point.yMetres());
			List<Object> row = new ArrayList<>(
					List.of(rows.size() + 1, point.site(), point.floor(), rounded(point.xMetres(), METRE_DECIMALS),
							rounded(point.yMetres(), METRE_DECIMALS)));
			row.add(lonLat == null ? null : rounded(lonLat[0], DEGREE_DECIMALS));
			row.add(lonLat == null ? null : rounded(lonLat[1], DEGREE_DECIMALS));
			row.addAll(point.properties().values());
			rows.add(row);
		}
		ResultTable.write(file, header, rows.stream());
	}

	/**
	 * One FeatureCollection with a point each, in order, longitude before latitude in WGS 84. Points of sites whose place on Earth is
	 * not known are left out.
	 *
	 * @throws IOException where the file cannot be written
	 */
	public static void geoJson(Path file, String title, List<MarkedPoint> points, List<SiteFrame> sites)
			throws IOException {
		AtomicFile.write(file, out -> geoJson(out, title, points, projections(sites)));
	}

	private static void geoJson(Writer out, String title, List<MarkedPoint> points,
			Map<String, SiteProjection> projections) throws IOException {
		@SuppressWarnings("resource") // out is closed where it was opened
		JsonWriter json = new JsonWriter(out);
		json.beginObject().name("type").value("FeatureCollection").name("name").value(title).name("features")
				.beginArray();
		int order = 0;
		for (MarkedPoint point : points) {
			order++;
			SiteProjection projection = projections.get(point.site());
			if (projection == null) {
				continue;
			}
			double[] lonLat = projection.lonLat(point.xMetres(), point.yMetres());
			json.beginObject().name("type").value("Feature").name("geometry").beginObject().name("type").value("Point")
					.name("coordinates").beginArray()
					.value(rounded(lonLat[0], DEGREE_DECIMALS)).value(rounded(lonLat[1], DEGREE_DECIMALS)).endArray()
					.endObject();
			json.name("properties").beginObject().name("order").value(order).name("site").value(point.site())
					.name("floor").value(point.floor());
			for (Map.Entry<String, Object> property : point.properties().entrySet()) {
				json.name(property.getKey());
				if (property.getValue() instanceof Number number) {
					json.value(number);
				} else {
					json.value(String.valueOf(property.getValue()));
				}
			}
			json.endObject().endObject();
		}
		json.endArray().endObject();
		json.flush();
	}

	private static Map<String, SiteProjection> projections(List<SiteFrame> sites) {
		Map<String, SiteProjection> projections = new HashMap<>();
		sites.stream().filter(site -> site.anchor() != null)
				.forEach(site -> projections.put(site.name(), new SiteProjection(site.anchor())));
		return projections;
	}

	private static BigDecimal rounded(double value, int decimals) {
		return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
	}
}
