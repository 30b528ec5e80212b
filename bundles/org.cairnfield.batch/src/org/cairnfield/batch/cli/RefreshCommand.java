package org.cairnfield.batch.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.remedy.RemedyCommands;
import org.cairnfield.curation.timeline.AgePlan;
import org.cairnfield.curation.timeline.AgeRemedies;
import org.cairnfield.curation.timeline.AgeRemedy;
import org.cairnfield.curation.timeline.AgeRemedyKind;
import org.cairnfield.model.Site;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "refresh", description = {
		"${bundle:RefreshCommand_what}",
		"${bundle:RefreshCommand_more}" })
final class RefreshCommand extends ArchiveCommand {

	@Option(names = "--site", paramLabel = "SITE", descriptionKey = "RefreshCommand_site")
	String siteName;

	@Option(names = "--day", paramLabel = "DATE", descriptionKey = "RefreshCommand_day")
	LocalDate day;

	@Option(names = "--remedy", paramLabel = "NAME", descriptionKey = "RefreshCommand_remedy")
	String named;

	@Option(names = "--apply", descriptionKey = "RefreshCommand_apply")
	boolean apply;

	@Override
	Mode mode() {
		return apply ? Mode.EDIT : Mode.READ;
	}

	@Override
	void checkArguments() {
		if (named != null && Arrays.stream(AgeRemedyKind.values()).noneMatch(kind -> kind.word().equals(named))) {
			throw new ParameterException(spec.commandLine(),
					Words.bind(Messages.RefreshCommand_noRemedyChooseFrom, named, String.join(", ",
							Arrays.stream(AgeRemedyKind.values()).map(AgeRemedyKind::word).toList())));
		}
		if (named != null && !apply) {
			throw new ParameterException(spec.commandLine(), Messages.RefreshCommand_remedySaysWhatToApply);
		}
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		List<Site> sites = siteName == null ? archive.archive().getSites()
				: List.of(ArchiveWork.site(archive.archive(), siteName));
		List<Map<String, Object>> told = new ArrayList<>();
		List<AgeRemedy> chosen = new ArrayList<>();
		for (Site site : sites) {
			Optional<AgePlan> plan = day == null ? AgeRemedies.of(archive.archive(), site, workers)
					: AgeRemedies.of(archive.archive(), site, day, workers);
			if (plan.isEmpty()) {
				note(Words.bind(Messages.RefreshCommand_hasNoMapThatIs, ArchiveMap.nameOf(site),
						day == null ? Messages.RefreshCommand_itsLastSurvey
								: Words.bind(Messages.RefreshCommand_itsSurveyOf, day)));
				continue;
			}
			Optional<AgeRemedy> choice = named == null ? plan.get().best()
					: plan.get().remedies().stream().filter(each -> each.kind().word().equals(named)).findFirst();
			choice.ifPresent(chosen::add);
			told.add(json(plan.get(), choice).fields());
			if (!json) {
				tell(site, plan.get(), choice);
			}
		}
		if (json) {
			printJson(new Json().put("applied", apply).put("sites", told));
		}
		if (apply) {
			RemedyCommands commands = new RemedyCommands(archive.archive());
			chosen.stream().flatMap(each -> each.remedies().stream()).forEach(commands::apply);
			record(archive);
		}
	}

	private void tell(Site site, AgePlan plan, Optional<AgeRemedy> choice) {
		out().println(String.format(Locale.ROOT, Messages.RefreshCommand_surveyOfErrorOfThe,
				ArchiveMap.nameOf(site), plan.day(),
				plan.error().metres(), plan.error().interval().low(), plan.error().interval().high()));
		plan.remedies().forEach(each -> out().println(
				"  " + each.kind().word() + ": " + each.preview() + System.lineSeparator() + "    " + each.effect()));
		out().println(choice
				.map(each -> (apply ? Messages.RefreshCommand_applied : Messages.RefreshCommand_helpsMost)
						+ each.kind().word())
				.orElse(Messages.RefreshCommand_noneHelpsLeaveTheMap));
	}

	private static Json json(AgePlan plan, Optional<AgeRemedy> choice) {
		return new Json().put("site", plan.site()).put("day", plan.day().toString()).put("surveys", plan.surveys())
				.put("errorM", plan.error().isKnown() ? plan.error().metres() : null)
				.put("chosen", choice.map(each -> each.kind().word()).orElse(null))
				.put("remedies", plan.remedies().stream().map(RefreshCommand::json).toList());
	}

	private static Map<String, Object> json(AgeRemedy each) {
		return new Json().put("name", each.kind().word()).put("does", each.preview()).put("helps", each.isGain())
				.put("places", each.places())
				.put("errorBeforeM", each.before().metres()).put("errorAfterM", each.after().metres())
				.put("low", each.change().low())
				.put("high", each.change().high()).fields();
	}
}
