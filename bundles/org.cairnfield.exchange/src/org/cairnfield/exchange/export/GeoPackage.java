package org.cairnfield.exchange.export;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.Map;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

import org.cairnfield.core.map.RadioMap;

/**
 * A map as a GeoPackage (OGC 12-128, version 1.3): features {@code floors} and {@code samples} in WGS 84, attributes
 * {@code access_points} and {@code readings}. Sites whose place is not known have no geometry. Without the optional R-tree.
 */
public final class GeoPackage {

	/** "GPKG" in ASCII, the application id of the standard. */
	static final int APPLICATION_ID = 0x47504B47;
	/** Version 1.3.0 of the standard. */
	static final int USER_VERSION = 10300;

	private static final String WGS84 = "GEOGCS[\"WGS 84\",DATUM[\"WGS_1984\",SPHEROID[\"WGS 84\",6378137,298.257223563,"
			+ "AUTHORITY[\"EPSG\",\"7030\"]],AUTHORITY[\"EPSG\",\"6326\"]],PRIMEM[\"Greenwich\",0,AUTHORITY[\"EPSG\",\"8901\"]],"
			+ "UNIT[\"degree\",0.0174532925199433,AUTHORITY[\"EPSG\",\"9122\"]],AUTHORITY[\"EPSG\",\"4326\"]]";

	private static final String[] TABLES = {
			"CREATE TABLE gpkg_spatial_ref_sys (srs_name TEXT NOT NULL, srs_id INTEGER NOT NULL PRIMARY KEY,"
					+ " organization TEXT NOT NULL, organization_coordsys_id INTEGER NOT NULL, definition TEXT NOT NULL, description TEXT)",
			"CREATE TABLE gpkg_contents (table_name TEXT NOT NULL PRIMARY KEY, data_type TEXT NOT NULL, identifier TEXT UNIQUE,"
					+ " description TEXT DEFAULT '', last_change DATETIME NOT NULL DEFAULT (strftime('%Y-%m-%dT%H:%M:%fZ','now')),"
					+ " min_x DOUBLE, min_y DOUBLE, max_x DOUBLE, max_y DOUBLE, srs_id INTEGER,"
					+ " CONSTRAINT fk_gc_r_srs_id FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys(srs_id))",
			"CREATE TABLE gpkg_geometry_columns (table_name TEXT NOT NULL, column_name TEXT NOT NULL, geometry_type_name TEXT NOT NULL,"
					+ " srs_id INTEGER NOT NULL, z TINYINT NOT NULL, m TINYINT NOT NULL,"
					+ " CONSTRAINT pk_geom_cols PRIMARY KEY (table_name, column_name), CONSTRAINT uk_gc_table_name UNIQUE (table_name),"
					+ " CONSTRAINT fk_gc_tn FOREIGN KEY (table_name) REFERENCES gpkg_contents(table_name),"
					+ " CONSTRAINT fk_gc_srs FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys (srs_id))",
			"CREATE TABLE floors (fid INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL, geom POLYGON, site TEXT, floor INTEGER, name TEXT)",
			"CREATE TABLE samples (fid INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL, geom POINT, sample TEXT, site TEXT, floor INTEGER,"
					+ " x_metres DOUBLE, y_metres DOUBLE, time DATETIME, device TEXT, heard INTEGER)",
			"CREATE TABLE access_points (fid INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL, address TEXT)",
			"CREATE TABLE readings (fid INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL, sample_fid INTEGER, access_point_fid INTEGER,"
					+ " rssi_dbm INTEGER)" };

	private final Connection database;
	private final MapExport export;
	private final Instant written;
	private final Map<String, SiteProjection> projections = new HashMap<>();
	private final Bounds floorBounds = new Bounds();
	private final Bounds sampleBounds = new Bounds();

	/** The corner of what was written. */
	private static final class Bounds {
		private double minX = Double.POSITIVE_INFINITY;
		private double minY = Double.POSITIVE_INFINITY;
		private double maxX = Double.NEGATIVE_INFINITY;
		private double maxY = Double.NEGATIVE_INFINITY;

		void add(double[] lonLat) {
			minX = Math.min(minX, lonLat[0]);
			minY = Math.min(minY, lonLat[1]);
			maxX = Math.max(maxX, lonLat[0]);
			maxY = Math.max(maxY, lonLat[1]);
		}

		void set(PreparedStatement row, int from) throws SQLException {
			if (minX <= maxX) {
				row.setDouble(from, minX);
				row.setDouble(from + 1, minY);
				row.setDouble(from + 2, maxX);
				row.setDouble(from + 3, maxY);
			}
		}
	}

	private GeoPackage(Connection database, MapExport export, Instant written) {
		this.database = database;
		this.export = export;
		this.written = written;
		for (SiteFrame site : export.sites()) {
			if (site.anchor() != null) {
				projections.put(site.name(), new SiteProjection(site.anchor()));
			}
		}
	}

	/**
	 * Fills an empty file.
	 *
	 * @param written the time that the tables name as that of their last change
	 */
	public static void write(Path file, MapExport export, Instant written) throws IOException {
		SQLiteConfig config = new SQLiteConfig();
		// written beside and moved into place: a journal would guard what nobody sees
		config.setJournalMode(SQLiteConfig.JournalMode.OFF);
		config.setSynchronous(SQLiteConfig.SynchronousMode.OFF);
		SQLiteDataSource source = new SQLiteDataSource(config);
		source.setUrl("jdbc:sqlite:" + file.toAbsolutePath());
		try (Connection database = source.getConnection()) {
			database.setAutoCommit(false);
			new GeoPackage(database, export, written).write();
			database.commit();
		} catch (SQLException e) {
			throw new IOException("the GeoPackage could not be written: " + e.getMessage(), e);
		}
	}

	private void write() throws SQLException {
		try (Statement sql = database.createStatement()) {
			sql.execute("PRAGMA application_id = " + APPLICATION_ID);
			sql.execute("PRAGMA user_version = " + USER_VERSION);
			for (String table : TABLES) {
				sql.execute(table);
			}
		}
		reference("Undefined Cartesian SRS", -1, "NONE", -1, "undefined",
				"undefined Cartesian coordinate reference system");
		reference("Undefined geographic SRS", 0, "NONE", 0, "undefined",
				"undefined geographic coordinate reference system");
		reference("WGS 84 geodetic", 4326, "EPSG", 4326, WGS84,
				"longitude and latitude in decimal degrees on the WGS 84 spheroid");
		floors();
		accessPoints();
		samples();
		contents("floors", "features", "Outlines of floors", floorBounds);
		contents("samples", "features", "Samples of the radio map", sampleBounds);
		contents("access_points", "attributes", "Access points", null);
		contents("readings", "attributes", "Levels in dBm", null);
		geometry("floors", "POLYGON");
		geometry("samples", "POINT");
	}

	private void reference(String name, int id, String organisation, int code, String definition, String description)
			throws SQLException {
		try (PreparedStatement row = database
				.prepareStatement("INSERT INTO gpkg_spatial_ref_sys VALUES (?,?,?,?,?,?)")) {
			Object[] values = { name, id, organisation, code, definition, description };
			for (int i = 0; i < values.length; i++) {
				row.setObject(i + 1, values[i]);
			}
			row.execute();
		}
	}

	private void contents(String table, String type, String description, Bounds bounds) throws SQLException {
		try (PreparedStatement row = database
				.prepareStatement("INSERT INTO gpkg_contents VALUES (?,?,?,?,?,?,?,?,?,?)")) {
			row.setString(1, table);
			row.setString(2, type);
			row.setString(3, table);
			row.setString(4, export.title() + ": " + description);
			row.setString(5, written.truncatedTo(ChronoUnit.SECONDS).toString().replace("Z", ".000Z"));
			if (bounds != null) {
				bounds.set(row, 6);
				row.setInt(10, 4326);
			}
			row.execute();
		}
	}

	private void geometry(String table, String type) throws SQLException {
		try (PreparedStatement row = database
				.prepareStatement("INSERT INTO gpkg_geometry_columns VALUES (?, 'geom', ?, 4326, 0, 0)")) {
			row.setString(1, table);
			row.setString(2, type);
			row.execute();
		}
	}

	private void floors() throws SQLException {
		try (PreparedStatement row = database
				.prepareStatement("INSERT INTO floors (geom, site, floor, name) VALUES (?,?,?,?)")) {
			for (SiteFrame site : export.sites()) {
				for (SiteFrame.FloorOutline floor : site.floors()) {
					SiteProjection projection = projections.get(site.name());
					double[][] ring = projection == null ? new double[0][] : Rings.counterClockwise(floor, projection);
					for (double[] corner : ring) {
						floorBounds.add(corner);
					}
					row.setBytes(1, ring.length == 0 ? null : Geometries.polygon(ring));
					row.setString(2, site.name());
					row.setInt(3, floor.level());
					row.setString(4, floor.title());
					row.execute();
				}
			}
		}
	}

	private void accessPoints() throws SQLException {
		try (PreparedStatement row = database.prepareStatement("INSERT INTO access_points VALUES (?,?)")) {
			for (int a = 0; a < export.map().accessPointCount(); a++) {
				row.setInt(1, a + 1);
				row.setString(2, export.map().accessPoints().get(a));
				row.execute();
			}
		}
	}

	private void samples() throws SQLException {
		RadioMap map = export.map();
		try (PreparedStatement sample = database.prepareStatement("INSERT INTO samples VALUES (?,?,?,?,?,?,?,?,?,?)");
				PreparedStatement reading = database
						.prepareStatement(
								"INSERT INTO readings (sample_fid, access_point_fid, rssi_dbm) VALUES (?,?,?)")) {
			for (int s = 0; s < map.size(); s++) {
				String site = map.sites().get(map.site(s));
				SiteProjection projection = projections.get(site);
				sample.setInt(1, s + 1);
				sample.setBytes(2, projection == null ? null : point(projection.lonLat(map.x(s), map.y(s))));
				sample.setString(3, export.ids().get(s));
				sample.setString(4, site);
				sample.setInt(5, map.floor(s));
				sample.setDouble(6, map.x(s));
				sample.setDouble(7, map.y(s));
				sample.setString(8, map.timeMillis(s) == RadioMap.NO_TIME ? null : time(map.timeMillis(s)));
				sample.setString(9, map.device(s) == RadioMap.NO_DEVICE ? null : map.devices().get(map.device(s)));
				sample.setInt(10, map.heard(s));
				sample.execute();
				for (int k = map.firstReading(s); k < map.endReading(s); k++) {
					reading.setInt(1, s + 1);
					reading.setInt(2, map.accessPoint(k) + 1);
					reading.setInt(3, map.rssiDbm(k));
					reading.execute();
				}
			}
		}
	}

	private byte[] point(double[] lonLat) {
		sampleBounds.add(lonLat);
		return Geometries.point(lonLat);
	}

	/** The standard wants milliseconds. */
	private static String time(long millis) {
		String text = Instant.ofEpochMilli(millis).toString();
		return text.contains(".") ? text : text.replace("Z", ".000Z");
	}
}
