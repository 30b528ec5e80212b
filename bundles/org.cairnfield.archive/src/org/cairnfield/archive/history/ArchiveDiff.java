package org.cairnfield.archive.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.values.Count;

/**
 * The difference of two states of an archive as radio maps.
 *
 * @param surveys samples and readings, by survey, those that differ
 * @param objects everything else, in the order of files, then of kinds, then of ids
 * @param notes   what could not be compared, and files that are not of the archive's own making
 */
public record ArchiveDiff(List<SurveyDiff> surveys, List<ObjectChange> objects, List<String> notes) {

	private static final int SETTINGS_NAMED = 3;

	public ArchiveDiff {
		surveys = List.copyOf(surveys);
		objects = List.copyOf(objects);
		notes = List.copyOf(notes);
	}

	/** Whether nothing differs. */
	public boolean isEmpty() {
		return surveys.isEmpty() && objects.isEmpty() && notes.isEmpty();
	}

	/** How many samples changed in a way. */
	public long samples(Predicate<SampleChange> way) {
		return surveys.stream().mapToLong(survey -> survey.count(way)).sum();
	}

	/** How many things of a kind ("access point") were added, removed or changed. */
	public long objects(String what, ObjectChange.Way way) {
		return objects.stream().filter(change -> change.what().equals(what) && change.way() == way).count();
	}

	/** The counts by kind, each in words: "41 samples added", "3 access points changed"; what rules are told by name. */
	public List<String> summary() {
		List<String> lines = new ArrayList<>();
		addSamples(lines, surveys);
		Map<String, Long> counts = new TreeMap<>();
		for (ObjectChange change : objects.stream().filter(each -> !isOfRules(each)).toList()) {
			counts.merge(change.what() + ' ' + change.way().ordinal(), 1L, Long::sum);
		}
		counts.forEach((key, count) -> {
			int blank = key.lastIndexOf(' ');
			ObjectChange.Way way = ObjectChange.Way.values()[Integer.parseInt(key.substring(blank + 1))];
			lines.add(Count.of(count, key.substring(0, blank)) + ' ' + DifferenceWords.of(way));
		});
		addRuleSettings(lines, objects.stream().filter(ArchiveDiff::isOfRules).toList());
		lines.addAll(notes);
		return lines;
	}

	private static boolean isOfRules(ObjectChange change) {
		return change.what().equals("rule setting");
	}

	/** Few, and what they are decides what is found, so they are named. */
	private static void addRuleSettings(List<String> lines, List<ObjectChange> changes) {
		if (!changes.isEmpty()) {
			int more = changes.size() - SETTINGS_NAMED;
			lines.add(Words.bind(Messages.ArchiveDiff_ruleSettingsChanged,
					changes.stream().limit(SETTINGS_NAMED).map(ArchiveDiff::words).collect(Collectors.joining(", ")),
					more > 0 ? Words.bind(Messages.ArchiveDiff_andMore, more) : ""));
		}
	}

	private static String words(ObjectChange change) {
		return change.way() == ObjectChange.Way.REMOVED ? change.id().replaceFirst(" = .*", " back to the default")
				: change.id().replaceFirst("(= [^:]*): .*", "$1");
	}

	/** The counts of one survey, in words. */
	static List<String> summaryOf(SurveyDiff survey) {
		List<String> lines = new ArrayList<>();
		addSamples(lines, List.of(survey));
		return lines;
	}

	private static void addSamples(List<String> lines, List<SurveyDiff> surveys) {
		add(lines, surveys, "sample", "added", SampleChange::isAdded);
		add(lines, surveys, "sample", "removed", SampleChange::isRemoved);
		add(lines, surveys, "sample", Messages.ArchiveDiff_setAside, SampleChange::isSetAside);
		add(lines, surveys, "sample", Messages.ArchiveDiff_takenBack, SampleChange::isTakenBack);
		add(lines, surveys, "sample", Messages.ArchiveDiff_withAnotherReason, SampleChange::isReasonChanged);
		add(lines, surveys, "sample", "moved", SampleChange::isMoved);
		add(lines, surveys, "sample", Messages.ArchiveDiff_withAnotherTime, SampleChange::isRetimed);
		count(lines, surveys, "added", SurveyDiff::readingsAdded);
		count(lines, surveys, "removed", SurveyDiff::readingsRemoved);
		count(lines, surveys, "changed", SurveyDiff::readingsChanged);
	}

	private static void add(List<String> lines, List<SurveyDiff> surveys, String what, String how,
			Predicate<SampleChange> way) {
		long count = surveys.stream().mapToLong(survey -> survey.count(way)).sum();
		if (count > 0) {
			lines.add(Count.of(count, what) + ' ' + how);
		}
	}

	private static void count(List<String> lines, List<SurveyDiff> surveys, String how,
			ToLongFunction<SurveyDiff> counted) {
		long count = surveys.stream().mapToLong(counted).sum();
		if (count > 0) {
			lines.add(Count.of(count, "reading") + ' ' + how);
		}
	}
}
