package org.cairnfield.curation.filter;

import java.util.List;

import org.cairnfield.curation.filter.Token.Kind;

/**
 * Reads expressions by descent: {@code or} binds weakest, then {@code and}, which may be left out, then {@code not}.
 */
final class Parser {

	private static final int DEEPEST = 200;

	private final List<Token> tokens;
	private final Vocabulary vocabulary;
	private int at;
	private int depth;

	private Parser(List<Token> tokens, Vocabulary vocabulary) {
		this.tokens = tokens;
		this.vocabulary = vocabulary;
	}

	static Expression parse(String text, Vocabulary vocabulary) throws FilterException {
		Parser parser = new Parser(Token.of(text), vocabulary);
		if (parser.peek().kind() == Kind.END) {
			return new Expression.Everything();
		}
		Expression whole = parser.or();
		Token rest = parser.peek();
		if (rest.kind() == Kind.CLOSE) {
			throw new FilterException(rest.start(), "this parenthesis was never opened",
					"Take it away, or open one before");
		}
		return whole;
	}

	private Token peek() {
		return tokens.get(at);
	}

	private Token next() {
		return tokens.get(at).kind() == Kind.END ? tokens.get(at) : tokens.get(at++);
	}

	private Expression or() throws FilterException {
		Expression left = and();
		while (peek().isWord("or")) {
			next();
			left = new Expression.Or(left, and());
		}
		return left;
	}

	private Expression and() throws FilterException {
		Expression left = not();
		while (peek().kind() != Kind.END && peek().kind() != Kind.CLOSE && !peek().isWord("or")) {
			if (peek().isWord("and")) {
				next();
			}
			left = new Expression.And(left, not());
		}
		return left;
	}

	private Expression not() throws FilterException {
		if (!peek().isWord("not")) {
			return one();
		}
		deeper(next());
		Expression negated = new Expression.Not(not());
		depth--;
		return negated;
	}

	private Expression one() throws FilterException {
		Token token = next();
		switch (token.kind()) {
		case OPEN:
			deeper(token);
			Expression inner = or();
			if (next().kind() != Kind.CLOSE) {
				throw new FilterException(token.start(), "this parenthesis is not closed", "Write ) where it ends");
			}
			depth--;
			return inner;
		case QUOTED:
			return new Expression.Word(token.text());
		case WORD:
			if (!token.isWord("and") && !token.isWord("or")) {
				return named(token);
			}
			break;
		case OPERATOR:
			throw new FilterException(token.start(), token.shown() + " has nothing to compare before it",
					"Write a word such as "
							+ (vocabulary.samples() ? "heard " + token.text() + " 5" : "floor " + token.text() + " 1"));
		default:
			break;
		}
		throw new FilterException(token.start(), "something to look for is missing before " + token.shown(),
				"Write a part of an id, or a comparison such as floor = 1");
	}

	private void deeper(Token token) throws FilterException {
		if (++depth > DEEPEST) {
			throw new FilterException(token.start(), "this is nested too deeply", "Take some parentheses away");
		}
	}

	private Expression named(Token token) throws FilterException {
		boolean compares = peek().kind() == Kind.OPERATOR;
		if (vocabulary.samples() && token.isWord("ap") && !compares) {
			return accessPoint();
		}
		Field field = vocabulary.field(token).orElse(null);
		if (field == null && compares) {
			throw new FilterException(token.start(),
					token.shown() + " is nothing that " + vocabulary.owner()
							+ (vocabulary.samples() ? " have" : " has"),
					"Compare one of " + vocabulary.shown());
		} else if (field == null) {
			return new Expression.Word(token.text());
		} else if (!compares && field == SampleField.FINDING) {
			return new Expression.Found();
		} else if (!compares) {
			throw new FilterException(peek().start(), field.word() + " is compared with nothing",
					"Write for instance " + field.word() + " = " + field.example() + ", or \"" + token.text()
							+ "\" in quotation marks to find it in " + vocabulary.word());
		}
		Token sign = next();
		Operator operator = Operator.of(sign.text());
		if (!field.allows(operator)) {
			throw new FilterException(sign.start(), field.word() + " cannot be compared by " + sign.text(),
					"Use one of " + field.signs());
		}
		return new Expression.Comparison(field, operator, Values.parse(field, operator, value(sign), this::unit));
	}

	private Expression accessPoint() throws FilterException {
		Token name = next();
		if (name.kind() != Kind.WORD && name.kind() != Kind.QUOTED) {
			throw new FilterException(name.start(), "the address of an access point is missing",
					"Write for instance ap 00:00:5e:00:53:01 > -60");
		} else if (peek().kind() != Kind.OPERATOR) {
			return new Expression.Heard(name.text(), null, 0);
		}
		Token sign = next();
		Operator operator = Operator.of(sign.text());
		if (operator.isSearch()) {
			throw new FilterException(sign.start(), "a level cannot be compared by " + sign.text(),
					"Use one of = != < <= > >=");
		}
		return new Expression.Heard(name.text(), operator, Values.number(value(sign), "dBm", this::unit));
	}

	private Token value(Token sign) throws FilterException {
		Token value = next();
		if (value.kind() != Kind.WORD && value.kind() != Kind.QUOTED) {
			throw new FilterException(value.start(), "a value is missing after " + sign.text(),
					"Write what to compare with");
		}
		return value;
	}

	/** The unit after a number, if there is one: a word that is a unit. */
	private Token unit() {
		return Values.isUnit(peek()) ? next() : null;
	}
}
