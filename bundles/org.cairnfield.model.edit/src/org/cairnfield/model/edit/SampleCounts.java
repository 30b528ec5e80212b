package org.cairnfield.model.edit;

import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.WeakHashMap;
import java.util.stream.Collectors;

import org.cairnfield.model.Cluster;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.Samples;
import org.cairnfield.model.values.SampleTable;
import org.eclipse.emf.ecore.EObject;

/** How many samples there are in things. Counts by floor are kept for each table, so that a tree may ask often. */
public final class SampleCounts {

	private record Counted(SampleTable table, Map<Integer, Integer> byLevel) {
	}

	private final Map<Samples, Counted> counted = new WeakHashMap<>();

	/** Samples of a site, floor, survey, split or cluster, set aside or not; empty for other things. */
	public OptionalInt of(EObject object) {
		if (object instanceof Site site) {
			return OptionalInt.of(site.getSurveys().stream().mapToInt(survey -> survey.table().size()).sum());
		} else if (object instanceof Survey survey) {
			return OptionalInt.of(survey.table().size());
		} else if (object instanceof Floor floor) {
			return floor.eContainer() instanceof Site site ? OptionalInt.of(onLevel(site, floor.getLevel()))
					: OptionalInt.empty();
		} else if (object instanceof Split split) {
			return split.getLabels() == null ? OptionalInt.empty() : OptionalInt.of(split.getLabels().size());
		} else if (object instanceof Cluster cluster) {
			return OptionalInt.of(cluster.getSize());
		}
		return OptionalInt.empty();
	}

	/** Samples of a site on levels that it has no floor for. */
	public int onNoFloor(Site site) {
		Set<Integer> known = site.getFloors().stream().map(Floor::getLevel).collect(Collectors.toSet());
		int sum = 0;
		for (Survey survey : site.getSurveys()) {
			if (survey.getSamples() != null) {
				sum += byLevel(survey.getSamples(), survey.table()).entrySet().stream()
						.filter(each -> !known.contains(each.getKey()))
						.mapToInt(Map.Entry::getValue).sum();
			}
		}
		return sum;
	}

	private int onLevel(Site site, int level) {
		int sum = 0;
		for (Survey survey : site.getSurveys()) {
			if (survey.getSamples() != null) {
				sum += byLevel(survey.getSamples(), survey.table()).getOrDefault(level, 0);
			}
		}
		return sum;
	}

	private Map<Integer, Integer> byLevel(Samples samples, SampleTable table) {
		Counted known = counted.get(samples);
		if (known == null || known.table != table) {
			Map<Integer, Integer> byLevel = new TreeMap<>();
			for (int row = 0; row < table.size(); row++) {
				byLevel.merge(table.floorLevel(row), 1, Integer::sum);
			}
			known = new Counted(table, byLevel);
			counted.put(samples, known);
		}
		return known.byLevel;
	}
}
