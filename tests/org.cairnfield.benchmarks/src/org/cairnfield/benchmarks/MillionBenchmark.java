package org.cairnfield.benchmarks;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.check.RuleCheck;
import org.cairnfield.curation.intake.SurveyTaking;
import org.cairnfield.curation.measure.PackRequest;
import org.cairnfield.curation.propose.SetProposalsCommand;
import org.cairnfield.curation.propose.SplitProposals;
import org.cairnfield.curation.release.Gate;
import org.cairnfield.curation.release.GateCheck;
import org.cairnfield.curation.release.GateResult;
import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.curation.release.ReleaseManifest;
import org.cairnfield.curation.release.SemanticVersion;
import org.cairnfield.curation.rules.RuleRun;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.cairnfield.curation.split.AddSplitsCommand;
import org.cairnfield.curation.split.SplitMaker;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.curation.split.SplitPlan;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.curation.split.SplitStudies;
import org.cairnfield.exchange.Intake;
import org.cairnfield.exchange.IntakeOptions;
import org.cairnfield.exchange.SurveyIntake;
import org.cairnfield.exchange.WideTable;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Scope;

/** The whole job on a map of many sites out of each other's earshot, one step after the other in one JVM. */
final class MillionBenchmark implements Benchmark {

	private static final long SEED = 7;
	private static final int SITES = 50;
	private static final int FLOORS = 4;
	private static final int ACCESS_POINTS_A_SITE = 60;
	private static final int TESTS_A_SITE = 20;
	/** Leaves 30 % noise. */
	private static final double EPSILON_DB = 115;
	/** Promised to end within a fifth more. */
	private static final Duration CHOICE = Duration.ofSeconds(60);

	private Harness harness;
	private String data;

	@Override
	public void run(Harness with) throws Exception {
		harness = with;
		int samples = harness.quick() ? 50_000 : 1_000_000;
		data = String.format(Locale.ROOT, "%,d samples in %d sites", samples, SITES);
		Path folder = Files.createTempDirectory(harness.folder(), "million");
		try {
			whole(folder, samples, harness.workers(Machine.cores()));
		} finally {
			try (Stream<Path> files = Files.walk(folder)) {
				for (Path file : (Iterable<Path>) files.sorted(Comparator.reverseOrder())::iterator) {
					Files.delete(file);
				}
			}
		}
	}

	private void whole(Path folder, int samples, Workers workers) throws Exception {
		List<Path> surveys = surveys(folder, samples, false, workers);
		List<Path> tests = surveys(folder, SITES * TESTS_A_SITE, true, workers);
		Path place = folder.resolve("archive");
		step("take in, one survey file a site", () -> takeIn(place, surveys, tests, workers));
		try (OpenArchive open = step("open for editing", () -> new ArchiveStore().open(place, Mode.EDIT))) {
			Archive archive = open.archive();
			step("check, all rules", () -> {
				RuleCheck check = RuleCheck.of(archive, new RuleRun(CleaningRules.registry().all()), workers);
				harness.agree("no rule broke", check.result().failed().isEmpty());
				return check.open().size();
			});
			SplitMaker maker = new SplitMaker(new SplitStudies(1));
			Split given = step("split by a given ε",
					() -> split(maker, archive, SplitRequest.automatic(SEED).published(EPSILON_DB, 3), workers));
			step("propose", () -> SplitProposals.of(SplitOnMap.of(archive, given), 0.1, 0.1, workers));
			Split chosen = step("choose ε and search",
					() -> split(maker, archive, SplitRequest.automatic(SEED).within(CHOICE), workers));
			harness.say("    %s", chosen.getSearchReason());
			new AddSplitsCommand(archive, List.of(chosen)).execute();
			new SetProposalsCommand(chosen, SplitProposals.of(SplitOnMap.of(archive, chosen), 0.1, 0.1, workers))
					.execute();
			open.save(Archives.PERSON);
			ReleaseBook book = new ReleaseBook(open, Clock.systemUTC());
			GateCheck asked = step("measure and check the gates", () -> book.ask(PackRequest.USUAL, workers));
			step("release", () -> release(book, asked));
		}
	}

	private static Split split(SplitMaker maker, Archive archive, SplitRequest request, Workers workers) {
		return maker.make(archive, new SplitPlan("split", Scope.ARCHIVE, false, request), workers).splits().get(0);
	}

	/** Nobody has cleaned or reviewed, so what the gates hold back is overruled. */
	private static String release(ReleaseBook book, GateCheck asked) throws IOException {
		Map<Gate, GateResult.Overrule> all = new EnumMap<>(Gate.class);
		asked.holding().forEach(
				result -> all.put(result.gate(), new GateResult.Overrule(Archives.PERSON.name(), "benchmark")));
		ReleaseManifest manifest = book.prepare(SemanticVersion.parse("1.0.0"), asked.overruled(all), Archives.PERSON,
				null);
		return book.sign(manifest.version(), Archives.PERSON, null).version();
	}

	private static Object takeIn(Path place, List<Path> surveys, List<Path> tests, Workers workers) throws Exception {
		try (OpenArchive open = new ArchiveStore().create(place, "Marrow Quay Museums")) {
			take(open.archive(), surveys, SurveyKind.TRAINING, workers);
			take(open.archive(), tests, SurveyKind.TEST, workers);
			return open.savePoint(Archives.PERSON, null);
		}
	}

	private static void take(Archive archive, List<Path> files, SurveyKind kind, Workers workers) throws Exception {
		Intake intake = SurveyIntake.read(files, IntakeOptions.GUESS, workers);
		SurveyTaking.of(archive, intake, s -> true, kind).command().execute();
	}

	private List<Path> surveys(Path folder, int samples, boolean tests, Workers workers) throws Exception {
		CampusSize size = CampusSize.of(SITES, FLOORS, SITES * ACCESS_POINTS_A_SITE).apart();
		RadioMap map = tests ? RandomMap.testOf(SEED, size, samples, workers)
				: RandomMap.of(SEED, size, samples, workers);
		List<Path> files = new ArrayList<>();
		long bytes = 0;
		for (int site = 0; site < map.sites().size(); site++) {
			int of = site;
			RadioMap one = alone(map.atSite(site));
			Path file = folder.resolve(String.format(Locale.ROOT, "site-%02d%s.csv", site, tests ? "-test" : ""));
			WideTable.write(file, one, IntStream.rangeClosed(1, one.size()).mapToObj(i -> of + "-" + i).toList());
			files.add(file);
			bytes += Files.size(file);
		}
		harness.figure(data, tests ? "test files" : "survey files", "MB", bytes / 1e6, "");
		return files;
	}

	/** Without the access points of other sites. */
	private static RadioMap alone(RadioMap site) {
		RadioMapBuilder builder = new RadioMapBuilder();
		for (int s = 0; s < site.size(); s++) {
			builder.sample(site.sites().get(site.site(s)), site.floor(s), site.x(s), site.y(s))
					.time(site.timeMillis(s));
			for (int k = site.firstReading(s); k < site.endReading(s); k++) {
				builder.reading(site.accessPoints().get(site.accessPoint(k)), site.rssiDbm(k));
			}
		}
		return builder.build();
	}

	private <T> T step(String name, Callable<T> work) throws Exception {
		for (MemoryPoolMXBean pool : ManagementFactory.getMemoryPoolMXBeans()) {
			pool.resetPeakUsage();
		}
		long wall = System.nanoTime();
		long cpu = Machine.cpuNanos();
		T result = work.call();
		harness.figure(data, name, "s", (System.nanoTime() - wall) / 1e9, "");
		harness.figure(data, name + ", CPU", "s", (Machine.cpuNanos() - cpu) / 1e9, "");
		long peak = ManagementFactory.getMemoryPoolMXBeans().stream().filter(pool -> pool.getType() == MemoryType.HEAP)
				.mapToLong(pool -> pool.getPeakUsage().getUsed()).sum();
		harness.figure(data, name + ", peak heap, garbage included", "MiB", peak / 1048576.0, "");
		return result;
	}
}
