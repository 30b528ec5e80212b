package org.cairnfield.exchange;

import static org.cairnfield.exchange.Surveys.file;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;

import org.cairnfield.core.task.Progress;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class IntakeProgressTest {

	private static final class Listening implements Progress {
		long units;
		long done;
		long cancelAfter = Long.MAX_VALUE;
		final List<String> warnings = new ArrayList<>();

		@Override
		public void begin(String step, long ofUnits) {
			units = ofUnits;
			done = 0;
		}

		@Override
		public void advance(long more) {
			assertTrue(more >= 0, "never backwards");
			done += more;
		}

		@Override
		public void warn(String message) {
			warnings.add(message);
		}

		@Override
		public boolean isCancelled() {
			return done > cancelAfter;
		}
	}

	@TempDir
	Path folder;

	private List<Path> files() {
		return List.of(file(folder, "a.csv", "x,y,AP1\n" + "1,2,-60\n".repeat(200_000)),
				file(folder, "few.csv", "x,y,AP1\n1,2,-60\n"),
				file(folder, "b_rss.csv", "-60,-61\n".repeat(2000)), file(folder, "b_crd.csv", "1,2\n".repeat(2000)));
	}

	@Test
	void addsUpToTheBytesOfAllFilesAndPassesNotesOn() throws IntakeException, IOException {
		Listening progress = new Listening();
		List<Path> files = files();
		SurveyIntake.read(files, IntakeOptions.GUESS, Workers.inline().reportingTo(progress));
		long bytes = 0;
		for (Path f : files) {
			bytes += Files.size(f);
		}
		assertEquals(bytes, progress.units);
		assertEquals(bytes, progress.done);
		assertTrue(progress.warnings.contains("a.csv: no floor column: everything is put on floor 0"),
				progress.warnings.toString());
	}

	@Test
	void stopsWhenCancelled() {
		Listening progress = new Listening();
		progress.cancelAfter = 100_000;
		assertThrows(CancellationException.class,
				() -> SurveyIntake.read(files(), IntakeOptions.GUESS, Workers.inline().reportingTo(progress)));
		assertTrue(progress.done < progress.units / 2, "stopped early");
	}
}
