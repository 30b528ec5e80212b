package org.cairnfield.archive.history;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.cairnfield.archive.history.VerdictProof.Kind;
import org.cairnfield.archive.internal.git.Commit;
import org.cairnfield.archive.internal.git.GitAudit;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.archive.internal.text.LedgerLines;
import org.cairnfield.archive.signature.Signature;
import org.cairnfield.archive.signature.SignerList;
import org.cairnfield.core.text.Words;

/** Whether verdicts stand in commits that are signed by the people they name. */
final class PeopleAudit {

	private final List<Commit> history;
	private final LedgerAudit ledgers;
	private final SignerHistory signers;
	private final SignerList present;
	private final CommitSignatures signatures;

	/** @param history a commit and all that it came from, each after those that it came from */
	PeopleAudit(GitAudit git, List<Commit> history) throws IOException {
		this.history = history;
		ledgers = new LedgerAudit(git, history);
		signers = new SignerHistory(git, history);
		signatures = new CommitSignatures(git, signers);
		present = signers.at(last().id());
	}

	private Commit last() {
		return history.get(history.size() - 1);
	}

	PeopleReport report() throws IOException {
		Map<String, Map<String, VerdictProof>> proofs = new HashMap<>();
		for (Commit commit : history) {
			for (Map.Entry<String, List<String>> file : ledgers.added(commit).entrySet()) {
				Map<String, VerdictProof> known = proofs.computeIfAbsent(file.getKey(), path -> new HashMap<>());
				for (String line : file.getValue()) {
					VerdictProof proof = proof(file.getKey(), line, commit);
					known.merge(line, proof, (before, again) -> again.kind() == Kind.SIGNED ? again : before); // one that was lost and is back
				}
			}
		}
		List<VerdictProof> verdicts = new ArrayList<>();
		for (Map.Entry<String, List<String>> file : ledgers.linesOf(last()).entrySet()) {
			file.getValue().forEach(line -> verdicts.add(proofs.get(file.getKey()).get(line)));
		}
		List<String> problems = new ArrayList<>(signers.problems(last().id()));
		present.unreadable().forEach(
				line -> problems.add(Words.bind(Messages.PeopleAudit_lineNamesNoKey, ArchiveLayout.PEOPLE, line)));
		List<String> changes = new ArrayList<>(signers.changes());
		signers.settled(last().id())
				.forEach(problem -> changes.add(Words.bind(Messages.PeopleAudit_aLeadHasSignedA, problem)));
		return new PeopleReport(present, changes, problems, verdicts);
	}

	private VerdictProof proof(String file, String line, Commit commit) throws IOException {
		Signature signature = signatures.of(commit);
		String person = LedgerLines.person(line);
		String enteredBy = LedgerLines.enteredBy(line);
		Kind kind = commit.parents().size() > 1 ? Kind.MERGED : kind(signature, person, enteredBy);
		return new VerdictProof(file, LedgerLines.id(line), person, enteredBy, SavePoint.of(commit), kind, signature);
	}

	private static Kind kind(Signature signature, String person, String enteredBy) {
		return switch (signature.state()) {
		case NOT_SIGNED -> Kind.UNSIGNED;
		case BAD -> Kind.BAD;
		case GOOD -> signature.isOf(person) ? Kind.SIGNED : signature.isOf(enteredBy) ? Kind.ENTERED : Kind.OTHER;
		default -> Kind.UNKNOWN;
		};
	}
}
