package org.cairnfield.benchmarks;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.task.Workers;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.IntakeOptions;
import org.cairnfield.exchange.LongTable;
import org.cairnfield.exchange.SurveyIntake;
import org.cairnfield.exchange.WideTable;

/** Survey files read and checked, beside a library that only takes their cells apart. */
final class IntakeBenchmark implements Benchmark {

	private static final int SAMPLES_AT_ONCE = 5_000;
	private static final CampusSize SIZE = CampusSize.of(3, 4, 200);

	private interface Table {
		void write(Path file, RadioMap map, List<String> ids) throws IntakeException;
	}

	@Override
	public void run(Harness harness) throws Exception {
		long bytes = (harness.quick() ? 64L : 1024L) << 20;
		RadioMap map = harness.maps().of(SIZE, SAMPLES_AT_ONCE);
		compare(harness, "wide", WideTable::write, map, bytes);
		compare(harness, "long", LongTable::write, map, bytes);
	}

	private static void compare(Harness harness, String layout, Table table, RadioMap map, long bytes)
			throws Exception {
		Path file = harness.folder().resolve(layout + ".csv");
		long samples = write(file, table, map, bytes);
		Subject<Integer> two = new Subject<>("taken in, two workers", () -> read(file, harness.workers(2)));
		Subject<Integer> one = new Subject<>("taken in, one worker", () -> read(file, Workers.inline()));
		Subject<Integer> cells = new Subject<>("cells alone, Commons CSV", () -> cells(file));
		List<Subject<Integer>> subjects = List.of(two, one, cells);
		harness.measure(harness.quick() ? 3 : 1, subjects);
		String data = String.format(Locale.ROOT, "%s table of %,d MiB, %,d samples, %.1f heard of %d", layout,
				Files.size(file) >> 20, samples,
				(double) map.readingCount() / map.size(), map.accessPointCount());
		harness.times(data, subjects, two);
		double megabytes = Files.size(file) / 1e6;
		harness.figure(data, "two workers", "MB/s", megabytes / two.wall(), "≥ 80");
		harness.figure(data, "two workers", "MB a CPU second", megabytes / two.cpu(), "");
		harness.agree("samples", two.result() == samples && one.result() == samples);
		Files.delete(file);
	}

	/** The same samples again and again, under other names. */
	private static long write(Path file, Table table, RadioMap map, long bytes) throws Exception {
		Path part = file.resolveSibling("part.csv");
		long written = 0;
		int copy = 0;
		try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
			while (written < bytes) {
				int of = copy;
				table.write(part, map, IntStream.range(0, map.size()).mapToObj(s -> of + "-" + s).toList());
				try (InputStream in = Files.newInputStream(part)) {
					byte[] all = in.readAllBytes();
					int from = copy == 0 ? 0 : afterHeader(all);
					out.write(all, from, all.length - from);
					written += all.length - from;
				}
				copy++;
			}
		}
		Files.delete(part);
		return (long) copy * map.size();
	}

	private static int afterHeader(byte[] table) {
		int at = 0;
		while (table[at] != '\n') {
			at++;
		}
		return at + 1;
	}

	private static int read(Path file, Workers workers) {
		try {
			return SurveyIntake.read(List.of(file), IntakeOptions.GUESS, workers).map().size();
		} catch (IntakeException e) {
			throw new IllegalStateException(e);
		}
	}

	/** @return total length of the cells */
	private static int cells(Path file) {
		int length = 0;
		try (Reader in = Files.newBufferedReader(file); CSVParser parser = CSVParser.parse(in, CSVFormat.RFC4180)) {
			for (CSVRecord row : parser) {
				for (String cell : row) {
					length += cell.length();
				}
			}
			return length;
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}
}
