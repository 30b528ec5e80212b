package org.cairnfield.archive;

import java.util.List;
import java.util.Optional;

import org.cairnfield.archive.history.SavePoint;

/**
 * What an exchange has found or done.
 *
 * @param received save points of others that are here now, or would come in; the earliest first
 * @param sent     save points that others can have now, or that would be sent; likewise
 * @param merged   the save point that brings both together; empty where one side had nothing new
 * @param conflicts how many things are open in the archive after it, for somebody to decide
 * @param notes    what people should know of and need not decide
 */
public record Exchanged(List<SavePoint> received, List<SavePoint> sent, Optional<SavePoint> merged, int conflicts,
		List<String> notes) {

	public Exchanged {
		received = List.copyOf(received);
		sent = List.copyOf(sent);
		notes = List.copyOf(notes);
	}
}
