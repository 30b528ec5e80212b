package org.cairnfield.exchange;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.cairnfield.core.text.Words;

/** Gives the columns other than levels their roles: as told, by the words of the header, checked by content. */
final class PlaceColumns {

	private static final List<ColumnRole> PLACE = List.of(ColumnRole.X, ColumnRole.Y, ColumnRole.FLOOR,
			ColumnRole.SITE, ColumnRole.TIME, ColumnRole.DEVICE, ColumnRole.SURVEYOR, ColumnRole.ID);

	private final FilePlan plan;
	private final ColumnStats[] stats;

	PlaceColumns(FilePlan plan, ColumnStats[] stats) {
		this.plan = plan;
		this.stats = stats;
	}

	/** Roles as told. Returns how many of the names given this file has. */
	static void told(FilePlan plan, Map<String, ColumnRole> roles, java.util.Set<String> found) {
		roles.forEach((name, role) -> {
			int at = find(plan, name);
			if (at >= 0) {
				plan.role(at, role, Messages.PlaceColumns_asTold);
				found.add(name);
			}
		});
	}

	private static int find(FilePlan plan, String name) {
		int at = plan.names.indexOf(name.strip());
		if (at < 0 && name.matches("#\\d{1,6}")) {
			int number = Integer.parseInt(name.substring(1));
			return number >= 1 && number <= plan.names.size() ? number - 1 : -1;
		}
		for (int i = 0; at < 0 && i < plan.names.size(); i++) {
			at = plan.names.get(i).equalsIgnoreCase(name.strip()) ? i : -1;
		}
		return at;
	}

	/** Roles by header words, for columns that have none yet and roles that no column has. */
	void guess() {
		if (!plan.dialect.header()) {
			return;
		}
		for (ColumnRole role : PLACE) {
			if (plan.has(role)) {
				continue;
			}
			int best = -1;
			HeaderWords.Meaning why = null;
			for (int i = 0; i < stats.length; i++) {
				HeaderWords.Meaning m = plan.roles[i] == null ? HeaderWords.meaning(plan.names.get(i)) : null;
				if (m != null && m.role() == role && fits(i, role, m) && (why == null || m.rank() < why.rank())) {
					best = i;
					why = m;
				}
			}
			if (best >= 0) {
				plan.role(best, role, Words.bind(Messages.PlaceColumns_theHeaderSays, plan.names.get(best)));
				if ((role == ColumnRole.SITE || role == ColumnRole.FLOOR) && stats[best].isCounter()) {
					plan.counting.add(best);
				}
			}
		}
		unit();
	}

	private boolean fits(int column, ColumnRole role, HeaderWords.Meaning m) {
		ColumnStats s = stats[column];
		String name = CellWords.shown(plan.names.get(column));
		if (s.filled == 0 && s.empty > 0) {
			plan.note(Words.bind(Messages.PlaceColumns_columnIsBlankSoFar, name));
			return false;
		}
		switch (role) {
		case X, Y:
			if (HeaderWords.isDegrees(m.word()) && !projected(s, role)) {
				plan.note(Words.bind(Messages.PlaceColumns_columnHoldsDegreesNotMetres, name));
				return false;
			}
			if (!s.isMostlyNumbers() && s.filled > 0) {
				plan.note(Words.bind(Messages.PlaceColumns_columnIsNamedLikeA, name));
				return false;
			}
			return true;
		case FLOOR:
			// "level" may be a radio level
			return !(m.word().equals("level") && s.isSignal());
		case TIME:
			if (s.times * 2 <= s.filled && s.isRelativeTime()) {
				return relativeTime(s, name);
			}
			if (s.times * 2 <= s.filled && s.filled > 0) {
				plan.note(Words.bind(Messages.PlaceColumns_columnIsNamedLikeA2, name));
				return false;
			}
			return true;
		default:
			return !s.isSignal();
		}
	}

	/** Seconds since the survey began count from the day that file or folder is named by. */
	private boolean relativeTime(ColumnStats s, String name) {
		Optional<LocalDate> day = DatedName.of(plan.file);
		String seconds = String.format(Locale.ROOT,
				Messages.PlaceColumns_columnCountsFromToTaken, name, s.min, s.max);
		if (day.isEmpty()) {
			plan.note(Words.bind(Messages.PlaceColumns_andIsNotUsedSince, seconds));
			return false;
		}
		plan.timeBaseMillis = day.get().atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli();
		plan.note(Words.bind(Messages.PlaceColumns_onByTheNameOf, seconds, day.get()));
		return true;
	}

	/** Degrees end at 180 and 90; whatever goes beyond has been projected. */
	private static boolean projected(ColumnStats s, ColumnRole role) {
		double end = role == ColumnRole.X ? 180 : 90;
		return s.numbers > 0 && (s.max > end || s.min < -end);
	}

	private void unit() {
		if (plan.hasPosition()) {
			double x = HeaderWords.metresPerUnit(plan.names.get(plan.column(ColumnRole.X)));
			double y = HeaderWords.metresPerUnit(plan.names.get(plan.column(ColumnRole.Y)));
			if (x == y && x != 1) {
				plan.metresPerUnit = x;
				plan.note(Words.bind(Messages.PlaceColumns_theHeaderGivesCoordinatesIn, x));
			}
		}
	}
}
