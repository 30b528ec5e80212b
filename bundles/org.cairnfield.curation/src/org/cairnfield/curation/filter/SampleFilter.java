package org.cairnfield.curation.filter;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

import org.cairnfield.curation.samples.SampleContent;

/**
 * Which samples of a table are shown, said in a line of text such as {@code heard < 5 and floor = 1}. {@link #HELP} has
 * the words.
 */
public final class SampleFilter {

	/** Shows all. */
	public static final SampleFilter EVERYTHING = new SampleFilter(new Expression.Everything());

	/** The language, a line for each thing to know. */
	public static final List<String> HELP = List.of(
			"SH-04                 ids with this in them",
			"heard < 5             compare by = != < <= > >=",
			"device ~ guide        has this in it; !~ has it not",
			"state = aside         or kept; reason ~ courier",
			"finding               any open finding; finding = error; finding ~ swapped",
			"ap 00:00:5e:00:53:01  heard it; with > -60 at more than −60 dBm",
			"time >= 2031-04-07    a day, or 2031-04-07T09:30, in UTC",
			"cluster = 7           role = noise; cluster = none",
			"site = \"Tide House\"   quotation marks around blanks",
			"kind = test           of a test survey; or training",
			"and  or  not  ( )     put together",
			"Compare: " + Vocabulary.SAMPLES.shown());

	private final Expression expression;

	private SampleFilter(Expression expression) {
		this.expression = expression;
	}

	/**
	 * Reads a filter; a blank text is {@link #EVERYTHING}.
	 *
	 * @throws FilterException telling where it cannot be understood and what to write
	 */
	public static SampleFilter parse(String text) throws FilterException {
		return new SampleFilter(Parser.parse(text, Vocabulary.SAMPLES));
	}

	public boolean isEverything() {
		return expression instanceof Expression.Everything;
	}

	/** Says of an index of the content whether the sample is shown; for any thread. Null to show all. */
	public IntPredicate on(SampleContent content) {
		return isEverything() ? null : expression.on(content);
	}

	/** What a person should know of the filter on this content, such as that no survey has the access point asked for. */
	public List<String> remarks(SampleContent content) {
		List<String> remarks = new ArrayList<>();
		remark(expression, content, remarks);
		return remarks;
	}

	private static void remark(Expression of, SampleContent content, List<String> remarks) {
		if (of instanceof Expression.And and) {
			remark(and.left(), content, remarks);
			remark(and.right(), content, remarks);
		} else if (of instanceof Expression.Or or) {
			remark(or.left(), content, remarks);
			remark(or.right(), content, remarks);
		} else if (of instanceof Expression.Not not) {
			remark(not.of(), content, remarks);
		} else if (of instanceof Expression.Heard heard && !Levels.isKnown(heard.accessPoint(), content)) {
			remarks.add("No survey listed here has an access point '" + heard.accessPoint() + "'.");
		}
	}

	Expression expression() {
		return expression;
	}

	/** In full, with parentheses; reads back as the same filter. */
	@Override
	public String toString() {
		return expression.toString();
	}
}
