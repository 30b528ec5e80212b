package org.cairnfield.archive.internal.resource;

import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.NoSuchFileException;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.internal.disk.FileSource;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.archive.internal.text.FileKind;
import org.cairnfield.archive.internal.text.Migrations;
import org.cairnfield.archive.internal.text.PartReport;
import org.cairnfield.archive.internal.text.SampleParts;
import org.cairnfield.archive.internal.text.SamplesText;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.values.SampleTable;

/** The files of an archive with the samples of each survey in one, also where they lie in parts. */
public record WholeSurveys(FileSource files) implements FileSource {

	/** Paths of the parts of surveys among some files, by the path of the survey. */
	public static SortedMap<String, List<String>> parts(FileSource files) {
		SortedMap<String, List<String>> parts = new TreeMap<>();
		for (String path : files.paths()) {
			if (ArchiveLayout.isSurveyPart(path)) {
				parts.computeIfAbsent(ArchiveLayout.whole(path), whole -> new ArrayList<>()).add(path);
			}
		}
		return parts;
	}

	@Override
	public Iterable<String> paths() {
		SortedSet<String> paths = new TreeSet<>();
		for (String path : files.paths()) {
			if (has(path)) {
				paths.add(path);
			}
		}
		return paths;
	}

	@Override
	public boolean has(String path) {
		return files.has(path) && !ArchiveLayout.isSurveyPart(path);
	}

	/** @throws ArchiveException where a survey lies in parts of which something is damaged */
	@Override
	public InputStream open(String path) throws IOException {
		if (!has(path)) {
			throw new NoSuchFileException(path);
		}
		if (ArchiveLayout.kind(path) == FileKind.SAMPLES) {
			try (InputStream in = new BufferedInputStream(files.open(path))) {
				if (SampleParts.isList(in)) {
					ByteArrayOutputStream whole = new ByteArrayOutputStream();
					SamplesText.write(together(path, in), whole);
					return new ByteArrayInputStream(whole.toByteArray());
				}
			}
		}
		return files.open(path);
	}

	private SampleTable together(String path, InputStream list) throws IOException {
		PartReport report = new PartReport(path);
		SamplesText.Reading reading = new SamplesText.Reading();
		for (String name : SampleParts.list(list, report)) {
			String part = ArchiveLayout.part(path, name);
			PartReport of = new PartReport(part);
			try (InputStream in = files.open(part)) {
				reading.add(in, Migrations.NONE, of);
			}
			requireSound(of);
		}
		SampleTable table = reading.table(report);
		requireSound(report);
		return table;
	}

	private static void requireSound(PartReport report) throws ArchiveException {
		if (report.isDamaged()) {
			throw new ArchiveException(
					Words.bind(Messages.WholeSurveys_isDamaged, report.file(), report.damages().get(0).reason()),
					report.damages().get(0).remedy());
		}
	}
}
