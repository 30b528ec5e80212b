package org.cairnfield.archive.history;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.cairnfield.archive.internal.git.Commit;
import org.cairnfield.archive.internal.git.GitAudit;
import org.cairnfield.archive.signature.Signature;
import org.cairnfield.archive.signature.Signature.State;
import org.cairnfield.archive.signature.SignerList;

/** Whose signatures commits carry, by the lists of people that count for them. */
final class CommitSignatures {

	private final GitAudit git;
	private final SignerHistory signers;
	private final Map<String, Signature> known = new HashMap<>();

	CommitSignatures(GitAudit git, SignerHistory signers) {
		this.git = git;
		this.signers = signers;
	}

	/** Of a commit of the history that the lists are of. Runs a program for one that is signed, once. */
	Signature of(Commit commit) throws IOException {
		Signature found = known.get(commit.id());
		if (found == null) {
			List<SignerList> lists = signers.since(commit.id());
			found = git.signature(commit, lists.stream().allMatch(SignerList::isEmpty) ? null : lists.get(0));
			for (int later = 1; later < lists.size() && found.state() == State.UNKNOWN_KEY; later++) {
				found = git.signature(commit, lists.get(later));
			}
			known.put(commit.id(), found);
		}
		return found;
	}
}
