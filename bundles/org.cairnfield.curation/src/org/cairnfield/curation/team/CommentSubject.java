package org.cairnfield.curation.team;

import org.cairnfield.curation.release.SemanticVersion;
import org.cairnfield.model.values.Ids;
import org.cairnfield.model.values.SampleKey;

/**
 * What a comment is about. Text forms, which are written and read here only: {@code proposal SPLIT survey/sample},
 * {@code finding RULE KEY} and {@code release VERSION}.
 */
public sealed interface CommentSubject {

	/** For a person, after "Comment on". */
	String title();

	/** @throws IllegalArgumentException for a text that is no subject; the message says what to write */
	static CommentSubject parse(String text) {
		String[] words = text.strip().split("\\s+", 3);
		if (words.length == 3 && words[0].equals("proposal")) {
			return new OfProposal(words[1], SampleKey.parse(words[2]));
		}
		if (words.length == 3 && words[0].equals("finding")) {
			return new OfFinding(words[1], words[2]);
		}
		if (words.length == 2 && words[0].equals("release")) {
			return new OfRelease(words[1]);
		}
		throw new IllegalArgumentException(
				"a comment is on a \"proposal SPLIT survey/sample\", a \"finding RULE KEY\" or a \"release VERSION\", not on '"
						+ text.strip() + "'");
	}

	/** A sample that a split offers to a cluster. @param split its id */
	record OfProposal(String split, SampleKey sample) implements CommentSubject {

		public OfProposal {
			if (!Ids.isUsable(split)) {
				throw new IllegalArgumentException("no id of a split: '" + split + "'");
			}
		}

		@Override
		public String title() {
			return sample + " in split " + split;
		}

		@Override
		public String toString() {
			return "proposal " + split + ' ' + sample;
		}
	}

	/**
	 * Something that a rule has found. When what it is about changes it is another finding, as it is for waivers.
	 *
	 * @param rule id of the rule
	 * @param key  of its content, 16 hexadecimal digits
	 */
	record OfFinding(String rule, String key) implements CommentSubject {

		public OfFinding {
			if (!Ids.isUsable(rule)) {
				throw new IllegalArgumentException("no id of a rule: '" + rule + "'");
			}
			if (!key.matches("[0-9a-f]{16}")) {
				throw new IllegalArgumentException(
						"the key of a finding is 16 hexadecimal digits, as \"check\" prints it, not '" + key + "'");
			}
		}

		@Override
		public String title() {
			return "a finding of " + rule;
		}

		@Override
		public String toString() {
			return "finding " + rule + ' ' + key;
		}
	}

	/** A release, prepared or signed. */
	record OfRelease(String version) implements CommentSubject {

		public OfRelease {
			if (!SemanticVersion.is(version)) {
				throw new IllegalArgumentException("'" + version + "' is no version such as 1.2.0");
			}
		}

		@Override
		public String title() {
			return "release " + version;
		}

		@Override
		public String toString() {
			return "release " + version;
		}
	}
}
