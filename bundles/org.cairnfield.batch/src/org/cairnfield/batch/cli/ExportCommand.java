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
		"Export the map, or a release of it, for other programs and for devices, with checksums and a page of cautions.",
		"Addresses, times and names can be personal data: local law decides what may leave." })
final class ExportCommand extends ArchiveCommand {

	@Mixin
	PackArgs packArgs;

	@Option(names = "--out", required = true, paramLabel = "DIR", description = "Folder of the export.")
	Path out;

	@Option(names = "--release", paramLabel = "VERSION", description = "That release; otherwise the archive as it is.")
	String version;

	@Option(names = "--format", split = ",", paramLabel = "FORMAT", description = "${COMPLETION-CANDIDATES}; all unless given.")
	Set<ExportFormat> formats;

	@Option(names = "--kind", paramLabel = "KIND", defaultValue = "training", description = "training or test surveys; default ${DEFAULT-VALUE}.")
	String kind;

	@Option(names = "--with-set-aside", description = "Samples and access points that were set aside too.")
	boolean withSetAside;

	@Option(names = "--without-local", description = "Without locally administered addresses, often those of phones.")
	boolean withoutLocal;

	@Option(names = "--key-file", paramLabel = "FILE", description = "Pseudonyms in place of addresses, by a keyed hash (HMAC-SHA-256) with the bytes of this file. The key is never written.")
	Path keyFile;

	@Option(names = "--times", paramLabel = "GRAIN", defaultValue = "full", description = "${COMPLETION-CANDIDATES}: how exactly times leave; default ${DEFAULT-VALUE}.")
	TimeGrain times;

	@Option(names = "--without-devices", description = "Without the names of devices.")
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
			throw new IntakeException(keyFile, 0, "the key cannot be read",
					"Name a file with at least " + Pseudonyms.LEAST_KEY_BYTES + " random bytes");
		} catch (IllegalArgumentException e) {
			throw new IntakeException(keyFile, 0, e.getMessage(), "Make a longer one");
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
			packArgs.requireNoSplit("a release has its splits already");
			ReleasedState release = book.find(version);
			PastState then = book.openReadOnly(version);
			requireSound("release " + version, then.damages());
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
