package org.cairnfield.exchange;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.zip.GZIPOutputStream;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;

/** Survey files for tests. */
final class Surveys {

	private Surveys() {
	}

	static Path file(Path folder, String name, String text) {
		return file(folder, name, text.getBytes(StandardCharsets.UTF_8));
	}

	static Path file(Path folder, String name, byte[] bytes) {
		try {
			return Files.write(folder.resolve(name), bytes);
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	static byte[] gzip(byte[] bytes) {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		try (OutputStream gzip = new GZIPOutputStream(out)) {
			gzip.write(bytes);
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
		return out.toByteArray();
	}

	static Intake read(Path... files) throws IntakeException {
		return SurveyIntake.read(Arrays.asList(files), IntakeOptions.GUESS, Workers.inline());
	}

	static Intake read(IntakeOptions options, Path... files) throws IntakeException {
		return SurveyIntake.read(Arrays.asList(files), options, Workers.inline());
	}

	static Preview preview(Path file) throws IntakeException {
		return SurveyIntake.preview(List.of(file), IntakeOptions.GUESS).get(0);
	}

	/** A sample as text: site, floor, position, then what it heard. */
	static String sample(RadioMap map, int s) {
		StringBuilder out = new StringBuilder().append(map.sites().get(map.site(s))).append(' ').append(map.floor(s))
				.append(" (").append(map.x(s)).append(", ").append(map.y(s)).append(')');
		for (int k = map.firstReading(s); k < map.endReading(s); k++) {
			out.append(' ').append(map.accessPoints().get(map.accessPoint(k))).append(':').append(map.rssiDbm(k));
		}
		return out.toString();
	}

	static boolean notes(Intake intake, String words) {
		return intake.notes().stream().anyMatch(n -> n.contains(words))
				|| intake.reports().stream().flatMap(r -> r.notes().stream()).anyMatch(n -> n.contains(words));
	}
}
