package org.cairnfield.benchmarks;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Workers;

/** Simulated maps, kept as files during a run so that other JVMs get them without simulating. */
final class Maps {

	/** Three sites within earshot of each other, four floors each, 520 access points. */
	static final CampusSize MANY = CampusSize.of(3, 4, 520);
	/** One site of four floors, 150 access points. */
	static final CampusSize FEW = CampusSize.of(1, 4, 150);

	private static final long SEED = 7;

	private final Path folder;
	private final Workers workers;

	Maps(Path folder, Workers workers) {
		this.folder = folder;
		this.workers = workers;
	}

	RadioMap of(CampusSize size, int samples) throws IOException {
		Path file = file(size, samples);
		if (Files.notExists(file)) {
			Files.createDirectories(folder);
			try (ObjectOutputStream out = new ObjectOutputStream(
					new BufferedOutputStream(Files.newOutputStream(file)))) {
				out.writeObject(RandomMap.of(SEED, size, samples, workers));
			}
		}
		return read(file);
	}

	/** Another day's visitor on the same campus. */
	RadioMap queries(CampusSize size, int samples) {
		return RandomMap.testOf(SEED, size, samples, workers);
	}

	/** Where {@link #of} keeps a map. */
	Path file(CampusSize size, int samples) {
		return folder.resolve(String.format(Locale.ROOT, "%d-sites-%d-floors-%d-points-%s-%d-samples", size.sites(),
				size.floorsPerSite(), size.accessPoints(), size.sitesOverlap() ? "near" : "apart", samples));
	}

	static RadioMap read(Path file) throws IOException {
		try (ObjectInputStream in = new ObjectInputStream(new BufferedInputStream(Files.newInputStream(file)))) {
			return (RadioMap) in.readObject();
		} catch (ClassNotFoundException e) {
			throw new IOException(e);
		}
	}

	static String describe(RadioMap map) {
		return String.format(Locale.ROOT, "%,d samples × %d access points, %.1f heard, %d %s", map.size(),
				map.accessPointCount(), (double) map.readingCount() / map.size(), map.sites().size(),
				map.sites().size() == 1 ? "site" : "sites");
	}
}
