package org.cairnfield.archive.fault;

import java.time.Instant;
import java.util.Objects;

import org.cairnfield.core.text.Words;

/**
 * Who holds the lock of an archive.
 *
 * @param user  name of the account
 * @param host  name of the machine
 * @param pid   number of the process on that machine
 * @param since by that machine's clock; for people to read, nothing is decided by it
 */
public record LockOwner(String user, String host, long pid, Instant since) {

	public LockOwner {
		Objects.requireNonNull(user);
		Objects.requireNonNull(host);
		Objects.requireNonNull(since);
	}

	@Override
	public String toString() {
		return Words.bind(Messages.LockOwner_onProcessSince, user, host, pid, since);
	}
}
