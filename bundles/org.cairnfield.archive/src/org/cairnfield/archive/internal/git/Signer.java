package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.signature.Signature;
import org.cairnfield.archive.signature.Signature.State;
import org.cairnfield.core.text.Words;
import org.eclipse.jgit.lib.GpgSignature;

/**
 * Signs tags and commits where the user's Git is configured to. It runs the program that Git itself would run, with
 * {@code user.signingKey}, by OpenPGP or SSH; JGit alone would need further libraries. Other formats are refused, and so is
 * whatever a program hands back that does not verify.
 */
final class Signer {

	private final UserGit user;
	private final boolean wanted;
	/** What did not happen where signing fails. */
	private final String undone;
	private final String setting;

	private Signer(UserGit user, boolean wanted, String undone, String setting) {
		this.user = user;
		this.wanted = wanted;
		this.undone = undone;
		this.setting = setting;
	}

	/** Signs where {@code tag.gpgSign} or {@code tag.forceSignAnnotated} is true. */
	static Signer ofTags(UserGit user) {
		return new Signer(user, user.signsTags(), Messages.Signer_noTagWasMade, "tag.gpgSign");
	}

	/** Signs where {@code commit.gpgSign} is true. */
	static Signer ofCommits(UserGit user) {
		return new Signer(user, user.signsCommits(), Messages.Signer_noSavePointWasMade, "commit.gpgSign");
	}

	/**
	 * @param payload the object without a signature
	 * @param time    when it was made, as it says
	 * @return null where Git is configured not to sign
	 * @throws ArchiveException where there is no signature, or not a good one
	 */
	GpgSignature sign(byte[] payload, Instant time) throws IOException {
		if (!wanted) {
			return null;
		}
		byte[] signature = switch (user.format()) {
		case "openpgp" -> pgp(payload);
		case "ssh" -> ssh(payload);
		default ->
			throw new ArchiveException(Words.bind(Messages.Signer_gitIsConfiguredToSign, undone, user.format()),
					Words.bind(Messages.Signer_setGpgFormatToOpenpgp, setting));
		};
		requireGood(new SignedObject(payload, signature), time);
		return new GpgSignature(signature);
	}

	private byte[] pgp(byte[] content) throws IOException {
		Path gpg = installed(user.gpg(), "gpg");
		List<String> command = new ArrayList<>(List.of(gpg.toString(), "--status-fd=2", "-bsa"));
		if (user.signingKey() != null) {
			command.addAll(List.of("-u", user.signingKey()));
		}
		try (Program program = new Program()) {
			Program.Done done = program.run(command, content);
			if (done.exit() != 0) {
				throw refused(gpg, done.err());
			}
			return done.out();
		}
	}

	private byte[] ssh(byte[] content) throws IOException {
		Path keygen = installed(user.sshKeygen(), "ssh-keygen");
		String key = user.signingKey();
		if (key == null) {
			throw new ArchiveException(Words.bind(Messages.Signer_userSigningkeyNamesNoKey, undone),
					Words.bind(Messages.Signer_nameOneOrSetTo, setting));
		}
		try (Program program = new Program()) {
			List<String> command = new ArrayList<>(List.of(keygen.toString(), "-Y", "sign", "-n", "git", "-f"));
			if (key.startsWith("ssh-") || key.startsWith("key::")) { // the key itself; its private part is with the agent
				String text = key.startsWith("key::") ? key.substring(5) : key;
				command.addAll(List
						.of(program.file("key.pub", (text + '\n').getBytes(StandardCharsets.UTF_8)).toString(), "-U"));
			} else {
				command.add(UserGit.path(key).toString());
			}
			Path file = program.file("payload", content);
			command.add(file.toString());
			Program.Done done = program.run(command, new byte[0]);
			Path signature = file.resolveSibling("payload.sig");
			if (done.exit() != 0 || !Files.isRegularFile(signature)) {
				throw refused(keygen, done.err());
			}
			return Files.readAllBytes(signature);
		}
	}

	private Path installed(Path program, String name) throws ArchiveException {
		if (program == null) {
			throw new ArchiveException(Words.bind(Messages.Signer_gitIsConfiguredToSign2, undone, name),
					Words.bind(Messages.Signer_installItOrSetTo, setting));
		}
		return program;
	}

	/** With no list of signers SSH cannot say whose key it was; that the key made the signature it can. */
	private void requireGood(SignedObject signed, Instant time) throws ArchiveException {
		Signature made = new SignatureCheck(user).of(signed, time);
		boolean ssh = signed.isArmour(SignedObject.SSH);
		if (made.state() != State.GOOD && !(ssh && made.state() != State.BAD)) {
			throw new ArchiveException(Words.bind(Messages.Signer_whatWasHandedBackAs, undone, made),
					Words.bind(Messages.Signer_seeToTheKeyAnd, setting));
		}
	}

	private ArchiveException refused(Path program, String said) {
		return new ArchiveException(Words.bind(Messages.Signer_didNotSignIt, undone, program.getFileName(), said),
				Words.bind(Messages.Signer_seeToTheKeyOr, setting));
	}
}
