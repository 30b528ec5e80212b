package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;

import org.cairnfield.archive.signature.Signature;
import org.cairnfield.archive.signature.Signature.State;
import org.cairnfield.archive.signature.SignerList;
import org.eclipse.jgit.lib.GpgSignature;

/** The key that the user's Git signs commits with. */
public final class OwnKey {

	private OwnKey() {
	}

	/**
	 * Signs a few bytes, to know before a commit what its signature would be worth.
	 *
	 * @param root of the archive, from which nothing is run
	 * @param list whose key is whose
	 */
	public static Signature tried(Path root, SignerList list, Instant time) throws IOException {
		UserGit user = UserGit.of(root);
		byte[] payload = "a trial of the key\n".getBytes(StandardCharsets.UTF_8);
		GpgSignature made = Signer.ofCommits(user).sign(payload, time);
		return made == null ? new Signature(State.NOT_SIGNED, "", Messages.OwnKey_gitIsNotConfiguredTo)
				: new SignatureCheck(user, list).of(
						new SignedObject(payload, made.toExternalString().getBytes(StandardCharsets.US_ASCII)), time);
	}
}
