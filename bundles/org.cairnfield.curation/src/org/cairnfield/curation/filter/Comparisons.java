package org.cairnfield.curation.filter;

import java.util.Locale;
import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.function.Predicate;

import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.samples.FindingMarks;
import org.cairnfield.curation.samples.SampleContent;
import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.SampleTable;

/** Compares fields with values. What is not known of a sample equals nothing but "none". */
final class Comparisons {

	/** Lengths are shown with two decimals, and equal what they are shown as. */
	private static final double HALF_OF_LAST_DIGIT = 0.005;

	private final SampleContent content;
	private final SampleRows rows;

	private Comparisons(SampleContent content) {
		this.content = content;
		rows = content.rows();
	}

	static IntPredicate of(Expression.Comparison asked, SampleContent content) {
		return new Comparisons(content).test((SampleField) asked.field(), asked.operator(), asked.value());
	}

	private IntPredicate test(SampleField field, Operator operator, Value value) {
		if (value instanceof Value.None) {
			return operator == Operator.EQUAL ? i -> !isKnown(field, i) : i -> isKnown(field, i);
		} else if (operator == Operator.UNEQUAL) {
			return test(field, Operator.EQUAL, value).negate();
		} else if (operator == Operator.LACKS) {
			return test(field, Operator.CONTAINS, value).negate();
		} else if (value instanceof Value.Time time) {
			return i -> isKnown(field, i) && operator.passes(time.order(table(i).timeMillis(rows.row(i))));
		} else if (value instanceof Value.State state) {
			return i -> table(i).isKept(rows.row(i)) == state.kept();
		} else if (value instanceof Value.Grade grade) {
			return i -> content.findings().of(i).filter(mark -> operator.passes(worse(mark.worst(), grade.severity())))
					.isPresent();
		} else if (value instanceof Value.Number number) {
			return compare(numbers(field), operator, number.number(),
					field.unit().equals("m") ? HALF_OF_LAST_DIGIT : 0);
		}
		return compare(texts(field), operator, ((Value.Text) value).text());
	}

	private static IntPredicate compare(IntToDoubleFunction actual, Operator operator, double asked, double same) {
		DoublePredicate number = number(operator, asked, same);
		return i -> number.test(actual.applyAsDouble(i));
	}

	private static IntPredicate compare(IntFunction<String> actual, Operator operator, String asked) {
		Predicate<String> text = text(operator, asked);
		return i -> text.test(actual.apply(i));
	}

	/** @param same how far apart two numbers are taken for the same */
	static DoublePredicate number(Operator operator, double asked, double same) {
		// NaN is neither within nor beyond
		return each -> !Double.isNaN(each)
				&& operator.passes(Math.abs(each - asked) <= same ? 0 : Double.compare(each, asked));
	}

	/** @param operator that looks for a part, or asks for equality */
	static Predicate<String> text(Operator operator, String asked) {
		if (operator == Operator.CONTAINS) {
			String lower = asked.toLowerCase(Locale.ROOT);
			String upper = asked.toUpperCase(Locale.ROOT);
			return each -> contains(each, lower, upper);
		}
		return each -> each.equalsIgnoreCase(asked);
	}

	/** Whatever the letter case, without a new text for each sample. */
	private static boolean contains(String text, String lower, String upper) {
		int length = lower.length();
		if (length != upper.length()) { // as of ß
			return text.toLowerCase(Locale.ROOT).contains(lower);
		}
		for (int at = 0; at + length <= text.length(); at++) {
			if (length == 0 || (text.charAt(at) == lower.charAt(0) || text.charAt(at) == upper.charAt(0))
					&& text.regionMatches(true, at, lower, 0, length)) {
				return true;
			}
		}
		return false;
	}

	/** Positive where the first is worse. */
	private static int worse(Severity first, Severity second) {
		return second.compareTo(first);
	}

	private SampleTable table(int index) {
		return content.table(index);
	}

	private boolean isKnown(SampleField field, int index) {
		return switch (field) {
		case DEVICE, REASON, ROLE, ID, SURVEY, SITE, KIND -> !texts(field).apply(index).isEmpty();
		case TIME -> table(index).timeMillis(rows.row(index)) != SampleTable.NO_TIME;
		case FINDING -> content.findings().of(index).isPresent();
		case STATE -> true;
		case FLOOR, X, Y, HEARD, STRONGEST, FINDINGS, CLUSTER -> !Double.isNaN(numbers(field).applyAsDouble(index));
		};
	}

	private IntFunction<String> texts(SampleField field) {
		return switch (field) {
		case ID -> i -> table(i).id(rows.row(i));
		case SURVEY -> i -> rows.part(i).survey();
		case SITE -> i -> rows.part(i).site();
		case KIND -> i -> rows.part(i).kind().getLiteral();
		case DEVICE -> i -> rows.part(i).device();
		case REASON -> i -> Optional.ofNullable(table(i).reason(rows.row(i))).orElse("");
		case ROLE -> content.clusters()::role;
		case FINDING -> i -> content.findings().of(i).map(FindingMarks.Mark::rules).orElse("");
		default -> throw new IllegalArgumentException(field + " is no text");
		};
	}

	private IntToDoubleFunction numbers(SampleField field) {
		return switch (field) {
		case FLOOR -> i -> table(i).floorLevel(rows.row(i));
		case X -> i -> table(i).xMetres(rows.row(i));
		case Y -> i -> table(i).yMetres(rows.row(i));
		case HEARD -> i -> table(i).heard(rows.row(i));
		case STRONGEST -> i -> content.strongestDbm(i) == Integer.MIN_VALUE ? Double.NaN : content.strongestDbm(i);
		case FINDINGS -> i -> content.findings().of(i).map(FindingMarks.Mark::count).orElse(0);
		case CLUSTER -> i -> !content.clusters().has(i) || content.clusters().cluster(i) == Labels.NOISE ? Double.NaN
				: content.clusters().cluster(i);
		default -> throw new IllegalArgumentException(field + " is no number");
		};
	}
}
