package org.cairnfield.curation.filter;

import java.util.function.IntPredicate;

import org.cairnfield.curation.samples.SampleContent;

/** An expression. The text form is in full, with parentheses, and parses to the same expression. */
sealed interface Expression {

	/** Says of an index of the content whether the sample passes; for any thread. Of samples only. */
	IntPredicate on(SampleContent content);

	/** All samples. */
	record Everything() implements Expression {
		@Override
		public IntPredicate on(SampleContent content) {
			return i -> true;
		}

		@Override
		public String toString() {
			return "";
		}
	}

	record And(Expression left, Expression right) implements Expression {
		@Override
		public IntPredicate on(SampleContent content) {
			return left.on(content).and(right.on(content));
		}

		@Override
		public String toString() {
			return "(" + left + " and " + right + ")";
		}
	}

	record Or(Expression left, Expression right) implements Expression {
		@Override
		public IntPredicate on(SampleContent content) {
			return left.on(content).or(right.on(content));
		}

		@Override
		public String toString() {
			return "(" + left + " or " + right + ")";
		}
	}

	record Not(Expression of) implements Expression {
		@Override
		public IntPredicate on(SampleContent content) {
			return of.on(content).negate();
		}

		@Override
		public String toString() {
			return "(not " + of + ")";
		}
	}

	/** Part of an id. */
	record Word(String text) implements Expression {
		@Override
		public IntPredicate on(SampleContent content) {
			return new Comparison(SampleField.ID, Operator.CONTAINS, new Value.Text(text)).on(content);
		}

		@Override
		public String toString() {
			return '"' + text + '"';
		}
	}

	/** Any open finding. */
	record Found() implements Expression {
		@Override
		public IntPredicate on(SampleContent content) {
			return i -> content.findings().of(i).isPresent();
		}

		@Override
		public String toString() {
			return "finding";
		}
	}

	/** A field against a value. */
	record Comparison(Field field, Operator operator, Value value) implements Expression {
		@Override
		public IntPredicate on(SampleContent content) {
			return Comparisons.of(this, content);
		}

		@Override
		public String toString() {
			return field.word() + ' ' + operator.sign() + ' ' + value;
		}
	}

	/**
	 * An access point.
	 *
	 * @param operator null to ask only whether it was heard
	 */
	record Heard(String accessPoint, Operator operator, double levelDbm) implements Expression {
		@Override
		public IntPredicate on(SampleContent content) {
			return Levels.test(this, content);
		}

		@Override
		public String toString() {
			return "ap \"" + accessPoint + '"'
					+ (operator == null ? "" : ' ' + operator.sign() + ' ' + new Value.Number(levelDbm));
		}
	}
}
