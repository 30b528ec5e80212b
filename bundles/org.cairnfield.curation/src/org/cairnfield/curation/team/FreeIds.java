package org.cairnfield.curation.team;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.cairnfield.curation.rules.ContentKeys;
import org.cairnfield.model.Archive;

/** Ids for what is added to an archive, made from what it says, so that what two people add at the same time seldom shares one. */
final class FreeIds {

	private final Set<String> taken = new HashSet<>();

	FreeIds(Archive archive) {
		archive.getAssignments().forEach(each -> taken.add(each.getId()));
		archive.getComments().forEach(each -> taken.add(each.getId()));
	}

	String next(List<String> content) {
		String id = ContentKeys.text(ContentKeys.join(ContentKeys.of(content.toString()), taken.size()));
		while (!taken.add(id)) {
			id = ContentKeys.text(ContentKeys.of(id));
		}
		return id;
	}
}
