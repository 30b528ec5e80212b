package org.cairnfield.batch.cli;

import java.time.LocalDate;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.model.Site;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "period", description = {
		"${bundle:PeriodCommand_what}",
		"${bundle:PeriodCommand_more}" })
final class PeriodCommand extends ArchiveCommand {

	@Option(names = "--site", required = true, paramLabel = "SITE", descriptionKey = "PeriodCommand_site")
	String siteName;

	@Option(names = "--from", paramLabel = "DATE", descriptionKey = "PeriodCommand_from")
	LocalDate from;

	@Option(names = "--until", paramLabel = "DATE", descriptionKey = "PeriodCommand_until")
	LocalDate until;

	@Option(names = "--all", descriptionKey = "PeriodCommand_all")
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
			throw new ParameterException(spec.commandLine(), Messages.PeriodCommand_giveAllOrFromAnd);
		}
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		Site site = ArchiveWork.site(archive.archive(), siteName);
		if (changes()) {
			LocalDate first = all ? null : from != null ? from : site.getMapFrom();
			LocalDate last = all ? null : until != null ? until : site.getMapUntil();
			if (first != null && last != null && last.isBefore(first)) {
				throw new ParameterException(spec.commandLine(),
						Words.bind(Messages.PeriodCommand_aMapFromCannotEnd, first, last));
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
		out().println(Words.bind(Messages.PeriodCommand_mapOfSurveysFromUntil, ArchiveMap.nameOf(site),
				site.getMapFrom() == null ? Messages.PeriodCommand_theFirst : site.getMapFrom(),
				site.getMapUntil() == null ? Messages.PeriodCommand_theLast : site.getMapUntil()));
		site.getSurveys().stream().filter(ArchiveMap::isOfTheMap)
				.forEach(survey -> out().println("  " + survey.getId()));
	}
}
