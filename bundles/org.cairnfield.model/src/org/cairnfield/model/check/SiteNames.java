package org.cairnfield.model.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;

/**
 * Whether people can tell the sites of an archive apart. An archive whose sites cannot be told apart opens all the same, since
 * it is mended by giving one of them another name.
 */
public final class SiteNames {

	private SiteNames() {
	}

	/** Sites without a name and names that several sites have, each with a remedy; none as a rule. */
	public static List<String> problems(Archive archive) {
		List<String> problems = new ArrayList<>();
		Map<String, List<String>> idsByName = new LinkedHashMap<>();
		for (Site site : archive.getSites()) {
			if (Report.isSet(site.getName())) {
				idsByName.computeIfAbsent(site.getName(), name -> new ArrayList<>()).add(site.getId());
			} else {
				problems.add("site " + site.getId() + " has no name and is shown by its id: give it one");
			}
		}
		idsByName.forEach((name, ids) -> {
			if (ids.size() > 1) {
				problems.add("sites " + String.join(", ", ids) + " have the same name, " + name
						+ ", and are shown with their ids: give all but one another name");
			}
		});
		return problems;
	}
}
