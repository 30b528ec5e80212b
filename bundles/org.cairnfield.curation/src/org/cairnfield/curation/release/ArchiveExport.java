package org.cairnfield.curation.release;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.maps.SiteFrames;
import org.cairnfield.curation.measure.ReleasedMap;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.export.Caution;
import org.cairnfield.exchange.export.ExportFolder;
import org.cairnfield.exchange.export.ExportFormat;
import org.cairnfield.exchange.export.ExportOptions;
import org.cairnfield.exchange.export.MapExport;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Ids;
import org.cairnfield.model.values.SampleEdit;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.Scope;

/** Writes an archive, or a release of it, for others. */
public final class ArchiveExport {

	private static final String DAMAGED = Messages.ArchiveExport_damaged;

	private ArchiveExport() {
	}

	/**
	 * Where it comes from.
	 *
	 * @param version of the release, or empty
	 * @param digest  SHA-256 of the archive's content
	 * @param time    that formats name which name one: when it was released, so that the same release gives the same bytes
	 */
	public record Source(String version, String digest, Instant time) {
	}

	/**
	 * What was written.
	 *
	 * @param files the checksums last
	 * @param notes what of the map is not in them, for a person
	 */
	public record Exported(List<Path> files, List<String> notes) {
	}

	/**
	 * @param archive a copy, where others go on changing it
	 * @param policy  how verdicts count, for the pack
	 * @param damages what could not be read of the archive: the page of cautions lists it, and the files are named for it
	 * @throws IntakeException where the folder cannot be written, or a format cannot hold the map; nothing is left then
	 */
	public static Exported write(Archive archive, Source source, ReviewPolicy policy, Path folder,
			ExportRequest request,
			List<Damage> damages, Workers workers) throws IntakeException {
		try {
			ArchiveMap from = ArchiveMap.of(request.withSetAside() ? withSetAside(archive) : archive, Scope.ARCHIVE,
					request.kind());
			List<String> ids = new ArrayList<>();
			for (int s = 0; s < from.map().size(); s++) {
				ids.add(from.surveyed().sampleId(s));
			}
			String title = title(archive) + (damages.isEmpty() ? "" : DAMAGED);
			RadioMap out = request.options().apply(from.map());
			MapExport export = new MapExport(title, out, ids, archive.getSites().stream().map(SiteFrames::of).toList());
			byte[] pack = request.formats().contains(ExportFormat.PACK)
					? pack(archive, source, policy, request, workers)
					: null;
			List<String> notes = export.leftOut(request.formats());
			List<String> lines = new ArrayList<>();
			lines.add(Words.bind(Messages.ArchiveExport_contentOfTheArchiveSha, source.digest()));
			lines.add(source.version().isEmpty() ? Messages.ArchiveExport_notARelease
					: Words.bind(Messages.ArchiveExport_release, source.version()));
			lines.add(request.kind() == SurveyKind.TRAINING ? Messages.ArchiveExport_trainingSurveysTheMap
					: Messages.ArchiveExport_testSurveysWhatTheMap);
			lines.add(request.withSetAside() ? Messages.ArchiveExport_samplesAndAccessPointsThat
					: Messages.ArchiveExport_withoutWhatWasSetAside);
			lines.addAll(notes);
			if (!damages.isEmpty()) {
				lines.add(Messages.ArchiveExport_damagedTheArchiveCouldNot);
				damages.forEach(damage -> lines.add("- " + damage));
			}
			String base = Ids.from(title) + (source.version().isEmpty() ? "" : "-" + source.version());
			return new Exported(ExportFolder.write(folder, base, request.formats(), export, pack,
					Caution.page(title, lines, out, request.options()), source.time()), notes);
		} catch (IllegalArgumentException e) {
			throw new IntakeException(folder, 0,
					Words.bind(Messages.ArchiveExport_theMapCannotBeExported, e.getMessage()),
					Messages.ArchiveExport_changeWhatIsNamedOr);
		}
	}

	private static String title(Archive archive) {
		return archive.getName() == null || archive.getName().isBlank() ? "archive" : archive.getName().strip();
	}

	private static byte[] pack(Archive archive, Source source, ReviewPolicy policy, ExportRequest request,
			Workers workers) {
		ReleasedMap released = ReleasedMap.of(archive, policy);
		ExportOptions plain = new ExportOptions(request.options().withoutLocal(), null, request.options().times(),
				false);
		return released.with(plain.apply(released.map())).pack(request.pack().settings(released), workers)
				.bytes(request.options().pseudonyms(), source.digest());
	}

	private static Archive withSetAside(Archive archive) {
		Archive copy = ArchiveCopy.of(archive);
		for (AccessPoint accessPoint : copy.getAccessPoints()) {
			accessPoint.setReason(null);
		}
		for (Site site : copy.getSites()) {
			for (Survey survey : site.getSurveys()) {
				if (survey.getSamples() != null) {
					SampleTable table = survey.table();
					SampleEdit edit = table.edit();
					for (int row = 0; row < table.size(); row++) {
						edit.reason(row, null);
					}
					survey.getSamples().setTable(edit.done());
				}
			}
		}
		return copy;
	}
}
