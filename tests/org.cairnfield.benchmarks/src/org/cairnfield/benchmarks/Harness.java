package org.cairnfield.benchmarks;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.task.Workers;

/**
 * Measures, prints and writes down. Subjects are warmed up and then run in turn (A B A B …), so that what
 * else the machine does falls on all alike; the median counts. Where others use the machine, processor time
 * says more than wall time.
 */
final class Harness implements AutoCloseable {

	private final String benchmark;
	private final boolean quick;
	private final Path folder;
	private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
	private final ExecutorService threads = Executors.newCachedThreadPool();
	private int disagreements;

	Harness(String benchmark, boolean quick, Path folder) {
		this.benchmark = benchmark;
		this.quick = quick;
		this.folder = folder;
	}

	/** One benchmark in this JVM; ends it with an error where results disagree. @param args {@code quick|full FOLDER NAME} */
	static void run(Benchmark benchmark, String[] args) throws Exception {
		Harness harness = new Harness(args[2], args[0].equals("quick"), Path.of(args[1]));
		try (harness) {
			harness.describeMachine();
			benchmark.run(harness);
		}
		if (harness.disagreements > 0) {
			System.exit(1);
		}
	}

	boolean quick() {
		return quick;
	}

	/** Where files may be written during a run. */
	Path folder() {
		return folder;
	}

	Maps maps() {
		return new Maps(folder.resolve("maps"), workers(Machine.cores()));
	}

	Workers workers(int width) {
		return width == 1 ? Workers.inline() : Workers.on(threads, width, Progress.NONE);
	}

	void describeMachine() {
		say("%n== %s%s ==", benchmark, quick ? ", quick" : "");
		say("%s; load %.1f at the start", Machine.description(), Machine.load());
	}

	void say(String format, Object... arguments) {
		out.println(String.format(Locale.ROOT, format, arguments));
	}

	/** Warms each up, then {@code runs} rounds. */
	void measure(int runs, List<? extends Subject<?>> subjects) {
		subjects.forEach(Subject::warmUp);
		round(runs, subjects);
	}

	/** Rounds without warming up: for subjects that are warm, or run for so long that it makes no odds. */
	void round(int runs, List<? extends Subject<?>> subjects) {
		for (int i = 0; i < runs; i++) {
			subjects.forEach(Subject::measure);
		}
	}

	/**
	 * Prints and writes times.
	 *
	 * @param base what the last columns are ratios to
	 */
	void times(String data, List<? extends Subject<?>> subjects, Subject<?> base) {
		say("%n%s", data);
		say("  %-62s %10s %19s %9s %5s %8s %8s", "", "median s", "min – max", "CPU s", "runs", "× time", "× CPU");
		for (Subject<?> s : subjects) {
			say("  %-62s %10.4f %8.4f – %8.4f %9.4f %5d %8.2f %8.2f", s.name(), s.wall(), s.shortest(), s.longest(),
					s.cpu(), s.runs(), s.wall() / base.wall(), s.cpu() / base.cpu());
			row(data, s.name(), "seconds", s.wall(), s.shortest(), s.longest(), s.runs());
			row(data, s.name(), "CPU seconds", s.cpu(), Double.NaN, Double.NaN, s.runs());
		}
	}

	/** Prints and writes a figure that is no time. */
	void figure(String data, String name, String unit, double value, String aim) {
		say("  %-70s %12.4g %s%s", name, value, unit,
				aim.isEmpty() ? "" : (quick ? " (aim in full: " : " (aim: ") + aim + ")");
		row(data, name, unit, value, Double.NaN, Double.NaN, 1);
	}

	/** Whether results agree; a disagreement makes the run fail at its end. */
	void agree(String what, boolean yes) {
		say("  %s: %s", yes ? "agree" : "DISAGREE", what);
		if (!yes) {
			disagreements++;
		}
	}

	@Override
	public void close() {
		say("load %.1f at the end", Machine.load());
		threads.shutdown();
	}

	private void row(String data, String subject, String unit, double value, double min, double max, int runs) {
		Path file = folder.resolve("results.csv");
		String line = String.format(Locale.ROOT, "%s,%s,\"%s\",\"%s\",%s,%.6g,%s,%s,%d,%.2f%n", benchmark,
				quick ? "quick" : "full", data, subject, unit, value, optional(min), optional(max), runs,
				Machine.load());
		try {
			if (Files.notExists(file)) {
				Files.writeString(file, "# " + Machine.description()
						+ "\nbenchmark,mode,data,subject,unit,median,min,max,runs,load\n");
			}
			Files.writeString(file, line, StandardOpenOption.APPEND);
		} catch (IOException e) {
			throw new IllegalStateException("cannot write " + file, e);
		}
	}

	private static String optional(double value) {
		return Double.isNaN(value) ? "" : String.format(Locale.ROOT, "%.6g", value);
	}
}
