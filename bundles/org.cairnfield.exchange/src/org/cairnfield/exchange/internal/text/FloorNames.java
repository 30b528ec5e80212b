package org.cairnfield.exchange.internal.text;

import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Levels from what a survey calls its floors. A number is read where there is one ("2", "Floor 2", "2nd",
 * "1OG", "B1"), the usual words for the ground floor and a basement are known; any other name gets a level
 * from {@value #FIRST_FREE} up in the order met. What stands for no value at all, such as "?" or "N/A", is no name.
 * {@link #readings} tells what was made of texts.
 */
public final class FloorNames {

	/** The level of the first floor name in which no number can be read. */
	public static final int FIRST_FREE = 100;
	/** The answer of {@link #level} where there are more unreadable names than a site can have floors. */
	public static final int NONE = Integer.MIN_VALUE;

	/** The answer of {@link #settled} for a name that is to get the next free level. */
	public static final int UNSETTLED = Integer.MIN_VALUE + 1;

	private static final int HIGHEST = 999;
	private static final int MOST_FREE = 200;
	private static final Set<String> NO_VALUE = Set.of("nan", "n/a", "n.a.", "na", "#n/a", "#value!", "#ref!", "null",
			"none", "nil",
			"unknown", "undefined", "missing", "inf", "infinity", "-inf", "-infinity", "+inf", "+infinity", "tbd");
	private static final Map<String, Integer> WORDS = Map.ofEntries(Map.entry("g", 0), Map.entry("gf", 0),
			Map.entry("eg", 0), Map.entry("e", 0), Map.entry("rdc", 0), Map.entry("pb", 0), Map.entry("ground", 0),
			Map.entry("groundfloor", 0), Map.entry("erdgeschoss", 0), Map.entry("og", 1), Map.entry("ug", -1),
			Map.entry("b", -1), Map.entry("basement", -1), Map.entry("cellar", -1), Map.entry("keller", -1),
			Map.entry("first", 1), Map.entry("second", 2), Map.entry("third", 3), Map.entry("fourth", 4),
			Map.entry("fifth", 5), Map.entry("sixth", 6));
	private static final Pattern BELOW = Pattern.compile(
			"(?:(?:b|ug|basement|sub|cellar|keller|-)(\\d{1,3})|(\\d{1,3})(?:\\.?ug|b))");
	private static final Pattern ONE_NUMBER = Pattern.compile("[^0-9]*?(-?)(\\d{1,3})[^0-9]*");

	private final Map<String, Integer> given;
	private final Map<String, Integer> read = new ConcurrentHashMap<>();
	private int free = FIRST_FREE;

	/** @param given levels by name as the caller wants them; compared without case */
	public FloorNames(Map<String, Integer> given) {
		this.given = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
		this.given.putAll(given);
	}

	/** Whether a text stands for no floor: a word such as "N/A", or signs without a letter or digit. */
	public static boolean isNoValue(String text) {
		String s = text.strip();
		return NO_VALUE.contains(s.toLowerCase(Locale.ROOT)) || s.codePoints().noneMatch(Character::isLetterOrDigit);
	}

	/** The level of a floor called {@code text}, or {@link #NONE}. The order of calls matters; for one thread. */
	public int level(String text) {
		return level(text, true);
	}

	/**
	 * As {@link #level}, but {@link #UNSETTLED} where the order in which names are met matters. For any number of threads
	 * while none calls {@link #level}.
	 */
	public int settled(String text) {
		return level(text, false);
	}

	private int level(String text, boolean inOrder) {
		String s = text.strip();
		Integer known = given.get(s);
		if (known == null) {
			int plain = CellNumbers.level(s);
			if (plain != CellNumbers.OTHER && plain != CellNumbers.BLANK) {
				return Math.abs(plain) > HIGHEST ? NONE : plain;
			}
			known = read.get(s);
		}
		if (known != null) {
			return known;
		}
		if (isNoValue(s)) {
			return NONE;
		}
		OptionalInt level = read(s);
		if (level.isEmpty()) {
			// a number that is no floor, such as 1e9, is an error and not a name
			if (!Double.isNaN(CellNumbers.parse(s, false)) || free - FIRST_FREE >= MOST_FREE) {
				return NONE;
			}
			if (!inOrder) {
				return UNSETTLED;
			}
			level = OptionalInt.of(free++);
		}
		if (Double.isNaN(CellNumbers.parse(s, false))) {
			read.put(s, level.getAsInt());
		}
		return level.getAsInt();
	}

	/** What became of floor names that are not plain numbers, sorted by name. */
	public Map<String, Integer> readings() {
		return Map.copyOf(read);
	}

	/** The level that can be read from a name, if any. */
	public static OptionalInt read(String text) {
		double number = CellNumbers.parse(text, false);
		if (!Double.isNaN(number)) {
			return number == Math.rint(number) && Math.abs(number) <= HIGHEST ? OptionalInt.of((int) number)
					: OptionalInt.empty();
		}
		String s = text.strip().toLowerCase(Locale.ROOT);
		String word = s.replaceAll("\\b(floor|level|storey|etage|the)\\b|[\\s_.]", "");
		Integer known = WORDS.get(word);
		if (known != null) {
			return OptionalInt.of(known);
		}
		Matcher below = BELOW.matcher(word);
		if (below.matches()) {
			return OptionalInt.of(-Integer.parseInt(below.group(1) != null ? below.group(1) : below.group(2)));
		}
		Matcher one = ONE_NUMBER.matcher(s);
		if (one.matches()) {
			// a minus counts only where it does not join words: "Floor -1", not "wing-2"
			boolean minus = !one.group(1).isEmpty() && (one.start(1) == 0 || s.charAt(one.start(1) - 1) == ' ');
			int value = Integer.parseInt(one.group(2));
			return OptionalInt.of(minus ? -value : value);
		}
		return OptionalInt.empty();
	}
}
