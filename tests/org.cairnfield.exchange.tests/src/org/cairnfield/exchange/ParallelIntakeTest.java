package org.cairnfield.exchange;

import static org.cairnfield.exchange.Surveys.file;
import static org.cairnfield.exchange.Surveys.gzip;
import static org.cairnfield.exchange.Surveys.sample;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ForkJoinPool;

import org.cairnfield.core.task.Progress;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is read does not depend on how many read it, and is what the rows say one after the other. */
class ParallelIntakeTest {

	@TempDir
	Path folder;

	private final Workers several = Workers.on(ForkJoinPool.commonPool(), 3, Progress.NONE);

	/** Samples, ids, names, notes, figures and quarantine as lines; what a failure says where there is one. */
	private static List<String> all(List<Path> files, IntakeOptions options, Workers workers) {
		List<String> lines = new ArrayList<>();
		try {
			Intake in = SurveyIntake.read(files, options, workers);
			for (int s = 0; s < in.map().size(); s++) {
				lines.add(in.sampleIds().get(s) + " " + in.map().timeMillis(s) + " " + in.map().device(s) + " "
						+ sample(in.map(), s));
			}
			lines.addAll(in.map().accessPoints());
			lines.addAll(in.map().devices());
			lines.addAll(in.notes());
			lines.add(in.notHeard() + in.channels());
			in.reports().forEach(r -> lines.add(r.toString()));
			in.quarantines().forEach(q -> {
				lines.add(q.counts().toString() + q.omitted());
				q.rows().forEach(r -> lines.add(r.toString()));
			});
		} catch (IntakeException e) {
			lines.add(e.getMessage());
		}
		return lines;
	}

	private void assertSame(IntakeOptions options, Path... files) {
		List<String> one = all(List.of(files), options, Workers.inline());
		assertEquals(one, all(List.of(files), options, several));
		assertTrue(one.size() > 1, one.toString());
	}

	private static String place(Random random, int row) {
		String floor = random.nextInt(400) == 0 ? "Loft " + (char) ('a' + random.nextInt(20))
				: String.valueOf(row / 3000);
		String x = random.nextInt(150) == 0 ? "far" : (row % 997) / 10.0 + (random.nextBoolean() ? "0" : "");
		String site = random.nextInt(50) == 0 ? "\"Tide \"\"Old\"\"\nHouse\"" : "Tide House";
		return site + ',' + floor + ',' + x + ',' + row % 313 + ",2026-03-14 10:0" + row % 10 + ":00"
				+ (row % 2000 == 1 ? "" : "Z") + ','
				+ "Tern " + row % 3;
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void readsWideTablesWithFaultsAlike(boolean perSite) {
		Random random = new Random(41);
		StringBuilder text = new StringBuilder("building,floor,x,y,time,device,AP1,AP2,AP3,AP2\r\n");
		for (int row = 0; row < 12_000; row++) {
			text.append(place(random, row));
			for (int k = 0; k < 4; k++) {
				int kind = random.nextInt(3000);
				text.append(',').append(kind == 0 ? "loud"
						: kind == 1 ? "7"
								: kind < 1000 ? "" + (-90 + random.nextInt(60)) : kind < 1100 ? "-61.5" : "100");
			}
			text.append(random.nextInt(900) == 0 ? ",x" : "").append(random.nextInt(500) == 0 ? "\n\n" : "\r\n");
		}
		assertSame(IntakeOptions.GUESS.withAccessPointsPerSite(perSite), file(folder, "a.csv", text.toString()),
				file(folder, "b.csv.gz", gzip(text.toString().getBytes(StandardCharsets.UTF_8))));
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void readsLongTablesWithFaultsAlike(boolean ids) {
		Random random = new Random(42);
		StringBuilder text = new StringBuilder(
				"building,floor,x,y,time,device,bssid,rssi" + (ids ? ",sample\n" : "\n"));
		for (int row = 0; row < 4000; row++) {
			String place = place(random, row);
			for (int k = random.nextInt(6); k >= 0; k--) {
				String at = random.nextInt(2000) == 0 ? place(random, random.nextInt(4000)) : place;
				text.append(at).append(",AP").append(random.nextInt(40) + row / 100).append(',')
						.append(random.nextInt(500) == 0 ? "7"
								: random.nextInt(20) == 0 ? "" : "" + (-90 + random.nextInt(60)));
				text.append(ids ? ",s" + (random.nextInt(1500) == 0 ? random.nextInt(4000) : row) : "").append('\n');
			}
		}
		assertSame(IntakeOptions.GUESS, file(folder, "a.csv", text.toString()));
		assertSame(IntakeOptions.GUESS.withAccessPointsPerSite(true), file(folder, "a.csv", text.toString()));
		Limits l = Limits.usual();
		Limits few = new Limits(l.recordChars(), l.columns(), 50, l.sites(), l.readings(), l.expansionFold(), 10);
		assertTrue(all(List.of(folder.resolve("a.csv")), IntakeOptions.GUESS.withLimits(few), several).get(0)
				.contains("50 different access points"));
		assertEquals(all(List.of(folder.resolve("a.csv")), IntakeOptions.GUESS.withLimits(few), Workers.inline()),
				all(List.of(folder.resolve("a.csv")), IntakeOptions.GUESS.withLimits(few), several));
	}

	@Test
	void readsPairedTablesAlike() {
		Random random = new Random(43);
		StringBuilder signals = new StringBuilder();
		StringBuilder places = new StringBuilder();
		for (int row = 0; row < 9000; row++) {
			for (int k = 0; k < 12; k++) {
				signals.append(k == 0 ? "" : ",")
						.append(random.nextBoolean() ? "100" : "" + (-90 + random.nextInt(60)));
			}
			signals.append(random.nextInt(300) == 0 ? ",3\n" : random.nextInt(300) == 0 ? "\n\n" : "\n");
			places.append(random.nextInt(300) == 0 ? "far" : row / 7.0).append(',').append(row % 11)
					.append(random.nextInt(500) == 0 ? "\n\n" : "\n");
		}
		assertSame(IntakeOptions.GUESS, file(folder, "a_rss.csv", signals.toString()),
				file(folder, "a_crd.csv", places.toString()));
	}

	@Test
	void namesTheRowOfASampleThatWasElsewhere() throws IntakeException {
		StringBuilder text = new StringBuilder("x,y,floor,building,sample,bssid,rssi\n");
		for (int row = 0; row < 9000; row++) {
			text.append(row / 2).append(",2,0,Hall,s").append(row / 2).append(",AP").append(row % 2).append(",-60\n");
		}
		Intake in = SurveyIntake.read(List.of(file(folder, "a.csv", text.append("9,9,0,Hall,s5,NEW,-60\n").toString())),
				IntakeOptions.GUESS, several);
		assertEquals(
				List.of(new QuarantinedRow(9002, Fault.CONFLICT, "sample 's5' was elsewhere on line 12",
						"9,9,0,Hall,s5,NEW,-60")),
				in.quarantines().get(0).rows());
		assertEquals(List.of("AP0", "AP1"), in.map().accessPoints());
		assertEquals(4500, in.map().size());
	}
}
