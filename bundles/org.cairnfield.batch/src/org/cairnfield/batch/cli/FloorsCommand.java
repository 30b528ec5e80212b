package org.cairnfield.batch.cli;

import java.nio.file.Path;
import java.util.Map;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
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
		"${bundle:FloorsCommand_what}",
		"${bundle:FloorsCommand_more}" })
final class FloorsCommand extends ArchiveCommand {

	@Parameters(index = "0", paramLabel = "FILE", descriptionKey = "FloorsCommand_file")
	Path file;

	@Option(names = "--site", required = true, paramLabel = "SITE", descriptionKey = "FloorsCommand_site")
	String siteName;

	@Option(names = "--building", paramLabel = "NAME", descriptionKey = "FloorsCommand_building")
	String building;

	@Option(names = "--shift", paramLabel = "N", descriptionKey = "FloorsCommand_shift")
	int shift;

	@Option(names = "--place", descriptionKey = "FloorsCommand_place")
	boolean place;

	@Option(names = "--dry-run", descriptionKey = "FloorsCommand_dryRun")
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
			out().println(floors.format() + (dryRun ? Messages.FloorsCommand_nothingIsChanged : ":"));
			taking.changes()
					.forEach(change -> out().println(
							Words.bind(Messages.FloorsCommand_outlinePlanImageSamples, change.title(),
									change.whatText(), change.outlineText(), change.imageText(),
									change.samplesText())));
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
