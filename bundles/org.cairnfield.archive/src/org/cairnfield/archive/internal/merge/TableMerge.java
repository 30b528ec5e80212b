package org.cairnfield.archive.internal.merge;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

import org.cairnfield.model.conflict.Place;
import org.cairnfield.model.conflict.Unit;
import org.cairnfield.model.conflict.UnitText;
import org.cairnfield.model.values.Readings;
import org.cairnfield.model.values.Sample;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;

/** The samples of a survey of which two sides have changed some: by floor, position, time, state, and each reading. */
final class TableMerge {

	private final String survey;
	private final ThreeWay values;

	private TableMerge(String survey, ThreeWay values) {
		this.survey = survey;
		this.values = values;
	}

	/**
	 * @param base   null where both sides have added the survey
	 * @param survey its place
	 */
	static SampleTable of(SampleTable base, SampleTable mine, SampleTable theirs, String survey, ThreeWay values) {
		if (!values.isOpenIn(survey)) {
			if (mine.equals(theirs) || theirs.equals(base)) {
				return mine;
			}
			if (mine.equals(base)) {
				return theirs;
			}
		}
		return new TableMerge(survey, values).merge(base == null ? SampleTable.EMPTY : base, mine, theirs);
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
		String place = Place.ofSample(survey, id);
		if (mine == null || theirs == null) {
			Sample left = mine == null ? theirs : mine;
			if (left.equals(base) && !values.hasNewClaimsIn(place, mine != null)) {
				return null;
			}
			if (base != null) {
				values.clashOverPresence(place, mine == null);
			}
			values.keepOpenIn(place, mine != null);
			return left;
		}
		values.presence(place, () -> !mine.equals(base), () -> !theirs.equals(base));
		Position position = unit(place, Unit.POSITION, Position::text, base, mine, theirs, Position::of);
		return new Sample(id, unit(place, Unit.FLOOR, String::valueOf, base, mine, theirs, Sample::floorLevel),
				position.x, position.y,
				unit(place, Unit.TIME, UnitText::time, base, mine, theirs, Sample::timeMillis),
				unit(place, Unit.STATE, Function.identity(), base, mine, theirs, Sample::reason),
				readings(place, base, mine, theirs));
	}

	private <T> T unit(String place, String name, Function<T, String> text, Sample base, Sample mine, Sample theirs,
			Function<Sample, T> of) {
		return values.value(new Unit(place, name), text, base != null, base == null ? null : of.apply(base),
				of.apply(mine), of.apply(theirs));
	}

	/** Metres; x and y make sense together only. */
	private record Position(double x, double y) {

		static Position of(Sample sample) {
			return new Position(sample.xMetres(), sample.yMetres());
		}

		String text() {
			return UnitText.position(x, y);
		}
	}

	private Readings readings(String place, Sample base, Sample mine, Sample theirs) {
		if (mine.readings().equals(theirs.readings()) && !values.isOpenIn(place)) {
			return mine.readings();
		}
		TreeMap<String, Integer> then = levels(base);
		TreeMap<String, Integer> one = levels(mine);
		TreeMap<String, Integer> other = levels(theirs);
		SortedSet<String> heard = new TreeSet<>(one.keySet());
		heard.addAll(other.keySet());
		values.openAt(place).stream().filter(name -> name.startsWith(Unit.READING))
				.forEach(name -> heard.add(name.substring(Unit.READING.length())));
		TreeMap<String, Integer> merged = new TreeMap<>();
		for (String accessPoint : heard) {
			Integer level = values.value(new Unit(place, Unit.READING + accessPoint), String::valueOf, base != null,
					then.get(accessPoint),
					one.get(accessPoint), other.get(accessPoint));
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
