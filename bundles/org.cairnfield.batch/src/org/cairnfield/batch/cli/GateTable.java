package org.cairnfield.batch.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import org.cairnfield.curation.release.GateResult;

/** What came of gates, for people and for programs. */
final class GateTable {

	private GateTable() {
	}

	static void print(List<GateResult> results, PrintWriter out) {
		ConsoleTable table = new ConsoleTable("gate", "figure", "bound", "verdict");
		results.forEach(r -> table.row(r.gate().key(), r.shownFigure(), r.shownBound(), r.verdict()));
		table.print(out);
		results.forEach(r -> out.println(r.gate().key() + ": " + r.evidence()));
	}

	static List<Map<String, Object>> json(List<GateResult> results) {
		return results.stream()
				.map(r -> new Json().put("gate", r.gate().key()).put("title", r.gate().title())
						.put("figure", r.figure())
						.put("bound", r.bound())
						.put("relation", r.gate().atMost() ? Messages.GateTable_atMost : Messages.GateTable_atLeast)
						.put("met", r.isMet())
						.put("overruledBy", r.overrule() == null ? null : r.overrule().person())
						.put("reason", r.overrule() == null ? null : r.overrule().reason())
						.put("evidence", r.evidence()).fields())
				.toList();
	}
}
