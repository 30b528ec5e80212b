package org.cairnfield.archive.history;

import java.util.List;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.values.Count;

/**
 * What people's work rests on, that one side of a merge had, and that the merge has dropped although no side took it away.
 *
 * @param merge  the save point that brought two sides together
 * @param parent the side that had it
 * @param file   path of the file that had it
 * @param kind   what was dropped: verdict, waiver, comment or survey
 * @param names  of what was dropped, at least one
 * @param other  whether it is there, but otherwise than it was
 */
public record MergeLoss(SavePoint merge, SavePoint parent, String file, Kind kind, List<String> names, boolean other) {

	/** What can be dropped. */
	public enum Kind {
		/** A line of a ledger. */
		VERDICT("verdict"),
		/** Of a finding. */
		WAIVER("waiver"),
		/** On a proposal, a finding or a release. */
		COMMENT("comment"),
		/** With all its samples. */
		SURVEY("survey");

		private final String word;

		Kind(String word) {
			this.word = word;
		}
	}

	public MergeLoss {
		names = List.copyOf(names);
	}

	/** As damage of the archive, with what a person can do. */
	public Damage damage() {
		String what = Count.of(names.size(), kind.word) + (names.size() == 1 ? " (" : Messages.MergeLoss_theFirst)
				+ names.get(0).replaceAll("\\s", " ") + ')';
		return new Damage(file, 0,
				Words.bind(Messages.MergeLoss_theMergeBy, merge.shortId(), merge.person(),
						other ? Words.bind(Messages.MergeLoss_hasChangedOf, what)
								: Words.bind(Messages.MergeLoss_hasDroppedWhichIsIn, what),
						parent.shortId()),
				remedy());
	}

	private String remedy() {
		String again = Words.bind(Messages.MergeLoss_mergeAgainWithGitGit, merge.parents().get(0),
				String.join(" ", merge.parents().subList(1, merge.parents().size())));
		if (other) {
			return again;
		}
		return kind == Kind.VERDICT ? Words.bind(Messages.MergeLoss_restoreTheSavePointWhich, merge.shortId())
				: Words.bind(Messages.MergeLoss_orRestoreTheSavePoint, again, parent.shortId());
	}
}
