package org.cairnfield.batch.cli;

import java.nio.file.Path;
import java.util.Map;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.floors.FloorChange;
import org.cairnfield.curation.floors.FloorTaking;
import org.cairnfield.curation.floors.FloorWish;
import org.cairnfield.exchange.floors.MappedFloors;
import org.cairnfield.model.Site;
import org.cairnfield.model.check.SiblingNames;
import org.cairnfield.model.values.Outline;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "floors", description = {
		"Take in floor plans of a site, as one save point: an IMDF archive (OGC 20-094), zipped or as a folder, or a GeoJSON file "
				+ "(RFC 7946) of polygons per floor.",
		"Levels become outlines of floors, rooms, walls and doors their plan images. Floors that the site does not have are made; those that the file does not "
				+ "have stay as they are." })
final class FloorsCommand extends ArchiveCommand {

	@Parameters(index = "0", paramLabel = "FILE", description = "An IMDF archive, its folder, or a GeoJSON file.")
	Path file;

	@Option(names = "--site", required = true, paramLabel = "SITE", description = "Name or id of the site; the id where several have the name.")
	String siteName;

	@Option(names = "--building", paramLabel = "NAME", description = "The building of the file that is the site; needed where the file has several and none has "
			+ "the name of the site.")
	String building;

	@Option(names = "--shift", paramLabel = "N", description = "Added to ordinals of the file, where floors of the archive are counted otherwise; 0 unless given.")
	int shift;

	@Option(names = "--place", description = "Where nobody has said where on Earth the site lies, let the file say it: the y axis points north; look at it then.")
	boolean place;

	@Option(names = "--dry-run", description = "Only say what would change.")
	boolean dryRun;

	@Override
	Mode mode() {
		return dryRun ? Mode.READ : Mode.EDIT;
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		Site site = ArchiveWork.site(archive.archive(), siteName);
		MappedFloors floors = MappedFloors.read(file);
		FloorTaking taking = FloorTaking.of(archive.archive(), site.getId(), floors,
				new FloorWish(building, shift, place));
		taking.notes().forEach(this::note);
		if (json) {
			printJson(new Json().put("site", SiblingNames.label(site)).put("id", site.getId())
					.put("format", floors.format()).put("dryRun", dryRun)
					.put("changes", taking.isChange())
					.put("placedAt", taking.placed().map(Object::toString).orElse(null))
					.put("floors", taking.changes().stream().map(FloorsCommand::json).toList()));
		} else {
			out().println(floors.format() + (dryRun ? ", nothing is changed:" : ":"));
			taking.changes()
					.forEach(change -> out().println(
							"  " + change.title() + ": " + change.whatText() + "; outline: " + change.outlineText()
									+ "; plan image: " + change.imageText() + "; samples: " + change.samplesText()));
		}
		if (!dryRun) {
			taking.apply(archive);
			record(archive);
		}
	}

	private static Map<String, Object> json(FloorChange change) {
		Outline outline = change.after().outline();
		return new Json().put("level", change.level()).put("name", change.name()).put("made", change.isNew())
				.put("changed", change.isChange())
				.put("feature", change.source().feature())
				.put("outlineCorners", outline == null ? null : outline.size())
				.put("areaM2", outline == null ? null : outline.areaSquareMetres())
				.put("planImage", change.after().image())
				.put("samples", change.seen().samples()).put("samplesOutside", change.seen().outside())
				.put("farthestOutsideM", change.seen().farthest()).fields();
	}
}
