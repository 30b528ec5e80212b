package org.cairnfield.ui.internal.tables;

import java.util.Comparator;
import java.util.regex.Pattern;

/**
 * Orders texts as people read them: addresses of access points first, by their digits; then others by their letters, and runs of
 * digits in them by value, so that AP 2 comes before AP 10. Cases are not told apart.
 */
public final class NaturalOrder implements Comparator<String> {

	private static final Pattern ADDRESS = Pattern.compile("\\p{XDigit}{2}(?:[:-]\\p{XDigit}{2}){5}");

	@Override
	public int compare(String one, String other) {
		boolean isAddress = ADDRESS.matcher(one).matches();
		if (isAddress != ADDRESS.matcher(other).matches()) {
			return isAddress ? -1 : 1;
		}
		return isAddress ? one.compareToIgnoreCase(other) : compareNames(one, other);
	}

	private static int compareNames(String one, String other) {
		int i = 0;
		int j = 0;
		while (i < one.length() && j < other.length()) {
			int iEnd = endOfDigits(one, i);
			int jEnd = endOfDigits(other, j);
			int order;
			if (iEnd > i && jEnd > j) {
				order = compareNumbers(one.substring(i, iEnd), other.substring(j, jEnd));
			} else {
				iEnd = i + 1;
				jEnd = j + 1;
				order = Character.compare(Character.toLowerCase(one.charAt(i)), Character.toLowerCase(other.charAt(j)));
			}
			if (order != 0) {
				return order;
			}
			i = iEnd;
			j = jEnd;
		}
		return Integer.compare(one.length() - i, other.length() - j);
	}

	private static int endOfDigits(String text, int from) {
		int end = from;
		while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
			end++;
		}
		return end;
	}

	/** Of any length. */
	private static int compareNumbers(String one, String other) {
		String a = one.replaceFirst("^0+(?=.)", "");
		String b = other.replaceFirst("^0+(?=.)", "");
		return a.length() == b.length() ? a.compareTo(b) : Integer.compare(a.length(), b.length());
	}
}
