package org.cairnfield.curation.split;

import java.util.List;
import java.util.Locale;
import org.cairnfield.core.choose.AutomaticChoice;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.Split;

/** What was tried for ε and search, as people look at it. */
public final class TriedSearches {

	/** Kinds of searches, by their numbers. */
	public static final List<String> KINDS = List.of(Messages.TriedSearches_oneLevel, Messages.TriedSearches_oneCut,
			Messages.TriedSearches_twoLevels, Messages.TriedSearches_twoCut);

	private TriedSearches() {
	}

	/** Number of the kind of one: levels, and whether large clusters are cut. */
	public static int kind(AutomaticChoice.Tried tried) {
		return (tried.search().twoLevels() ? 2 : 0) + (tried.search().cut() ? 1 : 0);
	}

	/** ε and search in words. */
	public static String words(AutomaticChoice.Tried tried) {
		return String.format(Locale.ROOT, "ε %.6g, %s", tried.epsilon(), tried.search());
	}

	/** How a kept split is searched, and why, without a full stop. */
	public static String words(Split split) {
		return split.getSearch() == null ? Words.bind(Messages.TriedSearches_asAllSplitsBeforeThere, Search.USUAL)
				: split.getSearch() + "; " + split.getSearchReason();
	}
}
