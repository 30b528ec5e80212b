package org.cairnfield.benchmarks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.ArchiveDiff;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.check.RuleCheck;
import org.cairnfield.curation.rules.RuleRun;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;

/**
 * Archives on disk, in surveys of 1,000 samples: opened, saved after one sample was moved, kept as a draft, checked,
 * compared. Opening and saving are measured in a fresh JVM too, as a person meets them; of the rest the median counts.
 */
final class StorageBenchmark implements Benchmark {

	private static final int AIM_SAMPLES = 20_000;
	private static final int LARGEST = 1_000_000;

	private final Map<String, SimpleRegression> growth = new LinkedHashMap<>();

	@Override
	public void run(Harness harness) throws Exception {
		Path folder = Files.createTempDirectory(harness.folder(), "storage");
		try {
			new ArchiveStore().create(folder.resolve("empty"), "empty").close();
			for (int n : harness.quick() ? new int[] { 5_000 } : new int[] { 5_000, AIM_SAMPLES, 80_000 }) {
				Path archive = folder.resolve(Integer.toString(n));
				Archives.make(harness.maps(), archive, n);
				first(harness, archive, n);
				warm(harness, archive, n);
			}
			if (!harness.quick()) {
				harness.say("%nexponent of growth of CPU time, fitted over all sizes");
				growth.forEach((name, line) -> harness.figure("growth", name, "exponent", line.getSlope(), ""));
			}
			int most = harness.quick() ? 100_000 : LARGEST;
			Path archive = folder.resolve(Integer.toString(most));
			Archives.make(harness.maps(), archive, most);
			first(harness, archive, most);
		} finally {
			delete(folder);
		}
	}

	private static String data(int samples) {
		return String.format(Locale.ROOT, "archive of %,d samples", samples);
	}

	private static void first(Harness harness, Path archive, int samples) throws Exception {
		FirstOpening.Figures f = FirstOpening.measure(archive.resolveSibling("empty"), archive);
		String data = data(samples) + ", first time in a JVM of 1 GiB";
		String aim = samples == AIM_SAMPLES ? "≤ 1" : samples == LARGEST ? "≤ 15" : "";
		harness.say("%n%s", data);
		harness.figure(data, "before it an empty archive, which loads the libraries", "s", f.emptyWall(), "");
		harness.figure(data, "before it an empty archive, CPU", "s", f.emptyCpu(), "");
		harness.figure(data, "open for editing", "s", f.openWall(), aim);
		harness.figure(data, "open for editing, CPU", "s", f.openCpu(), "");
		harness.figure(data, "save after one sample was moved", "s", f.saveWall(), "");
		harness.figure(data, "save after one sample was moved, CPU", "s", f.saveCpu(), "");
		harness.figure(data, "save point of it", "s", f.pointWall(), "");
		harness.figure(data, "save point of it, CPU", "s", f.pointCpu(), "");
		harness.figure(data, "memory kept", "MiB", f.usedMiB(), samples == LARGEST ? "≤ 1024" : "");
		harness.agree("samples read", f.samples() == samples);
	}

	private void warm(Harness harness, Path folder, int samples) throws IOException {
		Workers workers = harness.workers(Machine.cores());
		Path drafts = folder.resolveSibling("drafts");
		try (OpenArchive open = new ArchiveStore().open(folder, Mode.EDIT); History history = open.history()) {
			SavePoint before = history.last();
			changeAll(open, 0);
			SavePoint changed = open.savePoint(Archives.PERSON, null).orElseThrow();
			Archives.moveOne(Archives.first(open.archive()), 1, -1);
			SavePoint one = open.savePoint(Archives.PERSON, null).orElseThrow();
			int[] place = { 0 };
			Subject<String> reading = new Subject<>("open for reading", () -> checked(() -> openAndClose(folder)));
			Subject<Integer> save = new Subject<>("save after one sample was moved", () -> checked(() -> {
				Archives.moveOne(Archives.first(open.archive()), 0, ++place[0]);
				return open.save().size();
			}));
			Subject<Boolean> draft = new Subject<>("draft after one sample was moved", () -> checked(() -> {
				Archives.moveOne(Archives.first(open.archive()), 0, ++place[0]);
				return open.drafts().write(drafts);
			}));
			Subject<RuleCheck> check = new Subject<>("check, all rules", () -> RuleCheck.of(open.archive(),
					new RuleRun(CleaningRules.registry().all()), workers));
			Subject<ArchiveDiff> compareAll = new Subject<>("compare states, a sample of each survey moved",
					() -> checked(() -> history.compare(before, changed)));
			Subject<ArchiveDiff> compareOne = new Subject<>("compare states, one sample moved",
					() -> checked(() -> history.compare(changed, one)));
			List<Subject<?>> subjects = new ArrayList<>(List.of(reading, save, draft, check, compareAll, compareOne));
			harness.measure(samples > AIM_SAMPLES ? 1 : 3, subjects);
			Subject<Boolean> draftAll = new Subject<>("draft after a sample of each survey was moved",
					() -> checked(() -> {
						changeAll(open, ++place[0]);
						return open.drafts().write(drafts);
					}));
			harness.measure(3, List.of(draftAll));
			subjects.add(draftAll);
			harness.times(data(samples)
					+ (samples == AIM_SAMPLES ? " (aims: check ≤ 5 s, compare ≤ 2 s; draft every few seconds)" : ""),
					subjects, save);
			for (Subject<?> s : subjects) {
				growth.computeIfAbsent(s.name(), name -> new SimpleRegression()).addData(Math.log(samples),
						Math.log(s.cpu()));
			}
			harness.agree("one file saved", save.result() == 1);
			harness.agree("surveys that differ", compareAll.result().surveys().size() == surveys(open)
					&& compareOne.result().surveys().size() == 1);
			harness.agree("no rule broke", check.result().result().failed().isEmpty());
		}
	}

	private static String openAndClose(Path folder) throws IOException {
		try (OpenArchive open = new ArchiveStore().open(folder, Mode.READ)) {
			return open.archive().getName();
		}
	}

	private static void changeAll(OpenArchive open, double metres) {
		for (Site site : open.archive().getSites()) {
			for (Survey survey : site.getSurveys()) {
				Archives.moveOne(survey, survey.table().size() / 2, metres);
			}
		}
	}

	private static int surveys(OpenArchive open) {
		return open.archive().getSites().stream().mapToInt(site -> site.getSurveys().size()).sum();
	}

	private static <T> T checked(Callable<T> work) {
		try {
			return work.call();
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		} catch (Exception e) {
			throw new IllegalStateException(e);
		}
	}

	private static void delete(Path folder) throws IOException {
		try (Stream<Path> files = Files.walk(folder)) {
			for (Path file : (Iterable<Path>) files.sorted(Comparator.reverseOrder())::iterator) {
				Files.delete(file);
			}
		}
	}
}
