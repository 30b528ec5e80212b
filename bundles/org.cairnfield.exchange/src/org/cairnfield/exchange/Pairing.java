package org.cairnfield.exchange;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.LinkedHashMap;
import java.util.Set;

import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.internal.text.SiteNames;

/** Finds the coordinates, ids and times that belong to a table of signals: by rows and by name. */
final class Pairing {

	private static final String NAMED_AFTER = Messages.Pairing_noBuildingColumnTheSite;

	private final List<FilePlan> plans;
	private final IntakeOptions options;
	private final boolean strict;
	private final Set<FilePlan> used = new HashSet<>();

	private Pairing(List<FilePlan> plans, IntakeOptions options, boolean strict) {
		this.strict = strict;
		this.plans = plans;
		this.options = options;
	}

	static void pair(List<FilePlan> plans, IntakeOptions options, boolean strict) throws IntakeException {
		Pairing pairing = new Pairing(plans, options, strict);
		pairing.requireKnown();
		for (FilePlan plan : plans) {
			if (plan.layout == Layout.PAIRED) {
				plan.rows = pairing.countRows(plan);
			}
		}
		for (FilePlan plan : plans) {
			if (plan.part == FilePlan.Part.SIGNALS) {
				pairing.completeByName(plan);
			}
		}
		for (FilePlan plan : plans) {
			if (plan.part == FilePlan.Part.SIGNALS) {
				pairing.completeByRows(plan);
			}
		}
		for (FilePlan plan : plans) {
			if (plan.layout == Layout.PAIRED && plan.part != FilePlan.Part.SIGNALS && !pairing.used.contains(plan)) {
				problem(plan, strict,
						new IntakeException(plan.file, 0,
								Words.bind(Messages.Pairing_theseRowsBelongToNo, plan.part.word(), plan.rows,
										plan.dialect.header()
												? Words.bind(Messages.Pairing_andNoColumnOfLevels, columns(plan))
												: ""),
								Messages.Pairing_addTheSignalsOrLeave));
			}
		}
		for (FilePlan plan : plans) {
			pairing.place(plan);
		}
		pairing.joinSites();
	}

	/** Files that no column puts at a site, and whose names differ by numbers only, are parts of one survey of one site. */
	private void joinSites() {
		Map<String, List<FilePlan>> alike = new LinkedHashMap<>();
		for (FilePlan plan : plans) {
			if (plan.siteByName) {
				alike.computeIfAbsent(
						plan.file.toAbsolutePath().normalize().getParent() + "/" + plan.site.replaceAll("\\d+", "#"),
						name -> new ArrayList<>()).add(plan);
			}
		}
		alike.values().stream().filter(same -> same.stream().map(plan -> plan.site).distinct().count() > 1)
				.forEach(same -> {
					Path folder = same.get(0).file.toAbsolutePath().normalize().getParent();
					String site = SiteNames.choose(List.of(same.get(0).site.replaceAll("[\\d_. -]+", ""),
							folder.getFileName() == null ? "" : folder.getFileName().toString()));
					String evidence = Words.bind(Messages.Pairing_filesWhoseNamesDifferBy, same.size());
					same.forEach(plan -> {
						plan.site = site;
						plan.guesses.replaceAll(guess -> guess.what().equals("site")
								? new Guess("site", site,
										Words.bind(Messages.Pairing_noBuildingColumnOneSite, evidence))
								: guess);
						plan.notes.removeIf(note -> note.startsWith(NAMED_AFTER));
						plan.note(Words.bind(Messages.Pairing_noBuildingColumnArePut, evidence,
								CellWords.shown(site)));
					});
				});
	}

	/** Throws where plans must be sound, and keeps the problem for the preview elsewhere. */
	static void problem(FilePlan plan, boolean strict, IntakeException e) throws IntakeException {
		if (strict) {
			throw e;
		}
		plan.problems.add(e);
	}

	private void requireKnown() throws IntakeException {
		for (FilePlan plan : plans) {
			for (int column : plan.counting) {
				String what = plan.roles[column] == ColumnRole.SITE ? "building" : "floor";
				problem(plan, strict,
						new IntakeException(plan.file, 0,
								Words.bind(Messages.Pairing_countsUpWithEveryRow, plan.called(column), what),
								Words.bind(Messages.Pairing_sayThatTheColumnIs, what, what, what)));
			}
			if (plan.part != FilePlan.Part.TABLE) {
				continue;
			}
			if (!plan.has(ColumnRole.SIGNAL) && !plan.has(ColumnRole.RSSI)) {
				problem(plan, strict,
						new IntakeException(plan.file, 0,
								Words.bind(Messages.Pairing_noColumnOfLevelsDbm, columns(plan)),
								Messages.Pairing_sayWithAMappingWhich));
			}
			if (!plan.hasPosition()) {
				problem(plan, strict, noPosition(plan));
			}
		}
	}

	private static IntakeException noPosition(FilePlan plan) {
		return new IntakeException(plan.file, 0, Words.bind(Messages.Pairing_noColumnsForXAnd, columns(plan)),
				Messages.Pairing_sayWithAMappingWhich2);
	}

	private static String columns(FilePlan plan) {
		return plan.names.stream().limit(12).map(CellWords::shown).collect(java.util.stream.Collectors.joining(", "))
				+ (plan.names.size() > 12 ? " …" : "")
				+ (plan.notes.isEmpty() ? "" : "; " + String.join("; ", plan.notes));
	}

	private void completeByName(FilePlan signals) throws IntakeException {
		signals.coordinates = named(signals, FilePlan.Part.COORDINATES);
		signals.ids = named(signals, FilePlan.Part.IDS);
		signals.times = named(signals, FilePlan.Part.TIMES);
		signals.channels = signals.listed ? named(signals, FilePlan.Part.CHANNELS) : null;
	}

	private FilePlan named(FilePlan signals, FilePlan.Part part) throws IntakeException {
		List<FilePlan> named = free(part).filter(p -> key(p).equals(key(signals))).toList();
		if (named.size() != 1) {
			return null;
		}
		FilePlan chosen = named.get(0);
		if (chosen.rows != signals.rows) {
			problem(signals, strict,
					new IntakeException(
							signals.file, 0, Words.bind(Messages.Pairing_rowsOfSignalsButRows, signals.rows,
									chosen.rows, part.word(), chosen.file.getFileName()),
							Messages.Pairing_exportBothAgainFromThe));
		}
		return use(signals, chosen, Messages.Pairing_aLikeName);
	}

	private void completeByRows(FilePlan signals) throws IntakeException {
		if (signals.coordinates == null) {
			signals.coordinates = closest(signals, FilePlan.Part.COORDINATES);
		}
		if (signals.ids == null) {
			signals.ids = closest(signals, FilePlan.Part.IDS);
		}
		if (signals.times == null) {
			signals.times = closest(signals, FilePlan.Part.TIMES);
		}
		if (signals.channels == null && signals.listed) {
			signals.channels = closest(signals, FilePlan.Part.CHANNELS);
		}
		if (signals.coordinates == null && signals.dialect.header()) {
			problem(signals, strict, noPosition(signals));
		} else if (signals.coordinates == null) {
			problem(signals, strict,
					new IntakeException(signals.file, 0,
							Words.bind(Messages.Pairing_rowsOfSignalsWithoutPositions, signals.rows, signals.rows),
							Messages.Pairing_addTheCoordinatesOrSay));
		}
	}

	private java.util.stream.Stream<FilePlan> free(FilePlan.Part part) {
		return plans.stream().filter(p -> p.part == part && !used.contains(p));
	}

	private FilePlan use(FilePlan signals, FilePlan chosen, String why) {
		used.add(chosen);
		signals.note(Words.bind(Messages.Pairing_fromAsManyRowsAnd, chosen.part.word(), chosen.file.getFileName(),
				signals.rows, why));
		return chosen;
	}

	/** By rows and closest name; never where both names say that they belong to something else. */
	private FilePlan closest(FilePlan signals, FilePlan.Part part) {
		FilePlan chosen = closest(signals, free(part).filter(p -> p.rows == signals.rows
				&& !(isMarked(p) && isMarked(signals))).toList());
		return chosen == null ? null : use(signals, chosen, Messages.Pairing_theClosestName);
	}

	private static boolean isMarked(FilePlan plan) {
		return NameMarks.part(SiteNames.stem(plan.file.getFileName().toString())) != null;
	}

	/** The one whose name has most in common with the signals'; null where none or two are closest. */
	private static FilePlan closest(FilePlan signals, List<FilePlan> candidates) {
		FilePlan best = null;
		int most = -1;
		boolean tie = false;
		String name = signals.file.getFileName().toString();
		for (FilePlan each : candidates) {
			int same = inCommon(name, each.file.getFileName().toString());
			tie = same == most || tie && same < most;
			if (same > most) {
				most = same;
				best = each;
			}
		}
		return tie ? null : best;
	}

	private static int inCommon(String a, String b) {
		int shorter = Math.min(a.length(), b.length());
		int prefix = 0;
		while (prefix < shorter && a.charAt(prefix) == b.charAt(prefix)) {
			prefix++;
		}
		int suffix = 0;
		while (suffix < shorter - prefix && a.charAt(a.length() - 1 - suffix) == b.charAt(b.length() - 1 - suffix)) {
			suffix++;
		}
		return prefix + suffix;
	}

	private static String key(FilePlan plan) {
		Path folder = plan.file.toAbsolutePath().normalize().getParent();
		return folder + "/" + NameMarks.key(SiteNames.stem(plan.file.getFileName().toString()));
	}

	private long countRows(FilePlan plan) throws IntakeException {
		long n = plan.dialect.header() ? -1 : 0;
		try (RowReader rows = new RowReader(plan.file, plan.dialect, options.limits())) {
			while (rows.next()) {
				n++;
			}
		} catch (IntakeException e) {
			if (Fallback.toLatin1(plan, e, options)) {
				return countRows(plan);
			}
			throw e;
		}
		return n;
	}

	/** Site and floor, where no column tells them. */
	private void place(FilePlan plan) {
		if (plan.part != FilePlan.Part.TABLE && plan.part != FilePlan.Part.SIGNALS) {
			return;
		}
		boolean site = plan.has(ColumnRole.SITE) || plan.coordinates != null && plan.coordinates.has(ColumnRole.SITE);
		boolean floor = plan.has(ColumnRole.FLOOR)
				|| plan.coordinates != null && plan.coordinates.has(ColumnRole.FLOOR);
		List<String> names = new ArrayList<>();
		String stem = SiteNames.stem(plan.file.getFileName().toString());
		names.add(plan.part == FilePlan.Part.SIGNALS ? NameMarks.key(stem) : stem);
		for (Path folder = plan.file.toAbsolutePath().normalize().getParent(); folder != null
				&& folder.getFileName() != null; folder = folder.getParent()) {
			names.add(folder.getFileName().toString());
		}
		plan.siteByName = !site && options.site().isEmpty() && options.usualSite().isEmpty();
		plan.site = options.site().or(options::usualSite).orElse(SiteNames.choose(names));
		plan.guess(options.site().isPresent() ? new Guess("site", plan.site, Messages.Pairing_asTold)
				: site ? new Guess("site", Messages.Pairing_byColumn, Messages.Pairing_thereIsABuildingColumn)
						: plan.siteByName
								? new Guess("site", plan.site, Messages.Pairing_noBuildingColumnNamedAfter)
								: new Guess("site", plan.site, Messages.Pairing_noBuildingColumnTheArchive));
		plan.guess(options.floor().isPresent()
				? new Guess("floor", options.floor().get().toString(), Messages.Pairing_asTold)
				: floor ? new Guess("floor", Messages.Pairing_byColumn, Messages.Pairing_thereIsAFloorColumn)
						: new Guess("floor", "0", Messages.Pairing_noFloorColumn));
		if (!site && options.site().isEmpty()) {
			plan.note(plan.siteByName
					? Words.bind(Messages.Pairing_afterTheFileOrIts, NAMED_AFTER, CellWords.shown(plan.site))
					: Words.bind(Messages.Pairing_noBuildingColumnPutAt, CellWords.shown(plan.site)));
		}
		if (!floor && options.floor().isEmpty()) {
			plan.note(Messages.Pairing_noFloorColumnEverythingIs);
		}
	}
}
