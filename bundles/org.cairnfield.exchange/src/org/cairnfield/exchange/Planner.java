package org.cairnfield.exchange;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;

import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.internal.text.Guard;
import org.cairnfield.exchange.internal.text.NotHeard;
import org.cairnfield.exchange.internal.text.CellNumbers;
import org.cairnfield.exchange.internal.text.Times;

/** Looks at the first rows of every file and decides how each is to be read. */
final class Planner {

	private static final int FIRST_ROWS = 60;
	private static final int SHOWN_ROWS = 5;
	private static final int MOST_ROWS = 20_000;
	private static final int MOST_CELLS = 300_000;

	private final IntakeOptions options;
	private final Set<String> rolesFound = new HashSet<>();

	private Planner(IntakeOptions options) {
		this.options = options;
	}

	/**
	 * Plans in the order of the files, paired where they belong together.
	 *
	 * @param strict false to gather what is missing as problems of the plans
	 */
	static List<FilePlan> plan(List<Path> files, IntakeOptions options, boolean strict) throws IntakeException {
		if (files.isEmpty()) {
			throw new IntakeException(null, 0, Messages.Planner_noSurveyFileWasNamed, Messages.Planner_nameAtLeastOne);
		}
		Planner planner = new Planner(options);
		List<FilePlan> plans = new ArrayList<>();
		for (Path file : files) {
			plans.add(planner.plan(Objects.requireNonNull(file)));
		}
		for (String name : options.roles().keySet()) {
			if (!planner.rolesFound.contains(name)) {
				Pairing.problem(plans.get(0), strict,
						new IntakeException(files.get(0), 0,
								Words.bind(Messages.Planner_noColumnWasFound, CellWords.shown(name),
										files.size() > 1 ? Messages.Planner_hereOrInTheOther : ""),
								Messages.Planner_nameAColumnAsIn));
			}
		}
		Pairing.pair(plans, options, strict);
		agreeOnNotHeard(plans);
		return plans;
	}

	private FilePlan plan(Path file) throws IntakeException {
		FilePlan plan = new FilePlan(file);
		new Sniffer(file, options).sniff(plan);
		List<String[]> first = new ArrayList<>();
		ColumnStats[] stats;
		try (RowReader rows = new RowReader(file, plan.dialect, options.limits())) {
			while (first.size() < FIRST_ROWS && rows.next()) {
				first.add(IntStream.range(0, rows.size()).mapToObj(rows::get).toArray(String[]::new));
			}
			FilePlan.Part listed = options.layout().orElse(Layout.PAIRED) == Layout.PAIRED ? ListCells.part(first)
					: null;
			if (listed != null) {
				return listed(plan, listed, first);
			}
			decideDecimalMark(plan, first);
			decideHeader(plan, first);
			int from = plan.dialect.header() ? 1 : 0;
			if (first.size() == from) {
				throw new IntakeException(file, 0, Messages.Planner_theFileHasAHeader,
						Messages.Planner_leaveItOutOrExport);
			}
			plan.width = plan.dialect.header() ? first.get(0).length : usualWidth(first);
			stats = new ColumnStats[plan.width];
			java.util.Arrays.setAll(stats, i -> new ColumnStats());
			for (String[] row : first.subList(from, first.size())) {
				add(stats, new Cells(row), plan);
			}
			int more = Math.min(MOST_ROWS, MOST_CELLS / Math.max(1, plan.width)) - first.size();
			for (int r = 0; r < more && rows.next(); r++) {
				add(stats, rows, plan);
			}
		} catch (IntakeException e) {
			if (Fallback.toLatin1(plan, e, options)) {
				return planAgain(plan);
			}
			throw e;
		}
		nameColumns(plan, first.get(0));
		show(plan, first.subList(plan.dialect.header() ? 1 : 0, first.size()));
		plan.roles = new ColumnRole[plan.width];
		plan.evidence = new String[plan.width];
		PlaceColumns.told(plan, options.roles(), rolesFound);
		new LayoutGuess(plan, stats, options).decide();
		ColumnNames.require(plan);
		return plan;
	}

	private FilePlan listed(FilePlan plan, FilePlan.Part part, List<String[]> first) {
		Dialect d = plan.dialect;
		plan.dialect = new Dialect(d.charset(), d.markBytes(), d.separator(), false, false);
		plan.listed = true;
		plan.layout = Layout.PAIRED;
		plan.part = part;
		plan.guess(new Guess("layout", Words.bind(Messages.Planner_paired, part.word()),
				options.layout().isPresent() ? Messages.Planner_asTold
						: Words.bind(Messages.Planner_aRowListsPairsSuch,
								part == FilePlan.Part.SIGNALS ? "name:level" : "name:channel")));
		if (part == FilePlan.Part.SIGNALS) {
			plan.guess(new Guess(Messages.Planner_notHeard, NotHeard.EMPTY, Messages.Planner_whatARowDoesNot));
		}
		show(plan, first);
		return plan;
	}

	private static void show(FilePlan plan, List<String[]> rows) {
		rows.stream().limit(SHOWN_ROWS).forEach(r -> plan.firstRows.add(java.util.Arrays.stream(r)
				.map(c -> c.length() > 60 ? c.substring(0, 60) + "…" : c).toList()));
	}

	private FilePlan planAgain(FilePlan failed) throws IntakeException {
		IntakeOptions all = options;
		Planner again = new Planner(all.withCharset(failed.dialect.charset()));
		FilePlan plan = again.plan(failed.file);
		rolesFound.addAll(again.rolesFound);
		plan.guess(failed.guess(Messages.Planner_characterSet));
		return plan;
	}

	private record Cells(String[] cells) implements Row {
		@Override
		public String get(int column) {
			return cells[column];
		}

		@Override
		public int size() {
			return cells.length;
		}
	}

	/** Rows that are too short, or have more than blanks too many, say nothing about columns. */
	private static void add(ColumnStats[] stats, Row row, FilePlan plan) {
		boolean sound = row.size() >= stats.length;
		for (int i = stats.length; i < row.size() && sound; i++) {
			sound = row.get(i).isBlank();
		}
		for (int i = 0; i < stats.length && sound; i++) {
			stats[i].add(row.get(i), plan.dialect.decimalComma());
		}
	}

	private void decideDecimalMark(FilePlan plan, List<String[]> first) {
		Dialect d = plan.dialect;
		boolean comma = false;
		String evidence;
		if (options.decimalMark().isPresent()) {
			comma = options.decimalMark().get() == ',';
			evidence = Messages.Planner_asTold;
		} else if (d.separator() == ',') {
			evidence = Messages.Planner_theCommaIsTheSeparator;
		} else {
			long commas = first.stream().flatMap(java.util.Arrays::stream).filter(c -> CellNumbers.hasMark(c, ','))
					.count();
			long points = first.stream().flatMap(java.util.Arrays::stream).filter(c -> CellNumbers.hasMark(c, '.'))
					.count();
			comma = commas > points;
			evidence = Words.bind(Messages.Planner_decimalsWithACommaAnd, commas, points);
		}
		plan.dialect = new Dialect(d.charset(), d.markBytes(), d.separator(), comma, d.header());
		plan.guesses.add(new Guess(Messages.Planner_decimalMark, comma ? "comma" : "point", evidence));
	}

	private void decideHeader(FilePlan plan, List<String[]> rows) {
		boolean header;
		String evidence;
		String[] first = rows.get(0);
		long texts = java.util.Arrays.stream(first).filter(c -> isText(c, plan)).count();
		if (options.header().isPresent()) {
			header = options.header().get();
			evidence = Messages.Planner_asTold;
		} else if (texts == 0) {
			header = false;
			evidence = Messages.Planner_theFirstRowHoldsNumbers;
		} else if (java.util.Arrays.stream(first).anyMatch(c -> HeaderWords.meaning(c) != null)) {
			header = true;
			evidence = Messages.Planner_theFirstRowHoldsWords;
		} else {
			double share = (double) texts / first.length;
			double below = rows.stream().skip(1).mapToDouble(
					r -> java.util.Arrays.stream(r).filter(c -> isText(c, plan)).count() / (double) r.length).average()
					.orElse(0);
			header = share >= 0.5 && below < share / 2;
			evidence = Words.bind(Messages.Planner_ofTheFirstRowIs, CellWords.percent(texts, first.length),
					CellWords.percent(Math.round(below * 1000), 1000));
		}
		Dialect d = plan.dialect;
		plan.dialect = new Dialect(d.charset(), d.markBytes(), d.separator(), d.decimalComma(), header);
		plan.guesses.add(new Guess("header", header ? "yes" : "no", evidence));
	}

	private static boolean isText(String cell, FilePlan plan) {
		return !cell.isBlank() && Double.isNaN(CellNumbers.parse(cell, plan.dialect.decimalComma()))
				&& Times.parse(cell) == Times.NONE;
	}

	private static int usualWidth(List<String[]> rows) {
		return rows.stream().collect(java.util.stream.Collectors.groupingBy(r -> r.length, java.util.TreeMap::new,
				java.util.stream.Collectors.counting())).entrySet().stream()
				.max(java.util.Map.Entry.comparingByValue()).orElseThrow().getKey();
	}

	private static void nameColumns(FilePlan plan, String[] first) {
		if (plan.dialect.header()) {
			plan.exact = WideTable.isHead(first);
			plan.names = java.util.Arrays.stream(first).map(c -> Guard.off(plan.exact ? c : c.strip())).toList();
		} else {
			plan.names = IntStream.rangeClosed(1, plan.width).mapToObj(i -> "#" + i).toList();
		}
		plan.signalNames = plan.names;
	}

	/** A file whose rows say nothing takes over what the other files agree on. */
	private static void agreeOnNotHeard(List<FilePlan> plans) {
		List<FilePlan> signals = plans.stream().filter(p -> p.has(ColumnRole.SIGNAL) || p.has(ColumnRole.RSSI))
				.toList();
		List<FilePlan> sure = signals.stream().filter(p -> p.notHeardSure).toList();
		if (sure.isEmpty() || sure.stream().map(p -> p.notHeard.toString()).distinct().count() > 1) {
			return;
		}
		for (FilePlan plan : signals) {
			if (!plan.notHeardSure) {
				plan.notHeard = sure.get(0).notHeard;
				plan.notHeardSure = true;
				plan.guess(new Guess(Messages.Planner_notHeard, plan.notHeard.toString(),
						Messages.Planner_asInTheOtherFiles));
			}
		}
	}
}
