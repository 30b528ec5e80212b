package org.cairnfield.curation.filter;

import java.util.ArrayList;
import java.util.List;

/**
 * A piece of an expression.
 *
 * @param text  of a quoted text what stands between the quotation marks
 * @param start where it begins
 */
record Token(Kind kind, String text, int start) {

	enum Kind {
		WORD, QUOTED, OPERATOR, OPEN, CLOSE, END
	}

	boolean isWord(String word) {
		return kind == Kind.WORD && text.equalsIgnoreCase(word);
	}

	/** As a person recognises it. */
	String shown() {
		return kind == Kind.END ? Messages.Token_theEnd : "'" + text + "'";
	}

	/** The pieces of a text, the last of them its end. */
	static List<Token> of(String text) throws FilterException {
		List<Token> tokens = new ArrayList<>();
		int at = 0;
		while (at < text.length()) {
			char c = text.charAt(at);
			int start = at;
			if (Character.isWhitespace(c)) {
				at++;
			} else if (c == '(' || c == ')') {
				tokens.add(new Token(c == '(' ? Kind.OPEN : Kind.CLOSE, String.valueOf(c), at++));
			} else if (c == '"') {
				at = text.indexOf('"', at + 1) + 1;
				if (at == 0) {
					throw new FilterException(start, Messages.Token_theQuotationMarkIsNot,
							Messages.Token_writeASecondOneWhere);
				}
				tokens.add(new Token(Kind.QUOTED, text.substring(start + 1, at - 1), start));
			} else if (Operator.at(text, at) != null) {
				String sign = Operator.at(text, at);
				tokens.add(new Token(Kind.OPERATOR, sign, at));
				at += sign.length();
			} else {
				while (at < text.length() && !endsWord(text, at)) {
					at++;
				}
				tokens.add(new Token(Kind.WORD, text.substring(start, at), start));
			}
		}
		tokens.add(new Token(Kind.END, "", text.length()));
		return tokens;
	}

	private static boolean endsWord(String text, int at) {
		char c = text.charAt(at);
		return Character.isWhitespace(c) || c == '(' || c == ')' || c == '"' || Operator.at(text, at) != null;
	}
}
