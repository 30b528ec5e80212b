package org.cairnfield.exchange;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.internal.text.Guard;

/** The rows of one file that were not taken in. All are counted; the first {@link Limits} allows are kept. */
public final class Quarantine {

	private static final int MOST_CHARS = 16 << 20;

	private final Path file;
	private final int most;
	private final List<QuarantinedRow> rows = new ArrayList<>();
	private final Map<Fault, Integer> counts = new EnumMap<>(Fault.class);
	private int size;
	private long chars;

	Quarantine(Path file, int most) {
		this.file = file;
		this.most = most;
	}

	void add(QuarantinedRow row) {
		size++;
		counts.merge(row.fault(), 1, Integer::sum);
		if (rows.size() < most && chars + row.record().length() <= MOST_CHARS) {
			rows.add(row);
			chars += row.record().length();
		}
	}

	/** The survey file. */
	public Path file() {
		return file;
	}

	/** Rows not taken in. */
	public int size() {
		return size;
	}

	/** Rows that are counted but not kept, because there are too many. */
	public int omitted() {
		return size - rows.size();
	}

	/** The rows kept, by line. */
	public List<QuarantinedRow> rows() {
		return Collections.unmodifiableList(rows);
	}

	/** How many rows for which kind of reason. */
	public Map<Fault, Integer> counts() {
		return Collections.unmodifiableMap(counts);
	}

	/** The name of the file that {@link #writeTo} makes: the survey file's with {@code .quarantine.csv}. */
	public String fileName() {
		return file.getFileName() + ".quarantine.csv";
	}

	/** As {@link #writeTo}, beside the survey file. */
	public Optional<Path> writeBeside() throws IntakeException {
		return writeTo(file.toAbsolutePath().getParent());
	}

	/**
	 * Writes the rows kept as a table with columns line, reason, record (RFC 4180, UTF-8), whole or not at
	 * all, over an older one; nothing where there are none. Records that a spreadsheet could take for a
	 * formula get a leading apostrophe.
	 *
	 * @return the file written, if any
	 * @throws IntakeException where the folder cannot be written to
	 */
	public Optional<Path> writeTo(Path folder) throws IntakeException {
		if (size == 0) {
			return Optional.empty();
		}
		Path target = folder.resolve(fileName());
		try {
			AtomicFile.write(target, out -> {
				@SuppressWarnings("resource") // out is closed where it was opened
				CSVPrinter csv = new CSVPrinter(out, CSVFormat.RFC4180);
				csv.printRecord("line", "reason", "record");
				for (QuarantinedRow row : rows) {
					csv.printRecord(row.line(), Guard.on(row.reason()), Guard.on(row.record()));
				}
				if (omitted() > 0) {
					csv.printRecord("", Words.bind(Messages.Quarantine_furtherRowsAreNotListed, omitted()), "");
				}
				csv.flush();
			});
		} catch (IOException e) {
			throw Failures.writing(target, e);
		}
		return Optional.of(target);
	}
}
