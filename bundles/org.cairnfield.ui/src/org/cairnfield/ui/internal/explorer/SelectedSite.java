package org.cairnfield.ui.internal.explorer;

import java.util.Optional;

import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.emf.ecore.EObject;

/** The site that a person means by what is selected. */
public final class SelectedSite {

	private SelectedSite() {
	}

	/** That of the scope, or the only one. */
	public static Optional<Site> of(ArchiveSession session) {
		EObject scope = session.selection().scope();
		if (scope instanceof Site site) {
			return Optional.of(site);
		} else if (scope instanceof Floor floor) {
			return Optional.of((Site) floor.eContainer());
		} else if (scope instanceof Survey survey) {
			return Optional.of(survey.getSite());
		}
		return session.archive().getSites().size() == 1 ? Optional.of(session.archive().getSites().get(0))
				: Optional.empty();
	}
}
