package org.cairnfield.curation.filter;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

import org.cairnfield.core.text.Words;
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
			Messages.SampleFilter_sh04IdsWithThis,
			"heard < 5             compare by = != < <= > >=",
			Messages.SampleFilter_deviceGuideHasThisIn,
			Messages.SampleFilter_stateAsideOrKeptReason,
			Messages.SampleFilter_findingAnyOpenFindingFinding,
			Messages.SampleFilter_ap00005e00,
			Messages.SampleFilter_time20310407A,
			Messages.SampleFilter_cluster7RoleNoiseCluster,
			Messages.SampleFilter_siteTideHouseQuotationMarks,
			Messages.SampleFilter_kindTestOfATest,
			Messages.SampleFilter_andOrNotPutTogether,
			Words.bind(Messages.SampleFilter_compare, Vocabulary.SAMPLES.shown()));

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
			remarks.add(Words.bind(Messages.SampleFilter_noSurveyListedHereHas, heard.accessPoint()));
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
