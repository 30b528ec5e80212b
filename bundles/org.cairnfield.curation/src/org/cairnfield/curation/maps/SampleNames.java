package org.cairnfield.curation.maps;

import java.util.Optional;

import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.SampleRef;

/** Samples by the names that findings call them, {@code survey/sample}. */
public final class SampleNames {

	private SampleNames() {
	}

	/** The sample of that name, if the archive still has it. */
	public static Optional<SampleRef> ref(Archive archive, String name) {
		int slash = name.indexOf('/');
		if (slash < 0) {
			return Optional.empty();
		}
		String id = name.substring(0, slash);
		for (Site site : archive.getSites()) {
			for (Survey survey : site.getSurveys()) {
				if (survey.getId().equals(id)) {
					return Optional.ofNullable(SampleRef.of(survey, name.substring(slash + 1)));
				}
			}
		}
		return Optional.empty();
	}
}
