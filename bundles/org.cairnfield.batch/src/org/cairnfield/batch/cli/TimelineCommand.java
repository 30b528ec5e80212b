package org.cairnfield.batch.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.StringJoiner;

import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.change.AccessPointFate;
import org.cairnfield.core.change.Fate;
import org.cairnfield.core.change.SiteChange;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.timeline.Timeline;
import org.cairnfield.curation.timeline.TimelineStep;
import org.cairnfield.model.Site;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(name = "timeline", description = {
		"${bundle:TimelineCommand_what}" })
final class TimelineCommand extends ArchiveCommand {

	@Option(names = "--site", paramLabel = "SITE", descriptionKey = "TimelineCommand_site")
	String siteName;

	@Override
	Mode mode() {
		return Mode.READ;
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		List<Site> sites = siteName == null ? archive.archive().getSites()
				: List.of(ArchiveWork.site(archive.archive(), siteName));
		List<Map<String, Object>> changes = new ArrayList<>();
		for (Site site : sites) {
			Timeline timeline = Timeline.of(archive.archive(), site, workers);
			timeline.undated()
					.forEach(survey -> note(Words.bind(Messages.TimelineCommand_surveyHasNoDateAnd, survey)));
			timeline.steps().forEach(step -> changes.add(json(timeline.site(), step)));
			if (!json) {
				out().println(ArchiveMap.nameOf(site));
				timeline.steps().forEach(step -> out().println("  " + line(step)));
			}
		}
		if (json) {
			printJson(new Json().put("changes", changes));
		}
	}

	private static String line(TimelineStep step) {
		SiteChange change = step.change();
		StringJoiner text = new StringJoiner(", ", step.date() + "  " + step.survey() + "  ", "");
		if (step.before().isEmpty()) {
			return text.add(Messages.TimelineCommand_theFirst).toString();
		} else if (change == null) {
			return text
					.add(Words.bind(Messages.TimelineCommand_noPlaceInCommonWith, String.join(", ", step.before())))
					.toString();
		}
		text.add(Words.bind(Messages.TimelineCommand_atPlaces,
				step.isChanged() ? "CHANGED" : Messages.TimelineCommand_asBefore, change.places()))
				.add(Words.bind(Messages.TimelineCommand_gone, change.with(Fate.VANISHED).size()))
				.add(Words.bind(Messages.TimelineCommand_new, change.with(Fate.APPEARED).size()))
				.add(Words.bind(Messages.TimelineCommand_replaced, change.with(Fate.REPLACED).size()))
				.add(Words.bind(Messages.TimelineCommand_moved, change.with(Fate.MOVED).size()));
		return text.add(String.format(Locale.ROOT, Messages.TimelineCommand_errorOfTheMapBefore,
				step.error().metres(), step.error().interval().low(),
				step.error().interval().high())).toString();
	}

	private static Map<String, Object> json(String site, TimelineStep step) {
		SiteChange change = step.change() == null ? new SiteChange(0, List.of(), List.of()) : step.change();
		Map<String, Object> replaced = new LinkedHashMap<>();
		change.with(Fate.REPLACED).forEach(each -> replaced.put(each.address(), each.successor()));
		boolean known = step.error().isKnown();
		return new Json().put("site", site).put("survey", step.survey()).put("date", step.date().toString())
				.put("before", step.before())
				.put("places", change.places()).put("changed", step.isChanged())
				.put("vanished", addresses(change, Fate.VANISHED))
				.put("appeared", addresses(change, Fate.APPEARED)).put("replaced", replaced)
				.put("moved", addresses(change, Fate.MOVED))
				.put("errorM", known ? step.error().metres() : null)
				.put("errorLowM", known ? step.error().interval().low() : null)
				.put("errorHighM", known ? step.error().interval().high() : null).fields();
	}

	private static List<String> addresses(SiteChange change, Fate fate) {
		return change.with(fate).stream().map(AccessPointFate::address).toList();
	}
}
