package org.cairnfield.batch.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.WideTable;

/** Small simulated surveys as files. */
final class TestSurveys {

	private static final long SEED = 5;

	private TestSurveys() {
	}

	private static CampusSize size() {
		return CampusSize.of(2, 2, 40);
	}

	/** Two sites of two floors. */
	static RadioMap map(int samples) {
		return RandomMap.of(SEED, size(), samples, Workers.inline());
	}

	/** Another day in the same buildings. */
	static RadioMap visit(int samples) {
		return RandomMap.testOf(SEED, size(), samples, Workers.inline());
	}

	static List<String> ids(String prefix, int n) {
		return IntStream.rangeClosed(1, n).mapToObj(i -> String.format(Locale.ROOT, "%s-%03d", prefix, i)).toList();
	}

	/** As {@link WideTable} writes it. */
	static Path wide(Path file, RadioMap map, String prefix) {
		try {
			WideTable.write(file, map, ids(prefix, map.size()));
			return file;
		} catch (IntakeException e) {
			throw new IllegalStateException(e);
		}
	}

	/** Header x,y,floor,building and the access points, as other programs write it; empty for not heard. */
	static Path plain(Path file, RadioMap map) {
		return plain(file, map, "");
	}

	/** The same with another sign for not heard. */
	static Path plain(Path file, RadioMap map, String notHeard) {
		List<String> lines = new ArrayList<>();
		lines.add("x,y,floor,building," + String.join(",", map.accessPoints()));
		for (int s = 0; s < map.size(); s++) {
			StringBuilder line = new StringBuilder().append(map.x(s)).append(',').append(map.y(s)).append(',')
					.append(map.floor(s)).append(',').append(map.sites().get(map.site(s)));
			for (int ap = 0; ap < map.accessPointCount(); ap++) {
				int level = map.rssiDbm(s, ap, 1);
				line.append(',').append(level > 0 ? notHeard : Integer.toString(level));
			}
			lines.add(line.toString());
		}
		return text(file, String.join("\n", lines) + "\n");
	}

	static Path text(Path file, String text) {
		return bytes(file, text.getBytes(StandardCharsets.UTF_8));
	}

	static Path bytes(Path file, byte[] bytes) {
		try {
			return Files.write(file, bytes);
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}
}
