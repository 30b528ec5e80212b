package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.signature.Signature;
import org.cairnfield.archive.signature.Signature.State;
import org.eclipse.jgit.lib.GpgSignature;
import org.eclipse.jgit.lib.TagBuilder;

/**
 * Signs tags where the user's Git is configured to: {@code tag.gpgSign} or {@code tag.forceSignAnnotated} is true. It runs the
 * program that Git itself would run, with {@code user.signingKey}, by OpenPGP or SSH; JGit alone would need further
 * libraries. Other formats are refused, and so is whatever a program hands back that does not verify.
 */
final class TagSigner {

	private final UserGit user;

	TagSigner(UserGit user) {
		this.user = user;
	}

	void sign(TagBuilder tag) throws IOException {
		if (!user.signsTags()) {
			return;
		}
		byte[] content = tag.build();
		byte[] signature = switch (user.format()) {
			case "openpgp" -> pgp(content);
			case "ssh" -> ssh(content);
			default -> throw new ArchiveException("no tag was made: Git is configured to sign with " + user.format()
					+ ", which is not known here", "set gpg.format to openpgp or ssh, or tag.gpgSign to false");
		};
		requireGood(new SignedTag(content, signature), tag);
		tag.setGpgSignature(new GpgSignature(signature));
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
			throw new ArchiveException("no tag was made: user.signingKey names no key", "name one, or set tag.gpgSign to false");
		}
		try (Program program = new Program()) {
			List<String> command = new ArrayList<>(List.of(keygen.toString(), "-Y", "sign", "-n", "git", "-f"));
			if (key.startsWith("ssh-") || key.startsWith("key::")) { // the key itself; its private part is with the agent
				String text = key.startsWith("key::") ? key.substring(5) : key;
				command.addAll(List.of(program.file("key.pub", (text + '\n').getBytes(StandardCharsets.UTF_8)).toString(), "-U"));
			} else {
				command.add(UserGit.path(key).toString());
			}
			Path file = program.file("tag", content);
			command.add(file.toString());
			Program.Done done = program.run(command, new byte[0]);
			Path signature = file.resolveSibling("tag.sig");
			if (done.exit() != 0 || !Files.isRegularFile(signature)) {
				throw refused(keygen, done.err());
			}
			return Files.readAllBytes(signature);
		}
	}

	private static Path installed(Path program, String name) throws ArchiveException {
		if (program == null) {
			throw new ArchiveException("no tag was made: Git is configured to sign tags, and " + name + " cannot be found",
					"install it, or set tag.gpgSign to false");
		}
		return program;
	}

	/** With no list of signers SSH cannot say whose key it was; that the key made the signature it can. */
	private void requireGood(SignedTag signed, TagBuilder tag) throws ArchiveException {
		Signature made = new SignatureCheck(user).of(signed, tag.getTagger().getWhenAsInstant());
		boolean ssh = signed.isArmour(SignedTag.SSH);
		if (made.state() != State.GOOD && !(ssh && made.state() != State.BAD)) {
			throw new ArchiveException("no tag was made: what was handed back as its signature does not verify: " + made,
					"see to the key, and to gpg.program in the user's configuration of Git, or set tag.gpgSign to false");
		}
	}

	private static ArchiveException refused(Path program, String said) {
		return new ArchiveException("no tag was made: " + program.getFileName() + " did not sign it: " + said,
				"see to the key, or set tag.gpgSign to false");
	}
}
