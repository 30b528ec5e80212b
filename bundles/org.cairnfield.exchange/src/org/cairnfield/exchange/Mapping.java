package org.cairnfield.exchange;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.internal.text.CellNumbers;

/**
 * {@link IntakeOptions} as a small text file, kept beside a survey and used again. UTF-8, a setting a line,
 * {@code key = value}; blank lines and lines that begin with # are skipped. In names and values a backslash
 * precedes a backslash, an equals sign, a # or a blank that must be kept, and {@code \n \r \t} stand for
 * line end, return and tab. Settings that are absent are guessed.
 *
 * <pre>
 * layout = wide                     wide, long or paired
 * separator = semicolon             comma, semicolon, tab, or the character
 * charset = ISO-8859-1
 * decimal = comma                   point or comma
 * header = yes                      yes or no
 * not-heard = 100                   empty, or values separated by blanks
 * site = Tide House                 for all samples; so are floor and device
 * floor = 0
 * device = guide A
 * swap-xy = no
 * metres-per-unit = 0.6
 * access-points-per-site = no
 * column.Lift lobby = signal        a column's role: x y floor site id time device surveyor
 * column.#3 = floor                 access-point rssi signal ignored
 * floor.Mezzanine = 1               a floor name's level
 * </pre>
 */
public final class Mapping {

	private static final String REMEDY = Messages.Mapping_mendTheLineOrRemove;
	private static final long LONGEST = 1 << 20;

	private Mapping() {
	}

	/**
	 * @throws IntakeException for a file that cannot be read or a line that is not understood
	 */
	public static IntakeOptions read(Path file) throws IntakeException {
		try {
			if (Files.size(file) > LONGEST) {
				throw new IntakeException(file, 0,
						Words.bind(Messages.Mapping_aMappingFileIsSmall, Files.size(file)),
						Messages.Mapping_checkThatItIsThe);
			}
			return parse(Files.readString(file, StandardCharsets.UTF_8), file);
		} catch (IOException e) {
			throw Failures.of(file, 0, e);
		}
	}

	/** Writes options whole or not at all, over an older file. */
	public static void write(IntakeOptions options, Path file) throws IntakeException {
		try {
			AtomicFile.write(file, out -> out.append(format(options)));
		} catch (IOException e) {
			throw Failures.writing(file, e);
		}
	}

	/**
	 * @throws IntakeException for a line that is not understood
	 */
	public static IntakeOptions parse(String text) throws IntakeException {
		return parse(text, null);
	}

	private static IntakeOptions parse(String text, Path file) throws IntakeException {
		IntakeOptions options = IntakeOptions.GUESS;
		int number = 0;
		for (String line : (text.startsWith("\uFEFF") ? text.substring(1) : text).split("\r\n|\r|\n", -1)) {
			number++;
			if (line.isBlank() || line.stripLeading().startsWith("#")) {
				continue;
			}
			int at = equalsSign(line);
			if (at < 0) {
				throw new IntakeException(file, number, Words.bind(Messages.Mapping_noEqualsSignIn, line), REMEDY);
			}
			String key = unescape(line.substring(0, at));
			String value = unescape(line.substring(at + 1));
			try {
				options = set(options, key, value);
			} catch (IllegalArgumentException e) {
				throw new IntakeException(file, number, Words.bind(Messages.Mapping_isNotUnderstood, key, value),
						REMEDY, e);
			}
		}
		return options;
	}

	private static IntakeOptions set(IntakeOptions o, String key, String value) {
		if (key.startsWith("column.")) {
			return o.withRole(key.substring(7), ColumnRole.of(value));
		}
		if (key.startsWith("floor.")) {
			return o.withFloorName(key.substring(6), Integer.parseInt(value));
		}
		switch (key) {
		case "layout":
			return o.withLayout(Layout.valueOf(value.toUpperCase(Locale.ROOT)));
		case "separator":
			return o.withSeparator(CellWords.separator(value));
		case "charset":
			return o.withCharset(Charset.forName(value));
		case "decimal":
			return o.withDecimalMark(CellWords.decimalMark(value));
		case "header":
			return o.withHeader(yes(value));
		case "not-heard":
			return o.withNotHeard(value);
		case "site":
			return o.withSite(value);
		case "floor":
			return o.withFloor(Integer.valueOf(value));
		case "device":
			return o.withDevice(value);
		case "swap-xy":
			return o.withSwapXY(yes(value));
		case "metres-per-unit":
			return o.withMetresPerUnit(CellNumbers.parse(value, false));
		case "access-points-per-site":
			return o.withAccessPointsPerSite(yes(value));
		default:
			throw new IllegalArgumentException("no setting " + key);
		}
	}

	/** The text of a mapping file: settings in a fixed order, so that equal options give equal files. */
	public static String format(IntakeOptions o) {
		StringBuilder out = new StringBuilder("# Cairnfield mapping: how a survey file is to be read\n");
		o.layout().ifPresent(v -> line(out, "layout", v.name().toLowerCase(Locale.ROOT)));
		o.separator().ifPresent(v -> line(out, "separator", CellWords.separator(v)));
		o.charset().ifPresent(v -> line(out, "charset", v.name()));
		o.decimalMark().ifPresent(v -> line(out, "decimal", CellWords.decimalMark(v)));
		o.header().ifPresent(v -> line(out, "header", v ? "yes" : "no"));
		o.notHeard().ifPresent(v -> line(out, "not-heard", v));
		o.site().ifPresent(v -> line(out, "site", v));
		o.floor().ifPresent(v -> line(out, "floor", v.toString()));
		o.device().ifPresent(v -> line(out, "device", v));
		if (o.swapXY()) {
			line(out, "swap-xy", "yes");
		}
		o.metresPerUnit().ifPresent(v -> line(out, "metres-per-unit", CellNumbers.plain(v)));
		if (o.accessPointsPerSite()) {
			line(out, "access-points-per-site", "yes");
		}
		o.roles().forEach((name, role) -> line(out, "column." + name, role.word()));
		o.floors().forEach((name, level) -> line(out, "floor." + name, level.toString()));
		return out.toString();
	}

	private static void line(StringBuilder out, String key, String value) {
		out.append(escape(key)).append(" = ").append(escape(value)).append('\n');
	}

	private static boolean yes(String value) {
		switch (value.toLowerCase(Locale.ROOT)) {
		case "yes", "true":
			return true;
		case "no", "false":
			return false;
		default:
			throw new IllegalArgumentException("yes or no, not " + value);
		}
	}

	private static int equalsSign(String line) {
		for (int i = 0; i < line.length(); i++) {
			if (line.charAt(i) == '\\') {
				i++;
			} else if (line.charAt(i) == '=') {
				return i;
			}
		}
		return -1;
	}

	private static String escape(String text) {
		StringBuilder out = new StringBuilder();
		for (int i = 0; i < text.length(); i++) {
			char c = text.charAt(i);
			switch (c) {
			case '\n' -> out.append("\\n");
			case '\r' -> out.append("\\r");
			case '\t' -> out.append("\\t");
			case '\\', '=' -> out.append('\\').append(c);
			case '#' -> out.append(i == 0 ? "\\#" : "#");
			default -> {
				boolean edge = i == 0 || i == text.length() - 1;
				out.append(edge && Character.isWhitespace(c) ? "\\" : "").append(c);
			}
			}
		}
		return out.toString();
	}

	private static String unescape(String raw) {
		StringBuilder out = new StringBuilder();
		int kept = 0;
		String text = raw.stripLeading();
		for (int i = 0; i < text.length(); i++) {
			char c = text.charAt(i);
			if (c == '\\' && i + 1 < text.length()) {
				char next = text.charAt(++i);
				out.append(next == 'n' ? '\n' : next == 'r' ? '\r' : next == 't' ? '\t' : next);
				kept = out.length();
			} else {
				out.append(c);
				kept = Character.isWhitespace(c) ? kept : out.length();
			}
		}
		out.setLength(kept);
		return out.toString();
	}
}
