package org.cairnfield.curation.filter;

import java.util.List;
import java.util.function.DoublePredicate;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * Which rows of a list are shown, said in the language of {@link SampleFilter} with fields of the list's own; a word alone
 * is looked for in all of a row's texts.
 *
 * @param <R> rows
 */
public final class RowFilter<R> {

	/**
	 * What can be compared of a row: numbers or texts.
	 *
	 * @param word    what it is called in a filter
	 * @param unit    of its numbers, empty for none: m or dBm
	 * @param example a value of it, as one would write it
	 * @param same    how far apart two numbers are shown as the same
	 * @param number  NaN where it is not known; null for a column of texts
	 * @param text    empty where it is not known; null for a column of numbers
	 */
	public record Column<R>(String word, String unit, String example, double same, ToDoubleFunction<R> number,
			Function<R, String> text) implements Field {

		/** Of numbers. @param decimals with which they are shown */
		public static <R> Column<R> numbers(String word, String unit, int decimals, String example,
				ToDoubleFunction<R> number) {
			return new Column<>(word, unit, example, 0.5 * Math.pow(10, -decimals), number, null);
		}

		/** Of texts. */
		public static <R> Column<R> texts(String word, String example, Function<R, String> text) {
			return new Column<>(word, "", example, 0, null, text);
		}

		@Override
		public Kind kind() {
			return number != null ? Kind.NUMBER : Kind.TEXT;
		}

		private boolean isKnown(R row) {
			return number != null ? !Double.isNaN(number.applyAsDouble(row)) : !text.apply(row).isEmpty();
		}
	}

	private final Expression expression;
	private final Predicate<R> test;

	private RowFilter(Expression expression, Function<R, String> all) {
		this.expression = expression;
		this.test = test(expression, all);
	}

	/**
	 * Reads a filter; a blank text shows all.
	 *
	 * @param owner who has the rows, for people, such as "the queue"
	 * @param all   all texts of a row, for a word alone
	 * @throws FilterException telling where it cannot be understood and what to write
	 */
	public static <R> RowFilter<R> parse(String text, List<Column<R>> columns, String owner, Function<R, String> all)
			throws FilterException {
		return new RowFilter<>(Parser.parse(text, new Vocabulary(columns, false, owner, Messages.RowFilter_allColumns)),
				all);
	}

	/** All that can be compared, for people. */
	public static <R> String fields(List<Column<R>> columns) {
		return new Vocabulary(columns, false, "", "").shown();
	}

	public boolean isEverything() {
		return expression instanceof Expression.Everything;
	}

	public boolean accepts(R row) {
		return test.test(row);
	}

	private static <R> Predicate<R> test(Expression of, Function<R, String> all) {
		if (of instanceof Expression.And and) {
			return RowFilter.<R>test(and.left(), all).and(test(and.right(), all));
		} else if (of instanceof Expression.Or or) {
			return RowFilter.<R>test(or.left(), all).or(test(or.right(), all));
		} else if (of instanceof Expression.Not not) {
			return RowFilter.<R>test(not.of(), all).negate();
		} else if (of instanceof Expression.Word word) {
			Predicate<String> contains = Comparisons.text(Operator.CONTAINS, word.text());
			return row -> contains.test(all.apply(row));
		} else if (of instanceof Expression.Comparison asked) {
			@SuppressWarnings("unchecked") // the parser knows no others
			Column<R> column = (Column<R>) asked.field();
			return compare(column, asked.operator(), asked.value());
		}
		return row -> true;
	}

	private static <R> Predicate<R> compare(Column<R> column, Operator operator, Value value) {
		if (value instanceof Value.None) {
			return operator == Operator.EQUAL ? row -> !column.isKnown(row) : column::isKnown;
		} else if (operator == Operator.UNEQUAL) {
			return compare(column, Operator.EQUAL, value).negate();
		} else if (operator == Operator.LACKS) {
			return compare(column, Operator.CONTAINS, value).negate();
		} else if (value instanceof Value.Number asked) {
			DoublePredicate number = Comparisons.number(operator, asked.number(), column.same());
			return row -> number.test(column.number().applyAsDouble(row));
		}
		Predicate<String> text = Comparisons.text(operator, ((Value.Text) value).text());
		return row -> text.test(column.text().apply(row));
	}

	/** In full, with parentheses; reads back as the same filter. */
	@Override
	public String toString() {
		return expression.toString();
	}
}
