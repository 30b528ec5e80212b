package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;

import org.cairnfield.archive.signature.Signature;
import org.cairnfield.archive.signature.Signature.State;
import org.cairnfield.archive.signature.SignerList;
import org.cairnfield.core.text.Words;

/**
 * Checks signatures of tags and commits by the programs, keys and lists of the user, as Git itself would; signatures by SSH
 * also by another list.
 */
final class SignatureCheck {

	private static final String NAMESPACE = "git";
	private static final String STATUS = "[GNUPG:] ";

	private final UserGit user;
	private final SignerList list;

	SignatureCheck(UserGit user) {
		this(user, null);
	}

	/** @param list in place of the user's file of allowed signers; null for that file */
	SignatureCheck(UserGit user, SignerList list) {
		this.user = user;
		this.list = list;
	}

	/** @param time when it was made, as it says; keys that are limited in time count by it */
	Signature of(SignedObject signed, Instant time) {
		try {
			if (!signed.isSigned()) {
				return new Signature(State.NOT_SIGNED, "", "");
			}
			if (signed.isArmour(SignedObject.PGP)) {
				return pgp(signed);
			}
			if (signed.isArmour(SignedObject.SSH)) {
				return ssh(signed, time);
			}
			return new Signature(State.BAD, "", Messages.SignatureCheck_itIsNotAWhole);
		} catch (IOException | RuntimeException e) {
			return new Signature(State.NOT_CHECKED, "", String.valueOf(e.getMessage()));
		}
	}

	private Signature pgp(SignedObject signed) throws IOException {
		Path gpg = user.gpg();
		if (gpg == null) {
			return new Signature(State.NOT_CHECKED, "", Messages.SignatureCheck_gpgIsNotInstalled);
		}
		try (Program program = new Program()) {
			Path signature = program.file("signature.asc", signed.signature());
			Program.Done done = program.run(List.of(gpg.toString(), "--batch", "--no-tty", "--no-auto-key-retrieve",
					"--status-fd=1", "--keyid-format=long", "--verify",
					signature.toString(), "-"), signed.payload());
			List<String> status = done.text().lines().filter(l -> l.startsWith(STATUS))
					.map(l -> l.substring(STATUS.length())).toList();
			return judge(status, done);
		}
	}

	/** GnuPG says one word for each signature; more than one signature is more than Git makes. */
	private static Signature judge(List<String> status, Program.Done done) {
		List<String> verdicts = status.stream()
				.filter(l -> l.matches("(GOODSIG|BADSIG|ERRSIG|EXPSIG|EXPKEYSIG|REVKEYSIG)( .*)?")).toList();
		if (verdicts.size() != 1) {
			String said = done.err().lines().reduce((a, b) -> b)
					.orElse(Words.bind(Messages.SignatureCheck_exitCode, done.exit()));
			return status.stream().anyMatch(l -> l.startsWith("NODATA") || l.startsWith("UNEXPECTED"))
					|| verdicts.size() > 1
							? new Signature(State.BAD, "", Words.bind(Messages.SignatureCheck_itCannotBeRead, said))
							: new Signature(State.NOT_CHECKED, "",
									Words.bind(Messages.SignatureCheck_gpgDidNotCheckIt, said));
		}
		String[] words = verdicts.get(0).split(" ", 3);
		String key = words.length > 1 ? Words.bind(Messages.SignatureCheck_key, words[1]) : "";
		String by = words.length > 2 ? words[2] : "";
		String print = status.stream().filter(l -> l.startsWith("VALIDSIG "))
				.map(l -> Words.bind(Messages.SignatureCheck_key, l.split(" ")[1]))
				.findFirst().orElse(null);
		return switch (words[0]) {
		case "GOODSIG" -> done.exit() == 0 && print != null ? new Signature(State.GOOD, by, print)
				: new Signature(State.BAD, by, key);
		case "EXPKEYSIG" -> print != null
				? new Signature(State.GOOD, by, Words.bind(Messages.SignatureCheck_whichHasExpiredSince, print))
				: new Signature(State.BAD, by, key);
		case "ERRSIG" ->
			status.stream().anyMatch(l -> l.startsWith("NO_PUBKEY ")) ? new Signature(State.UNKNOWN_KEY, "", key)
					: new Signature(State.NOT_CHECKED, "",
							Words.bind(Messages.SignatureCheck_gpgCannotCheckSignaturesOf, key));
		case "REVKEYSIG" -> new Signature(State.BAD, by, Words.bind(Messages.SignatureCheck_wasRevoked, key));
		case "EXPSIG" ->
			new Signature(State.BAD, by, Words.bind(Messages.SignatureCheck_theSignatureHasExpired, key));
		default -> new Signature(State.BAD, by, key);
		};
	}

	private Signature ssh(SignedObject signed, Instant time) throws IOException {
		Path keygen = user.sshKeygen();
		if (keygen == null) {
			return new Signature(State.NOT_CHECKED, "", Messages.SignatureCheck_sshKeygenIsNotInstalled);
		}
		try (Program program = new Program()) {
			String signature = program.file("signature.sig", signed.signature()).toString();
			Program.Done own = program.run(
					List.of(keygen.toString(), "-Y", "check-novalidate", "-n", NAMESPACE, "-s", signature),
					signed.payload());
			if (own.exit() != 0) {
				return new Signature(State.BAD, "", own.err().lines().findFirst().orElse(""));
			}
			String key = own.text().lines().findFirst().orElse("").replaceFirst("^.*with ", "");
			Path signers = list == null ? user.allowedSigners() : program.file("signers", list.toBytes());
			if (signers == null || !Files.isReadable(signers)) {
				return new Signature(State.NOT_CHECKED, "",
						key + "; " + (signers == null ? Messages.SignatureCheck_noFileOfAllowedSigners
								: Words.bind(Messages.SignatureCheck_theFileOfAllowedSigners, signers)));
			}
			String at = "-Overify-time="
					+ DateTimeFormatter.ofPattern("yyyyMMddHHmmss'Z'").withZone(ZoneOffset.UTC).format(time);
			Program.Done found = program.run(
					List.of(keygen.toString(), "-Y", "find-principals", "-f", signers.toString(), "-s", signature, at),
					new byte[0]);
			List<String> by = new ArrayList<>();
			for (String principal : found.exit() == 0 ? found.text().lines().distinct().toList() : List.<String>of()) {
				List<String> command = new ArrayList<>(
						List.of(keygen.toString(), "-Y", "verify", "-n", NAMESPACE, "-f", signers.toString()));
				command.addAll(List.of("-I", principal, "-s", signature, at));
				if (program.run(command, signed.payload()).exit() == 0) {
					by.add(principal);
				}
			}
			return by.isEmpty() ? new Signature(State.UNKNOWN_KEY, "", key)
					: new Signature(State.GOOD, String.join(", ", by), key);
		}
	}
}
