package org.cairnfield.batch.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.ReleaseTag;
import org.cairnfield.archive.history.VerdictProof;
import org.cairnfield.archive.signature.Signature;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.release.ArchiveVerification;
import org.cairnfield.curation.release.KnownReleases;
import org.cairnfield.curation.release.PeopleVerification;
import org.cairnfield.curation.release.Verification;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

@Command(name = "verify", description = {
		"Verify that releases and exports still are what they were. Changes nothing in them, and remembers sound releases on this computer.",
		"Digests are computed again: of Git's objects, of the content, of files, of exported files by the list beside them.",
		"Signatures are checked by the programs and keys of your own Git; docs/verification.md says what none of this can show." })
final class VerifyCommand extends SurveyCommand {

	@Option(names = "--archive", paramLabel = "DIR", description = "Verify the releases of this archive.")
	Path archive;

	@Option(names = "--release", paramLabel = "VERSION", description = "Only this one.")
	String version;

	@Option(names = "--folder", description = "The files in the archive's folder must be those of the release too, byte by byte; needs --release.")
	boolean folder;

	@Option(names = "--digest", paramLabel = "HEX", description = "What \"release\" printed, kept elsewhere: the digest of the content (64 digits) or the id of the tag (40 digits) must be this; needs --release.")
	String digest;

	@Option(names = "--signed", description = "Every release must carry a good signature of a key that is known here.")
	boolean signed;

	@Option(names = "--people", description = "Also whether verdicts stand in save points that are signed by the people they name; with --signed each must. --json lists line by line.")
	boolean people;

	@Option(names = "--forget", description = "Forget what was seen on this computer of the archive's releases, and remember them as they are now.")
	boolean forget;

	/** Verification goes on in any case; scripts can pass the option to each command that reads an archive. */
	@Mixin
	DamageArgs damageArgs;

	@Parameters(arity = "0..*", paramLabel = "FILE", description = "Exported files, or folders of them.")
	List<Path> files = List.of();

	@Override
	void run(Workers workers) throws Exception {
		boolean one = folder || digest != null;
		if (archive == null && (files.isEmpty() || version != null || signed || people || forget)
				|| one && version == null) {
			throw wrong("name an archive, a release of it, or exported files; --folder and --digest need --release");
		}
		if (digest != null && !digest.matches("[0-9a-fA-F]{40}|[0-9a-fA-F]{64}")) {
			throw wrong("--digest needs 40 or 64 hexadecimal digits, as \"release\" printed them");
		}
		List<Verification> found = new ArrayList<>();
		Json result = new Json();
		if (archive != null) {
			meetDamages();
			try (History history = History.of(archive.toAbsolutePath().normalize())) {
				found.addAll(version == null ? all(history) : release(history));
				if (people) {
					found.add(people(history, result));
				}
			}
		}
		files.forEach(file -> found.add(Files.exists(file) ? Verification.ofExport(file)
				: new Verification(file.toString(), List.of(new Verification.Check(file.toString(), "is missing")))));
		if (json) {
			printJson(result.put("sound", found.stream().allMatch(Verification::isSound))
					.put("verified", found.stream().map(v -> json(v).fields()).toList()));
		} else {
			found.forEach(this::print);
		}
		endWith(found.stream().allMatch(Verification::isSound) ? ExitCode.OK : ExitCode.NOT_SOUND);
	}

	/** A folder that cannot be opened may still have a history to be verified. */
	private void meetDamages() throws IOException {
		try (OpenArchive open = new ArchiveStore().open(root(), Mode.READ)) {
			meet(open.damages());
		} catch (DamagedException e) {
			meet(e.damages());
		} catch (ArchiveException e) {
			note(e.getMessage());
		}
	}

	private ParameterException wrong(String what) {
		return new ParameterException(spec.commandLine(), what);
	}

	private List<Verification> all(History history) throws IOException {
		KnownReleases known = KnownReleases.ofUser();
		if (forget) {
			history.check().beginning().map(known::forget).filter(problem -> !problem.isEmpty()).ifPresent(this::note);
		}
		return new ArchiveVerification(root(), history, known).all().stream().map(v -> signed ? v.signed() : v)
				.toList();
	}

	private List<Verification> release(History history) throws IOException {
		ReleaseTag tag = ArchiveVerification.releases(history).stream().filter(t -> t.version().equals(version))
				.findFirst()
				.orElseThrow(() -> missing(history));
		Verification verified = new ArchiveVerification(root(), history, KnownReleases.ofUser()).of(tag);
		List<Verification> found = new ArrayList<>(List.of(signed ? verified.signed() : verified));
		if (digest != null) {
			found.add(Verification.ofDigest(history, tag, digest));
		}
		if (folder) {
			found.add(Verification.ofFolder(history, tag));
		}
		return found;
	}

	/** A tag that is there and is no release is damage; one that is not there may have been mistyped. */
	private ArchiveException missing(History history) {
		String trouble = history.check().tagTroubles().get(version);
		String remedy = "look at the list of releases";
		return trouble == null ? new ArchiveException("there is no release " + version, remedy)
				: new DamagedException("release " + version + " cannot be verified, as its tag is none: " + trouble,
						remedy,
						List.of(new Damage(".git/refs/tags/" + version, 0, trouble,
								"fetch the tag again from a copy that has it")));
	}

	private Path root() {
		return archive.toAbsolutePath().normalize();
	}

	private Verification people(History history, Json result) {
		PeopleVerification found = PeopleVerification.of(history, signed);
		result.put("people", found.report()
				.map(report -> report.signers().signatories().stream().map(PeopleCommand::json).toList()).orElse(null));
		result.put("verdicts", found.report()
				.map(report -> report.verdicts().stream().map(VerifyCommand::json).toList()).orElse(null));
		return found.verification();
	}

	private static Object json(VerdictProof v) {
		return new Json().put("file", v.file()).put("id", v.id()).put("person", v.person())
				.put("enteredBy", v.enteredBy().isEmpty() ? null : v.enteredBy())
				.put("savePoint", v.where().id()).put("proof", v.kind().toString()).put("problem", v.kind().isProblem())
				.put("signature", v.signature().toString()).fields();
	}

	private static Json json(Verification v) {
		Signature signature = v.signature();
		return new Json().put("what", v.what()).put("sound", v.isSound())
				.put("checks",
						v.checks().stream()
								.map(c -> new Json().put("what", c.what())
										.put("problem", c.isSound() ? null : c.problem()).fields())
								.toList())
				.put("signature", signature == null ? null
						: new Json().put("state", signature.state().toString())
								.put("by", signature.by().isEmpty() ? null : signature.by())
								.put("detail", signature.detail().isEmpty() ? null : signature.detail()))
				.put("notes", v.notes());
	}

	private void print(Verification verification) {
		out().println(verification.what() + ": " + (verification.isSound() ? "sound" : "NOT SOUND")
				+ (verification.signature() == null ? "" : "; signature: " + verification.signature()));
		verification.checks().stream().filter(c -> !c.isSound())
				.forEach(c -> out().println("  " + c.what() + ": " + c.problem()));
		verification.notes().forEach(note -> out().println("  " + note));
	}
}
