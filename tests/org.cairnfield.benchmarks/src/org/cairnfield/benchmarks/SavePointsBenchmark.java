package org.cairnfield.benchmarks;

import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.model.Archive;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;
import org.eclipse.jgit.internal.storage.pack.PackWriter;
import org.eclipse.jgit.lib.NullProgressMonitor;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;

/**
 * One large survey, and fifty save points that change one sample each: what they take in the folder of Git, what a push of
 * them sends, and the processor time of each. The archive is opened for every ten, as on five days.
 */
final class SavePointsBenchmark implements Benchmark {

	private static final int SAMPLES = 21_000;
	private static final int DAYS = 5;
	private static final int POINTS_A_DAY = 10;
	private static final double MIB = 1048576;

	private final SplittableRandom random = new SplittableRandom(21);

	@Override
	public void run(Harness harness) throws Exception {
		Path folder = Files.createTempDirectory(harness.folder(), "savepoints");
		int samples = harness.quick() ? 5_000 : SAMPLES;
		String data = String.format(Locale.ROOT, "one survey of %,d samples, 520 access points", samples);
		Path archive = folder.resolve("archive");
		RadioMap map = harness.maps().of(CampusSize.of(1, 4, 520), samples);
		long start = cpuNanos();
		try (OpenArchive open = new ArchiveStore().create(archive, "Marrow Quay Museums")) {
			fill(open.archive(), map);
			open.savePoint(Archives.PERSON, "intake");
		}
		harness.say("%n%s", data);
		harness.figure(data, "first save point, and closing, CPU", "s", (cpuNanos() - start) / 1e9, "");
		harness.figure(data, "files of the survey", "MiB", size(archive.resolve("surveys")) / MIB, "");
		state(harness, data + ", after 0", archive);
		ObjectId pushed = head(archive);
		long sent = 0;
		double[] seconds = new double[DAYS * POINTS_A_DAY];
		for (int day = 0; day < DAYS; day++) {
			double closing = day(archive, seconds, day * POINTS_A_DAY);
			String now = data + ", after " + (day + 1) * POINTS_A_DAY;
			state(harness, now, archive);
			long bytes = pack(archive, pushed);
			sent += bytes;
			harness.figure(now, "sent by a push of the last ten", "MiB", bytes / MIB, "");
			harness.figure(now, "closing after the last ten, CPU", "s", closing, "");
			pushed = head(archive);
		}
		Arrays.sort(seconds);
		harness.say("%n%s", data);
		harness.figure(data, "a save point, CPU, median", "s", seconds[seconds.length / 2], "");
		harness.figure(data, "a save point, CPU, longest", "s", seconds[seconds.length - 1], "");
		harness.figure(data, "sent by five pushes", "MiB", sent / MIB, "");
		long packed = pack(archive, null);
		harness.figure(data, "the same history in one pack", "MiB", packed / MIB, "");
		harness.figure(data, ".git, times the one pack", "", (double) size(archive.resolve(".git")) / packed, "≤ 3");
		try (Stream<Path> files = Files.walk(folder)) {
			for (Path file : (Iterable<Path>) files.sorted(Comparator.reverseOrder())::iterator) {
				Files.delete(file);
			}
		}
	}

	private static long cpuNanos() {
		return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
	}

	/** @return seconds that closing took */
	private double day(Path archive, double[] seconds, int from) throws IOException {
		OpenArchive open = new ArchiveStore().open(archive, Mode.EDIT);
		long closing;
		try (open) {
			for (int n = 0; n < POINTS_A_DAY; n++) {
				Survey survey = Archives.first(open.archive());
				Archives.moveOne(survey, random.nextInt(survey.table().size()), from + n);
				long start = cpuNanos();
				open.savePoint(Archives.PERSON, null).orElseThrow();
				seconds[from + n] = (cpuNanos() - start) / 1e9;
			}
			closing = cpuNanos();
		}
		return (cpuNanos() - closing) / 1e9;
	}

	private static void state(Harness harness, String data, Path archive) throws IOException {
		Path git = archive.resolve(".git");
		harness.say("%s", data);
		harness.figure(data, ".git", "MiB", size(git) / MIB, "");
		harness.figure(data, ".git, packs of it", "MiB", size(git.resolve("objects/pack")) / MIB, "");
	}

	/** Bytes of a pack that brings the present state, to somebody who has another one or nothing. */
	private static long pack(Path archive, ObjectId has) throws IOException {
		AtomicLong bytes = new AtomicLong();
		try (Repository repository = open(archive); PackWriter writer = new PackWriter(repository)) {
			writer.setThin(has != null);
			writer.setUseBitmaps(false);
			writer.setReuseValidatingObjects(false);
			writer.preparePack(NullProgressMonitor.INSTANCE, Set.of(repository.resolve("HEAD")),
					has == null ? Set.of() : Set.of(has));
			writer.writePack(NullProgressMonitor.INSTANCE, NullProgressMonitor.INSTANCE, new OutputStream() {
				@Override
				public void write(int b) {
					bytes.incrementAndGet();
				}

				@Override
				public void write(byte[] buffer, int from, int length) {
					bytes.addAndGet(length);
				}
			});
		}
		return bytes.get();
	}

	private static ObjectId head(Path archive) throws IOException {
		try (Repository repository = open(archive)) {
			return repository.resolve("HEAD");
		}
	}

	private static Repository open(Path archive) throws IOException {
		return new FileRepositoryBuilder().setGitDir(archive.resolve(".git").toFile()).setMustExist(true).build();
	}

	private static long size(Path folder) throws IOException {
		try (Stream<Path> files = Files.walk(folder)) {
			return files.filter(Files::isRegularFile).mapToLong(file -> file.toFile().length()).sum();
		}
	}

	private static void fill(Archive archive, RadioMap map) {
		ModelFactory make = ModelFactory.eINSTANCE;
		Site site = make.createSite();
		site.setId("th");
		site.setName("Tide House");
		archive.getSites().add(site);
		Survey survey = make.createSurvey();
		survey.setId("spring");
		survey.setName("spring");
		survey.setDate(LocalDate.of(2031, 4, 7));
		survey.setSamples(make.createSamples());
		site.getSurveys().add(survey);
		SampleTableBuilder table = SampleTable.builder();
		for (int row = 0; row < map.size(); row++) {
			table.sample(String.format(Locale.ROOT, "TH-%05d", row), map.floor(row), map.x(row), map.y(row))
					.time(map.timeMillis(row));
			for (int k = map.firstReading(row); k < map.endReading(row); k++) {
				table.reading(map.accessPoints().get(map.accessPoint(k)).replace(":", ""), map.rssiDbm(k));
			}
		}
		survey.getSamples().setTable(table.build());
	}
}
