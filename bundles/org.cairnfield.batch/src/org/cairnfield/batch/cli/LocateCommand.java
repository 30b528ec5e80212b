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

@Command(name = "locate", description = "${bundle:LocateCommand_what}")
final class LocateCommand extends ArchiveCommand {

	@Option(names = "--site", required = true, paramLabel = "SITE", descriptionKey = "LocateCommand_site")
	String name;

	@Option(names = "--latitude", required = true, paramLabel = "DEG", descriptionKey = "LocateCommand_latitude")
	double latitude;

	@Option(names = "--longitude", required = true, paramLabel = "DEG", descriptionKey = "LocateCommand_longitude")
	double longitude;

	@Option(names = "--bearing", paramLabel = "DEG", descriptionKey = "LocateCommand_bearing")
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
