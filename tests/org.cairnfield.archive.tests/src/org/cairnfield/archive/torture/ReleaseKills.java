package org.cairnfield.archive.torture;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.SampleArchives;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.ReleaseTag;

/** Kills releasing processes at random instants: a release is there and sound, or not there. */
public final class ReleaseKills {

	/** How many of the releases that were under way were found, how many not, and how many had returned. */
	public record Report(int kills, int there, int absent, int returned, int untagged, int finished, int releases) {
	}

	private static final int LONGEST_RELEASE_MILLIS = 120;

	/** After so many an archive is left and another begun: each kill verifies all releases, which get more and more. */
	private static final int KILLS_AN_ARCHIVE = 20;

	private final Random random;
	private Path root;
	private Map<String, String> digests;
	private int next;
	private int there;
	private int absent;
	private int returned;
	private int untagged;
	private int finished;

	private ReleaseKills(long seed) {
		this.random = new Random(seed);
	}

	/**
	 * @param folder where archives are made
	 * @throws IllegalStateException telling what was found, if a release is neither there and sound nor absent
	 */
	public static Report run(Path folder, int kills, long seed) throws IOException, InterruptedException {
		ReleaseKills run = new ReleaseKills(seed);
		int releases = 0;
		for (int done = 0; done < kills; done += KILLS_AN_ARCHIVE) {
			run.begin(folder.resolve("released-" + done), seed + done);
			for (int i = done; i < Math.min(kills, done + KILLS_AN_ARCHIVE); i++) {
				run.killOne();
			}
			try (History history = History.of(run.root)) {
				releases += history.releases().size();
			}
		}
		return new Report(kills, run.there, run.absent, run.returned, run.untagged, run.finished, releases);
	}

	private void begin(Path archive, long seed) throws IOException {
		root = archive;
		digests = new HashMap<>();
		next = 1;
		try (OpenArchive open = new ArchiveStore().create(root, "state 0")) {
			SampleArchives.fill(open.archive(), seed, 3, 40);
			open.savePoint(Person.named("M.Q."), null);
		}
	}

	public static void main(String[] arguments) throws Exception {
		Path folder = Files.createDirectories(Path.of(arguments[0]));
		System.out.println("seed " + arguments[2]);
		Report report = run(folder, Integer.parseInt(arguments[1]), Long.parseLong(arguments[2]));
		System.out.printf(
				"%d processes killed while they released: %d releases there and sound, %d absent, none between%n",
				report.kills(),
				report.there(), report.absent());
		System.out.printf(
				"  %d had returned, %d had left a manifest without a tag, %d of them in the history; %d releases in the end, each"
						+ " verified after each kill%n",
				report.returned(), report.untagged(), report.finished(), report.releases());
	}

	private void killOne() throws IOException, InterruptedException {
		String version = null;
		boolean done = false;
		try (ChildJvm child = ChildJvm.start(ReleasingChild.class, root.toString(), Integer.toString(next))) {
			int rounds = 1 + random.nextInt(3);
			for (int round = 0; round < rounds; round++) {
				version = begun(child.line());
				if (round < rounds - 1 && !("released " + next(version)).equals(child.line())) {
					throw new IllegalStateException("a release was not made");
				}
			}
			if (child.livesAfter(random.nextInt(LONGEST_RELEASE_MILLIS))) {
				child.kill();
			}
			for (String line = child.line(); line != null; line = child.line()) {
				done = line.startsWith("released ");
				version = done ? version : begun(line);
			}
		}
		inspect(version, done);
		next = Integer.parseInt(next(version)) + 1;
	}

	private String begun(String line) {
		if (line == null || !line.startsWith("releasing ")) {
			throw new IllegalStateException("the child said '" + line + "'");
		}
		String[] word = line.split(" ");
		digests.put(word[1] + ".0.0", word[2]);
		return word[1] + ".0.0";
	}

	private static String next(String version) {
		return version.substring(0, version.indexOf('.'));
	}

	private void inspect(String version, boolean done) throws IOException {
		try (OpenArchive open = new ArchiveStore().open(root, Mode.EDIT)) {
			require(open.damages().isEmpty(), "damaged: " + open.damages());
			boolean found = verifyAll(version);
			require(found || !done, "a release that had returned is lost");
			there += found ? 1 : 0;
			absent += found ? 0 : 1;
			returned += done ? 1 : 0;
			if (!found) {
				untagged += Files.exists(root.resolve("releases/" + version + ".json")) ? 1 : 0;
				// work goes on: what has its manifest in the history is finished as it was begun, otherwise the version is free
				open.savePoint(Person.named("M.Q."), "after the kill");
				String begun = begunManifest(version);
				String manifest = begun == null ? open.digest() : begun;
				finished += begun == null ? 0 : 1;
				digests.put(version, manifest);
				open.release(version, manifest, manifest, "again", Person.named("M.Q."));
				require(verifyAll(version), "the release after the kill is not there");
			}
		}
	}

	/** The manifest of a release that has no tag, as the history has it; null where it has none. */
	private String begunManifest(String version) throws IOException {
		try (History history = History.of(root)) {
			return history.check().manifests().stream().filter(past -> past.version().equals(version))
					.map(past -> new String(past.content(), StandardCharsets.UTF_8)).reduce((one, later) -> later)
					.orElse(null);
		}
	}

	/** Every release that is there must be sound. */
	private boolean verifyAll(String version) throws IOException {
		boolean found = false;
		try (History history = History.of(root)) {
			List<ReleaseTag> tags = history.releases();
			for (ReleaseTag tag : tags) {
				require(history.check().problemsOf(tag).isEmpty(),
						tag.version() + ": " + history.check().problemsOf(tag));
				String manifest = new String(
						history.file(tag.savePoint(), "releases/" + tag.version() + ".json").orElseThrow(),
						StandardCharsets.UTF_8);
				require(manifest.equals(digests.get(tag.version())), tag.version() + " has another manifest");
				require(history.open(tag.savePoint()).digest().equals(manifest),
						tag.version() + " has other content than its manifest says");
				require(Files.readString(root.resolve("releases/" + tag.version() + ".json")).equals(manifest),
						tag.version() + " differs in the folder");
				found |= tag.version().equals(version);
			}
		}
		return found;
	}

	private static void require(boolean holds, String otherwise) {
		if (!holds) {
			throw new IllegalStateException(otherwise);
		}
	}
}
