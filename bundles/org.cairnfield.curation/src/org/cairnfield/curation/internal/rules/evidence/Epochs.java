package org.cairnfield.curation.internal.rules.evidence;

import static org.cairnfield.curation.rules.Reason.judged;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.Survey;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.rules.Threshold;

/**
 * When a site was surveyed: surveys whose dates follow one another within days are one epoch, for between them
 * nobody expects the access points to have changed.
 */
public final class Epochs {

	private static final Threshold SAME_CAMPAIGN_DAYS = new Threshold(Messages.Epochs_daysWithoutASurveyWithin, 21,
			"days",
			judged(Messages.Epochs_threeWeeks));

	/** The numbers that it goes by. */
	public static final List<Threshold> THRESHOLDS = List.of(SAME_CAMPAIGN_DAYS);

	/**
	 * @param surveys by index in the map
	 */
	public record Epoch(LocalDate first, LocalDate last, List<Integer> surveys) {
	}

	private final List<Epoch> epochs = new ArrayList<>();
	private final int[] epochOfSurvey;

	private Epochs(RuleInput input) {
		SurveyedMap map = input.map();
		TreeMap<LocalDate, List<Integer>> byDate = new TreeMap<>();
		for (int i : input.surveysPresent()) {
			Survey survey = map.surveys().get(i);
			survey.date().ifPresent(date -> byDate.computeIfAbsent(date, d -> new ArrayList<>()).add(i));
		}
		for (Map.Entry<LocalDate, List<Integer>> day : byDate.entrySet()) {
			Epoch last = epochs.isEmpty() ? null : epochs.get(epochs.size() - 1);
			if (last != null && !day.getKey().isAfter(last.last.plusDays(SAME_CAMPAIGN_DAYS.count()))) {
				List<Integer> all = new ArrayList<>(last.surveys);
				all.addAll(day.getValue());
				epochs.set(epochs.size() - 1, new Epoch(last.first, day.getKey(), all));
			} else {
				epochs.add(new Epoch(day.getKey(), day.getKey(), day.getValue()));
			}
		}
		epochOfSurvey = new int[map.surveys().size()];
		Arrays.fill(epochOfSurvey, -1);
		for (int e = 0; e < epochs.size(); e++) {
			for (int survey : epochs.get(e).surveys) {
				epochOfSurvey[survey] = e;
			}
		}
	}

	/** Of the surveys in a unit. */
	public static Epochs of(RuleInput input) {
		return input.shared(Epochs.class, () -> new Epochs(input));
	}

	/** By date. */
	public List<Epoch> all() {
		return epochs;
	}

	/** Of a survey by index in the map; −1 where its date is not known. */
	public int ofSurvey(int survey) {
		return epochOfSurvey[survey];
	}
}
