package org.cairnfield.batch.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.timeline.NextPlace;
import org.cairnfield.curation.timeline.NextWalk;
import org.cairnfield.curation.timeline.WalkFiles;
import org.cairnfield.model.Site;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "walk", description = "${bundle:WalkCommand_what}")
final class WalkCommand extends ArchiveCommand {

	@Option(names = "--site", paramLabel = "SITE", descriptionKey = "WalkCommand_site")
	String siteName;

	@Option(names = "--places", paramLabel = "N", descriptionKey = "WalkCommand_places")
	int places = NextWalk.USUAL_PLACES;

	@Option(names = "--csv", paramLabel = "FILE", descriptionKey = "WalkCommand_csv")
	Path csv;

	@Option(names = "--geojson", paramLabel = "FILE", descriptionKey = "WalkCommand_geojson")
	Path geoJson;

	@Override
	Mode mode() {
		return Mode.READ;
	}

	@Override
	void checkArguments() {
		if (places < 1) {
			throw new ParameterException(spec.commandLine(),
					Words.bind(Messages.WalkCommand_placesMustBe1Or, places));
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
				out().println(String.format(Locale.ROOT, Messages.WalkCommand_placesM, ArchiveMap.nameOf(site),
						walk.places().size(), walk.metres()));
				walk.places().forEach(place -> out().println(
						String.format(Locale.ROOT, Messages.WalkCommand_floorM, place.floor(), place.x(), place.y(),
								place.why())));
			}
		}
		if (csv != null) {
			WalkFiles.csv(csv, archive.archive(), walks);
		}
		if (geoJson != null) {
			WalkFiles.geoJson(geoJson, archive.archive(), walks)
					.forEach(site -> note(Words.bind(Messages.WalkCommand_isNotInTheGeojson, site)));
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
