package org.cairnfield.model.check;

import static org.cairnfield.model.check.Report.named;
import static org.cairnfield.model.check.Report.require;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

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
		return Report.usableId(survey.getId(), diagnostics, survey, named("Survey", survey.getName(), ""));
	}

	/** @see Survey#surveyorIsInitials */
	public static boolean surveyorIsInitials(Survey survey, DiagnosticChain diagnostics) {
		String surveyor = survey.getSurveyor();
		return require(surveyor == null || surveyor.codePointCount(0, surveyor.length()) <= 4, diagnostics, survey,
				"The surveyor of survey " + survey.getId()
						+ " is more than initials: write at most four letters, so that the"
						+ " archive names no person");
	}

	/** @see Survey#digestIsSha256 */
	public static boolean digestIsSha256(Survey survey, DiagnosticChain diagnostics) {
		String digest = survey.getSourceDigest();
		return require(digest == null || Report.isSha256(digest), diagnostics, survey, "The source digest of survey "
				+ survey.getId() + " is not 64 hexadecimal digits: unset it, or take the file in anew");
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
				"Of survey " + survey.getId() + ", " + count + " samples are on floor " + level + ", which "
						+ named("site", survey.getSite().getName(), survey.getSite().getId())
						+ " does not have: add the floor, or put the samples on another"));
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
					"Of survey " + survey.getId() + ", "
							+ heard[i] + " samples heard access point " + id
							+ ", which the archive does not have: add it");
		}
		return all;
	}
}
