package org.cairnfield.exchange.export;

import java.util.Locale;

/** What a map can be written as. Neither Apache Parquet nor Arrow: docs/exports.md says why. */
public enum ExportFormat {

	/** A row a sample, a column an access point. */
	WIDE("-wide.csv"),
	/** A row a reading. */
	LONG("-long.csv"),
	/** RFC 7946. */
	GEOJSON(".geojson"),
	/** OGC 12-128. */
	GEOPACKAGE(".gpkg"),
	/** For small devices, docs/device-pack.md. */
	PACK(".cfpk");

	private final String end;

	ExportFormat(String end) {
		this.end = end;
	}

	/** Name of the file of a map. */
	public String fileName(String base) {
		return base + end;
	}

	/** Whether it shows the map on Earth, and so needs the place of a site. */
	public boolean needsPlace() {
		return this == GEOJSON || this == GEOPACKAGE;
	}

	@Override
	public String toString() {
		return name().toLowerCase(Locale.ROOT);
	}
}
