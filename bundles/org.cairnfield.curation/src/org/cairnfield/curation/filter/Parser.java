package org.cairnfield.curation.filter;

import java.util.List;

import org.cairnfield.core.text.Words;
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
			throw new FilterException(rest.start(), Messages.Parser_thisParenthesisWasNeverOpened,
					Messages.Parser_takeItAwayOrOpen);
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
				throw new FilterException(token.start(), Messages.Parser_thisParenthesisIsNotClosed,
						Messages.Parser_writeWhereItEnds);
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
			throw new FilterException(token.start(),
					Words.bind(Messages.Parser_hasNothingToCompareBefore, token.shown()),
					Words.bind(Messages.Parser_writeAWordSuchAs,
							vocabulary.samples() ? Words.bind(Messages.Parser_heard5, token.text())
									: Words.bind(Messages.Parser_floor1, token.text())));
		default:
			break;
		}
		throw new FilterException(token.start(), Words.bind(Messages.Parser_somethingToLookForIs, token.shown()),
				Messages.Parser_writeAPartOfAn);
	}

	private void deeper(Token token) throws FilterException {
		if (++depth > DEEPEST) {
			throw new FilterException(token.start(), Messages.Parser_thisIsNestedTooDeeply,
					Messages.Parser_takeSomeParenthesesAway);
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
					Words.bind(Messages.Parser_isNothingThat, token.shown(), vocabulary.owner(),
							vocabulary.samples() ? Messages.Parser_have : Messages.Parser_has),
					Words.bind(Messages.Parser_compareOneOf, vocabulary.shown()));
		} else if (field == null) {
			return new Expression.Word(token.text());
		} else if (!compares && field == SampleField.FINDING) {
			return new Expression.Found();
		} else if (!compares) {
			throw new FilterException(peek().start(),
					Words.bind(Messages.Parser_isComparedWithNothing, field.word()),
					Words.bind(Messages.Parser_writeForInstanceOrIn, field.word(), field.example(), token.text(),
							vocabulary.word()));
		}
		Token sign = next();
		Operator operator = Operator.of(sign.text());
		if (!field.allows(operator)) {
			throw new FilterException(sign.start(),
					Words.bind(Messages.Parser_cannotBeComparedBy, field.word(), sign.text()),
					Words.bind(Messages.Parser_useOneOf, field.signs()));
		}
		return new Expression.Comparison(field, operator, Values.parse(field, operator, value(sign), this::unit));
	}

	private Expression accessPoint() throws FilterException {
		Token name = next();
		if (name.kind() != Kind.WORD && name.kind() != Kind.QUOTED) {
			throw new FilterException(name.start(), Messages.Parser_theAddressOfAnAccess,
					Messages.Parser_writeForInstanceAp00);
		} else if (peek().kind() != Kind.OPERATOR) {
			return new Expression.Heard(name.text(), null, 0);
		}
		Token sign = next();
		Operator operator = Operator.of(sign.text());
		if (operator.isSearch()) {
			throw new FilterException(sign.start(), Words.bind(Messages.Parser_aLevelCannotBeCompared, sign.text()),
					"Use one of = != < <= > >=");
		}
		return new Expression.Heard(name.text(), operator, Values.number(value(sign), "dBm", this::unit));
	}

	private Token value(Token sign) throws FilterException {
		Token value = next();
		if (value.kind() != Kind.WORD && value.kind() != Kind.QUOTED) {
			throw new FilterException(value.start(), Words.bind(Messages.Parser_aValueIsMissingAfter, sign.text()),
					Messages.Parser_writeWhatToCompareWith);
		}
		return value;
	}

	/** The unit after a number, if there is one: a word that is a unit. */
	private Token unit() {
		return Values.isUnit(peek()) ? next() : null;
	}
}
