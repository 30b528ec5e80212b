package org.cairnfield.exchange.floors;

import java.nio.file.Path;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

import org.cairnfield.exchange.IntakeException;

/**
 * The floors that a file or folder tells of.
 *
 * @param format such as "IMDF 1.0.0"
 * @param levels by rising ordinal
 * @param notes  what of it is left out or was taken to mean something, a sentence each, for a person
 */
public record MappedFloors(Path file, String format, List<MappedLevel> levels, List<String> notes) {

	/** Copies the lists. */
	public MappedFloors {
		levels = List.copyOf(levels);
		notes = List.copyOf(notes);
	}

	/**
	 * Reads an IMDF archive (OGC 20-094), zipped or as a folder, or a GeoJSON file (RFC 7946) of polygons per floor. Nothing is unpacked
	 * to the disk, and memory is bounded whatever the file holds.
	 *
	 * @throws IntakeException where no floors can be read; the message names file, feature and remedy
	 */
	public static MappedFloors read(Path file) throws IntakeException {
		try (MapSource source = MapSource.open(file)) {
			return source.isArchive() ? new ImdfReader(source).read() : new PlainReader(source).read();
		}
	}

	/** Names of all buildings that levels belong to. */
	public SortedSet<String> buildings() {
		SortedSet<String> names = new TreeSet<>();
		levels.forEach(level -> names.addAll(level.buildings()));
		return names;
	}
}
