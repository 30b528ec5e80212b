package org.cairnfield.archive.history;

import java.util.List;

/**
 * A thing of the archive that was added, removed or changed: a site, floor, access point, device, survey, waiver, release,
 * split, cluster, label, proposal, ledger, verdict, comment or assignment.
 *
 * @param what   in words, lower case: "access point"
 * @param id     its id; where it has none, what tells it from others of its kind; of comments and assignments what they say too
 * @param fields what differs, empty unless changed
 */
public record ObjectChange(String what, String id, Way way, List<FieldChange> fields) {

	/** How. */
	public enum Way {
		ADDED, REMOVED, CHANGED
	}

	public ObjectChange {
		fields = List.copyOf(fields);
	}
}
