package org.cairnfield.exchange.export;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import org.cairnfield.core.map.RadioMap;

/**
 * A map as GeoJSON (RFC 7946): one FeatureCollection with a polygon a floor and a point a sample, longitude before latitude in
 * WGS 84, rings closed and counter-clockwise. Sites whose place is not known are left out. Coordinates have nine decimals, a
 * tenth of a millimetre; that is for computing, not a claim of accuracy. Maps across the 180th meridian are not cut in two.
 */
public final class GeoJson {

	private static final int DECIMALS = 9;

	private final JsonWriter json;
	private final MapExport export;
	private final Map<String, SiteProjection> projections = new HashMap<>();

	private GeoJson(Writer out, MapExport export) {
		this.json = new JsonWriter(out);
		this.export = export;
		for (SiteFrame site : export.sites()) {
			if (site.anchor() != null) {
				projections.put(site.name(), new SiteProjection(site.anchor()));
			}
		}
	}

	/** Writes it to a writer that stays open. */
	public static void write(Writer out, MapExport export) throws IOException {
		new GeoJson(out, export).write();
	}

	private void write() throws IOException {
		json.beginObject().name("type").value("FeatureCollection").name("name").value(export.title());
		json.name("features").beginArray();
		for (SiteFrame site : export.sites()) {
			if (projections.containsKey(site.name())) {
				for (SiteFrame.FloorOutline floor : site.floors()) {
					floor(site, floor);
				}
			}
		}
		for (int s = 0; s < export.map().size(); s++) {
			sample(s);
		}
		json.endArray().endObject();
		json.flush();
	}

	private void floor(SiteFrame site, SiteFrame.FloorOutline floor) throws IOException {
		double[][] ring = Rings.counterClockwise(floor, projections.get(site.name()));
		if (ring.length == 0) {
			return;
		}
		json.beginObject().name("type").value("Feature").name("geometry").beginObject();
		json.name("type").value("Polygon").name("coordinates").beginArray().beginArray();
		for (double[] corner : ring) {
			position(corner);
		}
		json.endArray().endArray().endObject();
		json.name("properties").beginObject().name("kind").value("floor").name("site").value(site.name());
		json.name("floor").value(floor.level()).name("name").value(floor.title()).endObject().endObject();
	}

	private void sample(int s) throws IOException {
		RadioMap map = export.map();
		SiteProjection projection = projections.get(map.sites().get(map.site(s)));
		if (projection == null) {
			return;
		}
		json.beginObject().name("type").value("Feature").name("id").value(export.ids().get(s));
		json.name("geometry").beginObject().name("type").value("Point").name("coordinates");
		position(projection.lonLat(map.x(s), map.y(s)));
		json.endObject().name("properties").beginObject().name("kind").value("sample");
		json.name("site").value(map.sites().get(map.site(s))).name("floor").value(map.floor(s));
		json.name("xMetres").value(number(map.x(s), 6)).name("yMetres").value(number(map.y(s), 6));
		if (map.timeMillis(s) != RadioMap.NO_TIME) {
			json.name("time").value(Instant.ofEpochMilli(map.timeMillis(s)).toString());
		}
		if (map.device(s) != RadioMap.NO_DEVICE) {
			json.name("device").value(map.devices().get(map.device(s)));
		}
		json.name("rssiDbm").beginObject();
		for (int k = map.firstReading(s); k < map.endReading(s); k++) {
			json.name(map.accessPoints().get(map.accessPoint(k))).value(map.rssiDbm(k));
		}
		json.endObject().endObject().endObject();
	}

	private void position(double[] lonLat) throws IOException {
		json.beginArray().value(number(lonLat[0], DECIMALS)).value(number(lonLat[1], DECIMALS)).endArray();
	}

	private static BigDecimal number(double value, int decimals) {
		BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN).stripTrailingZeros();
		return rounded.scale() < 0 ? rounded.setScale(0)
				: Optional.of(rounded).filter(r -> r.signum() != 0).orElse(BigDecimal.ZERO);
	}
}
