package org.cairnfield.ui.internal.samples.model;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.cairnfield.core.task.Progress;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.filter.SampleFilter;
import org.cairnfield.curation.run.Threads;
import org.cairnfield.curation.samples.ClusterMarks;
import org.cairnfield.curation.samples.FindingMarks;
import org.cairnfield.curation.samples.SampleContent;
import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;
import org.cairnfield.testkit.SmallTables;

/** How long a table of a million samples takes to be made, sorted and filtered. No test: run its main. */
public final class TableBenchmark {

	private static final int SURVEYS = 20;
	private static final int HEARD = 12;

	private TableBenchmark() {
	}

	/** @param args number of samples; a million without */
	public static void main(String[] args) throws Exception {
		int size = args.length > 0 ? Integer.parseInt(args[0]) : 1_000_000;
		SampleTable[] tables = tables(size / SURVEYS);
		try (Threads threads = Threads.ofMachine()) {
			Workers workers = threads.workers(Progress.NONE);
			SampleContent[] content = new SampleContent[1];
			time("open: rows, findings, clusters", () -> content[0] = content(tables));
			time("open: in the order of the list", () -> Arrangement.of(content[0], null, false, null, workers));
			for (SampleColumn column : SampleColumn.values()) {
				time("sort by " + column.title(), () -> Arrangement.of(content[0], column, true, null, workers));
			}
			for (String filter : List.of("SH-0412", "heard < 12 and floor = 1", "not (state = kept or x > 20)",
					"ap 00:00:5e:00:53:01 > -60", "finding", "time >= 2031-04-08")) {
				SampleFilter parsed = SampleFilter.parse(filter);
				time("filter " + filter, () -> Arrangement.of(content[0], null, false, parsed.on(content[0]), workers));
			}
			Arrangement sorted = Arrangement.of(content[0], SampleColumn.X, true, null, workers);
			time("texts of 50 rows", () -> {
				int length = 0;
				for (int p = 0; p < 50; p++) {
					for (SampleColumn column : SampleColumn.values()) {
						length += CellText.of(sorted.content(), column, sorted.index(p * 7919 % sorted.size()))
								.length();
					}
				}
				return length;
			});
		}
	}

	private static SampleTable[] tables(int each) {
		Random random = new Random(1);
		SampleTable[] tables = new SampleTable[SURVEYS];
		for (int t = 0; t < SURVEYS; t++) {
			SampleTableBuilder builder = SampleTable.builder();
			for (int n = 0; n < each; n++) {
				builder.sample(String.format("SH-%02d-%06d", t, n), n % 5, random.nextDouble() * 40,
						random.nextDouble() * 25)
						.time(SmallTables.MORNING + n * 6_200L);
				for (int a = 0; a < HEARD; a++) {
					builder.reading(String.format("00005e0053%02x", (n / 100 + a * 7) % 200), -95 + random.nextInt(60));
				}
			}
			tables[t] = builder.build();
		}
		return tables;
	}

	private static SampleContent content(SampleTable[] tables) {
		SampleRows.Builder builder = SampleRows.builder();
		for (int t = 0; t < tables.length; t++) {
			builder.all(new SampleRows.Part(null, "survey-" + t, "Sailmakers' Hall", "guide " + t % 2,
					SurveyKind.TRAINING, tables[t]));
		}
		SampleRows rows = builder.done();
		return new SampleContent(rows, FindingMarks.NONE, ClusterMarks.of(rows, Labels.NONE), Map.of());
	}

	private interface Work {
		Object run() throws Exception;
	}

	private static void time(String what, Work work) throws Exception {
		double[] millis = new double[3];
		for (int run = 0; run < millis.length; run++) {
			long start = System.nanoTime();
			work.run();
			millis[run] = (System.nanoTime() - start) / 1e6;
		}
		double first = millis[0];
		Arrays.sort(millis);
		System.out.printf("%-40s %8.1f ms, first %8.1f ms%n", what, millis[1], first);
	}
}
