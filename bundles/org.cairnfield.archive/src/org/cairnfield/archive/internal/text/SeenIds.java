package org.cairnfield.archive.internal.text;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Notices an id that comes twice. Costs nothing as long as ids ascend, as they do in a file that was not edited. */
final class SeenIds {

	private String last;
	private Set<String> others;
	private List<String> ascending = new ArrayList<>();

	boolean isNew(String id) {
		if (others == null) {
			if (last == null || last.compareTo(id) < 0) {
				last = id;
				ascending.add(id);
				return true;
			}
			others = new HashSet<>(ascending);
			ascending = null;
		}
		return others.add(id);
	}
}
