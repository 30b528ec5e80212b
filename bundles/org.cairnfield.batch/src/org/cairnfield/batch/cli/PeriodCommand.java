package org.cairnfield.batch.cli;

import java.time.LocalDate;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.model.Site;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "period", description = {
		"Show of which days the training surveys of a site make its map; set it with --from, --until or --all.",
		"Surveys of other days stay in the archive. Those without a date are always part of the map." })
final class PeriodCommand extends ArchiveCommand {

	@Option(names = "--site", required = true, paramLabel = "SITE", description = "By name or id.")
	String siteName;

	@Option(names = "--from", paramLabel = "DATE", description = "First day, such as 2020-01-15.")
	LocalDate from;

	@Option(names = "--until", paramLabel = "DATE", description = "Last day.")
	LocalDate until;

	@Option(names = "--all", description = "All surveys make the map.")
	boolean all;

	@Override
	Mode mode() {
		return changes() ? Mode.EDIT : Mode.READ;
	}

	private boolean changes() {
		return from != null || until != null || all;
	}

	@Override
	void checkArguments() {
		if (all && (from != null || until != null)) {
			throw new ParameterException(spec.commandLine(), "give --all, or --from and --until, not both");
		}
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		Site site = ArchiveWork.site(archive.archive(), siteName);
		if (changes()) {
			LocalDate first = all ? null : from != null ? from : site.getMapFrom();
			LocalDate last = all ? null : until != null ? until : site.getMapUntil();
			if (first != null && last != null && last.isBefore(first)) {
				throw new ParameterException(spec.commandLine(), "a map from " + first + " cannot end on " + last);
			}
			site.setMapFrom(first);
			site.setMapUntil(last);
			record(archive);
		}
		if (json) {
			printJson(new Json().put("site", site.getId())
					.put("from", site.getMapFrom() == null ? null : site.getMapFrom().toString())
					.put("until", site.getMapUntil() == null ? null : site.getMapUntil().toString())
					.put("surveys", site.getSurveys().stream().filter(ArchiveMap::isOfTheMap)
							.map(survey -> survey.getId()).toList()));
			return;
		}
		out().println(ArchiveMap.nameOf(site) + ": map of surveys from "
				+ (site.getMapFrom() == null ? "the first" : site.getMapFrom()) + " until "
				+ (site.getMapUntil() == null ? "the last" : site.getMapUntil()));
		site.getSurveys().stream().filter(ArchiveMap::isOfTheMap)
				.forEach(survey -> out().println("  " + survey.getId()));
	}
}
