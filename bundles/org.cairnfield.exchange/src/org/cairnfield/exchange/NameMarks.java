package org.cairnfield.exchange;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the name of a file says about the part it plays in a paired survey. */
final class NameMarks {

	private static final Pattern SIGNALS = mark("rss|rssis?|rsi|signals?|levels?|wifi");
	private static final Pattern COORDINATES = mark("crd|crds|coords?|coordinates?|pos|positions?|xy|loc|locations?");
	private static final Pattern IDS = mark("ids?|samples?|names?");
	private static final Pattern TIMES = mark("tms|times?|timestamps?");

	private static final Pattern CHANNELS = mark("chn|channels?");

	private NameMarks() {
	}

	private static Pattern mark(String words) {
		return Pattern.compile("(?i)[_. -]?(?<!\\p{L})(?:" + words + ")(?!\\p{L})");
	}

	/** The part that a file's stem names, or null. */
	static FilePlan.Part part(String stem) {
		return SIGNALS.matcher(stem).find() ? FilePlan.Part.SIGNALS
				: COORDINATES.matcher(stem).find() ? FilePlan.Part.COORDINATES
						: TIMES.matcher(stem).find() ? FilePlan.Part.TIMES
								: CHANNELS.matcher(stem).find() ? FilePlan.Part.CHANNELS
										: IDS.matcher(stem).find() ? FilePlan.Part.IDS : null;
	}

	/** The stem without the mark: what the files of one survey have in common. */
	static String key(String stem) {
		for (Pattern p : new Pattern[] { SIGNALS, COORDINATES, TIMES, CHANNELS, IDS }) {
			Matcher m = p.matcher(stem);
			if (m.find()) {
				return stem.substring(0, m.start()) + stem.substring(m.end());
			}
		}
		return stem;
	}
}
