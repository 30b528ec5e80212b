package org.cairnfield.batch.cli;

import java.util.List;
import java.util.stream.Collectors;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.core.task.Workers;
import org.cairnfield.model.Site;
import org.cairnfield.model.values.Georeference;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "locate", description = "Says where on Earth the frame of a site lies, so that the map can be exported in WGS 84.")
final class LocateCommand extends ArchiveCommand {

	@Option(names = "--site", required = true, paramLabel = "NAME", description = "Which site.")
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
		List<Site> sites = archive.archive().getSites();
		Site site = sites.stream().filter(each -> name.equals(each.getName())).findFirst()
				.orElseThrow(() -> new ArchiveException("the archive has no site '" + name + "'",
						"its sites are " + sites.stream().map(Site::getName).collect(Collectors.joining(", "))));
		site.setGeoreference(where);
		record(archive);
		if (json) {
			out().println(new Json().put("site", name).put("latitudeDegrees", where.latitudeDegrees())
					.put("longitudeDegrees", where.longitudeDegrees()).put("bearingDegrees", where.bearingDegrees()));
		}
	}
}
