package org.cairnfield.exchange.export;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sqlite.SQLiteDataSource;

class GeoPackageTest {

	@TempDir
	Path folder;
	private Path file;

	@BeforeEach
	void write() throws IOException {
		file = Files.createFile(folder.resolve("quay's.gpkg"));
		GeoPackage.write(file, Exports.export(Exports.map()), Instant.parse("2031-05-01T10:00:00Z"));
	}

	private List<String> rows(String sql) throws SQLException {
		SQLiteDataSource source = new SQLiteDataSource();
		source.setUrl("jdbc:sqlite:" + file);
		List<String> rows = new ArrayList<>();
		try (Connection database = source.getConnection();
				Statement statement = database.createStatement();
				ResultSet found = statement.executeQuery(sql)) {
			while (found.next()) {
				StringBuilder row = new StringBuilder();
				for (int c = 1; c <= found.getMetaData().getColumnCount(); c++) {
					row.append(c == 1 ? "" : "|").append(found.getString(c));
				}
				rows.add(row.toString());
			}
		}
		return rows;
	}

	/** OGC 12-128 requirement 2: "GPKG" at byte 68 of the header of SQLite, the version after the user version of byte 60. */
	@Test
	void isMarkedAsAGeoPackageInItsHeader() throws IOException {
		ByteBuffer header = ByteBuffer.wrap(Files.readAllBytes(file));
		assertEquals("SQLite format 3", new String(header.array(), 0, 15, StandardCharsets.US_ASCII));
		assertEquals("GPKG", new String(header.array(), 68, 4, StandardCharsets.US_ASCII));
		assertEquals(10300, header.getInt(60));
	}

	@Test
	void hasTheTablesThatTheStandardRequires() throws SQLException {
		assertEquals(List.of("-1", "0", "4326"), rows("SELECT srs_id FROM gpkg_spatial_ref_sys ORDER BY srs_id"));
		assertEquals(
				List.of("access_points|attributes|null", "floors|features|4326", "readings|attributes|null",
						"samples|features|4326"),
				rows("SELECT table_name, data_type, srs_id FROM gpkg_contents ORDER BY table_name"));
		assertEquals(List.of("floors|geom|POLYGON|4326|0|0", "samples|geom|POINT|4326|0|0"),
				rows("SELECT * FROM gpkg_geometry_columns ORDER BY table_name"));
		assertEquals(List.of("2031-05-01T10:00:00.000Z"), rows("SELECT DISTINCT last_change FROM gpkg_contents"));
		assertEquals(List.of("ok"), rows("PRAGMA integrity_check"));
		assertTrue(rows("PRAGMA foreign_key_check").isEmpty());
	}

	@Test
	void holdsEverySampleAndReadingAlsoWithoutAPlace() throws SQLException {
		assertEquals(List.of("th-spring/S1|Tide House|0|0.0|0.0|2020-09-26T14:25:06.250Z|guide A|2",
				"th-spring/S2|Tide House|1|12.4|7.85|2020-09-26T14:25:06.000Z|null|1",
				"ls/é\"1|Lantern Store|-1|-3.5|100.0|null|null|1",
				"sh/1|Sailmakers' Hall|0|1.0|2.0|null|null|1"),
				rows("SELECT sample, site, floor, x_metres, y_metres, time, device, heard FROM samples ORDER BY fid"));
		assertEquals(List.of("th-spring/S1|00:00:5E:00:53:01|-61", "th-spring/S1|02:00:5E:00:53:02|-70",
				"th-spring/S2|00:00:5E:00:53:01|-44", "ls/é\"1|=cmd|-90", "sh/1|00:00:5E:00:53:01|-80"),
				rows("SELECT sample, address, rssi_dbm FROM readings r JOIN samples s ON s.fid = r.sample_fid"
						+ " JOIN access_points a ON a.fid = r.access_point_fid ORDER BY r.fid"));
		assertEquals(List.of("4"), rows("SELECT fid FROM samples WHERE geom IS NULL"));
	}

	/** OGC 12-128 clause 2.1.3: magic "GP", version 0, flags, SRS, then well-known binary. */
	@Test
	void writesGeometriesAsTheStandardLaysThemOut() {
		ByteBuffer point = ByteBuffer.wrap(Geometries.point(new double[] { -40, 40.5 })).order(ByteOrder.LITTLE_ENDIAN);
		assertEquals(29, point.capacity());
		assertArrayEquals(new byte[] { 'G', 'P', 0, 1 }, Arrays.copyOf(point.array(), 4));
		assertEquals(4326, point.getInt(4));
		assertEquals(1, point.get(8));
		assertEquals(1, point.getInt(9));
		assertEquals(-40, point.getDouble(13));
		assertEquals(40.5, point.getDouble(21));
		ByteBuffer polygon = ByteBuffer
				.wrap(Geometries.polygon(new double[][] { { 1, 5 }, { 2, 5 }, { 2, 7 }, { 1, 5 } }))
				.order(ByteOrder.LITTLE_ENDIAN);
		assertEquals(3, polygon.get(3)); // little-endian, envelope of two dimensions
		assertEquals(1, polygon.getDouble(8));
		assertEquals(2, polygon.getDouble(16));
		assertEquals(5, polygon.getDouble(24));
		assertEquals(7, polygon.getDouble(32));
		assertEquals(3, polygon.getInt(41));
		assertEquals(4, polygon.getInt(49));
	}

	/** GDAL, the reader of most programs for maps; Debian package gdal-bin. */
	@Test
	void isReadByGdal() throws IOException, InterruptedException {
		assumeTrue(Gdal.isThere(), "skipped: ogrinfo is not there (Debian package gdal-bin)");
		String all = Gdal.info("-ro", "-al", file.toString());
		assertTrue(all.contains("Layer name: floors") && all.contains("Layer name: samples"), all);
		assertTrue(all.contains("Feature Count: 4") && all.contains("Geometry: Polygon")
				&& all.contains("Geometry: Point"), all);
		assertTrue(all.contains("POINT (-40 40)") && all.contains("WGS 84") && all.contains("POLYGON (("), all);
		assertTrue(all.contains("rssi_dbm (Integer64) = -61") && !all.contains("ERROR") && !all.contains("Warning"),
				all);
		String joined = Gdal.info("-ro", "-sql", "SELECT count(*) AS n FROM samples WHERE floor = 0", file.toString());
		assertTrue(joined.contains("n (Integer) = 2"), joined);
	}

	@Test
	void isReadByGdalAsGeoJsonToo() throws IOException, InterruptedException {
		assumeTrue(Gdal.isThere(), "skipped: ogrinfo is not there (Debian package gdal-bin)");
		Path json = folder.resolve("quay.geojson");
		try (var out = Files.newBufferedWriter(json)) {
			GeoJson.write(out, Exports.export(Exports.map()));
		}
		String all = Gdal.info("-ro", "-al", json.toString());
		assertTrue(all.contains("Feature Count: 5") && all.contains("POINT (-40 40)") && all.contains("WGS 84")
				&& !all.contains("ERROR"), all);
	}

	/** Runs ogrinfo. */
	private static final class Gdal {

		static boolean isThere() {
			return Arrays.stream(System.getenv("PATH").split(java.io.File.pathSeparator))
					.anyMatch(p -> Files.isExecutable(Path.of(p, "ogrinfo")));
		}

		static String info(String... arguments) throws IOException, InterruptedException {
			List<String> command = new ArrayList<>(List.of("ogrinfo"));
			command.addAll(List.of(arguments));
			Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
			String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
			assertTrue(process.waitFor(60, TimeUnit.SECONDS));
			assertEquals(0, process.exitValue(), said);
			return said;
		}
	}
}
