package org.cairnfield.batch.cli;

import java.io.PrintWriter;
import java.util.Locale;
import org.cairnfield.core.measure.PositionErrors;
import org.cairnfield.curation.measure.Measurement;
import org.cairnfield.curation.measure.Variant;
import org.cairnfield.curation.propose.Proposals;
import org.cairnfield.curation.split.Split;

/** Results as JSON and as tables; field names are a contract with scripts. */
final class Results {

	private Results() {
	}

	static Json split(Split split) {
		Json json = new Json().put("epsilon", split.epsilon()).put("minPts", split.minPts())
				.put("clusters", split.clustering().clusters()).put("noiseShare", split.clustering().noiseShare())
				.put("representation", split.signals().representation().toString())
				.put("distance", split.signals().distance().toString());
		split.elbow().ifPresent(knee -> json.put("elbowEpsilon", knee.y()));
		if (split.pcaComponents() > 0) {
			json.put("pcaComponents", split.pcaComponents());
		}
		return json;
	}

	static Json proposals(Proposals proposals) {
		return new Json().put("made", proposals.made()).put("unplaced", proposals.unplaced())
				.put("gateReached", proposals.open());
	}

	static Json variant(Variant v) {
		PositionErrors e = v.errors();
		return new Json().put("name", v.name()).put("meanErrorM", e.meanMetres()).put("medianErrorM", e.medianMetres())
				.put("rmseM", e.rmseMetres()).put("p75M", e.p75Metres()).put("p90M", e.p90Metres())
				.put("p95M", e.p95Metres()).put("ce50M", e.ce50Metres()).put("ce95M", e.ce95Metres())
				.put("floorHitRate", e.floorHitRate()).put("siteHitRate", e.siteHitRate())
				.put("comparisonsPerQuery", v.comparisonsPerQuery()).put("matchTimeRatio", v.matchTimeRatio())
				.put("meanLowM", v.meanInterval().low()).put("meanHighM", v.meanInterval().high()).put("how", v.how());
	}

	static void printSplit(Split split, PrintWriter out) {
		out.printf(Locale.ROOT, "split        %d clusters, %.1f %% noise (ε %.6g, minPts %d, %s, %s%s)%n",
				split.clustering().clusters(), 100 * split.clustering().noiseShare(), split.epsilon(), split.minPts(),
				split.signals().representation(), split.signals().distance(),
				split.pcaComponents() > 0 ? ", " + split.pcaComponents() + " principal components" : "");
		split.elbow().ifPresent(knee -> out.printf(Locale.ROOT,
				"elbow        ε %.6g by Kneedle on the k-distance curve; a start, not an answer%n", knee.y()));
	}

	static void printProposals(Proposals proposals, PrintWriter out) {
		if (!proposals.open()) {
			out.printf(Locale.ROOT, "proposals    none: %.1f %% noise is below the gate of %.1f %%; %d samples stay noise%n",
					100 * proposals.split().clustering().noiseShare(), 100 * proposals.rule().gate(), proposals.unplaced());
			return;
		}
		out.printf(Locale.ROOT, "proposals    %d made (r ≥ %s), %d samples stay noise%n", proposals.made(),
				proposals.rule().threshold(), proposals.unplaced());
	}

	static void printMeasurement(Measurement measured, PrintWriter out) {
		TextTable table = new TextTable("matching", "mean m", "95 % interval", "median m", "RMSE m", "75 % m", "90 % m",
				"95 % m", "floor", "site", "compared", "time");
		for (Variant v : measured.variants()) {
			PositionErrors e = v.errors();
			table.row(v.name(), f("%.3f", e.meanMetres()),
					f("%.3f", v.meanInterval().low()) + " … " + f("%.3f", v.meanInterval().high()),
					f("%.3f", e.medianMetres()), f("%.3f", e.rmseMetres()), f("%.3f", e.p75Metres()),
					f("%.3f", e.p90Metres()), f("%.3f", e.p95Metres()), f("%.1f %%", 100 * e.floorHitRate()),
					f("%.1f %%", 100 * e.siteHitRate()), f("%.1f", v.comparisonsPerQuery()),
					f("%.3f", v.matchTimeRatio()));
		}
		table.print(out);
		out.println();
		out.println("chosen       " + measured.variant("chosen").how() + " (of " + measured.choice().tried().size()
				+ " combinations tried on held-out training positions)");
		out.println("             errors in the plane, percentiles by Hyndman-Fan type 6; compared: fingerprints per query;");
		out.println("             time: wall time to plain, one thread, same run");
	}

	private static String f(String format, double value) {
		return Double.isNaN(value) ? "–" : String.format(Locale.ROOT, format, value);
	}
}
