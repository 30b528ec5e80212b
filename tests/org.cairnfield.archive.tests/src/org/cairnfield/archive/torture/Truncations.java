package org.cairnfield.archive.torture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.SampleArchives;

/** Cuts each file of an archive at every boundary of 1 KiB, and within its last bytes, and opens the archive. */
public final class Truncations {

	private static final int STEP_BYTES = 1024;
	private static final int LAST_BYTES = 40;

	private Truncations() {
	}

	/**
	 * @param root where the archive is made; does not exist yet
	 * @return how many cuts each kind of file has borne
	 * @throws IllegalStateException for a cut that was not noticed
	 */
	public static Map<String, Integer> run(Path root, int samples) throws IOException {
		try (OpenArchive open = new ArchiveStore().create(root, "Marrow Quay")) {
			SampleArchives.fill(open.archive(), 1, 2, samples);
			open.save();
		}
		Files.move(root.resolve(".git"), root.resolve("git"));
		Map<String, Integer> counts = new TreeMap<>();
		try (Stream<Path> all = Files.walk(root)) {
			for (Path file : (Iterable<Path>) all
					.filter(f -> f.toString().matches(".*\\.(xmi|samples|split|ledger)"))::iterator) {
				String name = file.getFileName().toString();
				counts.merge(name.substring(name.lastIndexOf('.') + 1), cut(root, file), Integer::sum);
			}
		}
		return counts;
	}

	private static int cut(Path root, Path file) throws IOException {
		byte[] whole = Files.readAllBytes(file);
		TreeSet<Integer> lengths = new TreeSet<>();
		for (int length = 0; length < whole.length; length += STEP_BYTES) {
			lengths.add(length);
		}
		for (int length = Math.max(0, whole.length - LAST_BYTES); length < whole.length; length++) {
			lengths.add(length);
		}
		String path = root.relativize(file).toString().replace('\\', '/');
		for (int length : lengths) {
			Files.write(file, Arrays.copyOf(whole, length));
			try (OpenArchive open = new ArchiveStore().open(root, Mode.EDIT)) {
				if (open.damages().stream().noneMatch(damage -> damage.file().equals(path))
						|| open.readOnlyReason().isEmpty()) {
					throw new IllegalStateException(path + " cut to " + length + " bytes, and no word of it");
				}
			}
			if (Files.size(file) != length) {
				throw new IllegalStateException(path + " was damaged, and was written over");
			}
		}
		Files.write(file, whole);
		return lengths.size();
	}
}
