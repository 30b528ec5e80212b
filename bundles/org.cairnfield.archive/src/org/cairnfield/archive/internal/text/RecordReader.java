package org.cairnfield.archive.internal.text;

import java.io.IOException;
import java.io.InputStream;

import org.cairnfield.core.text.Words;

/** Goes through a file of lines from its header to its seal, and reports what is wrong with either and between. */
final class RecordReader {

	/** What is done with each line between header and seal. */
	@FunctionalInterface
	interface Records {
		/**
		 * @return whether the line is a record, and not one that tells about the file as a whole
		 * @throws Unreadable if the line is not as it was written
		 */
		boolean read(LineReader line) throws IOException;
	}

	private final FileKind kind;
	private final int wanted;
	private final PartReport report;

	RecordReader(FileKind kind, PartReport report) {
		this(kind, FileKind.VERSION, report);
	}

	/** @param wanted the version */
	RecordReader(FileKind kind, int wanted, PartReport report) {
		this.kind = kind;
		this.wanted = wanted;
		this.report = report;
	}

	/** Lines that can not be read are reported and left out. */
	void read(InputStream in, Records records) throws IOException {
		LineReader line = new LineReader(in);
		try {
			if (!line.next()) {
				report.damage(0, Messages.RecordReader_isEmpty);
				return;
			}
			int version = kind.versionIn(line.whole());
			if (version != wanted) {
				reportVersion(version);
				return;
			}
			readOn(line, records);
		} catch (Unreadable e) {
			report.damage(line.line(), e.getMessage());
		}
		if (line.hasCarriageReturns()) {
			report.carriageReturns();
		}
	}

	private void reportVersion(int version) {
		if (version > kind.newest()) {
			report.damage(1, Words.bind(Messages.RecordReader_wasWrittenByANewer, version, kind.newest()),
					Messages.RecordReader_openTheArchiveWithThat);
		} else {
			report.damage(1, Words.bind(Messages.RecordReader_doesNotBeginWith, kind.header(wanted)));
		}
	}

	private void readOn(LineReader line, Records records) throws IOException {
		long count = 0;
		while (line.next()) {
			if (Seal.isIn(line)) {
				checkSeal(line, count);
				return;
			}
			try {
				count += records.read(line) ? 1 : 0;
			} catch (Unreadable | IllegalArgumentException e) {
				count++;
				report.damage(line.line(), e.getMessage());
			}
		}
		report.damage(line.line(), Messages.RecordReader_endsBeforeItsEndThe);
	}

	private void checkSeal(LineReader line, long count) throws IOException {
		long sealLine = line.line();
		boolean complete = line.isComplete();
		boolean matches = line.is(1, Long.toString(count)) && line.is(2, Seal.hex(line.sumBefore()));
		boolean more = line.next();
		if (!complete) {
			report.damage(sealLine, Messages.RecordReader_endsBeforeItsEndThe);
		} else if (more) {
			report.damage(line.line(), Messages.RecordReader_goesOnAfterItsEnd);
		} else if (!matches) {
			report.brokenSeal();
		}
	}
}
