package org.cairnfield.curation.release;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.PeopleReport;
import org.cairnfield.archive.history.VerdictProof;
import org.cairnfield.archive.history.VerdictProof.Kind;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.values.Count;

/**
 * Whether verdicts stand in save points that are signed by the people they name.
 *
 * @param report       line by line; empty where the history cannot be looked through
 * @param verification in words; verdicts of one person that came with one save point are one line
 */
public record PeopleVerification(Optional<PeopleReport> report, Verification verification) {

	private static final String WHAT = Messages.PeopleVerification_thePeople;

	/** @param signed whether every verdict has to be signed, by its person or by who entered it */
	public static PeopleVerification of(History history, boolean signed) {
		try {
			PeopleReport report = history.check().people();
			return new PeopleVerification(Optional.of(report), verification(report, signed));
		} catch (IOException | RuntimeException e) {
			return new PeopleVerification(Optional.empty(),
					new Verification(WHAT,
							List.of(new Verification.Check(Messages.PeopleVerification_signaturesUnderVerdicts,
									Words.bind(Messages.PeopleVerification_cannotBeChecked, e.getMessage())))));
		}
	}

	private static Verification verification(PeopleReport report, boolean signed) {
		List<Verification.Check> checks = new ArrayList<>();
		checks.add(new Verification.Check(Messages.PeopleVerification_theListOfPeople,
				String.join("; ", report.problems())));
		checks.add(
				new Verification.Check(Messages.PeopleVerification_signaturesUnderVerdicts,
						String.join("; ", lines(report, Kind::isProblem))));
		if (signed) {
			checks.add(new Verification.Check(Messages.PeopleVerification_aGoodSignatureUnderEach,
					String.join("; ", lines(report, PeopleVerification::isOpen))));
		}
		List<String> notes = new ArrayList<>();
		if (report.signers().isEmpty()) {
			notes.add(
					Messages.PeopleVerification_theArchiveHasNoList);
		}
		report.changes()
				.forEach(change -> notes.add(Words.bind(Messages.PeopleVerification_theListOfPeople2, change)));
		report.signers().signatories().forEach(s -> notes.add(
				String.join(", ", s.names()) + (s.lead() ? Messages.PeopleVerification_lead : "") + ": " + s.type()
						+ ' ' + s.fingerprint()));
		notes.addAll(lines(report, kind -> !kind.isProblem() && !(signed && isOpen(kind))));
		return new Verification(WHAT, List.copyOf(checks), null, List.copyOf(notes));
	}

	private static boolean isOpen(Kind kind) {
		return kind == Kind.UNSIGNED || kind == Kind.UNKNOWN;
	}

	private static List<String> lines(PeopleReport report, Predicate<Kind> wanted) {
		List<String> lines = new ArrayList<>();
		List<VerdictProof> alike = new ArrayList<>();
		for (VerdictProof proof : report.verdicts()) {
			if (wanted.test(proof.kind())) {
				if (!alike.isEmpty() && !isAlike(alike.get(0), proof)) {
					lines.add(line(alike));
					alike.clear();
				}
				alike.add(proof);
			}
		}
		if (!alike.isEmpty()) {
			lines.add(line(alike));
		}
		return lines;
	}

	private static boolean isAlike(VerdictProof one, VerdictProof other) {
		return one.file().equals(other.file()) && one.where().id().equals(other.where().id())
				&& one.person().equals(other.person())
				&& one.enteredBy().equals(other.enteredBy());
	}

	private static String line(List<VerdictProof> alike) {
		VerdictProof first = alike.get(0);
		return Words
				.bind(Messages.PeopleVerification_ofInSavePointBy, first.file(),
						alike.size() == 1 ? Words.bind(Messages.PeopleVerification_verdict, first.id())
								: Count.of(alike.size(), "verdict"),
						first.person().isEmpty() ? "nobody" : first.person(),
						first.enteredBy().isEmpty() ? ""
								: Words.bind(Messages.PeopleVerification_enteredBy, first.enteredBy()),
						first.where().shortId(), first.where().person(), first.kind(),
						first.kind() == Kind.UNSIGNED ? "" : " (" + first.signature() + ')');
	}
}
