package org.cairnfield.curation.release;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.core.text.Words;

/** Manifests of releases that were prepared and that nobody has signed yet. */
final class PreparedManifests {

	private static final String ENDING = ".json";

	private PreparedManifests() {
	}

	/**
	 * All of an archive, the highest version first.
	 *
	 * @param released versions that were signed
	 */
	static List<ReleaseManifest> in(Path archive, Set<String> released) throws IOException {
		Path folder = archive.resolve("releases");
		if (!Files.isDirectory(folder)) {
			return List.of();
		}
		List<String> versions;
		try (Stream<Path> files = Files.list(folder)) {
			versions = files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(ENDING))
					.map(name -> name.substring(0, name.length() - ENDING.length())).filter(SemanticVersion::is)
					.sorted(Comparator.comparing(SemanticVersion::parse).reversed()).toList();
		}
		List<ReleaseManifest> found = new ArrayList<>();
		for (String version : versions) {
			one(archive, version, released).ifPresent(found::add);
		}
		return found;
	}

	/** That of one version; empty where there is none, or it was signed. */
	static Optional<ReleaseManifest> one(Path archive, String version, Set<String> released) throws IOException {
		Path file = archive.resolve(ReleaseBook.path(SemanticVersion.parse(version).toString()));
		if (!Files.isRegularFile(file) || released.contains(version)) {
			return Optional.empty();
		}
		try {
			return Optional.of(ManifestJson.read(Files.readString(file)));
		} catch (IllegalArgumentException e) {
			throw new ArchiveException(
					Words.bind(Messages.PreparedManifests_theManifestThatWasPrepared, version, e.getMessage()),
					Messages.PreparedManifests_prepareTheReleaseAgain, e);
		}
	}
}
