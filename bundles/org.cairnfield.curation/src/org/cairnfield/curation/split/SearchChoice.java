package org.cairnfield.curation.split;

import org.cairnfield.core.match.Search;
import org.cairnfield.core.match.Voting;
import org.cairnfield.model.Split;

/**
 * How a split is searched, as a person sets it part by part.
 *
 * @param cut      whether large clusters are cut into cells first
 * @param groups   groups of cells that are entered in a search of two levels, 0 for one level, at most {@value #MOST}
 * @param cells    cells searched, 1 … {@value #MOST}; clusters where none is cut
 * @param relative whether cells are ordered by relative distance, not by plain distance
 * @param k        samples that vote for the position, 1 … {@value #MOST}
 * @param weighted whether they vote by 1/(d + 1)
 */
public record SearchChoice(boolean cut, int groups, int cells, boolean relative, int k, boolean weighted) {

	/** The nearest cluster, and the nearest sample in it. */
	public static final SearchChoice PUBLISHED = of(Search.PUBLISHED);
	/** Largest number of groups, of cells and of voters. */
	public static final int MOST = Search.MOST;

	/** @throws IllegalArgumentException for a number out of range */
	public SearchChoice {
		new Search(cut, groups, cells, relative, new Voting(k, weighted));
	}

	private static SearchChoice of(Search search) {
		return new SearchChoice(search.cut(), search.groupProbes(), search.cellProbes(), search.relative(),
				search.voting().k(),
				search.voting().weighted());
	}

	/** How devices search a kept split now. */
	public static SearchChoice of(Split split) {
		return of(SplitOnMap.searchOf(split));
	}

	/** Reads a {@link #code}. @throws IllegalArgumentException for any other text, with an example */
	public static SearchChoice parse(String code) {
		return of(Search.parse(code));
	}

	Search search() {
		return new Search(cut, groups, cells, relative, new Voting(k, weighted));
	}

	/** As files and the option <code>--search</code> have it. */
	public String code() {
		return search().code();
	}

	/** For a person. */
	@Override
	public String toString() {
		return search().toString();
	}
}
