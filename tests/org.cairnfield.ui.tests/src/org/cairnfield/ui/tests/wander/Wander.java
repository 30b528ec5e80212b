package org.cairnfield.ui.tests.wander;

import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.ui.tests.child.ChildWorkbench;
import org.cairnfield.ui.tests.wander.Diary.State;

/** Starts workbenches one after the other on one archive, lets each be wandered through, and kills most of them. */
public final class Wander {

	/** Unsaved work is on disk so long after a change at the latest, on a busy machine. */
	private static final long PATIENCE_MILLIS = 15_000;
	private static final int START_SECONDS = 300;
	private static final int LIVES_PER_MISS = 10;

	private final Path folder;
	private final Path archive;
	private final Dice dice;
	private final long end;
	private int lives;
	private int kills;
	private int lost;
	private long steps;

	/**
	 * @param folder  for all that comes of it
	 * @param archive is worked on
	 * @param millis  how long
	 */
	public Wander(Path folder, Path archive, long seed, long millis) {
		this.folder = folder;
		this.archive = archive;
		dice = new Dice(seed);
		end = System.currentTimeMillis() + millis;
	}

	/** Wanders; fails with what led to the first problem. */
	public void run() throws Exception {
		Set<String> expected = Set.of();
		while (System.currentTimeMillis() < end) {
			expected = life(expected);
		}
		if (!expected.isEmpty()) { // the last was killed: it must still come back
			life(expected);
		}
	}

	/** Acts that were done. */
	public long steps() {
		return steps;
	}

	/** What was done, in one line. */
	public String summary() {
		return steps + " steps in " + lives + " lives, " + kills + " of them killed, " + lost
				+ " ended where the robot waited in vain";
	}

	/** @return digests one of which must come back, empty if the program was left in peace */
	private Set<String> life(Set<String> expected) throws Exception {
		Path own = Files.createDirectories(folder.resolve("life-" + ++lives));
		long millis = Math.max(8_000, Math.min(end - System.currentTimeMillis(), dice.between(15, 70) * 1000L));
		boolean kill = !dice.onceIn(3) && System.currentTimeMillis() + millis < end;
		Process child = ChildWorkbench.start(folder.resolve("home"), archive, List.of("-D" + Life.FOLDER + '=' + own,
				"-D" + Life.SEED + '=' + dice.seed(), "-D" + Life.MILLIS + '=' + (kill ? 10 : 1) * millis,
				"-D" + Life.EXPECTED + '=' + String.join(",", expected)), Map.of(), own.resolve("output"));
		try {
			if (kill) {
				begin(child, own);
			}
			boolean ended = child.waitFor(kill ? millis : millis + 1000L * START_SECONDS, TimeUnit.MILLISECONDS);
			steps += count(own.resolve("steps"));
			if (!ended && kill) {
				child.destroyForcibly().waitFor();
				kills++;
				return lastStates(own, System.currentTimeMillis());
			}
			if (!ended || child.exitValue() == Life.LOST) {
				child.destroyForcibly().waitFor();
				return miss(own, expected, ended ? "the robot waited in vain" : "it did not end");
			}
			if (child.exitValue() != 0) {
				problem(own, "it ended with " + child.exitValue());
			}
			compare(own);
			return Set.of();
		} finally {
			child.destroyForcibly();
		}
	}

	/** A robot may miss a button now and then; a program that does nothing goes on so, and is a problem. */
	private Set<String> miss(Path own, Set<String> expected, String what) throws Exception {
		lost++;
		System.out.println("life " + lives + ": " + what);
		if (lost > 1 + lives / LIVES_PER_MISS) {
			problem(own, what + ", " + lost + " times in all");
		}
		return Files.exists(own.resolve("diary")) ? lastStates(own, System.currentTimeMillis()) : expected; // it ended at once
	}

	private static void begin(Process child, Path own) throws Exception {
		long limit = System.nanoTime() + START_SECONDS * 1_000_000_000L;
		while (child.isAlive() && !Files.exists(own.resolve("diary")) && System.nanoTime() < limit) {
			child.waitFor(100, TimeUnit.MILLISECONDS);
		}
	}

	/** The last state, and those so shortly before that the program need not have noticed them; all of what a save left. */
	private Set<String> lastStates(Path own, long now) throws Exception {
		List<State> states = Diary.read(own.resolve("diary"));
		Set<String> last = new LinkedHashSet<>();
		for (int i = 0; i < states.size(); i++) {
			long until = i + 1 < states.size() ? states.get(i + 1).sinceMillis() : now;
			if (until >= now - PATIENCE_MILLIS) {
				last.add(states.get(i).digest());
			}
		}
		if (last.isEmpty()) {
			problem(own, "it did not begin");
		}
		if (!states.get(0).saved()
				&& states.stream().anyMatch(state -> state.saved() && last.contains(state.digest()))) {
			last.add(states.get(0).digest()); // brought back, undone, and offered again until what came then has a draft
		}
		if (isUndoing(own)) { // the draft goes at once where all is undone, a moment before the diary has it
			states.stream().filter(State::saved).reduce((one, next) -> next)
					.ifPresent(state -> last.add(state.digest()));
		}
		return last;
	}

	private static boolean isUndoing(Path own) throws IOException {
		List<String> steps = Files.readAllLines(own.resolve("steps"));
		return !steps.isEmpty() && steps.get(steps.size() - 1).contains(" undo");
	}

	/** What was saved at the end of the day is what the disk has. */
	private void compare(Path own) throws Exception {
		List<State> states = Diary.read(own.resolve("diary"));
		try (OpenArchive onDisk = new ArchiveStore().open(archive, Mode.READ)) {
			State last = states.get(states.size() - 1);
			if (!last.saved() || !last.digest().equals(onDisk.digest()) || !onDisk.damages().isEmpty()) {
				problem(own, "after save and leave the disk has " + onDisk.digest() + onDisk.damages()
						+ ", the program had " + last);
			}
		}
	}

	private void problem(Path own, String what) throws IOException {
		List<String> text = new ArrayList<>();
		text.add(what + " (life " + lives + ", all of it in " + own + ")");
		for (String file : List.of("problem", "lost", "steps", "output")) {
			if (Files.exists(own.resolve(file))) {
				List<String> lines = Files.readAllLines(own.resolve(file));
				text.add("-- " + file);
				text.addAll(file.equals("problem") || file.equals("lost") ? lines
						: lines.subList(Math.max(0, lines.size() - 30), lines.size()));
			}
		}
		fail(String.join("\n", text));
	}

	private static long count(Path steps) throws IOException {
		if (!Files.exists(steps)) {
			return 0;
		}
		try (Stream<String> lines = Files.lines(steps)) {
			return lines.filter(line -> line.endsWith("  done")).count();
		}
	}
}
