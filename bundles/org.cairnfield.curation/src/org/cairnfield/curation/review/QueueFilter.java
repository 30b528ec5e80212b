package org.cairnfield.curation.review;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Words that a line of the queue must all have, in any column, whatever the case; a word after a minus it must not have. */
public record QueueFilter(List<String> words, List<String> without) {

	/** Lets everything pass. */
	public static final QueueFilter NONE = of("");

	/** @param text words with spaces between */
	public static QueueFilter of(String text) {
		List<String> all = Arrays.stream(text.toLowerCase(Locale.ROOT).strip().split("\\s+")).filter(word -> !word.isEmpty()).toList();
		return new QueueFilter(all.stream().filter(word -> !isWithout(word)).toList(),
				all.stream().filter(QueueFilter::isWithout).map(word -> word.substring(1)).toList());
	}

	private static boolean isWithout(String word) {
		return word.length() > 1 && word.charAt(0) == '-';
	}

	/** Whether nothing is asked for. */
	public boolean isEmpty() {
		return words.isEmpty() && without.isEmpty();
	}

	/** @param text of all columns */
	public boolean accepts(String text) {
		String low = text.toLowerCase(Locale.ROOT);
		return words.stream().allMatch(low::contains) && without.stream().noneMatch(low::contains);
	}
}
