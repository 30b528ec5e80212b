package org.cairnfield.archive.internal.disk;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.cairnfield.archive.fault.Damage;

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
			trace("rebase-merge", "a rebase", "rebase"),
			trace("rebase-apply/applying", "a series of patches", "am"),
			trace("rebase-apply", "a rebase", "rebase"),
			trace("MERGE_HEAD", "a merge", "merge"),
			trace("CHERRY_PICK_HEAD", "a cherry-pick", "cherry-pick"),
			trace("REVERT_HEAD", "a revert", "revert"),
			trace("sequencer", "a cherry-pick or revert of several commits", "cherry-pick"));

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
		return what + " with plain Git was begun here and is not finished";
	}

	/** What a person can do. */
	public String remedy() {
		return "finish it with 'git " + word + " --continue', keeping what both sides have, or give it up with 'git "
				+ word + " --abort'";
	}

	/** As damage. */
	public Damage damage() {
		return new Damage(trace, 0, reason(), remedy());
	}
}
