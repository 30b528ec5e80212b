package org.cairnfield.batch.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.timeline.NextPlace;
import org.cairnfield.curation.timeline.NextWalk;
import org.cairnfield.curation.timeline.WalkFiles;
import org.cairnfield.model.Site;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "walk", description = "Plan the next survey: the places where a new sample would tell most, for their age, for access points that are gone, for gaps and "
		+ "contradictions, in an order in which they can be walked.")
final class WalkCommand extends ArchiveCommand {

	@Option(names = "--site", paramLabel = "SITE", description = "Only this site, by name or id.")
	String siteName;

	@Option(names = "--places", paramLabel = "N", description = "At most so many places a site; ${DEFAULT-VALUE} unless given.")
	int places = NextWalk.USUAL_PLACES;

	@Option(names = "--csv", paramLabel = "FILE", description = "Write the walk as a table.")
	Path csv;

	@Option(names = "--geojson", paramLabel = "FILE", description = "Write the walk as GeoJSON points, for the sites whose place on Earth is known (\"locate\").")
	Path geoJson;

	@Override
	Mode mode() {
		return Mode.READ;
	}

	@Override
	void checkArguments() {
		if (places < 1) {
			throw new ParameterException(spec.commandLine(), "--places must be 1 or more, was " + places);
		}
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		List<Site> sites = siteName == null ? archive.archive().getSites()
				: List.of(ArchiveWork.site(archive.archive(), siteName));
		List<NextWalk> walks = new ArrayList<>();
		for (Site site : sites) {
			NextWalk walk = NextWalk.of(archive.archive(), site, places, workers);
			walks.add(walk);
			if (!json) {
				out().println(String.format(Locale.ROOT, "%s: %d places, %.0f m", ArchiveMap.nameOf(site),
						walk.places().size(), walk.metres()));
				walk.places().forEach(place -> out().println(
						String.format(Locale.ROOT, "  floor %d, %.1f, %.1f m: %s", place.floor(), place.x(), place.y(),
								place.why())));
			}
		}
		if (csv != null) {
			WalkFiles.csv(csv, archive.archive(), walks);
		}
		if (geoJson != null) {
			WalkFiles.geoJson(geoJson, archive.archive(), walks)
					.forEach(site -> note(site
							+ " is not in the GeoJSON, since nobody has said where on Earth it lies; \"locate\" does"));
		}
		if (json) {
			printJson(new Json().put("walks", walks.stream().map(WalkCommand::json).toList()));
		}
	}

	private static Map<String, Object> json(NextWalk walk) {
		return new Json().put("site", walk.site()).put("metres", walk.metres())
				.put("places", walk.places().stream().map(WalkCommand::json).toList()).fields();
	}

	private static Map<String, Object> json(NextPlace place) {
		return new Json().put("floor", place.floor()).put("x", place.x()).put("y", place.y())
				.put("days", place.days() < 0 ? null : place.days())
				.put("goneShare", place.goneShare()).put("errorM", place.errorMetres()).put("gapM", place.gapMetres())
				.put("worth", place.worth())
				.put("why", place.why()).fields();
	}
}
