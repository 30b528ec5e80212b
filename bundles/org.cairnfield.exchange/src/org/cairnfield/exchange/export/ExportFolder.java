package org.cairnfield.exchange.export;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.cairnfield.exchange.AtomicFile;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.LongTable;
import org.cairnfield.exchange.TextFile;
import org.cairnfield.exchange.WideTable;

/** Exports in a folder: the files asked for, the page of cautions, and the checksums of all of them, written last. */
public final class ExportFolder {

	private ExportFolder() {
	}

	/**
	 * Writes over files of the same names. The checksums of an earlier export are taken away first, so that a crash leaves no
	 * list that could vouch for a mixture.
	 *
	 * @param base    beginning of the files' names
	 * @param pack    bytes of the device pack, or null where none is asked for
	 * @param caution text of the page
	 * @param written a time for formats that name one
	 * @return the files, the checksums last
	 * @throws IntakeException where a file cannot be written, and where a map of the Earth is asked for but no site has a place
	 */
	public static List<Path> write(Path folder, String base, Set<ExportFormat> formats, MapExport export, byte[] pack,
			String caution, Instant written) throws IntakeException {
		List<Path> files = new ArrayList<>();
		try {
			Files.createDirectories(folder);
			Files.deleteIfExists(folder.resolve(Checksums.NAME));
			for (ExportFormat format : ExportFormat.values()) {
				if (formats.contains(format)) {
					Path file = folder.resolve(format.fileName(base));
					requirePlace(file, format, export);
					write(file, format, export, pack, written);
					files.add(file);
				}
			}
			files.add(folder.resolve(Caution.FILE));
			TextFile.write(folder.resolve(Caution.FILE), caution);
			Checksums.write(folder, files.stream().map(f -> f.getFileName().toString()).toList());
			files.add(folder.resolve(Checksums.NAME));
			return files;
		} catch (IOException e) {
			throw new IntakeException(folder, 0, "the export could not be written: " + e.getMessage(), "Name another folder");
		}
	}

	private static void requirePlace(Path file, ExportFormat format, MapExport export) throws IntakeException {
		if (format.needsPlace() && export.sitesWithoutPlace().size() == export.map().sites().size()) {
			throw new IntakeException(file, 0, "no site of the map has a place on Earth",
					"Give the site a georeference (latitude, longitude, bearing): Edit, Place the site on Earth, or \"locate\" in batch");
		}
	}

	private static void write(Path file, ExportFormat format, MapExport export, byte[] pack, Instant written)
			throws IOException, IntakeException {
		switch (format) {
		case WIDE -> WideTable.write(file, export.map(), export.ids());
		case LONG -> LongTable.write(file, export.map(), export.ids());
		case GEOJSON -> AtomicFile.write(file, out -> GeoJson.write(out, export));
		case GEOPACKAGE -> AtomicFile.fill(file, beside -> GeoPackage.write(beside, export, written));
		case PACK -> AtomicFile.write(file, pack);
		}
	}
}
