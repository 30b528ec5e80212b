package org.cairnfield.batch.cli;

import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.model.Site;
import org.cairnfield.model.check.SiblingNames;
import org.cairnfield.model.values.Georeference;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "locate", description = "Set where on Earth the frame of a site lies, so that the map can be exported in WGS 84.")
final class LocateCommand extends ArchiveCommand {

	@Option(names = "--site", required = true, paramLabel = "SITE", description = "Name or id of the site; the id where several have the name.")
	String name;

	@Option(names = "--latitude", required = true, paramLabel = "DEG", description = "Of the origin of the frame, -90 to 90, WGS 84.")
	double latitude;

	@Option(names = "--longitude", required = true, paramLabel = "DEG", description = "Likewise, -180 to 180.")
	double longitude;

	@Option(names = "--bearing", paramLabel = "DEG", description = "Of the y axis, clockwise from north, 0 to 360; 0 unless given.")
	double bearing;

	private Georeference where;

	@Override
	Mode mode() {
		return Mode.EDIT;
	}

	@Override
	void checkArguments() {
		try {
			where = new Georeference(latitude, longitude, bearing);
		} catch (IllegalArgumentException e) {
			throw new ParameterException(spec.commandLine(), e.getMessage());
		}
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		Site site = ArchiveWork.site(archive.archive(), name);
		site.setGeoreference(where);
		record(archive);
		if (json) {
			printJson(new Json().put("site", SiblingNames.label(site)).put("id", site.getId())
					.put("latitudeDegrees", where.latitudeDegrees())
					.put("longitudeDegrees", where.longitudeDegrees()).put("bearingDegrees", where.bearingDegrees()));
		}
	}
}
