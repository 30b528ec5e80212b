package org.cairnfield.ui.internal.properties.model;

import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;

import org.cairnfield.model.Survey;
import org.cairnfield.model.values.SampleTable;

/** What some samples add up to. */
final class Tally {

	int samples;
	int setAside;
	long readings;
	int fewest = Integer.MAX_VALUE;
	int most;
	double left = Double.POSITIVE_INFINITY;
	double right = Double.NEGATIVE_INFINITY;
	double bottom = Double.POSITIVE_INFINITY;
	double top = Double.NEGATIVE_INFINITY;
	long first = Long.MAX_VALUE;
	long last = Long.MIN_VALUE;
	final Set<Integer> levels = new TreeSet<>();

	/** All samples of some surveys that are on one of the levels. */
	static Tally of(Collection<Survey> surveys, IntPredicate level) {
		Tally tally = new Tally();
		for (Survey survey : surveys) {
			SampleTable table = survey.table();
			for (int row = 0; row < table.size(); row++) {
				if (level.test(table.floorLevel(row))) {
					tally.add(table, row);
				}
			}
		}
		return tally;
	}

	void add(SampleTable table, int row) {
		samples++;
		setAside += table.isKept(row) ? 0 : 1;
		readings += table.heard(row);
		fewest = Math.min(fewest, table.heard(row));
		most = Math.max(most, table.heard(row));
		left = Math.min(left, table.xMetres(row));
		right = Math.max(right, table.xMetres(row));
		bottom = Math.min(bottom, table.yMetres(row));
		top = Math.max(top, table.yMetres(row));
		levels.add(table.floorLevel(row));
		if (table.timeMillis(row) != SampleTable.NO_TIME) {
			first = Math.min(first, table.timeMillis(row));
			last = Math.max(last, table.timeMillis(row));
		}
	}

	/** Of what was recorded with a time. */
	boolean hasTimes() {
		return first <= last;
	}
}
