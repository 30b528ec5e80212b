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
import org.cairnfield.core.text.Words;
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
		"${bundle:VerifyCommand_what}",
		"${bundle:VerifyCommand_more}",
		"${bundle:VerifyCommand_more2}" })
final class VerifyCommand extends SurveyCommand {

	@Option(names = "--archive", paramLabel = "DIR", descriptionKey = "VerifyCommand_archive")
	Path archive;

	@Option(names = "--release", paramLabel = "VERSION", descriptionKey = "VerifyCommand_release")
	String version;

	@Option(names = "--folder", descriptionKey = "VerifyCommand_folder")
	boolean folder;

	@Option(names = "--digest", paramLabel = "HEX", descriptionKey = "VerifyCommand_digest")
	String digest;

	@Option(names = "--signed", descriptionKey = "VerifyCommand_signed")
	boolean signed;

	@Option(names = "--people", descriptionKey = "VerifyCommand_people")
	boolean people;

	@Option(names = "--forget", descriptionKey = "VerifyCommand_forget")
	boolean forget;

	/** Verification goes on in any case; scripts can pass the option to each command that reads an archive. */
	@Mixin
	DamageArgs damageArgs;

	@Parameters(arity = "0..*", paramLabel = "FILE", descriptionKey = "VerifyCommand_file")
	List<Path> files = List.of();

	@Override
	void run(Workers workers) throws Exception {
		boolean one = folder || digest != null;
		if (archive == null && (files.isEmpty() || version != null || signed || people || forget)
				|| one && version == null) {
			throw wrong(Messages.VerifyCommand_nameAnArchiveARelease);
		}
		if (digest != null && !digest.matches("[0-9a-fA-F]{40}|[0-9a-fA-F]{64}")) {
			throw wrong(Messages.VerifyCommand_digestNeeds40Or64);
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
				: new Verification(file.toString(),
						List.of(new Verification.Check(file.toString(), Messages.VerifyCommand_isMissing)))));
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
		String remedy = Messages.VerifyCommand_lookAtTheListOf;
		return trouble == null
				? new ArchiveException(Words.bind(Messages.VerifyCommand_thereIsNoRelease, version), remedy)
				: new DamagedException(
						Words.bind(Messages.VerifyCommand_releaseCannotBeVerifiedAs, version, trouble),
						remedy,
						List.of(new Damage(".git/refs/tags/" + version, 0, trouble,
								Messages.VerifyCommand_fetchTheTagAgainFrom)));
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
		out().println(verification.what() + ": " + (verification.isSound() ? "sound" : Messages.VerifyCommand_notSound)
				+ (verification.signature() == null ? ""
						: Words.bind(Messages.VerifyCommand_signature, verification.signature())));
		verification.checks().stream().filter(c -> !c.isSound())
				.forEach(c -> out().println("  " + c.what() + ": " + c.problem()));
		verification.notes().forEach(note -> out().println("  " + note));
	}
}
