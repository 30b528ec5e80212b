package org.cairnfield.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The files of an archive as they lie on disk, without those of Git and the private ones. */
public final class FolderText {

	private FolderText() {
	}

	/** Content by path; bytes as characters. */
	public static SortedMap<String, String> of(Path folder) throws IOException {
		SortedMap<String, String> files = new TreeMap<>();
		try (Stream<Path> all = Files.walk(folder)) {
			for (Path file : (Iterable<Path>) all::iterator) {
				String path = folder.relativize(file).toString().replace('\\', '/');
				if (Files.isRegularFile(file) && !path.startsWith(".git/") && !path.startsWith(".cairnfield/")) {
					files.put(path, Files.readString(file, StandardCharsets.ISO_8859_1));
				}
			}
		}
		return files;
	}

	/** Copies a folder with everything in it. */
	public static void copy(Path from, Path to) throws IOException {
		try (Stream<Path> all = Files.walk(from)) {
			for (Path file : (Iterable<Path>) all::iterator) {
				Path target = to.resolve(from.relativize(file).toString());
				if (Files.isDirectory(file)) {
					Files.createDirectories(target);
				} else {
					Files.copy(file, target);
				}
			}
		}
	}

	/** Deletes a folder with everything in it. */
	public static void delete(Path folder) throws IOException {
		if (Files.exists(folder)) {
			try (Stream<Path> all = Files.walk(folder)) {
				for (Path file : all.sorted((a, b) -> b.compareTo(a)).toList()) {
					Files.delete(file);
				}
			}
		}
	}
}
