package org.cairnfield.core.simulate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.radio.MacAddress;

/**
 * What is wrong with the surveys of Marrow Quay: a courier's hotspot, an access point moved between the seasons,
 * a corridor with x and y swapped, a floor mislabelled for eleven samples, a survey imported twice.
 */
final class MarrowQuayFaults {

	/** On floor 1 of the Sailmakers' Hall in spring; a floor below, at the other end, in autumn. */
	static final MacAddress MOVED = MacAddress.documentation(21);
	static final double MOVED_TO_X = 57.5;
	static final double MOVED_TO_Y = 4;
	static final int MOVED_TO_LEVEL = 0;

	private static final String MOVED_IN = "sh-" + MarrowQuay.AUTUMN;
	private static final String SWAPPED_IN = "sh-" + MarrowQuay.SPRING;
	private static final int SWAPPED_LEVEL = 2;
	private static final String MISLABELLED_IN = "ls-" + MarrowQuay.AUTUMN;
	private static final int MISLABELLED_LEVEL = 2;
	private static final int MISLABELLED_AS = 3;
	private static final int MISLABELLED_COUNT = 11;
	private static final String IMPORTED_TWICE = "th-" + MarrowQuay.SPRING;

	private MarrowQuayFaults() {
	}

	/** The campus as it is from the autumn on. */
	static Campus afterMove(Campus spring) {
		return spring.withMoved(MOVED, MOVED_TO_LEVEL, MOVED_TO_X, MOVED_TO_Y);
	}

	static SimulatedArchive plant(SimulatedArchive clean, long seed) {
		List<SimulatedSurvey> surveys = new ArrayList<>();
		List<PlantedFault> truth = new ArrayList<>();
		for (SimulatedSurvey survey : clean.surveys()) {
			SimulatedSurvey planted = survey;
			if (survey.role() == SimulatedSurvey.Role.TRAINING) {
				Site site = clean.campus().sites().get(clean.campus().site(survey.site()));
				planted = CourierHotspot.walkThrough(survey, site, seed, truth);
			}
			switch (survey.name()) {
			case MOVED_IN -> truth.add(moved(clean.campus()));
			case SWAPPED_IN -> planted = swap(planted, clean.campus(), truth);
			case MISLABELLED_IN -> planted = mislabel(planted, seed, truth);
			default -> {
				// Nothing more wrong with it.
			}
			}
			surveys.add(planted);
		}
		surveys.add(importAgain(surveys, truth));
		return new SimulatedArchive(clean.campus(), surveys, truth);
	}

	private static PlantedFault moved(Campus spring) {
		AccessPoint before = spring.accessPoints().stream().filter(a -> a.address().equals(MOVED)).findFirst()
				.orElseThrow();
		return new PlantedFault(FaultKind.MOVED_ACCESS_POINT, MOVED_IN, "", MOVED.toString(),
				String.format(Locale.ROOT, "spring floor %d x %.1f m y %.1f m, autumn floor %d x %.1f m y %.1f m",
						before.level(), before.x(), before.y(), MOVED_TO_LEVEL, MOVED_TO_X, MOVED_TO_Y));
	}

	private static SimulatedSurvey swap(SimulatedSurvey survey, Campus campus, List<PlantedFault> truth) {
		Corridor corridor = campus.sites().get(campus.site(survey.site())).floor(SWAPPED_LEVEL).corridors().get(0);
		List<DraftSample> drafts = DraftSample.of(survey.map());
		for (int s = 0; s < drafts.size(); s++) {
			DraftSample draft = drafts.get(s);
			if (draft.floor != SWAPPED_LEVEL || !corridor.contains(draft.x, draft.y)) {
				continue;
			}
			truth.add(new PlantedFault(FaultKind.SWAPPED_AXES, survey.name(), survey.sampleIds().get(s), "",
					String.format(Locale.ROOT, "%s, true place x %.2f m, y %.2f m", corridor.name(), draft.x,
							draft.y)));
			double x = draft.x;
			draft.x = draft.y;
			draft.y = x;
		}
		return MarrowQuay.with(survey, DraftSample.build(drafts, survey.map().accessPoints()));
	}

	/** Eleven samples in a row; where they begin is chance. */
	private static SimulatedSurvey mislabel(SimulatedSurvey survey, long seed, List<PlantedFault> truth) {
		RadioMap map = survey.map();
		int first = 0;
		while (map.floor(first) != MISLABELLED_LEVEL) {
			first++;
		}
		int count = map.onFloor(map.site(first), MISLABELLED_LEVEL).size();
		first += Streams.random(Streams.key(seed, "mislabelled")).nextInt(count - MISLABELLED_COUNT);
		List<DraftSample> drafts = DraftSample.of(map);
		for (int s = first; s < first + MISLABELLED_COUNT; s++) {
			drafts.get(s).floor = MISLABELLED_AS;
			truth.add(new PlantedFault(FaultKind.WRONG_FLOOR, survey.name(), survey.sampleIds().get(s), "",
					"true floor " + MISLABELLED_LEVEL));
		}
		return MarrowQuay.with(survey, DraftSample.build(drafts, map.accessPoints()));
	}

	private static SimulatedSurvey importAgain(List<SimulatedSurvey> surveys, List<PlantedFault> truth) {
		SimulatedSurvey first = surveys.stream().filter(s -> s.name().equals(IMPORTED_TWICE)).findFirst()
				.orElseThrow();
		String name = IMPORTED_TWICE + "-again";
		List<String> ids = MarrowQuay.ids(name, first.map().size());
		for (int s = 0; s < ids.size(); s++) {
			truth.add(new PlantedFault(FaultKind.DUPLICATE_IMPORT, name, ids.get(s), "",
					"same as " + first.sampleIds().get(s)));
		}
		return new SimulatedSurvey(name, first.role(), first.site(), first.device(), first.surveyor(), first.date(),
				first.map(), ids);
	}
}
