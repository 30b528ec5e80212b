package org.cairnfield.exchange.export;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.cairnfield.core.text.Words;
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
	 * Writes over files of the same names. All files are written and summed up aside first and then put in place, so that
	 * where one cannot be written an earlier export stays as it was. The checksums are put in place last, those of an earlier
	 * export taken away before, so that a crash leaves no list that could vouch for a mixture.
	 *
	 * @param base    beginning of the files' names
	 * @param formats those that cannot hold the map are left out, see {@link MapExport#leftOut}
	 * @param pack    bytes of the device pack, or null where none is asked for
	 * @param caution text of the page
	 * @param written a time for formats that name one
	 * @return the files, the checksums last
	 * @throws IntakeException where a file cannot be written, and where no format is left; nothing is left behind then
	 */
	public static List<Path> write(Path folder, String base, Set<ExportFormat> formats, MapExport export, byte[] pack,
			String caution, Instant written) throws IntakeException {
		Set<ExportFormat> writable = export.writable(formats);
		if (writable.isEmpty() && !formats.isEmpty()) {
			throw new IntakeException(folder, 0, Messages.ExportFolder_nothingWasExportedNoSite,
					Messages.ExportFolder_giveTheSiteAGeoreference);
		}
		try (PartFolder part = PartFolder.of(folder)) {
			List<String> names = new ArrayList<>();
			for (ExportFormat format : writable) {
				String name = format.fileName(base);
				write(part.resolve(name), format, export, pack, written);
				names.add(name);
			}
			names.add(Caution.FILE);
			TextFile.write(part.resolve(Caution.FILE), caution);
			Checksums.write(part.path(), names);
			names.add(Checksums.NAME);
			part.putInPlace(names);
			return names.stream().map(folder::resolve).toList();
		} catch (IOException e) {
			throw new IntakeException(folder, 0,
					Words.bind(Messages.ExportFolder_theExportCouldNotBe, e.getMessage()),
					Messages.ExportFolder_nameAnotherFolder);
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
