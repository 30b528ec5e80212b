package org.cairnfield.model.check;

import static org.cairnfield.model.check.Report.named;
import static org.cairnfield.model.check.Report.require;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.SampleTable;
import org.eclipse.emf.common.util.DiagnosticChain;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Constraints of a survey. */
public final class SurveyCheck {

	private SurveyCheck() {
	}

	/** @see Survey#idIsUsable */
	public static boolean idIsUsable(Survey survey, DiagnosticChain diagnostics) {
		return Report.usableId(survey.getId(), diagnostics, survey,
				named(Messages.SurveyCheck_survey, survey.getName(), ""));
	}

	/** @see Survey#surveyorIsInitials */
	public static boolean surveyorIsInitials(Survey survey, DiagnosticChain diagnostics) {
		String surveyor = survey.getSurveyor();
		return require(surveyor == null || surveyor.codePointCount(0, surveyor.length()) <= 4, diagnostics, survey,
				Words.bind(Messages.SurveyCheck_theSurveyorOfSurveyIs, survey.getId()));
	}

	/** @see Survey#digestIsSha256 */
	public static boolean digestIsSha256(Survey survey, DiagnosticChain diagnostics) {
		String digest = survey.getSourceDigest();
		return require(digest == null || Report.isSha256(digest), diagnostics, survey,
				Words.bind(Messages.SurveyCheck_theSourceDigestOfSurvey, survey.getId()));
	}

	/** @see Survey#levelsAreKnown */
	public static boolean levelsAreKnown(Survey survey, DiagnosticChain diagnostics) {
		if (survey.getSite() == null) {
			return true;
		}
		Set<Integer> known = new HashSet<>();
		for (Floor floor : survey.getSite().getFloors()) {
			known.add(floor.getLevel());
		}
		SampleTable table = survey.table();
		Map<Integer, Integer> strange = new TreeMap<>();
		for (int row = 0; row < table.size(); row++) {
			if (!known.contains(table.floorLevel(row))) {
				strange.merge(table.floorLevel(row), 1, Integer::sum);
			}
		}
		strange.forEach((level, count) -> require(false, diagnostics, survey,
				Words.bind(Messages.SurveyCheck_ofSurveySamplesAreOn, survey.getId(), count, level,
						named("site", survey.getSite().getName(), survey.getSite().getId()))));
		return strange.isEmpty();
	}

	/** @see Survey#accessPointsAreKnown */
	public static boolean accessPointsAreKnown(Survey survey, DiagnosticChain diagnostics) {
		if (!(EcoreUtil.getRootContainer(survey) instanceof Archive archive)) {
			return true;
		}
		Set<String> known = new HashSet<>();
		for (AccessPoint accessPoint : archive.getAccessPoints()) {
			known.add(accessPoint.getId());
		}
		SampleTable table = survey.table();
		int[] heard = table.heardCounts();
		boolean all = true;
		for (int i = 0; i < heard.length; i++) {
			String id = table.accessPoints().get(i);
			all &= require(heard[i] == 0 || known.contains(id), diagnostics, survey,
					Words.bind(Messages.SurveyCheck_ofSurveySamplesHeardAccess, survey.getId(), heard[i], id));
		}
		return all;
	}
}
