package org.cairnfield.archive.internal.disk;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.core.text.Words;

/**
 * A merge, rebase or the like that somebody began with plain Git and has not finished, told from Git's files without loading
 * a Git. Until it is finished the folder holds neither the one side nor the other.
 *
 * @param trace what Git keeps for the time being, a path below the folder
 * @param what  name of it, with its article
 * @param word  Git's command
 */
public record GitUnderway(String trace, String what, String word) {

	/** The more special ones first: a rebase may leave traces of the others. */
	private static final List<GitUnderway> ALL = List.of(
			trace("rebase-merge", Messages.GitUnderway_aRebase, "rebase"),
			trace("rebase-apply/applying", Messages.GitUnderway_aSeriesOfPatches, "am"),
			trace("rebase-apply", Messages.GitUnderway_aRebase, "rebase"),
			trace("MERGE_HEAD", Messages.GitUnderway_aMerge, "merge"),
			trace("CHERRY_PICK_HEAD", Messages.GitUnderway_aCherryPick, "cherry-pick"),
			trace("REVERT_HEAD", Messages.GitUnderway_aRevert, "revert"),
			trace("sequencer", Messages.GitUnderway_aCherryPickOrRevert, "cherry-pick"));

	private static GitUnderway trace(String name, String what, String word) {
		return new GitUnderway(Places.GIT + '/' + name, what, word);
	}

	/** What is under way in a folder; empty where nothing is, or where there is no repository. */
	public static Optional<GitUnderway> in(Path root) {
		return ALL.stream().filter(each -> Files.exists(root.resolve(each.trace), LinkOption.NOFOLLOW_LINKS))
				.findFirst();
	}

	/** In words, without a full stop. */
	public String reason() {
		return Words.bind(Messages.GitUnderway_withPlainGitWasBegun, what);
	}

	/** What a person can do. */
	public String remedy() {
		return Words.bind(Messages.GitUnderway_finishItWithGitContinue, word, word);
	}

	/** As damage. */
	public Damage damage() {
		return new Damage(trace, 0, reason(), remedy());
	}
}
