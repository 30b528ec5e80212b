package org.cairnfield.archive.torture;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.SampleArchives;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.internal.merge.RandomWork;
import org.cairnfield.archive.remote.RemoteUrl;
import org.cairnfield.core.task.Progress;

/**
 * Kills processes while they exchange an archive, each before another of the steps by which an exchange changes the disk, here
 * and at the remote, and looks after each kill whether anything is lost: in the archive, at the remote, and for the other
 * person, who goes on working.
 */
public final class ExchangeKills {

	/**
	 * How far the killed processes had come.
	 *
	 * @param steps of one exchange in which nothing is to be decided
	 * @param atRemote kills right before a step at the remote
	 * @param before how often one was killed before each kind of step
	 */
	public record Report(int kills, int steps, int untouched, int takenIn, int sent, int ended, int atRemote,
			int remoteLocks, SortedMap<String, Integer> before) {

		@Override
		public String toString() {
			StringBuilder text = new StringBuilder();
			before.forEach((step, times) -> text.append(times).append(" before ").append(step).append('\n'));
			return text.append(kills).append(" kills at ").append(steps).append(" steps, ").append(before.size())
					.append(" kinds of step: ")
					.append(untouched).append(" left the archive untouched, ").append(takenIn)
					.append(" with the others' work taken in, ")
					.append(sent).append(" with all sent; ").append(ended).append(" had ended; ").append(atRemote)
					.append(" before a step at the remote; ").append(remoteLocks)
					.append(" locks left at the remote; nothing lost").toString();
		}
	}

	private static final String ANN = "Ann";
	private static final String BEN = "Ben";

	private final Path folder;
	private final Path meeting;
	private final Random random;
	private final ArchiveStore store = new ArchiveStore();
	private final SortedSet<String> given = new TreeSet<>();
	private final SortedMap<String, Integer> before = new TreeMap<>();
	private int untouched;
	private int takenIn;
	private int sent;
	private int ended;
	private int remoteLocks;

	private ExchangeKills(Path folder, long seed) {
		this.folder = folder;
		this.meeting = folder.resolve("meeting.git");
		this.random = new Random(seed);
	}

	/** For a command: {@code FOLDER KILLS SEED}. */
	public static void main(String[] args) throws IOException, InterruptedException {
		System.out.println("seed " + args[2]);
		System.out.println(run(Path.of(args[0]), Integer.parseInt(args[1]), Long.parseLong(args[2])));
	}

	/**
	 * @param folder does not exist yet
	 * @throws IllegalStateException telling what was found, if something is lost or not sound
	 */
	public static Report run(Path folder, int kills, long seed) throws IOException, InterruptedException {
		ExchangeKills run = new ExchangeKills(folder, seed);
		run.meet(seed);
		int steps = run.exchange(Integer.MAX_VALUE, true).size();
		run.ended = 0;
		int stride = (steps + kills - 1) / kills;
		int step = run.random.nextInt(stride);
		boolean apart = true;
		for (int killed = 0; killed < kills;) {
			List<String> taken = run.exchange(step, apart);
			if (taken.size() > step) {
				run.before.merge(taken.get(step), 1, Integer::sum);
				killed++;
				step += stride;
				apart = run.random.nextInt(3) > 0;
			} else if (!apart) {
				apart = true; // nothing is sent while there is something to decide
			} else {
				step = run.random.nextInt(stride); // it has ended: from the beginning, until there are enough
			}
		}
		int atRemote = run.before.entrySet().stream().filter(one -> one.getKey().startsWith(DiskSteps.AT_THE_REMOTE))
				.mapToInt(Map.Entry::getValue).sum();
		return new Report(kills, steps, run.untouched, run.takenIn, run.sent, run.ended, atRemote, run.remoteLocks,
				run.before);
	}

	private void meet(long seed) throws IOException {
		try (OpenArchive open = store.create(folder.resolve(ANN), "Marrow Quay")) {
			SampleArchives.fill(open.archive(), seed, 3, 40);
			open.exchange().connect(RemoteUrl.parse(meeting.toString()));
			Files.writeString(meeting.resolve("config"), "[receive]\n\tautogc = false\n", StandardOpenOption.APPEND); // it keeps packs for an hour
			exchange(open, ANN);
		}
		store.copy(RemoteUrl.parse(meeting.toString()), folder.resolve(BEN), Progress.NONE);
	}

	private static void exchange(OpenArchive open, String person) throws IOException {
		open.exchange().run(Person.named(person), null, true, Progress.NONE);
	}

	/**
	 * Both have worked, and one process exchanges.
	 *
	 * @param steps after which it is killed
	 * @param apart where nothing will have to be decided
	 * @return the steps that it took, and the one before which it was killed
	 */
	private List<String> exchange(int steps, boolean apart) throws IOException, InterruptedException {
		String sentByBen;
		boolean returned = false;
		List<String> taken;
		try (DiskSteps disk = DiskSteps.listen();
				ChildJvm child = ChildJvm.start(List.of(disk.option()), ExchangingChild.class,
						folder.resolve(ANN).toString(), ANN, Long.toString(random.nextLong()))) {
			disk.accept();
			expect(child, "saved ");
			work(BEN, apart);
			sentByBen = tip();
			disk.watch();
			child.send("go");
			taken = disk.take(steps);
			child.kill();
			for (String line = child.line(); line != null; line = child.line()) {
				require(!line.startsWith("refused"), line);
				returned |= line.startsWith("exchanged ");
			}
		}
		inspect(sentByBen, returned);
		return taken;
	}

	/** A day's work of somebody else, in this process. */
	private void work(String person, boolean apart) throws IOException {
		try (OpenArchive open = store.open(folder.resolve(person), Mode.EDIT)) {
			Random day = new Random(random.nextLong());
			if (apart) {
				RandomWork.apart(open.archive(), person, day);
			} else {
				RandomWork.in(open.archive(), person, day);
			}
			open.savePoint(Person.named(person), null);
			given.addAll(ids(open));
			exchange(open, person);
		}
	}

	private static String expect(ChildJvm child, String start) throws IOException {
		String line = child.line();
		require(line != null && line.startsWith(start), "the child said '" + line + "' in place of '" + start + "'");
		return line;
	}

	private static SortedSet<String> ids(OpenArchive open) {
		SortedSet<String> ids = new TreeSet<>();
		open.archive().getLedgers().forEach(
				ledger -> ledger.getVerdicts().forEach(verdict -> ids.add(ledger.getId() + ' ' + verdict.getId())));
		return ids;
	}

	/** @param sentByBen the save point that was to come in */
	private void inspect(String sentByBen, boolean returned) throws IOException {
		remoteLocks += clearLocks(meeting);
		String merged;
		try (OpenArchive open = store.open(folder.resolve(ANN), Mode.EDIT)) {
			require(open.damages().isEmpty(), "damaged: " + open.damages());
			boolean old;
			boolean there;
			try (History history = open.history()) {
				SavePoint last = history.last();
				require(history.compareWithSaved(last).isEmpty(), "files differ from the last save point: half merged");
				old = history.list(Integer.MAX_VALUE).stream().noneMatch(point -> point.id().equals(sentByBen));
				there = last.id().equals(tip());
			}
			require(!returned || !old && there, "an exchange that had returned is lost");
			untouched += old ? 1 : 0;
			takenIn += old || there ? 0 : 1;
			sent += there && !returned ? 1 : 0;
			ended += returned ? 1 : 0;
			exchange(open, ANN);
			given.addAll(ids(open));
			require(ids(open).containsAll(given), "verdicts are gone");
			merged = open.digest();
		}
		try (OpenArchive other = store.open(folder.resolve(BEN), Mode.EDIT)) {
			exchange(other, BEN);
			require(other.damages().isEmpty(), "damaged for the other: " + other.damages());
			require(other.digest().equals(merged), "the two have different states");
			require(ids(other).containsAll(given), "verdicts are gone for the other");
			other.archive().getConflicts().clear(); // somebody decides for what was before, so that there is room for others
			exchange(other, BEN);
		}
	}

	/** The last save point at the remote. */
	private String tip() throws IOException {
		Path loose = meeting.resolve("refs/heads/main");
		if (Files.exists(loose)) {
			return Files.readString(loose).strip();
		}
		return Files.readAllLines(meeting.resolve("packed-refs")).stream()
				.filter(line -> line.endsWith(" refs/heads/main")).findFirst().orElseThrow().split(" ")[0];
	}

	/** As the message says that a person gets who finds them. Of what is left of a pack, a minute passes. */
	private static int clearLocks(Path git) throws IOException {
		List<Path> locks = new ArrayList<>();
		Files.walkFileTree(git, new SimpleFileVisitor<Path>() {
			@Override
			public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
				if (file.getFileName().toString().endsWith(".lock")
						&& !file.getFileName().toString().endsWith(".keep.lock")
						&& !file.getFileName().toString().startsWith("gc.")) {
					locks.add(file);
				}
				return FileVisitResult.CONTINUE;
			}

			@Override
			public FileVisitResult visitFileFailed(Path file, IOException e) throws IOException {
				if (e instanceof NoSuchFileException) { // the history is being packed
					return FileVisitResult.CONTINUE;
				}
				throw e;
			}
		});
		try (Stream<Path> packs = Files.list(git.resolve("objects/pack"))) {
			for (Path pack : (Iterable<Path>) packs::iterator) {
				if (Files.exists(pack)) {
					Files.setLastModifiedTime(pack, FileTime.from(Instant.now().minusSeconds(90)));
				}
			}
		}
		for (Path lock : locks) {
			System.out.println("left behind: " + git.relativize(lock));
			Files.delete(lock);
		}
		return locks.size();
	}

	private static void require(boolean holds, String otherwise) {
		if (!holds) {
			throw new IllegalStateException(otherwise);
		}
	}
}
