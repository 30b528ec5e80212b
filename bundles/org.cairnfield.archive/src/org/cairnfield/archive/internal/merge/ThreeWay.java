package org.cairnfield.archive.internal.merge;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.cairnfield.model.Archive;
import org.cairnfield.model.Claim;
import org.cairnfield.model.Conflict;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.conflict.Unit;
import org.cairnfield.model.conflict.UnitText;

/**
 * Merges values of which one or both sides have changed some. A unit is its value with the claims that are still open on it.
 * Where both sides have changed one, each says what it claims, the claims are united, and the value stays as it was before
 * or, where there was none, is the lesser text. So which side is which makes no difference, nor who comes first.
 */
final class ThreeWay {

	private static final Comparator<Authors.Author> EARLIEST = Comparator.comparing(Authors.Author::time,
			Comparator.nullsFirst(Comparator.naturalOrder())).thenComparing(author -> String.valueOf(author.person()));

	private final Map<Unit, Claims> before;
	private final Map<Unit, Claims> mine;
	private final Map<Unit, Claims> theirs;
	private final Authors mineBy;
	private final Authors theirsBy;
	private final Map<Unit, Conflict> open = new TreeMap<>();
	private final List<String> notes = new ArrayList<>();

	ThreeWay(Archive base, Archive mine, Authors mineBy, Archive theirs, Authors theirsBy) {
		this.before = claims(base);
		this.mine = claims(mine);
		this.theirs = claims(theirs);
		this.mineBy = mineBy;
		this.theirsBy = theirsBy;
	}

	/** Values that people want, each with who was the first to. */
	private static final class Claims {

		private static final Claims NONE = new Claims();

		private final Map<String, Authors.Author> authors = new TreeMap<>(
				Comparator.nullsFirst(Comparator.naturalOrder()));
		/** Text of the value from before the claims; only of claims that were read. */
		private String base;

		void add(String value, Authors.Author author) {
			authors.merge(value, author, (one, other) -> EARLIEST.compare(one, other) <= 0 ? one : other);
		}

		private boolean has(String value, Authors.Author author) {
			return author.equals(authors.get(value));
		}

		/** Those of both sides, without what was open before and is not on one of them any more. */
		static Claims united(Claims before, Claims mine, Claims theirs) {
			Claims all = new Claims();
			for (Claims side : List.of(mine, theirs)) {
				Claims other = side == mine ? theirs : mine;
				side.authors.forEach((value, author) -> {
					if (!before.has(value, author) || other.has(value, author)) {
						all.add(value, author);
					}
				});
			}
			return all;
		}

		@Override
		public boolean equals(Object other) {
			return other instanceof Claims claims && authors.equals(claims.authors);
		}

		@Override
		public int hashCode() {
			return authors.hashCode();
		}
	}

	private static Map<Unit, Claims> claims(Archive archive) {
		Map<Unit, Claims> all = new HashMap<>();
		for (Conflict conflict : archive.getConflicts()) {
			Claims claims = all.computeIfAbsent(Unit.of(conflict), unit -> new Claims());
			claims.base = conflict.getBase();
			conflict.getClaims().forEach(
					claim -> claims.add(claim.getValue(), new Authors.Author(claim.getPerson(), claim.getTime())));
		}
		return all;
	}

	/** Whether anything at a place or in it is open on any side, so that its parts have to be looked at one by one. */
	boolean isOpenIn(String place) {
		for (Map<Unit, Claims> side : List.of(before, mine, theirs)) {
			if (side.keySet().stream().anyMatch(unit -> isIn(unit, place))) {
				return true;
			}
		}
		return false;
	}

	/** Names of the units of a place that are open on any side. */
	List<String> openAt(String place) {
		return List.of(before, mine, theirs).stream().flatMap(side -> side.keySet().stream())
				.filter(unit -> unit.place().equals(place))
				.map(Unit::name).distinct().toList();
	}

	/**
	 * The value of a unit that both sides have, or had.
	 *
	 * @param text  of a value other than null
	 * @param based whether there was anything before; otherwise both sides have added it
	 */
	<T> T value(Unit unit, Function<T, String> text, boolean based, T base, T mine, T theirs) {
		Claims openBefore = before.getOrDefault(unit, Claims.NONE);
		Claims openMine = this.mine.getOrDefault(unit, Claims.NONE);
		Claims openTheirs = this.theirs.getOrDefault(unit, Claims.NONE);
		boolean same = Objects.equals(mine, theirs);
		if (same && openMine.equals(openTheirs)
				|| based && Objects.equals(theirs, base) && openTheirs.equals(openBefore)) {
			keep(unit, text, base, openMine);
			return mine;
		}
		if (based && Objects.equals(mine, base) && openMine.equals(openBefore)) {
			keep(unit, text, base, openTheirs);
			return theirs;
		}
		Claims all = Claims.united(openBefore, openMine, openTheirs);
		claim(all, unit, text, openMine, based, base, mine, mineBy);
		claim(all, unit, text, openTheirs, based, base, theirs, theirsBy);
		if (all.authors.size() == 1) {
			return all.authors.containsKey(text(text, mine)) ? mine : theirs;
		}
		keep(unit, text, base, all);
		return based ? base : isLess(mine, theirs) ? mine : theirs;
	}

	private static <T> void claim(Claims all, Unit unit, Function<T, String> text, Claims open, boolean based, T base,
			T value, Authors by) {
		if (open.authors.isEmpty() || based && !Objects.equals(value, base)) {
			String wanted = text(text, value);
			all.add(wanted, author(by, unit, wanted));
		}
	}

	private static Authors.Author author(Authors by, Unit unit, String value) {
		try {
			return by.of(unit, value);
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	/** Whether claims at a place or in it are others than before on a side, or were decided there, so that somebody has worked on it. */
	boolean hasNewClaimsIn(String place, boolean onMySide) {
		return !claimsIn(place, onMySide ? mine : theirs).equals(claimsIn(place, before));
	}

	private static Map<Unit, Claims> claimsIn(String place, Map<Unit, Claims> side) {
		return side.entrySet().stream().filter(each -> isIn(each.getKey(), place))
				.collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
	}

	private static boolean isIn(Unit unit, String place) {
		return unit.place().equals(place) || unit.place().startsWith(place + '/');
	}

	/** Only one side has an object, and it stays: whatever is open in it there stays open. */
	void keepOpenIn(String place, boolean onMySide) {
		(onMySide ? mine : theirs).forEach((unit, claims) -> {
			if (isIn(unit, place) && !open.containsKey(unit)) {
				keep(unit, Function.identity(), claims.base, claims);
			}
		});
	}

	/** One side has removed what the other has changed: it stays until somebody decides. */
	void clashOverPresence(String place, boolean removedHere) {
		Unit unit = new Unit(place, Unit.PRESENCE);
		Claims all = Claims.united(before.getOrDefault(unit, Claims.NONE), mine.getOrDefault(unit, Claims.NONE),
				theirs.getOrDefault(unit, Claims.NONE));
		all.add(null, author(removedHere ? mineBy : theirsBy, unit, null));
		all.add(UnitText.KEPT, author(removedHere ? theirsBy : mineBy, unit, UnitText.KEPT));
		keep(unit, Function.identity(), UnitText.KEPT, all);
	}

	/** Both sides have an object; whether it is to stay may be open on either, and who has changed it wants it to. */
	void presence(String place, BooleanSupplier isChangedHere, BooleanSupplier isChangedThere) {
		Unit unit = new Unit(place, Unit.PRESENCE);
		Claims openBefore = before.getOrDefault(unit, Claims.NONE);
		Claims openMine = mine.getOrDefault(unit, Claims.NONE);
		Claims openTheirs = theirs.getOrDefault(unit, Claims.NONE);
		Claims kept = openMine;
		if (!openMine.equals(openTheirs)) {
			boolean wasOpen = !openBefore.equals(Claims.NONE);
			if (wasOpen && (openMine.equals(openBefore) || openTheirs.equals(openBefore))) {
				kept = openMine.equals(openBefore) ? openTheirs : openMine;
			} else {
				kept = Claims.united(openBefore, openMine, openTheirs);
				addPresence(kept, unit, openMine, wasOpen, isChangedHere, mineBy);
				addPresence(kept, unit, openTheirs, wasOpen, isChangedThere, theirsBy);
			}
		}
		if (kept.authors.containsKey(null)) { // otherwise nobody wants it gone any more
			keep(unit, Function.identity(), UnitText.KEPT, kept);
		}
	}

	private static void addPresence(Claims all, Unit unit, Claims open, boolean wasOpen, BooleanSupplier isChanged,
			Authors by) {
		if (open.equals(Claims.NONE) && (wasOpen || isChanged.getAsBoolean())) {
			all.add(UnitText.KEPT, author(by, unit, UnitText.KEPT));
		}
	}

	private <T> void keep(Unit unit, Function<T, String> text, T base, Claims claims) {
		if (claims.authors.isEmpty()) {
			return;
		}
		Conflict conflict = ModelFactory.eINSTANCE.createConflict();
		conflict.setPlace(unit.place());
		conflict.setUnit(unit.name());
		conflict.setBase(text(text, base));
		claims.authors
				.forEach((value, author) -> conflict.getClaims().add(claim(value, author.person(), author.time())));
		open.put(unit, conflict);
	}

	private static Claim claim(String value, String person, Instant time) {
		Claim claim = ModelFactory.eINSTANCE.createClaim();
		claim.setValue(value);
		claim.setPerson(person);
		claim.setTime(time);
		return claim;
	}

	private static <T> String text(Function<T, String> text, T value) {
		return value == null ? null : text.apply(value);
	}

	private static boolean isLess(Object one, Object other) {
		return String.valueOf(one).compareTo(String.valueOf(other)) <= 0;
	}

	/** Something that people should know of, and need not decide. */
	void note(String note) {
		notes.add(note);
	}

	List<String> notes() {
		return notes;
	}

	/** What somebody has to decide, by place and unit. */
	List<Conflict> open() {
		return List.copyOf(open.values());
	}
}
