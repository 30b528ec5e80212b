package org.cairnfield.batch.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.ReleaseTag;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.release.SemanticVersion;
import org.cairnfield.curation.release.Verification;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

@Command(name = "verify", description = { "Looks whether releases and exports still are what they were. Changes nothing.",
		"Digests are computed anew: of Git's objects, of the content, of files, of exported files by the list beside them." })
final class VerifyCommand extends SurveyCommand {

	@Option(names = "--archive", paramLabel = "DIR", description = "Verify the releases of this archive.")
	Path archive;

	@Option(names = "--release", paramLabel = "VERSION", description = "Only this one.")
	String version;

	@Option(names = "--folder", description = "The files in the archive's folder must be those of the release too, byte by byte; needs --release.")
	boolean folder;

	@Parameters(arity = "0..*", paramLabel = "FILE", description = "Exported files, or folders of them.")
	List<Path> files = List.of();

	@Override
	void run(Workers workers) throws Exception {
		if (archive == null && files.isEmpty() || archive == null && version != null || folder && version == null) {
			throw new ParameterException(spec.commandLine(), "name an archive, a release of it, or exported files; --folder needs --release");
		}
		List<Verification> found = new ArrayList<>();
		if (archive != null) {
			found.addAll(releases());
		}
		files.forEach(file -> found.add(Files.exists(file) ? Verification.ofExport(file)
				: new Verification(file.toString(), List.of(new Verification.Check(file.toString(), "is missing")))));
		if (json) {
			out().println(new Json().put("sound", found.stream().allMatch(Verification::isSound)).put("verified", found.stream()
					.map(v -> new Json().put("what", v.what()).put("sound", v.isSound()).put("checks", v.checks().stream()
							.map(c -> new Json().put("what", c.what()).put("problem", c.isSound() ? null : c.problem()).fields()).toList())
							.fields()).toList()));
		} else {
			found.forEach(this::print);
		}
		endWith(found.stream().allMatch(Verification::isSound) ? ExitCode.OK : ExitCode.NOT_SOUND);
	}

	private List<Verification> releases() throws Exception {
		try (History history = History.of(archive.toAbsolutePath().normalize())) {
			List<ReleaseTag> tags = history.releases().stream().filter(t -> SemanticVersion.is(t.version()))
					.filter(t -> version == null || t.version().equals(version))
					.sorted(Comparator.comparing((ReleaseTag t) -> SemanticVersion.parse(t.version())).reversed()).toList();
			if (version != null && tags.isEmpty()) {
				throw new ArchiveException("there is no release " + version, "look at the list of releases");
			}
			List<Verification> found = new ArrayList<>();
			for (ReleaseTag tag : tags) {
				found.add(Verification.ofRelease(archive.toAbsolutePath().normalize(), history, tag));
				if (folder) {
					found.add(Verification.ofFolder(history, tag));
				}
			}
			return found;
		}
	}

	private void print(Verification verification) {
		out().println(verification.what() + ": " + (verification.isSound() ? "sound" : "NOT SOUND"));
		verification.checks().stream().filter(c -> !c.isSound()).forEach(c -> out().println("  " + c.what() + ": " + c.problem()));
	}
}
