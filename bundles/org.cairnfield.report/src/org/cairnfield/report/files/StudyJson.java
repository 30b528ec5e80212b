package org.cairnfield.report.files;

import com.google.gson.GsonBuilder;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cairnfield.core.stats.SignedRank;
import org.cairnfield.curation.study.CommonPractice;
import org.cairnfield.curation.study.StudyRow;
import org.cairnfield.curation.study.StudyTable;

/** A study as JSON; field names are a contract with scripts. A number that is not finite is null. */
public final class StudyJson {

	private final Map<String, Object> fields = new LinkedHashMap<>();

	private StudyJson() {
	}

	/** The fields of the object, in order; lists and maps of the same kind within. */
	public static Map<String, Object> of(StudyTable table) {
		return new StudyJson().put("seed", table.seed())
				.put("rows", table.rows().stream().map(row -> row(row).fields).toList())
				.put("averages", table.averages().stream().map(average -> average(average).fields).toList())
				.put("best", table.best().orElse(null))
				.put("commonPractice",
						table.maps().stream()
								.flatMap(map -> List.of(CommonPractice.values()).stream()
										.filter(p -> p.on(table, map).isPresent())
										.map(p -> practice(table, map, p).fields))
								.toList()).fields;
	}

	static String text(StudyTable table) {
		return new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().serializeNulls().create().toJson(of(table))
				+ '\n';
	}

	private StudyJson put(String name, Object value) {
		fields.put(name, value instanceof Double d && !Double.isFinite(d) ? null
				: value instanceof StudyJson json ? json.fields : value);
		return this;
	}

	private static StudyJson row(StudyRow row) {
		StudyJson json = new StudyJson();
		row.fields().forEach(json::put);
		json.put("clusterSizes", row.shape() == null ? null : row.shape().sizes());
		return json.put("tried", row.tried().stream().map(tried -> tried(tried).fields).toList());
	}

	private static StudyJson tried(StudyRow.Tried tried) {
		return new StudyJson().put("method", tried.method()).put("setting", tried.setting())
				.put("search", tried.search())
				.put("heldOutErrorM", tried.meanErrorM()).put("heldOutComparisonShare", tried.comparisonShare());
	}

	private static StudyJson average(StudyTable.Average a) {
		return new StudyJson().put("method", a.method()).put("maps", a.maps()).put("toPlain", mean(a.toPlain()))
				.put("toPlain3w", mean(a.toPlain3w()))
				.put("matchTimeRatio", mean(a.matchTime())).put("comparisonShare", a.comparisonShare())
				.put("byteShare", a.byteShare())
				.put("floorHitRate", a.floorHitRate()).put("offlineS", a.offlineS()).put("meanRank", a.rank())
				.put("againstPlain", test(a.againstPlain()))
				.put("againstPlain3w", test(a.against3w())).put("againstBest", test(a.againstBest()));
	}

	private static StudyJson mean(StudyTable.Mean mean) {
		return new StudyJson().put("mean", mean.value()).put("low", mean.interval().low()).put("high",
				mean.interval().high());
	}

	private static StudyJson test(SignedRank test) {
		return new StudyJson().put("pairs", test.pairs()).put("below", test.below()).put("above", test.above()).put("p",
				test.p());
	}

	private static StudyJson practice(StudyTable table, String map, CommonPractice practice) {
		double change = practice.on(table, map).orElseThrow();
		return new StudyJson().put("map", map).put("practice", practice.words())
				.put("source", "common practice, no source").put("change", change)
				.put("verdict", practice.verdict(change).word());
	}
}
