package org.cairnfield.archive.torture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.SampleArchives;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;

/** Kills saving processes at random instants, and looks what they have left. */
public final class Kills {

	/** How many of the archives were found in which state. */
	public record Report(int kills, int old, int fresh, int duringSave, int commitInterrupted, int locksTakenOver) {
	}

	private static final int LONGEST_SAVE_MILLIS = 60;
	private static final int LONGEST_SAVE_POINT_MILLIS = 200;

	private final Path root;
	private final Random random;
	private String lastSaved;
	private int next = 1;
	private int old;
	private int fresh;
	private int duringSave;
	private int commitInterrupted;
	private int takenOver;

	private Kills(Path root, long seed) {
		this.root = root;
		this.random = new Random(seed);
	}

	/**
	 * @param root where the archive is made; does not exist yet
	 * @throws IllegalStateException telling what was found, if an archive is neither as before a save nor as after it
	 */
	public static Report run(Path root, int kills, long seed) throws IOException, InterruptedException {
		try (OpenArchive open = new ArchiveStore().create(root, "state 0")) {
			SampleArchives.fill(open.archive(), seed, 3, 40);
			SavingChild.change(open.archive(), 0);
			open.savePoint(Person.named("M.Q."), null);
		}
		Kills run = new Kills(root, seed);
		for (int i = 0; i < kills; i++) {
			run.killOne();
		}
		return new Report(kills, run.old, run.fresh, run.duringSave, run.commitInterrupted, run.takenOver);
	}

	private void killOne() throws IOException, InterruptedException {
		String saving = null;
		boolean returned = false;
		try (ChildJvm child = ChildJvm.start(SavingChild.class, root.toString(), Integer.toString(next))) {
			int rounds = 1 + random.nextInt(5);
			for (int round = 0; round < rounds; round++) {
				saving = expect(child, "saving ");
				if (round < rounds - 1) {
					expect(child, "saved ");
					lastSaved = digest(saving);
				}
			}
			// the instant: some time into the last save, or a little after it
			int longest = SavingChild.isSavePoint(number(saving)) ? LONGEST_SAVE_POINT_MILLIS : LONGEST_SAVE_MILLIS;
			if (child.livesAfter(random.nextInt(longest))) {
				child.kill();
			}
			for (String line = child.line(); line != null; line = child.line()) {
				returned |= line.startsWith("saved ");
				if (line.startsWith("saving ")) {
					lastSaved = digest(saving);
					saving = line;
					returned = false;
				} else if (line.startsWith("saved ")) {
					lastSaved = digest(saving);
				}
			}
		}
		inspect(saving, returned);
		next = number(saving) + 1;
	}

	private static int number(String saving) {
		return Integer.parseInt(saving.split(" ")[1]);
	}

	private static String expect(ChildJvm child, String start) throws IOException {
		String line = child.line();
		if (line == null || !line.startsWith(start)) {
			throw new IllegalStateException("the child said '" + line + "' in place of '" + start + "'");
		}
		return line;
	}

	private static String digest(String saving) {
		return saving.substring(saving.lastIndexOf(' ') + 1);
	}

	private void inspect(String saving, boolean returned) throws IOException {
		String expected = digest(saving);
		String seen = stateForReaders();
		boolean committing = Files.exists(root.resolve(".cairnfield/committing"));
		try (OpenArchive open = new ArchiveStore().open(root, Mode.EDIT)) {
			require(open.damages().isEmpty(), "damaged: " + open.damages());
			String digest = open.digest();
			require(digest.equals(seen), "the reader before the recovery saw another state");
			boolean isNew = digest.equals(expected);
			require(isNew || lastSaved == null || digest.equals(lastSaved), "neither the old state nor the new one");
			require(isNew || !returned, "a save that had returned is lost");
			fresh += isNew ? 1 : 0;
			old += isNew ? 0 : 1;
			duringSave += returned ? 0 : 1;
			commitInterrupted += committing ? 1 : 0;
			takenOver += open.tookOverFrom().isPresent() ? 1 : 0;
			lastSaved = digest;
			// work goes on: a save point can be made, and what it holds is what was found
			open.archive().setName(open.archive().getName() + '+');
			open.savePoint(Person.named("M.Q."), "after the kill");
			lastSaved = open.digest();
			try (History history = open.history()) {
				SavePoint last = history.last();
				require(history.open(last).digest().equals(lastSaved), "the save point holds something else");
				require(history.compareWithSaved(last).isEmpty(), "files differ from the save point");
			}
		}
	}

	private String stateForReaders() throws IOException {
		try (OpenArchive reader = new ArchiveStore().open(root, Mode.READ)) {
			require(reader.damages().equals(List.of()), "damaged for a reader: " + reader.damages());
			return reader.digest();
		}
	}

	private static void require(boolean holds, String otherwise) {
		if (!holds) {
			throw new IllegalStateException(otherwise);
		}
	}
}
