package org.cairnfield.archive.internal.git;

import java.util.List;

import org.cairnfield.archive.fault.Damage;

/**
 * What can be read of a history.
 *
 * @param commits each before its parents
 * @param damages commits that cannot be read, and so end their line
 */
public record Log(List<Commit> commits, List<Damage> damages) {

	public Log {
		commits = List.copyOf(commits);
		damages = List.copyOf(damages);
	}
}
