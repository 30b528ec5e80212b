package org.cairnfield.archive.history;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The message of a save point: counts by kind and scope, then the note of who made it, then the counts one by one. */
final class SavePointMessage {

	private static final int KINDS_IN_FIRST_LINE = 3;
	private static final int SURVEYS_NAMED = 2;
	private static final int OBJECTS_NAMED = 20;

	private SavePointMessage() {
	}

	/**
	 * @param opening put before the counts, or empty
	 * @param note    of the person, or null
	 */
	static String of(String opening, ArchiveDiff diff, Person person, String note) {
		StringBuilder message = new StringBuilder(opening.isEmpty() ? subject(diff) : opening);
		if (note != null && !note.isBlank()) {
			message.append("\n\n").append(DifferenceWords.plain(note.strip()));
		}
		StringBuilder details = new StringBuilder();
		for (SurveyDiff survey : diff.surveys()) {
			details.append(survey.survey()).append(": ").append(String.join(", ", ArchiveDiff.summaryOf(survey)))
					.append('\n');
		}
		addObjects(details, diff.objects());
		diff.notes().forEach(line -> details.append(DifferenceWords.plain(line)).append('\n'));
		message.append("\n\n").append(details).append("\nBy: ").append(person.name()).append('\n');
		return message.toString();
	}

	private static String subject(ArchiveDiff diff) {
		List<String> kinds = diff.summary();
		if (kinds.isEmpty()) {
			return "No change of the radio map";
		}
		String subject = String.join(", ", kinds.subList(0, Math.min(KINDS_IN_FIRST_LINE, kinds.size())));
		if (kinds.size() > KINDS_IN_FIRST_LINE) {
			subject += " and more";
		}
		List<String> surveys = diff.surveys().stream().map(SurveyDiff::survey).toList();
		if (!surveys.isEmpty()) {
			subject += " in "
					+ (surveys.size() <= SURVEYS_NAMED ? String.join(", ", surveys) : surveys.size() + " surveys");
		}
		return subject;
	}

	private static void addObjects(StringBuilder details, List<ObjectChange> objects) {
		Map<String, StringBuilder> lines = new TreeMap<>();
		Map<String, Integer> counts = new TreeMap<>();
		for (ObjectChange change : objects) {
			String key = change.what() + ' ' + DifferenceWords.of(change.way());
			int count = counts.merge(key, 1, Integer::sum);
			StringBuilder line = lines.computeIfAbsent(key, k -> new StringBuilder(k).append(':'));
			if (count <= OBJECTS_NAMED && !change.id().isEmpty()) {
				line.append(count == 1 ? " " : ", ").append(DifferenceWords.plain(change.id()).replace('\n', ' '));
			}
		}
		lines.forEach((key, line) -> {
			int more = counts.get(key) - OBJECTS_NAMED;
			details.append(line).append(more > 0 ? " and " + more + " more" : "").append('\n');
		});
	}
}
