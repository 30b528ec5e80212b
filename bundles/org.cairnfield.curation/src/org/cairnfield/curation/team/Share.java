package org.cairnfield.curation.team;

import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.cairnfield.curation.rules.ContentKeys;
import org.cairnfield.model.values.Ids;

/**
 * Which proposals of a split somebody is to review. Text forms, which are written and read here only: {@code band close},
 * {@code site th}, {@code floor th/2}, {@code part 2/3}.
 */
public sealed interface Share {

	/** Most parts that a split can be cut into. */
	int MOST_PARTS = 99;

	/** Whether a proposal is in it. */
	boolean has(ProposalPlace proposal);

	/** @throws IllegalArgumentException for a text that is no share; the message says what to write */
	static Share parse(String text) {
		String[] words = text.strip().split("\\s+", 2);
		if (words.length == 2) {
			switch (words[0]) {
			case "band":
				return new OfBand(words[1]);
			case "site":
				return new OfSite(words[1]);
			case "floor":
				return floor(words[1]);
			case "part":
				return part(words[1]);
			default:
			}
		}
		throw new IllegalArgumentException(
				"a share is band NAME, site ID, floor ID/LEVEL or part N/OF, such as \"band close\" or \"part 2/3\", not '"
						+ text.strip() + "'");
	}

	private static Share floor(String text) {
		Matcher floor = Pattern.compile("(.+)/(-?\\d{1,4})").matcher(text);
		if (!floor.matches()) {
			throw new IllegalArgumentException(
					"a floor is named by the id of its site and its level, such as \"floor th/2\", not 'floor " + text
							+ "'");
		}
		return new OfFloor(floor.group(1), Integer.parseInt(floor.group(2)));
	}

	private static Share part(String text) {
		Matcher part = Pattern.compile("(\\d{1,4})/(\\d{1,4})").matcher(text);
		if (!part.matches()) {
			throw new IllegalArgumentException(
					"a part is named by its number and how many there are, such as \"part 2/3\", not 'part " + text
							+ "'");
		}
		return new OfPart(Integer.parseInt(part.group(1)), Integer.parseInt(part.group(2)));
	}

	/** As an archive keeps it. A share that this version does not know has no proposals. */
	static Share kept(String text) {
		try {
			return parse(text);
		} catch (IllegalArgumentException e) {
			return new Unknown(text);
		}
	}

	/** Proposals of a strength. */
	record OfBand(String band) implements Share {

		@Override
		public boolean has(ProposalPlace proposal) {
			return band.equalsIgnoreCase(proposal.band());
		}

		@Override
		public String toString() {
			return "band " + band;
		}
	}

	/** Samples of a site, by its id. */
	record OfSite(String site) implements Share {

		public OfSite {
			requireId(site);
		}

		@Override
		public boolean has(ProposalPlace proposal) {
			return site.equals(proposal.site());
		}

		@Override
		public String toString() {
			return "site " + site;
		}
	}

	/** Samples of a floor. */
	record OfFloor(String site, int level) implements Share {

		public OfFloor {
			requireId(site);
		}

		@Override
		public boolean has(ProposalPlace proposal) {
			return site.equals(proposal.site()) && Objects.equals(level, proposal.level());
		}

		@Override
		public String toString() {
			return "floor " + site + '/' + level;
		}
	}

	/**
	 * One of several parts of about the same size. A sample is in the same part on every computer, whatever other proposals
	 * there are.
	 *
	 * @param part from 1 on
	 */
	record OfPart(int part, int of) implements Share {

		public OfPart {
			if (part < 1 || part > of || of > MOST_PARTS) {
				throw new IllegalArgumentException("there is no part " + part + '/' + of
						+ ": parts are counted from 1, and there are at most " + MOST_PARTS);
			}
		}

		@Override
		public boolean has(ProposalPlace proposal) {
			return Long.remainderUnsigned(ContentKeys.of(proposal.sample().toString()), of) == part - 1;
		}

		@Override
		public String toString() {
			return "part " + part + '/' + of;
		}
	}

	/** One that a later version has written. */
	record Unknown(String text) implements Share {

		@Override
		public boolean has(ProposalPlace proposal) {
			return false;
		}

		@Override
		public String toString() {
			return text;
		}
	}

	private static void requireId(String site) {
		if (!Ids.isUsable(site)) {
			throw new IllegalArgumentException("no id of a site: '" + site + "'");
		}
	}
}
