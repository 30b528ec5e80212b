package org.cairnfield.ui.internal.findings;

import java.util.List;
import java.util.Optional;

import org.cairnfield.curation.maps.Subjects;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.emf.ecore.EObject;

/** Leads from a finding to what it is about. */
final class FindingEvidence {

	private FindingEvidence() {
	}

	/** The selection that shows a finding: its samples on their floor, its access point, its survey. */
	static ArchiveSelection of(ArchiveSession session, Finding finding) {
		ArchiveIndex index = ArchiveIndex.of(session.archive());
		ArchiveSelection at = session.selection();
		List<SampleRef> samples = finding.subjects().stream().filter(Subject.OfSample.class::isInstance)
				.flatMap(subject -> index.sample(((Subject.OfSample) subject).id()).stream()).toList();
		if (!samples.isEmpty()) {
			ArchiveSelection shown = at.withSamples(samples);
			// the table must list them
			return shown.floor() == null ? shown : shown.withScope(shown.floor()).withSamples(samples);
		}
		for (Subject subject : finding.subjects()) {
			Optional<? extends EObject> object = Subjects.object(index, subject);
			if (object.isPresent()) {
				return at.withScope(object.get());
			}
		}
		return at;
	}

	/** Where a subject is, in words. */
	static String place(ArchiveIndex index, Subject subject) {
		if (subject instanceof Subject.OfSample sample) {
			return index.sample(sample.id()).flatMap(ArchiveIndex::floor).map(FindingEvidence::name)
					.orElse(Messages.FindingEvidence_elsewhere);
		}
		EObject object = Subjects.object(index, subject).orElse(null);
		if (object instanceof Floor floor) {
			return name(floor);
		}
		if (object != null && object.eContainer() instanceof Site site) {
			return ModelText.name(site);
		}
		return object instanceof Site site ? ModelText.name(site) : Messages.FindingEvidence_theWholeArchive;
	}

	private static String name(Floor floor) {
		return ModelText.name(floor.eContainer()) + ", " + ModelText.name(floor);
	}
}
