package org.cairnfield.exchange.export;

import java.util.List;
import java.util.Optional;

import org.cairnfield.core.map.RadioMap;

/**
 * A radio map as it leaves, with all that its users may know.
 *
 * @param title what the map is called
 * @param map   after {@link ExportOptions#apply}
 * @param ids   a name for each sample
 * @param sites by the names that the map uses; a site that is missing has no place on Earth and no outlines
 */
public record MapExport(String title, RadioMap map, List<String> ids, List<SiteFrame> sites) {

	/** @throws IllegalArgumentException where a sample has no name */
	public MapExport {
		if (ids.size() != map.size()) {
			throw new IllegalArgumentException(ids.size() + " ids for " + map.size() + " samples");
		}
		ids = List.copyOf(ids);
		sites = List.copyOf(sites);
	}

	/** What is known of a site of the map. */
	public Optional<SiteFrame> site(String name) {
		return sites.stream().filter(s -> s.name().equals(name)).findFirst();
	}

	/** Sites of the map that nobody has said the place of, and which no map of the Earth can show. */
	public List<String> sitesWithoutPlace() {
		return map.sites().stream().filter(name -> site(name).map(SiteFrame::anchor).isEmpty()).toList();
	}
}
