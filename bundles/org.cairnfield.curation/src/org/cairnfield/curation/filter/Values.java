package org.cairnfield.curation.filter;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.cairnfield.core.text.Words;
import org.cairnfield.curation.rules.Severity;

/** Reads values, each as its field has them. */
final class Values {

	private static final Pattern NUMBER = Pattern
			.compile("([-+−]?(?:\\d{1,15}(?:\\.\\d{0,15})?|\\.\\d{1,15}))(\\p{L}*)");
	private static final Pattern TIME = Pattern.compile("(\\d{4}-\\d\\d-\\d\\d)(?:[T ](\\d\\d:\\d\\d)(:\\d\\d)?)?Z?",
			Pattern.CASE_INSENSITIVE);

	private Values() {
	}

	/** @param unit takes the unit that follows a number, or gives null */
	static Value parse(Field field, Operator operator, Token token, Supplier<Token> unit) throws FilterException {
		boolean equality = operator == Operator.EQUAL || operator == Operator.UNEQUAL;
		if (token.isWord("none") && equality) {
			return new Value.None();
		}
		return switch (field.kind()) {
		case TEXT -> new Value.Text(token.text());
		case NUMBER -> new Value.Number(number(token, field.unit(), unit));
		case TIME -> time(token);
		case STATE -> state(token);
		case SEVERITY -> operator.isSearch() ? new Value.Text(token.text()) : severity(token);
		};
	}

	static boolean isUnit(Token token) {
		return token.isWord("m") || token.isWord("dBm");
	}

	static double number(Token token, String unit, Supplier<Token> following) throws FilterException {
		Matcher number = NUMBER.matcher(token.text());
		if (token.kind() != Token.Kind.WORD || !number.matches()) {
			String comma = token.text().replace(',', '.');
			throw new FilterException(token.start(), Words.bind(Messages.Values_isNoNumber, token.shown()),
					NUMBER.matcher(comma).matches() ? Words.bind(Messages.Values_writeItWithAPoint, comma)
							: Words.bind(Messages.Values_writeOneSuchAs, unit.equals("dBm") ? "-60" : "5"));
		}
		Token after = number.group(2).isEmpty() ? following.get()
				: new Token(Token.Kind.WORD, number.group(2), token.start() + number.start(2));
		if (after != null && !after.text().equalsIgnoreCase(unit)) {
			throw new FilterException(after.start(), Words.bind(Messages.Values_theUnitHereIsNot, after.text()),
					unit.isEmpty() ? Messages.Values_writeTheNumberAlone
							: Words.bind(Messages.Values_writeOr, number.group(1), number.group(1), unit));
		}
		return Double.parseDouble(number.group(1).replace('−', '-')) + 0.0;
	}

	private static Value time(Token token) throws FilterException {
		Matcher time = TIME.matcher(token.text());
		try {
			if (time.matches()) {
				LocalDate day = LocalDate.parse(time.group(1));
				boolean seconds = time.group(3) != null;
				LocalDateTime from = time.group(2) == null ? day.atStartOfDay()
						: LocalDateTime.parse(day + "T" + time.group(2) + (seconds ? time.group(3) : ":00"));
				LocalDateTime until = time.group(2) == null ? from.plusDays(1)
						: seconds ? from.plusSeconds(1) : from.plusMinutes(1);
				String text = day + (time.group(2) == null ? "" : "T" + time.group(2) + (seconds ? time.group(3) : ""));
				return new Value.Time(text, millis(from), millis(until));
			}
		} catch (DateTimeException e) {
			// such as 30 February: said below
		}
		throw new FilterException(token.start(), Words.bind(Messages.Values_isNoTime, token.shown()),
				Messages.Values_writeItInUtcAs);
	}

	private static long millis(LocalDateTime time) {
		return time.toInstant(ZoneOffset.UTC).toEpochMilli();
	}

	private static Value state(Token token) throws FilterException {
		return switch (token.text().toLowerCase(Locale.ROOT)) {
		case "kept" -> new Value.State(true);
		case "aside", "set aside", "set-aside" -> new Value.State(false);
		default -> throw new FilterException(token.start(), Words.bind(Messages.Values_isNoState, token.shown()),
				Messages.Values_writeKeptOrAside);
		};
	}

	private static Value severity(Token token) throws FilterException {
		return Arrays.stream(Severity.values()).filter(severity -> severity.code().equalsIgnoreCase(token.text()))
				.findFirst()
				.map(Value.Grade::new)
				.orElseThrow(() -> new FilterException(token.start(),
						Words.bind(Messages.Values_isNoSeverity, token.shown()),
						Words.bind(Messages.Values_writeErrorWarningOrNote, token.text())));
	}
}
