package org.cairnfield.batch.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.intake.SurveyTaking;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.timeline.AgePlan;
import org.cairnfield.curation.timeline.AgeRemedy;
import org.cairnfield.curation.timeline.TimelineStudy;
import org.cairnfield.curation.timeline.TimelineWords;
import org.cairnfield.exchange.Intake;
import org.cairnfield.exchange.TextFile;
import org.cairnfield.model.Site;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.report.AgeingReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "watch", description = {
		"${bundle:WatchCommand_what}",
		"${bundle:WatchCommand_more}" })
final class WatchCommand extends ArchiveCommand {

	@Option(names = "--map", arity = "1..*", paramLabel = "FILE", descriptionKey = "WatchCommand_map")
	List<Path> files = List.of();

	@Mixin
	IntakeArgs.Reading reading;

	@Option(names = "--out", paramLabel = "FILE", descriptionKey = "WatchCommand_out")
	Path file;

	@Override
	Mode mode() {
		return files.isEmpty() ? Mode.READ : Mode.EDIT;
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		int taken = 0;
		if (!files.isEmpty()) {
			reading.usualSite = SurveyTaking.onlySite(archive.archive()).orElse(null);
			Intake intake = read(files, reading, workers);
			notes(intake, true);
			taken = IntoArchive.keep(archive, files, intake, SurveyKind.TRAINING, null, archiveArgs.person).surveys()
					.size();
		}
		Map<String, TimelineStudy> sites = new LinkedHashMap<>();
		List<Map<String, Object>> told = new ArrayList<>();
		boolean contradicted = false;
		for (Site site : archive.archive().getSites()) {
			TimelineStudy study = TimelineStudy.of(archive.archive(), site, Map.of(), workers);
			sites.put(ArchiveMap.nameOf(site), study);
			String helps = study.plan().flatMap(AgePlan::best).map(best -> best.kind().word()).orElse(null);
			contradicted |= helps != null;
			told.add(new Json().put("site", site.getId()).put("says", TimelineWords.summary(study.timeline()))
					.put("contradicted", helps != null)
					.put("helps", helps).fields());
			if (!json) {
				out().println(ArchiveMap.nameOf(site) + ": " + TimelineWords.summary(study.timeline()));
				study.plan().flatMap(AgePlan::best).map(AgeRemedy::effect)
						.ifPresent(effect -> out().println("  " + helps + " " + effect));
			}
		}
		if (file != null) {
			String name = archive.archive().getName();
			TextFile.write(file,
					AgeingReport.html(name == null || name.isBlank() ? Messages.WatchCommand_radioMap : name,
							archive.digest(), sites));
		}
		if (json) {
			printJson(new Json().put("takenIn", taken).put("sites", told));
		}
		endWith(contradicted ? ExitCode.CONTRADICTED : ExitCode.OK);
	}
}
