package org.cairnfield.curation.decide;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cairnfield.curation.propose.Band;
import org.cairnfield.curation.propose.EvidenceTable;
import org.cairnfield.curation.propose.Warning;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.ResultTable;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Split;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.SampleTable;

/** Proposals and verdicts as a table, for review outside. Column names are a contract. */
public final class VerdictTable {

	/** In this order. */
	public static final List<String> COLUMNS = List.of("split", "sample", "made", "band", "cluster", "strength",
			"margin",
			"carrier", "nearestCluster", "nearestAgrees", "state", "decision", "reason", "text", "person", "time",
			"round",
			"content", "evidence", "home", "site", "floor", "x", "y", "doubts", "secondDecision", "secondHome",
			"secondReason",
			"secondText", "secondPerson", "secondTime", "enteredBy");

	private VerdictTable() {
	}

	/**
	 * Writes a row a noise sample. Decision, home, reason, text and person are those that count, and empty where somebody has
	 * to decide: fill them in, home only for a move, with the number of the cluster that the sample goes to. Leave content and evidence alone; by them the table is known to be of the present state.
	 *
	 * @param person who is to review: is not shown first verdicts on which they are to give the second; null shows all
	 * @throws IntakeException where the file cannot be written
	 */
	public static void write(Path file, Archive archive, Split split, ReviewPolicy policy, String person)
			throws IntakeException {
		write(file, archive, split, policy, person, null);
	}

	/**
	 * The same with what the evidence warns of, in words.
	 *
	 * @param evidence on the noise of the split; null for not known
	 * @throws IntakeException where the file cannot be written
	 */
	public static void write(Path file, Archive archive, Split split, ReviewPolicy policy, String person,
			EvidenceTable evidence)
			throws IntakeException {
		ArchiveIndex index = ArchiveIndex.of(archive);
		ContentOfReview content = new ContentOfReview(archive, split);
		ResultTable.write(file, COLUMNS, Standings.of(archive, split, policy).all().stream()
				.map(s -> person == null ? s : s.seenBy(person)).map(s -> {
					List<Object> row = new ArrayList<>(row(s, split, content, policy));
					row.addAll(place(index.sample(s.sample())));
					row.add(doubts(s, evidence));
					row.addAll(second(s));
					row.add(s.counting().map(LedgerEntry::enteredBy).orElse(null));
					return row;
				}));
	}

	private static List<?> row(Standing s, Split split, ContentOfReview content, ReviewPolicy policy) {
		Optional<Proposal> p = s.proposal();
		Optional<LedgerEntry> counts = s.counting();
		return Arrays.asList(split.getId(), s.sample().toString(), s.made() ? "yes" : "no",
				p.flatMap(x -> policy.bands().of(x.strengthR())).map(Band::name).orElse(null),
				p.map(x -> (Object) x.cluster()).orElse(null), p.map(x -> (Object) x.strengthR()).orElse(null),
				p.map(x -> (Object) x.margin()).orElse(null), p.map(x -> x.carrier().toString()).orElse(null),
				p.map(x -> (Object) x.nearestCluster()).orElse(null),
				p.map(x -> x.nearestAgrees() ? "yes" : "no").orElse(null),
				s.state().toString(), counts.map(e -> e.decision().getLiteral()).orElse(null),
				counts.map(LedgerEntry::reasonCode).orElse(null), counts.map(LedgerEntry::text).orElse(null),
				counts.map(LedgerEntry::person).orElse(null), counts.map(e -> e.time().toString()).orElse(null),
				counts.map(e -> e.round().getLiteral()).orElse(null), content.sample(s.sample()).orElse(null),
				content.evidence(s.sample()).orElse(null),
				counts.filter(e -> e.decision() == Decision.MOVE).map(e -> (Object) e.cluster()).orElse(null));
	}

	private static List<?> place(Optional<SampleRef> found) {
		SampleTable table = found.map(ref -> ref.survey().table()).orElse(null);
		int row = found.map(SampleRef::row).orElse(-1);
		return table == null ? Arrays.asList(null, null, null, null)
				: Arrays.asList(
						found.get().survey().getSite() == null ? null : ModelText.name(found.get().survey().getSite()),
						table.floorLevel(row), table.xMetres(row), table.yMetres(row));
	}

	private static String doubts(Standing s, EvidenceTable evidence) {
		return evidence == null ? null
				: evidence.of(s.sample()).filter(e -> !e.warnings().isEmpty())
						.map(e -> e.warnings().stream().map(Warning::word).collect(Collectors.joining("; ")))
						.orElse(null);
	}

	/** What the second reviewer said, which counts where the two agree. */
	private static List<?> second(Standing s) {
		Optional<LedgerEntry> second = s.stale() ? Optional.empty() : s.second();
		return Arrays.asList(second.map(e -> e.decision().getLiteral()).orElse(null),
				second.filter(e -> e.decision() == Decision.MOVE).map(e -> (Object) e.cluster()).orElse(null),
				second.map(LedgerEntry::reasonCode).orElse(null), second.map(LedgerEntry::text).orElse(null),
				second.map(LedgerEntry::person).orElse(null), second.map(e -> e.time().toString()).orElse(null));
	}
}
