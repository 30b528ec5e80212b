package org.cairnfield.ui.internal.findings;

import java.util.List;
import java.util.stream.Stream;

import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.maps.SampleNames;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.emf.ecore.EObject;

/** Leads from a finding to what it is about. */
final class Evidence {

	private Evidence() {
	}

	/** The selection that shows a finding: its samples on their floor, its access point, its survey. */
	static ArchiveSelection of(ArchiveSession session, Finding finding) {
		Archive archive = session.archive();
		ArchiveSelection at = session.selection();
		List<SampleRef> samples = finding.subjects().stream().filter(Subject.OfSample.class::isInstance)
				.flatMap(subject -> SampleNames.ref(archive, ((Subject.OfSample) subject).id()).stream()).toList();
		if (!samples.isEmpty()) {
			ArchiveSelection shown = at.withSamples(samples);
			// the table must list them
			return shown.floor() == null ? shown : shown.withScope(shown.floor()).withSamples(samples);
		}
		for (Subject subject : finding.subjects()) {
			EObject object = object(archive, subject);
			if (object != null) {
				return at.withScope(object);
			}
		}
		return at;
	}

	private static EObject object(Archive archive, Subject subject) {
		if (subject instanceof Subject.OfAccessPoint accessPoint) {
			return archive.getAccessPoints().stream().filter(a -> a.getAddress().equals(accessPoint.address())).findFirst().orElse(null);
		} else if (subject instanceof Subject.OfDevice device) {
			return archive.getDevices().stream().filter(d -> ArchiveMap.nameOf(d).equals(device.name())).findFirst().orElse(null);
		} else if (subject instanceof Subject.OfSurvey survey) {
			return sites(archive).flatMap(site -> site.getSurveys().stream()).filter(s -> s.getId().equals(survey.id())).findFirst()
					.orElse(null);
		} else if (subject instanceof Subject.OfSite site) {
			return sites(archive).filter(s -> ArchiveMap.nameOf(s).equals(site.name())).findFirst().orElse(null);
		} else if (subject instanceof Subject.OfCell cell) {
			return sites(archive).filter(s -> ArchiveMap.nameOf(s).equals(cell.site())).flatMap(s -> s.getFloors().stream())
					.filter(f -> f.getLevel() == cell.floor()).findFirst().orElse(null);
		}
		return null;
	}

	private static Stream<Site> sites(Archive archive) {
		return archive.getSites().stream();
	}

	/** Where a subject is, in words. */
	static String place(Archive archive, Subject subject) {
		if (subject instanceof Subject.OfSample sample) {
			return SampleNames.ref(archive, sample.id()).flatMap(ArchiveSelection::floorOf).map(Evidence::name).orElse("Elsewhere");
		}
		EObject object = object(archive, subject);
		if (object instanceof Floor floor) {
			return name(floor);
		}
		if (object != null && object.eContainer() instanceof Site site) {
			return ArchiveMap.nameOf(site);
		}
		return object instanceof Site site ? ArchiveMap.nameOf(site) : "The whole archive";
	}

	private static String name(Floor floor) {
		return ArchiveMap.nameOf((Site) floor.eContainer()) + ", " + ModelText.name(floor);
	}
}
