package org.cairnfield.ui.internal.samples.model;

import java.util.HashMap;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;

import org.cairnfield.curation.samples.SampleContent;
import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.SampleTable;

/** What samples are sorted by: one number each. What is unknown comes last, up or down. */
final class SortKeys {

	private static final double UNKNOWN = Double.NaN;
	private static final double MORE_THAN_FINDINGS = 1e9;

	private final SampleContent content;
	private final SampleRows rows;

	private SortKeys(SampleContent content) {
		this.content = content;
		rows = content.rows();
	}

	/** How samples stand in order by a column. */
	static IndexSort.Order order(SampleContent content, SampleColumn column, boolean descending) {
		SortKeys keys = new SortKeys(content);
		if (column == SampleColumn.ID) {
			return descending ? (a, b) -> keys.id(b).compareTo(keys.id(a)) : (a, b) -> keys.id(a).compareTo(keys.id(b));
		}
		double[] key = new double[content.size()];
		IntToDoubleFunction number = keys.number(column);
		for (int i = 0; i < key.length; i++) {
			double each = number.applyAsDouble(i);
			key[i] = (descending ? -each : each) + 0.0; // NaN stays NaN, the last in the order of Double.compare
		}
		return (a, b) -> Double.compare(key[a], key[b]);
	}

	private String id(int index) {
		return content.table(index).id(rows.row(index));
	}

	private IntToDoubleFunction number(SampleColumn column) {
		return switch (column) {
		case ID -> throw new IllegalArgumentException("ids are texts");
		case SURVEY -> rank(i -> rows.part(i).survey());
		case SITE -> rank(i -> rows.part(i).site());
		case KIND -> rank(i -> rows.part(i).kind().getLiteral());
		case DEVICE -> rank(i -> rows.part(i).device());
		case STATE ->
			rank(i -> content.table(i).isKept(rows.row(i)) ? "" : ' ' + content.table(i).reason(rows.row(i)), true);
		case FLOOR -> i -> content.table(i).floorLevel(rows.row(i));
		case X -> i -> content.table(i).xMetres(rows.row(i));
		case Y -> i -> content.table(i).yMetres(rows.row(i));
		case TIME -> i -> {
			long millis = content.table(i).timeMillis(rows.row(i));
			return millis == SampleTable.NO_TIME ? UNKNOWN : millis;
		};
		case HEARD -> i -> content.table(i).heard(rows.row(i));
		case STRONGEST -> i -> content.strongestDbm(i) == Integer.MIN_VALUE ? UNKNOWN : content.strongestDbm(i);
		case FINDINGS -> i -> content.findings().of(i)
				.map(mark -> mark.count() - MORE_THAN_FINDINGS * mark.worst().ordinal()).orElse(UNKNOWN);
		case CLUSTER -> i -> !content.clusters().has(i) || content.clusters().cluster(i) == Labels.NOISE ? UNKNOWN
				: content.clusters().cluster(i);
		case ROLE -> rank(content.clusters()::role);
		};
	}

	private IntToDoubleFunction rank(IntFunction<String> text) {
		return rank(text, false);
	}

	/** Texts of which there are few, by their place in the alphabet. */
	private IntToDoubleFunction rank(IntFunction<String> text, boolean emptyIsKnown) {
		Map<String, Double> ranks = new HashMap<>();
		for (int i = 0; i < content.size(); i++) {
			ranks.put(text.apply(i), 0.0);
		}
		int rank = 0;
		for (String each : new TreeSet<>(ranks.keySet())) {
			ranks.put(each, each.isEmpty() && !emptyIsKnown ? UNKNOWN : rank++);
		}
		return i -> ranks.get(text.apply(i));
	}
}
