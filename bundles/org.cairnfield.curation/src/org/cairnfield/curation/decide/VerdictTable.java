package org.cairnfield.curation.decide;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.cairnfield.curation.propose.Band;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.ResultTable;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Proposal;

/** Proposals and verdicts as a table, for review outside. Column names are a contract. */
public final class VerdictTable {

	/** In this order. */
	public static final List<String> COLUMNS = List.of("split", "sample", "made", "band", "cluster", "strength", "margin",
			"carrier", "nearestCluster", "nearestAgrees", "state", "decision", "reason", "text", "person", "time", "round",
			"content", "evidence", "home");

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
		ContentOfReview content = new ContentOfReview(archive, split);
		ResultTable.write(file, COLUMNS, Standings.of(archive, split, policy).all().stream()
				.map(s -> person == null ? s : s.seenBy(person)).map(s -> row(s, split, content, policy)));
	}

	private static List<?> row(Standing s, Split split, ContentOfReview content, ReviewPolicy policy) {
		Optional<Proposal> p = s.proposal();
		Optional<LedgerEntry> counts = s.counting();
		return Arrays.asList(split.getId(), s.sample().toString(), s.made() ? "yes" : "no",
				p.flatMap(x -> policy.bands().of(x.strengthR())).map(Band::name).orElse(null),
				p.map(x -> (Object) x.cluster()).orElse(null), p.map(x -> (Object) x.strengthR()).orElse(null),
				p.map(x -> (Object) x.margin()).orElse(null), p.map(x -> x.carrier().toString()).orElse(null),
				p.map(x -> (Object) x.nearestCluster()).orElse(null), p.map(x -> x.nearestAgrees() ? "yes" : "no").orElse(null),
				s.state().toString(), counts.map(e -> e.decision().getLiteral()).orElse(null),
				counts.map(LedgerEntry::reasonCode).orElse(null), counts.map(LedgerEntry::text).orElse(null),
				counts.map(LedgerEntry::person).orElse(null), counts.map(e -> e.time().toString()).orElse(null),
				counts.map(e -> e.round().getLiteral()).orElse(null), content.sample(s.sample()).orElse(null),
				content.evidence(s.sample()).orElse(null),
				counts.filter(e -> e.decision() == Decision.MOVE).map(e -> (Object) e.cluster()).orElse(null));
	}
}
