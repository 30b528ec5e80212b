package org.cairnfield.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.internal.text.NotHeard;

/** Finds the columns of levels in a wide table, and with them what means not heard. */
final class SignalColumns {

	private static final Pattern DIGITS = Pattern.compile("\\d+");
	private static final Pattern MEASURE = Pattern.compile(
			"(?i)(?:[\\s_-]+rssi?[\\s_-]*[\\[(]?\\s*(?:dbm)?\\s*[\\])]?|\\s*[\\[(]\\s*dbm\\s*[\\])])\\s*$");

	private final FilePlan plan;
	private final ColumnStats[] stats;
	/** The layout names the columns before the access points, so that the rest need not prove itself. */
	private final boolean anchored;

	SignalColumns(FilePlan plan, ColumnStats[] stats, boolean anchored) {
		this.plan = plan;
		this.stats = stats;
		this.anchored = anchored;
	}

	/** Decides all columns that have no role yet. */
	void decide(String told) {
		List<ColumnStats> sure = new ArrayList<>();
		Set<String> patterns = new HashSet<>();
		for (int i = 0; i < stats.length; i++) {
			boolean asTold = plan.roles[i] == ColumnRole.SIGNAL;
			if (asTold || plan.roles[i] == null && stats[i].isSignal()) {
				if (!asTold) {
					plan.role(i, ColumnRole.SIGNAL,
							Words.bind(Messages.SignalColumns_levelsFromUp, (int) stats[i].min));
				}
				sure.add(stats[i]);
				patterns.add(pattern(i));
			}
		}
		decideNotHeard(sure, told);
		List<Integer> outOfRange = new ArrayList<>();
		List<Integer> unused = new ArrayList<>();
		for (int i = 0; i < stats.length; i++) {
			if (plan.roles[i] != null) {
				continue;
			}
			boolean named = HeaderWords.isAddress(plan.names.get(i)) || patterns.contains(pattern(i)) || anchored;
			ColumnStats s = stats[i];
			if (never(s) ? named && !plan.names.get(i).isEmpty() || blankFits(i, s) : named && s.inRange > 0) {
				plan.role(i, ColumnRole.SIGNAL, Words.bind(Messages.SignalColumns_namedLikeAnAccessPoint,
						never(s) ? Messages.SignalColumns_notHeardSoFar : ""));
			} else {
				plan.role(i, ColumnRole.IGNORED, Messages.SignalColumns_notUnderstood);
				if (named && s.isWhollyOutside()) {
					outOfRange.add(i);
				} else if (s.filled > 0 || !plan.names.get(i).isBlank()) {
					unused.add(i);
				}
			}
		}
		if (!outOfRange.isEmpty()) {
			plan.note(Words.bind(Messages.SignalColumns_outOfRangeFromTop, list(outOfRange)));
		}
		if (!unused.isEmpty()) {
			plan.note(Words.bind(Messages.SignalColumns_notUsed, list(unused)));
		}
		restateNotHeard(told);
		nameSignals();
	}

	/** The same answer with the figures of all columns of levels. */
	private void restateNotHeard(String told) {
		List<ColumnStats> all = IntStream.of(plan.columns(ColumnRole.SIGNAL)).mapToObj(i -> stats[i]).toList();
		NotHeardGuess guess = NotHeardGuess.of(all, anchored);
		if (told == null && guess.value().toString().equals(plan.notHeard.toString())) {
			plan.notHeardSure |= guess.sure();
			plan.guess(new Guess(Messages.SignalColumns_notHeard, guess.value().toString(), guess.evidence()));
		}
	}

	private void decideNotHeard(List<ColumnStats> sure, String told) {
		if (told != null) {
			plan.notHeard = NotHeard.of(told);
			plan.notHeardSure = true;
			plan.guess(new Guess(Messages.SignalColumns_notHeard, told, Messages.SignalColumns_asTold));
			return;
		}
		NotHeardGuess guess = NotHeardGuess.of(sure, anchored);
		plan.notHeard = guess.value();
		plan.notHeardSure = guess.sure() || anchored;
		plan.guess(new Guess(Messages.SignalColumns_notHeard, guess.value().toString(), guess.evidence()));
	}

	/** Nothing but what means not heard, in the rows looked at. */
	private boolean never(ColumnStats s) {
		return s.filled == 0 || plan.notHeard.is(s.onlyNumber())
				|| s.missing.keySet().stream().anyMatch(plan.notHeard::isWord) && s.numbers == 0;
	}

	/** A blank column with any name fits a table in which blanks mean not heard. */
	private boolean blankFits(int column, ColumnStats s) {
		return s.filled == 0 && plan.notHeardSure && plan.notHeard.isOnlyEmpty()
				&& !plan.names.get(column).isBlank() && HeaderWords.meaning(plan.names.get(column)) == null
				&& column > 0 && plan.roles[column - 1] == ColumnRole.SIGNAL;
	}

	private String pattern(int column) {
		String name = plan.names.get(column);
		return HeaderWords.isAddress(name) ? "address" : DIGITS.matcher(name).replaceAll("#");
	}

	private String list(List<Integer> columns) {
		String names = columns.stream().limit(12).map(i -> plan.names.get(i).isBlank() ? "#" + (i + 1)
				: CellWords.shown(plan.names.get(i))).collect(Collectors.joining(", "));
		return (columns.size() == 1 ? Messages.SignalColumns_column : Messages.SignalColumns_columns) + names
				+ (columns.size() > 12 ? Words.bind(Messages.SignalColumns_andMore, columns.size() - 12) : "");
	}

	/** Access points are called as their columns, without the words for what is measured. */
	private void nameSignals() {
		int[] columns = plan.columns(ColumnRole.SIGNAL);
		List<String> bare = IntStream.of(columns)
				.mapToObj(i -> MEASURE.matcher(plan.names.get(i)).replaceFirst("")).toList();
		boolean shorter = !anchored && !bare.contains("") && new HashSet<>(bare).size() == columns.length
				&& IntStream.range(0, columns.length).allMatch(k -> !bare.get(k).equals(plan.names.get(columns[k])));
		List<String> names = new ArrayList<>(plan.names);
		Map<String, Integer> seen = new HashMap<>();
		Set<String> twice = new HashSet<>();
		for (int k = 0; k < columns.length; k++) {
			String name = shorter ? bare.get(k) : plan.names.get(columns[k]);
			name = name.isBlank() ? Words.bind(Messages.SignalColumns_column2, columns[k] + 1) : name;
			names.set(columns[k], name);
			if (seen.put(name, columns[k]) != null) {
				twice.add(name);
			}
		}
		if (!twice.isEmpty()) {
			plan.note(Words.bind(Messages.SignalColumns_accessPointWithMoreThan, twice.size(),
					twice.size() == 1 ? "" : "s",
					twice.stream().sorted().limit(5).map(CellWords::shown).collect(Collectors.joining(", "))));
		}
		plan.signalNames = names;
	}
}
