package org.cairnfield.batch.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.PastState;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.measure.PackRequest;
import org.cairnfield.curation.release.ArchiveExport;
import org.cairnfield.curation.release.ExportRequest;
import org.cairnfield.curation.release.GateSet;
import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.curation.release.ReleasedState;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.export.Caution;
import org.cairnfield.exchange.export.ExportFormat;
import org.cairnfield.exchange.export.ExportOptions;
import org.cairnfield.exchange.export.Pseudonyms;
import org.cairnfield.exchange.export.TimeGrain;
import org.cairnfield.model.Archive;
import org.cairnfield.model.SurveyKind;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "export", description = {
		"${bundle:ExportCommand_what}",
		"${bundle:ExportCommand_more}" })
final class ExportCommand extends ArchiveCommand {

	@Mixin
	PackArgs packArgs;

	@Option(names = "--out", required = true, paramLabel = "DIR", descriptionKey = "ExportCommand_out")
	Path out;

	@Option(names = "--release", paramLabel = "VERSION", descriptionKey = "ExportCommand_release2")
	String version;

	@Option(names = "--format", split = ",", paramLabel = "FORMAT", descriptionKey = "ExportCommand_format")
	Set<ExportFormat> formats;

	@Option(names = "--kind", paramLabel = "KIND", defaultValue = "training", descriptionKey = "ExportCommand_kind")
	String kind;

	@Option(names = "--with-set-aside", descriptionKey = "ExportCommand_withSetAside")
	boolean withSetAside;

	@Option(names = "--without-local", descriptionKey = "ExportCommand_withoutLocal")
	boolean withoutLocal;

	@Option(names = "--key-file", paramLabel = "FILE", descriptionKey = "ExportCommand_keyFile")
	Path keyFile;

	@Option(names = "--times", paramLabel = "GRAIN", defaultValue = "full", descriptionKey = "ExportCommand_times")
	TimeGrain times;

	@Option(names = "--without-devices", descriptionKey = "ExportCommand_withoutDevices")
	boolean withoutDevices;

	@Override
	Mode mode() {
		return Mode.READ;
	}

	@Override
	void checkArguments() {
		try {
			request(null, packArgs.request());
		} catch (IllegalArgumentException e) {
			throw new ParameterException(spec.commandLine(), e.getMessage(), e);
		}
	}

	private ExportRequest request(Pseudonyms pseudonyms, PackRequest pack) {
		SurveyKind wanted = Arrays.stream(SurveyKind.values()).filter(k -> k.name().equalsIgnoreCase(kind)).findFirst()
				.orElseThrow(() -> new IllegalArgumentException("--kind is training or test, not " + kind));
		EnumSet<ExportFormat> all = EnumSet.allOf(ExportFormat.class);
		if (wanted == SurveyKind.TEST) {
			all.remove(ExportFormat.PACK);
		}
		return new ExportRequest(formats == null ? all : formats, wanted, withSetAside,
				new ExportOptions(withoutLocal, pseudonyms, times, !withoutDevices), pack);
	}

	private Pseudonyms pseudonyms() throws IntakeException {
		if (keyFile == null) {
			return null;
		}
		try {
			return new Pseudonyms(Files.readAllBytes(keyFile));
		} catch (IOException e) {
			throw new IntakeException(keyFile, 0, Messages.ExportCommand_theKeyCannotBeRead,
					Words.bind(Messages.ExportCommand_nameAFileWithAt, Pseudonyms.LEAST_KEY_BYTES));
		} catch (IllegalArgumentException e) {
			throw new IntakeException(keyFile, 0, e.getMessage(), Messages.ExportCommand_makeALongerOne);
		}
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		ReleaseBook book = new ReleaseBook(archive, Clock.systemUTC());
		Archive content = archive.archive();
		ArchiveExport.Source source;
		PackRequest pack = packArgs.request();
		ReviewPolicy policy;
		if (version == null) {
			packArgs.choose(content);
			source = new ArchiveExport.Source("", archive.digest(), Instant.now().truncatedTo(ChronoUnit.SECONDS));
			policy = book.gates().policy(content);
		} else {
			packArgs.requireNoSplit(Messages.ExportCommand_aReleaseHasItsSplits);
			ReleasedState release = book.find(version);
			PastState then = book.openReadOnly(version);
			requireSound(Words.bind(Messages.ExportCommand_release, version), then.damages());
			content = then.archive();
			source = new ArchiveExport.Source(version, release.manifest().digest(),
					Instant.parse(release.manifest().signedAt()));
			pack = packArgs.request(release.manifest().settings());
			policy = GateSet.parse(release.manifest().gateSet()).policy(content);
		}
		ArchiveExport.Exported exported = ArchiveExport.write(content, source, policy, out, request(pseudonyms(), pack),
				damages(), workers);
		if (json) {
			printJson(new Json().put("files", exported.files().stream().map(Path::toString).toList()).put("notes",
					exported.notes()));
			return;
		}
		exported.files().forEach(file -> out().println(file));
		exported.notes().forEach(this::note);
		Caution.general().forEach(this::note);
	}
}
