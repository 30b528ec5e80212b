package org.cairnfield.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.internal.text.NotHeard;
import org.cairnfield.exchange.internal.text.SiteNames;

/** Decides between wide, long and paired, and gives every column its role. */
final class LayoutGuess {

	private final FilePlan plan;
	private final ColumnStats[] stats;
	private final IntakeOptions options;

	LayoutGuess(FilePlan plan, ColumnStats[] stats, IntakeOptions options) {
		this.plan = plan;
		this.stats = stats;
		this.options = options;
	}

	void decide() {
		if (plan.exact) {
			decideExact();
		} else if (isLong()) {
			decideLong();
		} else if (plan.dialect.header()) {
			decideWide();
		} else {
			decideWithoutHeader();
		}
		for (int i = 0; i < plan.roles.length; i++) {
			if (plan.roles[i] == null) {
				plan.role(i, ColumnRole.IGNORED, Messages.LayoutGuess_notUnderstood);
			}
		}
	}

	private void decideExact() {
		layout(Layout.WIDE, Messages.LayoutGuess_theHeaderIsThatOf);
		ColumnRole[] roles = { ColumnRole.ID, ColumnRole.TIME, ColumnRole.DEVICE, ColumnRole.SITE, ColumnRole.FLOOR,
				ColumnRole.X, ColumnRole.Y };
		for (int i = 0; i < plan.width; i++) {
			if (plan.roles[i] == null) {
				plan.role(i, i < roles.length ? roles[i] : ColumnRole.SIGNAL,
						Messages.LayoutGuess_cairnfieldSOwnLayout);
			}
		}
		String told = options.notHeard().orElse(NotHeard.EMPTY);
		plan.notHeard = NotHeard.of(told);
		plan.notHeardSure = true;
		plan.guess(
				new Guess(Messages.LayoutGuess_notHeard, told,
						options.notHeard().isPresent() ? Messages.LayoutGuess_asTold
								: Messages.LayoutGuess_cairnfieldSOwnLayout));
	}

	private boolean isLong() {
		if (options.layout().isPresent() && options.layout().get() != Layout.LONG) {
			return false;
		}
		int address = plan.column(ColumnRole.ACCESS_POINT);
		int level = plan.column(ColumnRole.RSSI);
		for (int i = 0; i < stats.length; i++) {
			if (plan.roles[i] != null) {
				continue;
			}
			HeaderWords.Meaning m = plan.dialect.header() ? HeaderWords.meaning(plan.names.get(i)) : null;
			ColumnStats s = stats[i];
			boolean addresses = s.addresses * 5 > s.filled * 4 && s.filled > 0;
			if (address < 0 && (addresses || m != null && m.role() == ColumnRole.ACCESS_POINT && !s.isSignal())) {
				address = i;
			}
			boolean word = m != null && (m.role() == ColumnRole.RSSI || m.word().equals("level") && s.isSignal());
			if (level < 0 && word && s.isMostlyNumbers()) {
				level = i;
			}
		}
		List<Integer> signals = IntStream.range(0, stats.length)
				.filter(i -> plan.roles[i] == null && stats[i].isSignal()).boxed().toList();
		if (level < 0 && address >= 0 && signals.size() == 1) {
			level = signals.get(0);
		}
		if (address < 0 || level < 0) {
			return false;
		}
		if (plan.roles[address] == null) {
			plan.role(address, ColumnRole.ACCESS_POINT, Messages.LayoutGuess_namesOfAccessPoints);
		}
		if (plan.roles[level] == null) {
			plan.role(level, ColumnRole.RSSI, Words.bind(Messages.LayoutGuess_levelsFromUp, (int) stats[level].min));
		}
		return true;
	}

	private void decideLong() {
		layout(Layout.LONG, Messages.LayoutGuess_aColumnOfAccessPoints);
		new PlaceColumns(plan, stats).guess();
		List<String> unused = new ArrayList<>();
		for (int i = 0; i < stats.length; i++) {
			if (plan.roles[i] == null) {
				unused.add(CellWords.shown(plan.names.get(i)));
			}
		}
		if (!unused.isEmpty()) {
			plan.note(Words.bind(Messages.LayoutGuess_notUsed,
					String.join(", ", unused.subList(0, Math.min(12, unused.size())))));
		}
		String told = options.notHeard().orElse(null);
		NotHeardGuess guess = told != null ? new NotHeardGuess(NotHeard.of(told), Messages.LayoutGuess_asTold, true)
				: NotHeardGuess.of(List.of(stats[plan.column(ColumnRole.RSSI)]), true);
		plan.notHeard = guess.value();
		plan.notHeardSure = guess.sure();
		plan.guess(new Guess(Messages.LayoutGuess_notHeard, guess.value().toString(), guess.evidence()));
	}

	private void decideWide() {
		boolean anchored = plan.width > 4 && "x".equalsIgnoreCase(plan.names.get(0))
				&& "y".equalsIgnoreCase(plan.names.get(1)) && "floor".equalsIgnoreCase(plan.names.get(2))
				&& "building".equalsIgnoreCase(plan.names.get(3));
		new PlaceColumns(plan, stats).guess();
		new SignalColumns(plan, stats, anchored).decide(options.notHeard().orElse(null));
		int signals = plan.columns(ColumnRole.SIGNAL).length;
		if (signals > 0 && (plan.hasPosition() || options.layout().orElse(null) == Layout.WIDE)) {
			layout(Layout.WIDE, anchored ? Words.bind(Messages.LayoutGuess_xYFloorBuildingThen, signals)
					: Words.bind(Messages.LayoutGuess_columnsHoldLevels, signals));
		} else if (signals > 0) {
			part(FilePlan.Part.SIGNALS, Words.bind(Messages.LayoutGuess_columnsHoldLevelsNoneA, signals));
		} else if (plan.hasPosition()) {
			part(FilePlan.Part.COORDINATES, Messages.LayoutGuess_positionsWithoutLevels);
		} else if (plan.width == 1) {
			part(plan.has(ColumnRole.TIME) ? FilePlan.Part.TIMES : FilePlan.Part.IDS,
					Messages.LayoutGuess_aSingleColumn);
		} else {
			layout(Layout.WIDE, Messages.LayoutGuess_noColumnOfLevelsWas);
		}
	}

	private void decideWithoutHeader() {
		FilePlan.Part mark = NameMarks.part(SiteNames.stem(plan.file.getFileName().toString()));
		long signals = java.util.Arrays.stream(stats).filter(ColumnStats::isSignal).count();
		if (mark == null && options.layout().isEmpty() && !plan.hasPosition()) {
			String where = new CoordinateColumns(plan, stats).guess();
			if (!where.isEmpty()) {
				decideSignals();
				layout(Layout.WIDE, where);
				plan.note(Messages.LayoutGuess_theUnitOfTheCoordinates);
				return;
			}
		}
		boolean toldWide = plan.hasPosition() && signals > 0 || options.layout().orElse(null) == Layout.WIDE;
		if (toldWide) {
			decideSignals();
			layout(Layout.WIDE, Messages.LayoutGuess_asTold);
		} else if (plan.width == 1 && mark != FilePlan.Part.SIGNALS && mark != FilePlan.Part.COORDINATES) {
			boolean times = mark == FilePlan.Part.TIMES || mark == null && stats[0].times * 5 > stats[0].filled * 4;
			plan.role(0, times ? ColumnRole.TIME : ColumnRole.ID, Messages.LayoutGuess_aSingleColumn);
			part(times ? FilePlan.Part.TIMES : FilePlan.Part.IDS, mark != null ? Messages.LayoutGuess_theFileSNameSays
					: times ? Messages.LayoutGuess_aSingleColumnOfTimes : Messages.LayoutGuess_aSingleColumn);
		} else if (mark == FilePlan.Part.COORDINATES || mark == null && plan.width <= 4 && signals == 0
				|| plan.hasPosition()) {
			decideCoordinates();
			part(FilePlan.Part.COORDINATES,
					mark != null ? Messages.LayoutGuess_theFileSNameSays : Messages.LayoutGuess_fewColumnsNoneOfLevels);
		} else {
			decideSignals();
			part(FilePlan.Part.SIGNALS, mark == FilePlan.Part.SIGNALS ? Messages.LayoutGuess_theFileSNameSays
					: Words.bind(Messages.LayoutGuess_ofColumnsHoldLevels, signals, plan.width));
		}
	}

	private void decideCoordinates() {
		ColumnRole[] usual = { ColumnRole.X, ColumnRole.Y, ColumnRole.FLOOR };
		for (int i = 0; i < Math.min(usual.length, plan.width); i++) {
			boolean fits = i < 2 || stats[i].whole == stats[i].filled && stats[i].min > -100 && stats[i].max < 200;
			if (plan.roles[i] == null && !plan.has(usual[i]) && fits) {
				plan.role(i, usual[i], Words.bind(Messages.LayoutGuess_columnOfCoordinates, i + 1));
			}
		}
		plan.note(Messages.LayoutGuess_theUnitOfTheCoordinates);
	}

	private void decideSignals() {
		new SignalColumns(plan, stats, false).decide(options.notHeard().orElse(null));
		int[] columns = plan.columns(ColumnRole.SIGNAL);
		int digits = Integer.toString(columns.length).length();
		List<String> names = new ArrayList<>(plan.names);
		for (int k = 0; k < columns.length; k++) {
			names.set(columns[k], String.format(java.util.Locale.ROOT, "AP%0" + digits + "d", k + 1));
		}
		plan.signalNames = names;
		plan.note(Words.bind(Messages.LayoutGuess_accessPointsHaveNoNames, "0".repeat(digits - 1)));
	}

	private void layout(Layout layout, String evidence) {
		plan.layout = layout;
		plan.guess(new Guess("layout", layout.name().toLowerCase(java.util.Locale.ROOT),
				options.layout().isPresent() ? Messages.LayoutGuess_asTold : evidence));
	}

	private void part(FilePlan.Part part, String evidence) {
		plan.layout = Layout.PAIRED;
		plan.part = part;
		plan.guess(new Guess("layout", Words.bind(Messages.LayoutGuess_paired, part.word()), evidence));
	}
}
