package org.cairnfield.archive.internal.text;

import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

import org.cairnfield.core.text.Words;

/** The steps from earlier versions of the formats to the present one. */
public final class Migrations {

	/** Version 1 is the first. */
	public static final Migrations NONE = new Migrations(List.of());

	private static final int HEADER_BYTES = 64;

	private final List<Migration> steps;

	public Migrations(List<Migration> steps) {
		this.steps = List.copyOf(steps);
	}

	/** The file of lines in the present version, unchanged where it is in that already or can not be brought to it. */
	InputStream bring(FileKind kind, InputStream in, PartReport report) throws IOException {
		InputStream whole = new BufferedInputStream(in, 1 << 16);
		whole.mark(HEADER_BYTES);
		String start = new String(whole.readNBytes(HEADER_BYTES), StandardCharsets.UTF_8);
		whole.reset();
		int lineEnd = start.indexOf('\n');
		int version = lineEnd < 0 ? -1 : kind.versionIn(start.substring(0, lineEnd).strip());
		if (version < 0 || version >= FileKind.VERSION || step(version).isEmpty()) {
			return whole;
		}
		byte[] bytes = whole.readAllBytes();
		if (!isSealed(bytes)) {
			report.brokenSeal();
		}
		byte[] brought = bring(kind, version, bytes, report);
		return new ByteArrayInputStream(brought == null ? bytes : brought);
	}

	/** The file in the present version; null where a step to it is missing. */
	byte[] bring(FileKind kind, int version, byte[] bytes, PartReport report) throws IOException {
		byte[] brought = bytes;
		for (int v = version; v < FileKind.VERSION; v++) {
			Optional<Migration> step = step(v);
			if (step.isEmpty()) {
				return null;
			}
			brought = step.get().migrate(kind, brought);
		}
		report.notice(Words.bind(Messages.Migrations_isOfFormatTheNext, version, FileKind.VERSION));
		return brought;
	}

	private Optional<Migration> step(int from) {
		return steps.stream().filter(step -> step.from() == from).findFirst();
	}

	private static boolean isSealed(byte[] bytes) throws IOException {
		LineReader line = new LineReader(new ByteArrayInputStream(bytes));
		while (line.next()) {
			if (Seal.isIn(line)) {
				return line.isComplete() && line.is(2, Seal.hex(line.sumBefore())) && !line.next();
			}
		}
		return false;
	}
}
