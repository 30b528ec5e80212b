package org.cairnfield.curation.maps;

import java.util.Optional;

import org.cairnfield.curation.rules.Subject;
import org.cairnfield.model.edit.ArchiveIndex;
import org.eclipse.emf.ecore.EObject;

/** Leads from what a finding is about to what the archive has of it. */
public final class Subjects {

	private Subjects() {
	}

	/**
	 * The object of the model: the floor of a cell, or its site where there is no such floor, the survey of a sample. Empty for
	 * what the archive has no more.
	 */
	public static Optional<? extends EObject> object(ArchiveIndex index, Subject subject) {
		if (subject instanceof Subject.OfSample sample) {
			return index.sample(sample.id()).map(ref -> ref.survey());
		} else if (subject instanceof Subject.OfSurvey survey) {
			return index.survey(survey.id());
		} else if (subject instanceof Subject.OfAccessPoint accessPoint) {
			return index.address(accessPoint.address());
		} else if (subject instanceof Subject.OfDevice device) {
			return index.device(device.id());
		} else if (subject instanceof Subject.OfSite site) {
			return index.site(site.id());
		}
		Subject.OfCell cell = (Subject.OfCell) subject;
		Optional<? extends EObject> floor = index.floor(cell.siteId(), cell.floor());
		return floor.isPresent() ? floor : index.site(cell.siteId());
	}
}
