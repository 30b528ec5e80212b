package org.cairnfield.archive.internal.merge;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cairnfield.model.values.Readings;
import org.cairnfield.model.values.Sample;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;

/** The samples of a survey of which two sides have changed some: by floor, position, time, state, and each reading. */
final class TableMerge {

	private final String where;
	private final ThreeWay values;

	private TableMerge(String where, ThreeWay values) {
		this.where = where;
		this.values = values;
	}

	/** @param base null where both sides have added the survey */
	static SampleTable of(SampleTable base, SampleTable mine, SampleTable theirs, String where, ThreeWay values) {
		if (mine.equals(theirs) || theirs.equals(base)) {
			return mine;
		}
		return mine.equals(base) ? theirs : new TableMerge(where, values).merge(base == null ? SampleTable.EMPTY : base, mine, theirs);
	}

	private SampleTable merge(SampleTable base, SampleTable mine, SampleTable theirs) {
		SortedSet<String> ids = new TreeSet<>();
		for (SampleTable table : List.of(mine, theirs)) {
			for (int row = 0; row < table.size(); row++) {
				ids.add(table.id(row));
			}
		}
		SampleTableBuilder merged = SampleTable.builder();
		for (String id : ids) {
			Sample sample = merge(id, sample(base, id), sample(mine, id), sample(theirs, id));
			if (sample != null) {
				merged.add(sample);
			}
		}
		return merged.build();
	}

	private static Sample sample(SampleTable table, String id) {
		int row = table.row(id);
		return row < 0 ? null : table.sample(row);
	}

	/** Null where one side has removed it and the other left it as it was. */
	private Sample merge(String id, Sample base, Sample mine, Sample theirs) {
		if (mine == null || theirs == null) {
			Sample left = mine == null ? theirs : mine;
			if (left.equals(base)) {
				return null;
			}
			if (base != null) {
				values.conflict(where(id), "sample", base, mine, theirs);
			}
			return left;
		}
		Position position = position(id, base, mine, theirs);
		return new Sample(id, this.<Integer>unit(id, "floor", base == null ? null : base.floorLevel(), mine.floorLevel(), theirs.floorLevel()),
				position.x, position.y,
				this.<Long>unit(id, "time", base == null ? null : base.timeMillis(), mine.timeMillis(), theirs.timeMillis()),
				values.value(where(id), "state", base != null, base == null ? null : base.reason(), mine.reason(), theirs.reason()),
				readings(id, base, mine, theirs));
	}

	private String where(String id) {
		return where + ", sample " + id;
	}

	private <T> T unit(String id, String what, T base, T mine, T theirs) {
		return values.value(where(id), what, base != null, base, mine, theirs);
	}

	/** Metres; x and y make sense together only. */
	private record Position(double x, double y) {

		static Position of(Sample sample) {
			return sample == null ? null : new Position(sample.xMetres(), sample.yMetres());
		}
	}

	private Position position(String id, Sample base, Sample mine, Sample theirs) {
		return unit(id, "position", Position.of(base), Position.of(mine), Position.of(theirs));
	}

	private Readings readings(String id, Sample base, Sample mine, Sample theirs) {
		TreeMap<String, Integer> then = levels(base);
		TreeMap<String, Integer> one = levels(mine);
		TreeMap<String, Integer> other = levels(theirs);
		SortedSet<String> heard = new TreeSet<>(one.keySet());
		heard.addAll(other.keySet());
		TreeMap<String, Integer> merged = new TreeMap<>();
		for (String accessPoint : heard) {
			Integer level = values.value(where(id), "reading of " + accessPoint, base != null, then.get(accessPoint), one.get(accessPoint),
					other.get(accessPoint));
			if (level != null) {
				merged.put(accessPoint, level);
			}
		}
		return Readings.of(merged);
	}

	private static TreeMap<String, Integer> levels(Sample sample) {
		TreeMap<String, Integer> levels = new TreeMap<>();
		for (int k = 0; sample != null && k < sample.readings().size(); k++) {
			levels.put(sample.readings().accessPoint(k), sample.readings().rssiDbm(k));
		}
		return levels;
	}
}
