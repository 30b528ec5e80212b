package org.cairnfield.exchange.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.text.Words;

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

	/** Formats of those asked for that can hold the map: none that shows it on Earth where no site has a place there. */
	public Set<ExportFormat> writable(Set<ExportFormat> asked) {
		Set<ExportFormat> formats = new TreeSet<>(asked);
		formats.removeIf(format -> format.needsPlace() && sitesWithoutPlace().size() == map.sites().size());
		return formats;
	}

	/** What of the map is not in the files of an export in these formats, for a person; a line each. */
	public List<String> leftOut(Set<ExportFormat> asked) {
		List<String> lines = new ArrayList<>();
		Set<ExportFormat> written = writable(asked);
		asked.stream().filter(format -> !written.contains(format)).sorted()
				.forEach(format -> lines.add(Words.bind(Messages.MapExport_noWasWrittenNoSite, format)));
		List<String> nowhere = sitesWithoutPlace();
		if (!nowhere.isEmpty() && written.contains(ExportFormat.GEOJSON)) {
			lines.add(Words.bind(Messages.MapExport_notInTheGeojsonSince, String.join(", ", nowhere)));
		}
		if (!nowhere.isEmpty() && written.contains(ExportFormat.GEOPACKAGE)) {
			lines.add(Words.bind(Messages.MapExport_withoutGeometryInTheGeopackage, String.join(", ", nowhere)));
		}
		return lines;
	}

	/** Sites of the map that nobody has said the place of, and which no map of the Earth can show. */
	public List<String> sitesWithoutPlace() {
		return map.sites().stream().filter(name -> site(name).map(SiteFrame::anchor).isEmpty()).toList();
	}
}
