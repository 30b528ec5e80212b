package org.cairnfield.curation.split;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.model.Archive;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Scope;

/**
 * The last few studies, found again by the content of their map: one that was changed and changed back, or is asked
 * for through another scope with the same samples, is the same. Safe for several threads.
 */
public final class SplitStudies {

	private final Map<List<Object>, SplitStudy> studies;

	/** @param most how many are kept */
	public SplitStudies(int most) {
		studies = new LinkedHashMap<>(16, 0.75f, true) {
			private static final long serialVersionUID = 1;

			@Override
			protected boolean removeEldestEntry(Map.Entry<List<Object>, SplitStudy> eldest) {
				return size() > most;
			}
		};
	}

	/**
	 * The study of the training samples of a scope. Costs a pass over its readings where it is known.
	 *
	 * @param archive a copy, where others go on changing it
	 * @param request ε and minPts in it play no part
	 * @throws UnfitSurveyException where the scope has fewer than two samples
	 */
	public SplitStudy study(Archive archive, Scope scope, SplitRequest request) {
		return study(archive, scope, request.representation(), request.distance(), request.pcaShare());
	}

	private SplitStudy study(Archive archive, Scope scope, Representation representation, Distance distance,
			OptionalDouble pcaShare) {
		ArchiveMap map = ArchiveMap.of(archive, scope, SurveyKind.TRAINING);
		if (map.map().size() < 2) {
			throw new UnfitSurveyException(
					Words.bind(Messages.SplitStudies_aSplitNeedsTwoSamples, scope, map.map().size()));
		}
		long names = 0;
		for (int s = 0; s < map.map().size(); s++) {
			names = 31 * names + map.surveyed().sampleId(s).hashCode();
		}
		List<Object> key = List.of(MapKeys.of(map.map()), names, representation, distance, pcaShare);
		synchronized (studies) {
			SplitStudy known = studies.get(key);
			if (known != null) {
				return known;
			}
		}
		SplitStudy study = new SplitStudy(map, representation, distance, pcaShare);
		synchronized (studies) {
			SplitStudy other = studies.putIfAbsent(key, study);
			return other == null ? study : other;
		}
	}
}
