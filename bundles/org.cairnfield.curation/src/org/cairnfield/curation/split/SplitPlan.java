package org.cairnfield.curation.split;

import org.cairnfield.model.values.Ids;
import org.cairnfield.model.values.Scope;

/**
 * A split that somebody wants to keep.
 *
 * @param name     becomes its id; with perFloor the beginning of the ids
 * @param perFloor one split for each floor of the scope in place of one for all
 * @param request  how; ε and minPts that are left open are chosen on held-out training positions
 */
public record SplitPlan(String name, Scope scope, boolean perFloor, SplitRequest request) {

	/** @throws IllegalArgumentException for a name that cannot be an id */
	public SplitPlan {
		if (!Ids.isUsable(name)) {
			throw new IllegalArgumentException(
					"a split is named by letters, digits, '_', '-' and '.', not '" + name + "'");
		}
	}
}
